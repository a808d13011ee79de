package haftline.drawing;

import haftline.set.TemplateSettings;

/** How the text on a card is written to a file. */
public enum LetteringStyle {
    /** Single strokes: a laser or a pen writes each once. */
    STROKES,
    /** Outlines of broad strokes, to be filled or engraved as areas. */
    OUTLINES,
    /** Text in the reader's own font. */
    FONT,
    /** No text at all. */
    NONE;

    /**
     * The style of a workshop.
     *
     * @param lettering the maker's
     * @return the style
     */
    public static LetteringStyle of(TemplateSettings.Lettering lettering) {
        return switch (lettering) {
            case STROKES -> STROKES;
            case OUTLINES -> OUTLINES;
            case FONT -> FONT;
            case NONE -> NONE;
        };
    }
}
