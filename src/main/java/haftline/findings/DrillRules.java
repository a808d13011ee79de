package haftline.findings;

import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.stock.Drill;
import java.util.List;
import java.util.Optional;

/** Whether the rack holds the drills, and whether they reach. */
final class DrillRules {
    /** Depth over diameter above which a drill wanders and packs; common practice, no source. */
    static final double DEEP = 8;

    /** Sizes typed in mm and in inches are one drill where they differ by less, mm. */
    private static final double SAME_DRILL = 0.005;

    private DrillRules() {}

    static void add(Handle handle, List<Finding> found) {
        BoreStep deepest = handle.tangBore().deepest();
        for (BoreStep step : handle.tangBore().steps()) {
            if (!handle.brief().rack().holds(step.drillMm(), SAME_DRILL)) {
                found.add(
                        Finding.mm(
                                Code.DRILL_NOT_ON_RACK,
                                Gravity.WARN,
                                Place.BORE,
                                Finding.NONE,
                                step.drillMm(),
                                step == deepest ? handle.fit().wishMm() : step.diameterMm(),
                                step == deepest ? "tang" : "mouth"));
            }
        }
        addReach(handle, handle.tangBore(), found);
        if (handle.capBore().isPresent()) {
            Bore cap = handle.capBore().get();
            double drill = cap.deepest().drillMm();
            if (!handle.brief().rack().holds(drill, SAME_DRILL)) {
                found.add(
                        Finding.mm(
                                Code.DRILL_NOT_ON_RACK,
                                Gravity.WARN,
                                Place.CAP,
                                Finding.NONE,
                                drill,
                                drill,
                                "cap"));
            }
            addReach(handle, cap, found);
        }
    }

    private static void addReach(Handle handle, Bore bore, List<Finding> found) {
        BoreStep step = bore.deepest();
        Optional<Drill> drill = handle.brief().rack().nearest(step.drillMm());
        if (drill.isPresent() && drill.get().fluteLengthMm().isPresent()) {
            double flute = drill.get().fluteLengthMm().getAsDouble();
            if (flute < bore.reachMm()
                    && Math.abs(drill.get().diameterMm() - step.drillMm()) < SAME_DRILL) {
                found.add(
                        Finding.mm(
                                Code.DRILL_TOO_SHORT,
                                Gravity.WARN,
                                bore.end() == Bore.End.BUTT ? Place.CAP : Place.BORE,
                                bore.xAt(flute),
                                flute,
                                bore.reachMm(),
                                step.drill()));
            }
        }
        double ratio = step.depthMm() / step.drillMm();
        if (ratio > DEEP) {
            found.add(
                    new Finding(
                            Code.BORE_DEEP_FOR_DRILL,
                            Gravity.NOTE,
                            bore.end() == Bore.End.BUTT ? Place.CAP : Place.BORE,
                            Finding.NONE,
                            ratio,
                            DEEP,
                            Finding.Unit.PLAIN,
                            ""));
        }
    }
}
