package haftline.write.pdf;

/**
 * One sheet as it lies: its size, the field that the drawing has, and the factors that print true.
 * Under the field is a strip for two level bars and the sheet's label, at its left one for two
 * upright bars.
 *
 * @param widthMm level edge
 * @param heightMm upright edge
 * @param marginMm bare strip along every edge
 * @param factorX what level lengths are multiplied by
 * @param factorY what upright lengths are multiplied by
 */
record Sheet(double widthMm, double heightMm, double marginMm, double factorX, double factorY) {
    /** Two bars with their ticks. */
    static final double STRIP_MM = 13;

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
        return widthMm - marginMm - fieldLeftMm();
    }

    /** Height of the field on paper. */
    double fieldHeightMm() {
        return heightMm - marginMm - fieldBottomMm();
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
