package haftline.write.pdf;

/**
 * One sheet as it lies: its size, the field that the drawing has, and the factors that print true.
 * Round the field runs a strip for the check bars and the sheet's label.
 *
 * @param widthMm level edge
 * @param heightMm upright edge
 * @param marginMm bare strip along every edge
 * @param factorX what level lengths are multiplied by
 * @param factorY what upright lengths are multiplied by
 */
record Sheet(double widthMm, double heightMm, double marginMm, double factorX, double factorY) {
    /**
     * A bar with its ticks. With the usual margin it makes 10 mm, so that a drawing framed for a
     * paper with the usual border of 10 mm comes out on one sheet of it.
     */
    static final double STRIP_MM = 5;

    static Sheet of(PdfOptions options, boolean landscape) {
        Paper paper = options.paper();
        PrinterCorrection correction = options.correction();
        return landscape
                ? new Sheet(
                        paper.heightMm(),
                        paper.widthMm(),
                        options.marginMm(),
                        correction.longEdge(),
                        correction.shortEdge())
                : new Sheet(
                        paper.widthMm(),
                        paper.heightMm(),
                        options.marginMm(),
                        correction.shortEdge(),
                        correction.longEdge());
    }

    double fieldLeftMm() {
        return marginMm + STRIP_MM;
    }

    double fieldBottomMm() {
        return marginMm + STRIP_MM;
    }

    /** Width of the field on paper. */
    double fieldWidthMm() {
        return widthMm - 2 * fieldLeftMm();
    }

    /** Height of the field on paper. */
    double fieldHeightMm() {
        return heightMm - 2 * fieldBottomMm();
    }

    /** How much of a drawing the field shows, level. */
    double shownWidthMm() {
        return fieldWidthMm() / factorX;
    }

    /** How much of a drawing the field shows, upright. */
    double shownHeightMm() {
        return fieldHeightMm() / factorY;
    }
}
