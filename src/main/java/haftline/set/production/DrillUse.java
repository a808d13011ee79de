package haftline.set.production;

import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.stock.Rack;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * What a drill does in a batch.
 *
 * @param name what the maker calls the drill
 * @param diameterMm its diameter, mm
 * @param isOnRack whether the maker owns it
 * @param holes how many holes it goes into
 * @param depthMm depth to full diameter of all of them together, from the faced ends, mm
 * @param deepestMm the deepest of them, mm
 * @param pieces the pieces that it is used for
 */
public record DrillUse(
        String name,
        double diameterMm,
        boolean isOnRack,
        int holes,
        double depthMm,
        double deepestMm,
        List<String> pieces) {
    /** Diameters nearer than this are one drill, mm. */
    private static final double SAME_MM = 1e-6;

    /** Copies the list. */
    public DrillUse {
        pieces = List.copyOf(pieces);
    }

    /** The drills by rising diameter; spare blanks are not drilled. */
    static List<DrillUse> of(List<Order> orders, Rack rack) {
        Map<Double, DrillUse> uses = new TreeMap<>();
        for (Order order : orders) {
            Handle handle = order.figures().handle();
            List<Bore> bores = new ArrayList<>(List.of(handle.tangBore()));
            handle.capBore().ifPresent(bores::add);
            for (Bore bore : bores) {
                for (BoreStep step : bore.steps()) {
                    uses.merge(step.drillMm(), one(order, step, rack), DrillUse::with);
                }
            }
        }
        return uses.values().stream()
                .sorted(Comparator.comparingDouble(DrillUse::diameterMm))
                .toList();
    }

    private static DrillUse one(Order order, BoreStep step, Rack rack) {
        return new DrillUse(
                step.drillName(),
                step.drillMm(),
                rack.holds(step.drillMm(), SAME_MM),
                order.quantity(),
                order.quantity() * step.depthMm(),
                step.depthMm(),
                List.of(order.piece()));
    }

    private DrillUse with(DrillUse other) {
        List<String> all = new ArrayList<>(pieces);
        other.pieces.stream().filter(piece -> !all.contains(piece)).forEach(all::add);
        return new DrillUse(
                name,
                diameterMm,
                isOnRack,
                holes + other.holes,
                depthMm + other.depthMm,
                Math.max(deepestMm, other.deepestMm),
                all);
    }
}
