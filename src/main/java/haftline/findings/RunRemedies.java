package haftline.findings;

import haftline.figures.Figures;
import haftline.handle.ChoicesBuilder;
import haftline.handle.PlacedNode;
import haftline.measure.IsotonicFit;
import haftline.measure.Units;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A run that turns where the maker asked for none: the nodes that make it turn are moved. */
final class RunRemedies extends RemedyBench {
    /** From node to node the wood thickens or thins by this, where there is room for it, mm. */
    private static final double STEP = 0.2;

    RunRemedies(Finding finding, Figures figures, RemedySearch search, Units units) {
        super(finding, figures, search, units);
    }

    /** One node by the least that will do; else as many as it takes. */
    Optional<Remedy> withoutATurn() {
        for (Shape.Run run : brief().shape().monotone()) {
            List<PlacedNode> nodes = nodesOf(run);
            int turn = indexOf(nodes, finding.subject());
            if (turn > 0) {
                Optional<Remedy> remedy = oneNode(nodes, turn).or(() -> evened(nodes));
                if (remedy.isPresent()) {
                    return remedy;
                }
            }
        }
        return Optional.empty();
    }

    private List<PlacedNode> nodesOf(Shape.Run run) {
        List<PlacedNode> all = figures.handle().nodes();
        return all.subList(indexOf(all, run.from()), indexOf(all, run.to()) + 1);
    }

    private static int indexOf(List<PlacedNode> nodes, String name) {
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(name)) {
                return i;
            }
        }
        return -1;
    }

    /** The node that turns, or the one before it, moved past the other; whichever moves less. */
    private Optional<Remedy> oneNode(List<PlacedNode> nodes, int turn) {
        PlacedNode before = nodes.get(turn - 1);
        PlacedNode after = nodes.get(turn);
        double way = way(nodes);
        // Both would move alike, so the one inside of the run goes first: its ends are the shape's.
        boolean endsHere = turn == nodes.size() - 1;
        PlacedNode first = endsHere ? before : after;
        double firstMm = 2 * (endsHere ? after.radiusMm() : before.radiusMm());
        return moved(first, firstMm + (endsHere ? -way : way) * STEP)
                .or(
                        () ->
                                moved(
                                        endsHere ? after : before,
                                        2 * first.radiusMm() + (endsHere ? way : -way) * STEP));
    }

    private Optional<Remedy> moved(PlacedNode node, double diameterMm) {
        if (!node.isFree()) {
            return Optional.empty();
        }
        return tried(List.of(node), new double[] {tenths(diameterMm)});
    }

    /**
     * The least squares of changes that let no step of the run go the wrong way, fitted to the run
     * less its even steps. The two ends stay where they are.
     */
    private Optional<Remedy> evened(List<PlacedNode> nodes) {
        int inner = nodes.size() - 2;
        if (inner < 1) {
            return Optional.empty();
        }
        double from = 2 * nodes.get(0).radiusMm();
        double to = 2 * nodes.get(inner + 1).radiusMm();
        double way = way(nodes);
        double step = Math.min(STEP, Math.abs(to - from) / (inner + 1));
        double[] up = new double[inner];
        for (int i = 0; i < inner; i++) {
            up[i] = way * (2 * nodes.get(i + 1).radiusMm() - from) - (i + 1) * step;
        }
        double most = way * (to - from) - (inner + 1) * step;
        double[] pooled = IsotonicFit.of(up);
        List<PlacedNode> changed = new ArrayList<>();
        List<Double> diameters = new ArrayList<>();
        for (int i = 0; i < inner; i++) {
            double raised = Math.max(0, Math.min(most, pooled[i])) + (i + 1) * step;
            double mm = from + way * raised;
            PlacedNode node = nodes.get(i + 1);
            if (Math.abs(mm - 2 * node.radiusMm()) > 1e-9) {
                changed.add(node);
                diameters.add(tenths(mm));
            }
        }
        return tried(changed, diameters.stream().mapToDouble(mm -> mm).toArray());
    }

    private Optional<Remedy> tried(List<PlacedNode> nodes, double[] diametersMm) {
        ChoicesBuilder changed = choices().toBuilder();
        for (int i = 0; i < nodes.size(); i++) {
            if (diametersMm[i] < 1) {
                return Optional.empty();
            }
            changed.nodeDiameterMm(nodes.get(i).name(), diametersMm[i]);
        }
        return search.mending(changed.build())
                .map(
                        trial ->
                                new Remedy(
                                        Optional.of(trial.choices()),
                                        "Make " + eachNode(nodes, trial.choices()),
                                        diametersMm[0]));
    }

    private static double way(List<PlacedNode> nodes) {
        return Math.signum(nodes.get(nodes.size() - 1).radiusMm() - nodes.get(0).radiusMm());
    }
}
