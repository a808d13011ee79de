package haftline.curve;

/** A fixed slope was asked for that would make the outline leave the range between its nodes. */
public final class SlopeOutsideRangeException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final int node;
    private final double slope;
    private final double least;
    private final double greatest;

    /**
     * Refuses a slope.
     *
     * @param node which node of the list, from 0
     * @param slope the slope asked for, dr/dx
     * @param allowed what may be asked for there
     */
    public SlopeOutsideRangeException(int node, double slope, SlopeRange allowed) {
        super(
                "slope at node "
                        + node
                        + " must lie in ["
                        + allowed.least()
                        + ", "
                        + allowed.greatest()
                        + "], not "
                        + slope);
        this.node = node;
        this.slope = slope;
        this.least = allowed.least();
        this.greatest = allowed.greatest();
    }

    /**
     * Returns which node it is about.
     *
     * @return index from 0 in the list that was given
     */
    public int node() {
        return node;
    }

    /**
     * Returns the slope asked for.
     *
     * @return dr/dx
     */
    public double slope() {
        return slope;
    }

    /**
     * Returns what may be asked for.
     *
     * @return the allowed slopes
     */
    public SlopeRange allowed() {
        return new SlopeRange(least, greatest);
    }
}
