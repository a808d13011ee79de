package haftline.write.svg;

import haftline.measure.Checks;

/**
 * How a drawing becomes an SVG file.
 *
 * @param marginMm free room round the drawing, 0 to 1000
 * @param toolPathWidthMm width of the lines on the cut and score layers, over 0, at most 1
 */
public record SvgOptions(double marginMm, double toolPathWidthMm) {
    private static final double GREATEST_MARGIN_MM = 1000;
    private static final double GREATEST_TOOL_PATH_MM = 1;
    private static final double LEAST_TOOL_PATH_MM = 0.001;

    /**
     * A thousandth of an inch: drivers that take an SVG for a print cut a line so thin and engrave
     * a wider one (common practice, no source).
     */
    private static final double HAIRLINE_MM = 0.0254;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException where a value is out of range
     */
    public SvgOptions {
        Checks.within("margin", marginMm, 0, GREATEST_MARGIN_MM);
        Checks.within(
                "tool path width", toolPathWidthMm, LEAST_TOOL_PATH_MM, GREATEST_TOOL_PATH_MM);
    }

    /**
     * A margin of 5 mm and tool paths that can be seen on a screen.
     *
     * @return the options
     */
    public static SvgOptions standard() {
        return new SvgOptions(5, 0.1);
    }

    /**
     * The same with cut and score lines as hairlines, for drivers that tell cutting from engraving
     * by width.
     *
     * @return the options
     */
    public SvgOptions withHairlines() {
        return new SvgOptions(marginMm, HAIRLINE_MM);
    }
}
