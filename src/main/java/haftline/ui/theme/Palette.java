package haftline.ui.theme;

import javafx.scene.paint.Color;

/**
 * Colours of one theme. Text colours keep a contrast of at least 4.5 to 1 on paper and panel (WCAG
 * 2.1, 1.4.3), lines and marks at least 3 to 1 (1.4.11).
 *
 * @param name style class of the theme
 * @param paper the board
 * @param margin the rulers
 * @param panel panels beside the board
 * @param grid lines of the squared paper
 * @param line frames and separators
 * @param ink outlines and text
 * @param soft secondary text and dimension lines
 * @param accent what can be moved or pressed
 * @param good a limit is kept
 * @param near a limit is close or a warning is due
 * @param stop a limit is broken
 * @param steel metal in section
 * @param hollow the empty part of a bore
 * @param glue adhesive
 */
public record Palette(
        String name,
        Color paper,
        Color margin,
        Color panel,
        Color grid,
        Color line,
        Color ink,
        Color soft,
        Color accent,
        Color good,
        Color near,
        Color stop,
        Color steel,
        Color hollow,
        Color glue) {
    /** Ink on paper. */
    public static final Palette PAPER =
            new Palette(
                    "paper",
                    Color.web("#F7F3E9"),
                    Color.web("#F0E8D8"),
                    Color.web("#FCFAF5"),
                    Color.web("#ECE5D5"),
                    Color.web("#DDD5C4"),
                    Color.web("#2F2B25"),
                    Color.web("#6B6453"),
                    Color.web("#A04F24"),
                    Color.web("#47663B"),
                    Color.web("#8A5709"),
                    Color.web("#AB2F25"),
                    Color.web("#9AA7AE"),
                    Color.web("#FDFBF6"),
                    Color.web("#E6CF8E"));

    /** Chalk on slate. */
    public static final Palette SLATE =
            new Palette(
                    "slate",
                    Color.web("#26302F"),
                    Color.web("#1F2827"),
                    Color.web("#1B2322"),
                    Color.web("#2E3938"),
                    Color.web("#3C4947"),
                    Color.web("#ECE7DA"),
                    Color.web("#A9B0A6"),
                    Color.web("#EFA06B"),
                    Color.web("#9CC98B"),
                    Color.web("#E9BE62"),
                    Color.web("#F2877A"),
                    Color.web("#8E9CA3"),
                    Color.web("#161D1C"),
                    Color.web("#8F7A3E"));
}
