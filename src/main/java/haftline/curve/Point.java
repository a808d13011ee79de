package haftline.curve;

/**
 * A place in the half-plane of the profile.
 *
 * @param x place along the lathe axis, mm
 * @param r distance from the lathe axis, mm; a centre of curvature may lie below the axis and is
 *     then negative
 */
public record Point(double x, double r) {
    /** Refuses a coordinate that is no finite number. */
    public Point {
        Checks.finite("x", x);
        Checks.finite("r", r);
    }

    /**
     * Returns the straight distance to another point, mm.
     *
     * @param other the other point
     * @return the distance, mm
     */
    public double distanceTo(Point other) {
        return Math.hypot(x - other.x, r - other.r);
    }
}
