package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.handle.PlacedNode;
import java.util.OptionalDouble;

/**
 * A node being nudged by keys: where it began, and how far it is wanted by now.
 *
 * @param node where it began
 * @param edits commands on the handle as it was then
 * @param dxMm towards the butt so far
 * @param dDiameterMm in diameter so far
 */
record Nudge(PlacedNode node, NodeEdits edits, double dxMm, double dDiameterMm) {
    static Nudge of(PlacedNode node, NodeEdits edits) {
        return new Nudge(node, edits, 0, 0);
    }

    /** Further, but not past a neighbour. */
    Nudge by(double dx, double dDiameter) {
        Range range = Range.of(edits.handle(), node.name());
        double x = Math.min(range.high(), Math.max(range.low(), node.x() + dxMm + dx));
        return new Nudge(node, edits, dx == 0 ? dxMm : x - node.x(), dDiameterMm + dDiameter);
    }

    /** A nudge in diameter alone leaves a node to slide. */
    Command command() {
        return edits.move(
                node.name(),
                dxMm == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Snap.FREE.nearest(node.x() + dxMm)),
                dDiameterMm == 0
                        ? OptionalDouble.empty()
                        : OptionalDouble.of(Snap.FREE.nearest(2 * node.radiusMm() + dDiameterMm)));
    }
}
