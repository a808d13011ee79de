/**
 * Papers of a piece for people: the lathe sheet, the instruction sheet of a kit, the care card.
 * Here stands what they say, free of layout; {@code page} sets it on paper, {@code html} for a
 * browser. Every figure is one of the piece's own, as fine as it can be worked to and no finer.
 */
package haftline.sheet;
