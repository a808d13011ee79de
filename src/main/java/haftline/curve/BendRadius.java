package haftline.curve;

/**
 * The tightest bend of one kind on a stretch of outline, which a cutter has to get into.
 *
 * @param x where it stands, mm; NaN where there is no bend of the kind
 * @param radius its radius of curvature, mm; 0 at a crisp bend, infinite where there is none
 */
public record BendRadius(double x, double radius) {
    /** No bend of the kind asked for. */
    public static final BendRadius NONE = new BendRadius(Double.NaN, Double.POSITIVE_INFINITY);

    /**
     * Returns the tighter of two bends; of two equal ones, this.
     *
     * @param other the bend to compare with
     * @return the tighter
     */
    public BendRadius tighter(BendRadius other) {
        return other.radius < radius ? other : this;
    }
}
