package haftline.curve;

/**
 * What is asked of a spline's slope at one end of a run: left free, or a fixed dr/dx.
 *
 * @param free true where the batten may take the slope it likes best
 * @param slope dr/dx where it is fixed; 0 where it is free
 */
public record EndSlope(boolean free, double slope) {
    /** No demand. */
    public static final EndSlope FREE = new EndSlope(true, 0);

    /** Parallel to the axis. */
    public static final EndSlope LEVEL = new EndSlope(false, 0);

    /** Refuses a slope that is no finite number, and one given beside "free". */
    public EndSlope {
        Checks.finite("slope", slope);
        if (free && slope != 0) {
            throw new IllegalArgumentException("a free end has no slope of its own, got " + slope);
        }
    }

    /**
     * Returns a fixed slope.
     *
     * @param slope dr/dx
     * @return the demand
     */
    public static EndSlope of(double slope) {
        return new EndSlope(false, slope);
    }

    /**
     * Returns a fixed angle against the axis.
     *
     * @param degrees positive where the radius grows towards the butt, between -90 and 90
     * @return the demand
     */
    public static EndSlope ofDegrees(double degrees) {
        if (!(Math.abs(degrees) < 90)) {
            throw new IllegalArgumentException(
                    "degrees must lie between -90 and 90, not " + degrees);
        }
        return new EndSlope(false, Math.tan(Math.toRadians(degrees)));
    }
}
