/**
 * The neutral scene: what is to be drawn, before any file format is known.
 *
 * <p>Everything is in millimetres at full size. x runs to the right, along the lathe axis where a
 * handle is drawn; <b>y runs up</b>, away from the axis in the upper half. Angles are in degrees,
 * anticlockwise from +x. Values are immutable. Line types, widths and dimensions follow the habits
 * of ISO 128 and ISO 129 (figures from memory, no copy of the standards was at hand).
 *
 * <p>A path is a chain of segments that share their vertices: the end of one <em>is</em> the start
 * of the next, the same two doubles, so that a writer which rounds a vertex rounds it for both and
 * no gap can open.
 */
package haftline.drawing;
