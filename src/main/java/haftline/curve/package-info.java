/**
 * Outlines of turned work and the exact mathematics on them: segments, the batten spline, moments,
 * nearest distance, arc fitting.
 *
 * <p>Axes: x runs along the lathe axis in mm, r &gt;= 0 is the radius in mm. Every segment is
 * single-valued in x, so that what is drawn can be turned and copied. A positive offset points
 * outward, away from the axis. No screen, no file, no library.
 */
package haftline.curve;
