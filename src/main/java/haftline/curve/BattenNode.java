package haftline.curve;

/**
 * A node that a batten is laid through. A crisp node ends one run and begins the next; each side
 * may have its own slope. A smooth node with a given slope has the same on both sides.
 *
 * @param x place, mm
 * @param r radius, mm
 * @param crisp true where the outline may bend here
 * @param before what is asked of the slope towards the ferrule
 * @param after what is asked of the slope towards the butt
 */
public record BattenNode(double x, double r, boolean crisp, EndSlope before, EndSlope after) {
    /** Refuses a smooth node with two different slopes. */
    public BattenNode {
        Checks.finite("x", x);
        Checks.radius("r", r);
        if (!crisp && !before.equals(after)) {
            throw new IllegalArgumentException(
                    "a smooth node has one slope; got " + before + " and " + after);
        }
    }

    /**
     * Returns a smooth node of free slope.
     *
     * @param x place, mm
     * @param r radius, mm
     * @return the node
     */
    public static BattenNode smooth(double x, double r) {
        return new BattenNode(x, r, false, EndSlope.FREE, EndSlope.FREE);
    }

    /**
     * Returns a smooth node with a slope of its own.
     *
     * @param x place, mm
     * @param r radius, mm
     * @param slope what is asked
     * @return the node
     */
    public static BattenNode smooth(double x, double r, EndSlope slope) {
        return new BattenNode(x, r, false, slope, slope);
    }

    /**
     * Returns a crisp node, free on both sides.
     *
     * @param x place, mm
     * @param r radius, mm
     * @return the node
     */
    public static BattenNode crisp(double x, double r) {
        return new BattenNode(x, r, true, EndSlope.FREE, EndSlope.FREE);
    }
}
