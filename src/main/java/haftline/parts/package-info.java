/**
 * The measured metal of a kit: tang, ferrule, end cap, blade, and the batches in which they come.
 *
 * <p>Every figure is what was measured on the parts in hand, in mm and g, never a catalogue's
 * nominal size.
 */
package haftline.parts;
