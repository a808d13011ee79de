package haftline.findings;

import haftline.figures.Bends;
import haftline.figures.Figures;
import haftline.figures.Grip;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Rules;
import haftline.shape.Shape;
import java.util.List;

/** The shape under the hand, the eye and the cutter. */
final class ShapeRules {
    /**
     * A jump of the second derivative that the eye may see as a flat spot, 1/mm; common practice,
     * no source.
     */
    static final double FLAT_SPOT = 0.01;

    private ShapeRules() {}

    static void add(Figures figures, List<Finding> found) {
        addNodes(figures.handle(), found);
        addCopying(figures, found);
        addGrip(figures, found);
    }

    private static void addNodes(Handle handle, List<Finding> found) {
        for (PlacedNode node : handle.nodes()) {
            if (Math.abs(node.curvatureJump()) > FLAT_SPOT) {
                found.add(
                        new Finding(
                                Code.FLAT_SPOT,
                                Gravity.NOTE,
                                Place.BODY,
                                node.x(),
                                Math.abs(node.curvatureJump()),
                                FLAT_SPOT,
                                Finding.Unit.PER_MM,
                                node.name()));
            }
        }
        for (Shape.Run run : handle.brief().shape().monotone()) {
            addRun(handle.nodes(), run, found);
        }
    }

    /** The batten never turns between two nodes, so a run turns only at a node. */
    private static void addRun(List<PlacedNode> nodes, Shape.Run run, List<Finding> found) {
        int from = 0;
        int to = nodes.size() - 1;
        for (int i = 0; i < nodes.size(); i++) {
            from = nodes.get(i).name().equals(run.from()) ? i : from;
            to = nodes.get(i).name().equals(run.to()) ? i : to;
        }
        double way = Math.signum(nodes.get(to).radiusMm() - nodes.get(from).radiusMm());
        for (int i = from + 1; i <= to; i++) {
            double step = nodes.get(i).radiusMm() - nodes.get(i - 1).radiusMm();
            if (step * way < 0) {
                found.add(
                        Finding.mm(
                                Code.NOT_MONOTONE,
                                Gravity.WARN,
                                Place.BODY,
                                nodes.get(i).x(),
                                2 * nodes.get(i).radiusMm(),
                                2 * nodes.get(i - 1).radiusMm(),
                                nodes.get(i).name()));
                return;
            }
        }
    }

    private static void addCopying(Figures figures, List<Finding> found) {
        Rules.Copying rules = figures.handle().brief().rules().copying();
        Bends bends = figures.bends();
        if (bends.steepestDeg() > rules.steepestDeg()) {
            found.add(
                    new Finding(
                            Code.TOO_STEEP_TO_COPY,
                            Gravity.NOTE,
                            Place.BODY,
                            bends.steepestX(),
                            bends.steepestDeg(),
                            rules.steepestDeg(),
                            Finding.Unit.DEG,
                            ""));
        }
        if (bends.hollowMm() < rules.noseMm()) {
            found.add(
                    Finding.mm(
                            Code.HOLLOW_TIGHTER_THAN_CUTTER,
                            Gravity.NOTE,
                            Place.BODY,
                            bends.hollowX(),
                            bends.hollowMm(),
                            rules.noseMm(),
                            ""));
        }
    }

    private static void addGrip(Figures figures, List<Finding> found) {
        Grip grip = figures.grip();
        if (grip.greatestMm() < grip.diameterLowMm()) {
            found.add(
                    Finding.mm(
                            Code.TOO_SLENDER,
                            Gravity.WARN,
                            Place.BODY,
                            grip.greatestX(),
                            grip.greatestMm(),
                            grip.diameterLowMm(),
                            grip.diameterRule()));
        } else if (grip.greatestMm() > grip.diameterHighMm()) {
            found.add(
                    Finding.mm(
                            Code.TOO_THICK,
                            Gravity.WARN,
                            Place.BODY,
                            grip.greatestX(),
                            grip.greatestMm(),
                            grip.diameterHighMm(),
                            grip.diameterRule()));
        }
        boolean shorter = grip.lengthMm() < grip.lengthLowMm();
        if (shorter || grip.lengthMm() > grip.lengthHighMm()) {
            found.add(
                    Finding.mm(
                            Code.LENGTH_FOR_THE_HAND,
                            Gravity.NOTE,
                            Place.PIECE,
                            Finding.NONE,
                            grip.lengthMm(),
                            shorter ? grip.lengthLowMm() : grip.lengthHighMm(),
                            grip.lengthRule()));
        }
    }
}
