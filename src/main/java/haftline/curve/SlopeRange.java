package haftline.curve;

/**
 * The slopes that keep the outline between its neighbouring nodes without a ripple.
 *
 * @param least least allowed dr/dx
 * @param greatest greatest allowed dr/dx
 */
public record SlopeRange(double least, double greatest) {
    /** Share of the range by which a slope may miss it: the rounding of a handful of operations. */
    private static final double ROUNDING = 1e-12;

    /**
     * Returns the range beside one chord: from level to three times its slope (Fritsch and Carlson
     * 1980, the box that suffices for a monotone cubic).
     *
     * @param chordSlope slope of the straight line to the neighbouring node
     * @return the range
     */
    public static SlopeRange beside(double chordSlope) {
        return new SlopeRange(Math.min(0, 3 * chordSlope), Math.max(0, 3 * chordSlope));
    }

    /**
     * Returns the range between two chords: none but level where they differ in sign.
     *
     * @param before slope of the chord before the node
     * @param after slope of the chord after the node
     * @return the range
     */
    public static SlopeRange between(double before, double after) {
        if (before > 0 && after > 0) {
            return new SlopeRange(0, 3 * Math.min(before, after));
        }
        if (before < 0 && after < 0) {
            return new SlopeRange(3 * Math.max(before, after), 0);
        }
        return new SlopeRange(0, 0);
    }

    /**
     * Tells whether a slope is allowed; one that misses an end only by rounding is, because the
     * ends are shown to people and typed back.
     *
     * @param slope dr/dx
     * @return true inside the range, its ends included
     */
    public boolean holds(double slope) {
        double slack = ROUNDING * (greatest - least);
        return slope >= least - slack && slope <= greatest + slack;
    }

    /** The slope, or the end that it misses by rounding. */
    double held(double slope) {
        return Math.max(least, Math.min(greatest, slope));
    }
}
