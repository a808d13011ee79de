package haftline.stock;

/**
 * One figure with where it comes from. A figure that nobody has is an empty {@code Optional}, never
 * a nought.
 *
 * @param value the value, finite, in the unit that the accessor's name states
 * @param source where it comes from
 * @param basis how it is known; no surer than the source
 */
public record Figure(double value, Source source, Basis basis) {
    public Figure {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("value " + value + ": expected a finite number");
        }
        if (source == null || basis == null) {
            throw new IllegalArgumentException("source: a figure needs a source and its basis");
        }
        if (basis.compareTo(source.basis()) < 0) {
            throw new IllegalArgumentException(
                    "basis "
                            + basis.words()
                            + ": surer than its source, "
                            + source.basis().words());
        }
    }

    /**
     * A figure that is known as its source is.
     *
     * @param value the value
     * @param source where it comes from
     * @return the figure
     */
    public static Figure of(double value, Source source) {
        return new Figure(value, source, source.basis());
    }

    /**
     * Whether the figure must be shown as an estimate.
     *
     * @return true for an estimate
     */
    public boolean isEstimate() {
        return basis == Basis.ESTIMATE;
    }
}
