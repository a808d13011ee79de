package haftline.stock;

import haftline.measure.Checks;
import java.util.Optional;

/**
 * An adhesive for tangs, ferrules and caps.
 *
 * @param key catalogue key
 * @param name what it is
 * @param densityKgM3 mixed and cured, kg/m3
 * @param gapLeastMm least gap a side that leaves enough adhesive in the joint, mm
 * @param gapBestMm greatest gap a side at which it does well, mm
 * @param gapLimitMm gap a side beyond which the joint wants packing or a sleeve, mm
 * @param workingMinutes time before it thickens at about 20 to 25 degrees Celsius, minutes
 * @param handlingHours time before the piece may be handled, h
 * @param fullCureHours time before it may be loaded or washed, h
 * @param mixing how it is mixed and used
 * @param caution what to mind
 */
public record Adhesive(
        String key,
        String name,
        Figure densityKgM3,
        Optional<Figure> gapLeastMm,
        Optional<Figure> gapBestMm,
        Optional<Figure> gapLimitMm,
        Optional<Figure> workingMinutes,
        Optional<Figure> handlingHours,
        Optional<Figure> fullCureHours,
        String mixing,
        Caution caution)
        implements Keyed {
    /** Nobody bridges more with adhesive alone. */
    static final double GREATEST_GAP_MM = 10;

    public Adhesive {
        Checks.named("key", key);
        Checks.named("name", name);
        checkRising("gap_best_mm", gapLeastMm, gapBestMm);
        checkRising("gap_limit_mm", gapBestMm, gapLimitMm);
    }

    private static void checkRising(
            String field, Optional<Figure> lesser, Optional<Figure> greater) {
        if (lesser.isPresent() && greater.isPresent()) {
            Checks.within(field, greater.get().value(), lesser.get().value(), GREATEST_GAP_MM);
        }
    }
}
