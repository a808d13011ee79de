package haftline.figures;

import haftline.handle.Handle;
import haftline.measure.Checks;
import haftline.stock.SpeedRule;
import java.util.OptionalDouble;

/**
 * Speeds of the lathe by a turners' rule, at the blank and at the finished piece.
 *
 * @param blankMm what swings while roughing, mm: a square blank corner to corner
 * @param blank speeds there
 * @param finishedMm greatest finished diameter, mm
 * @param finished speeds there
 * @param rule whose rule it is
 */
public record Speeds(
        double blankMm,
        SpeedRule.Range blank,
        double finishedMm,
        SpeedRule.Range finished,
        String rule) {
    /**
     * A ceiling where the maker does not say how fast the lathe runs: what many small ones reach;
     * common practice, no source.
     */
    public static final double USUAL_LATHE_RPM = 3000;

    /** What always stands beside the speeds. */
    public static final String CAUTION =
            "A turners' rule of thumb and a ceiling, not a safety limit: no limit by an agency is"
                    + " known for turning by hand. Start slower, slower still with a square, cracked"
                    + " or unbalanced blank, and never above what the lathe's and the chuck's makers"
                    + " allow.";

    /**
     * Speeds of a handle.
     *
     * @param handle the handle
     * @param rule the rule, from the catalogue
     * @param latheMostRpm the fastest that the maker's lathe runs, which cuts both ranges; empty
     *     where not said
     * @return the speeds
     */
    public static Speeds of(Handle handle, SpeedRule rule, OptionalDouble latheMostRpm) {
        latheMostRpm.ifPresent(rpm -> Checks.within("fastest lathe speed", rpm, 50, 100_000));
        double finished = 2 * handle.outline().greatest(0, handle.buttX()).r();
        double side =
                handle.brief().choices().blankSideMm().orElseGet(() -> Blank.of(handle).sideMm());
        // A rod swings less than the square in which it is counted here, which errs to the slow
        // side.
        double swing = Math.sqrt(2) * side;
        return new Speeds(
                swing,
                cut(rule.at(swing), latheMostRpm),
                finished,
                cut(rule.at(finished), latheMostRpm),
                rule.source().citation());
    }

    private static SpeedRule.Range cut(SpeedRule.Range range, OptionalDouble most) {
        double limit = most.orElse(Double.POSITIVE_INFINITY);
        return new SpeedRule.Range(
                Math.min(range.leastRpm(), limit), Math.min(range.greatestRpm(), limit));
    }
}
