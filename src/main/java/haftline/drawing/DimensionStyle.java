package haftline.drawing;

import haftline.measure.Checks;

/**
 * Sizes of the parts of a dimension, in mm on the drawing, after the habits of ISO 129-1 (from
 * memory).
 *
 * @param textHeightMm height of the figures
 * @param arrowMm length of an arrowhead
 * @param gapMm from the object to the start of an extension line
 * @param overshootMm how far an extension line runs past the dimension line
 * @param textGapMm between the dimension line and the foot of its text
 * @param rowMm between two dimension lines, and between the object and the first
 */
public record DimensionStyle(
        double textHeightMm,
        double arrowMm,
        double gapMm,
        double overshootMm,
        double textGapMm,
        double rowMm) {
    private static final double LARGEST_MM = 100;

    /**
     * Checks the sizes.
     *
     * @throws IllegalArgumentException where one is out of range
     */
    public DimensionStyle {
        Checks.within("text height", textHeightMm, 0.1, LARGEST_MM);
        Checks.within("arrow", arrowMm, 0.1, LARGEST_MM);
        Checks.within("gap", gapMm, 0, LARGEST_MM);
        Checks.within("overshoot", overshootMm, 0, LARGEST_MM);
        Checks.within("text gap", textGapMm, 0, LARGEST_MM);
        Checks.within("row", rowMm, 0.1, LARGEST_MM);
    }

    /**
     * For a drawing of a handle at full size: figures of 2.5 mm, the least that ISO 3098 gives, and
     * what goes with them.
     *
     * @return the style
     */
    public static DimensionStyle standard() {
        return new DimensionStyle(2.5, 2.5, 1, 1.5, 0.8, 7);
    }
}
