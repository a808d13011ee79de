package haftline.adjust.solve;

import haftline.measure.Checks;

/**
 * A band that a figure is to lie in.
 *
 * @param lowMm mm, -500 to 500
 * @param highMm mm, from the low end to 500, or infinite
 */
public record Band(double lowMm, double highMm) {
    /** Checks the ranges. */
    public Band {
        Checks.withinMm("band, from", lowMm, -500, 500);
        if (highMm != Double.POSITIVE_INFINITY) {
            Checks.withinMm("band, to", highMm, lowMm, 500);
        }
    }

    /** No upper limit. */
    static Band from(double lowMm) {
        return new Band(lowMm, Double.POSITIVE_INFINITY);
    }

    /**
     * What a figure has to spare.
     *
     * @param figureMm the figure, mm
     * @return mm, negative outside of the band
     */
    double marginMm(double figureMm) {
        double over = figureMm - lowMm;
        return highMm == Double.POSITIVE_INFINITY ? over : Math.min(over, highMm - figureMm);
    }
}
