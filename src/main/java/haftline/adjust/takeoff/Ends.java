package haftline.adjust.takeoff;

import haftline.measure.Checks;
import java.util.OptionalDouble;

/**
 * Diameters at the ends that are known better than by one reading on the wood: the ferrule's and
 * the cap's, measured on the metal.
 *
 * @param shoulderMm the ferrule's outside diameter, mm, or empty
 * @param seatMm the cap's head diameter, mm, or empty
 */
public record Ends(OptionalDouble shoulderMm, OptionalDouble seatMm) {
    /** Nothing is known. */
    public static final Ends UNKNOWN = new Ends(OptionalDouble.empty(), OptionalDouble.empty());

    /** Checks the ranges. */
    public Ends {
        shoulderMm.ifPresent(mm -> Checks.withinMm("ferrule diameter", mm, 1, Reading.WIDEST_MM));
        seatMm.ifPresent(mm -> Checks.withinMm("seat diameter", mm, 1, Reading.WIDEST_MM));
    }
}
