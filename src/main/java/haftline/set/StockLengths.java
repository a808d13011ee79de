package haftline.set;

import haftline.measure.Checks;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The sticks on the maker's rack and how they are cut.
 *
 * @param kerfMm width of the saw's cut, mm
 * @param keptMm an offcut so long or longer goes back on the rack and is not charged, mm; empty
 *     where a stick that is begun is charged whole
 * @param sticks the sticks; may be none
 */
public record StockLengths(double kerfMm, OptionalDouble keptMm, List<StockLength> sticks) {
    /** A fine bandsaw takes 1 to 1.5 mm, a table or mitre saw 2.5 to 3.2 (from memory). */
    public static final double GREATEST_KERF_MM = 10;

    /** Nothing on the rack and nothing lost in a cut. */
    public static final StockLengths NONE = new StockLengths(0, OptionalDouble.empty(), List.of());

    /** Checks the ranges and copies the list. */
    public StockLengths {
        Checks.withinMm("kerf", kerfMm, 0, GREATEST_KERF_MM);
        if (keptMm.isPresent()) {
            Checks.withinMm("kept", keptMm.getAsDouble(), 1, StockLength.GREATEST_LENGTH_MM);
        }
        sticks = List.copyOf(sticks);
    }

    /**
     * The same sticks cut by another saw.
     *
     * @param mm width of its cut, mm
     * @return the changed copy
     */
    public StockLengths withKerf(double mm) {
        return new StockLengths(mm, keptMm, sticks);
    }

    /**
     * The same sticks, of which other offcuts are kept.
     *
     * @param mm the shortest offcut that is, mm; empty where none is
     * @return the changed copy
     */
    public StockLengths withKept(OptionalDouble mm) {
        return new StockLengths(kerfMm, mm, sticks);
    }

    /**
     * The same saw with other sticks.
     *
     * @param others the sticks
     * @return the changed copy
     */
    public StockLengths withSticks(List<StockLength> others) {
        return new StockLengths(kerfMm, keptMm, others);
    }
}
