package haftline.set;

import haftline.measure.Measured;
import haftline.parts.PartSize;
import java.util.Optional;

/**
 * One measured size of a kit in two batches.
 *
 * @param part the part it is of
 * @param name the size, such as {@code ferrule bore}
 * @param before its readings in the batch before; empty where that kit has no such size
 * @param after its readings in the new batch; empty where that kit has no such size
 */
public record PartChange(
        PartSize.Part part, String name, Optional<Measured> before, Optional<Measured> after) {
    /** Differences under this are rounding, mm. */
    private static final double ROUNDING = 1e-9;

    /**
     * How much the mean grew.
     *
     * @return mm, negative where it shrank; not a number where one batch has no such size
     */
    public double differenceMm() {
        return before.isPresent() && after.isPresent()
                ? after.get().mean() - before.get().mean()
                : Double.NaN;
    }

    /**
     * The doubt of that difference: both doubts joined in quadrature, as independent ones are (JCGM
     * 100:2008, 5.1.2).
     *
     * @return mm; 0 where a size is missing
     */
    public double doubtMm() {
        return Math.hypot(
                before.map(Measured::doubt).orElse(0.0), after.map(Measured::doubt).orElse(0.0));
    }

    /**
     * Whether the size differs by more than its doubt, or is in one batch only.
     *
     * @return true where the parts are not the same
     */
    public boolean isBeyondDoubt() {
        double difference = differenceMm();
        return Double.isNaN(difference) || Math.abs(difference) > doubtMm() + ROUNDING;
    }
}
