package haftline.drawing;

/** How the text on a card is written to a file. */
public enum LetteringStyle {
    /** Single strokes: a laser or a pen writes each once. */
    STROKES,
    /** Outlines of broad strokes, to be filled or engraved as areas. */
    OUTLINES,
    /** Text in the reader's own font. */
    FONT,
    /** No text at all. */
    NONE
}
