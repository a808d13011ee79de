package haftline.write.pdf;

import haftline.measure.Checks;

/**
 * What makes up for a printer that prints too large or too small. The edges are the paper's own,
 * whichever way the drawing lies on it, for the printer feeds the paper always the same way.
 *
 * @param shortEdge factor for what runs along the paper's short edge, 1 for a true printer
 * @param longEdge factor for what runs along its long edge
 */
public record PrinterCorrection(double shortEdge, double longEdge) {
    /** A true printer. */
    public static final PrinterCorrection NONE = new PrinterCorrection(1, 1);

    /**
     * Printers are off by a few tenths of a percent; one that is off by more than this scales, and
     * the cure is its settings (common practice, no source).
     */
    private static final double GREATEST = 1.05;

    private static final double BAR_MM = 100;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException where a factor is not within 5 % of 1
     */
    public PrinterCorrection {
        Checks.within("correction along the short edge", shortEdge, 1 / GREATEST, GREATEST);
        Checks.within("correction along the long edge", longEdge, 1 / GREATEST, GREATEST);
    }

    /**
     * The correction for what the 100 mm bars of an uncorrected print measure.
     *
     * @param shortEdgeMm length of the bar along the paper's short edge, mm
     * @param longEdgeMm length of the bar along its long edge, mm
     * @return the correction
     * @throws IllegalArgumentException where a bar is off by more than 5 %: the print was scaled
     */
    public static PrinterCorrection measured(double shortEdgeMm, double longEdgeMm) {
        Checks.within(
                "bar along the short edge", shortEdgeMm, BAR_MM / GREATEST, BAR_MM * GREATEST);
        Checks.within("bar along the long edge", longEdgeMm, BAR_MM / GREATEST, BAR_MM * GREATEST);
        return new PrinterCorrection(BAR_MM / shortEdgeMm, BAR_MM / longEdgeMm);
    }
}
