package haftline.drawing;

import java.util.List;

/**
 * What is written beside a section.
 *
 * @param piece name of the piece
 * @param set name of the set
 * @param kit name of its kit
 * @param batch the measured batch of the kit
 * @param stock its wood or plastic
 * @param fit how the tang is held
 * @param verdict what the findings come to, such as a count of warnings
 * @param notes further lines, such as bores and walls
 * @param caution what to mind
 * @param stopped why the piece may not be made so; empty where it may
 */
public record TitleBlock(
        String piece,
        String set,
        String kit,
        String batch,
        String stock,
        String fit,
        String verdict,
        List<String> notes,
        List<String> caution,
        List<String> stopped) {
    /** What stands on the sheets of a piece that cannot be made so. */
    public static final String MARK = "NOT TO BE MADE";

    /** Height of that mark's letters, mm. */
    static final double MARK_HEIGHT_MM = 5;

    /** Copies the lists. */
    public TitleBlock {
        notes = List.copyOf(notes);
        caution = List.copyOf(caution);
        stopped = List.copyOf(stopped);
    }
}
