package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.handle.PlacedNode;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A node taken hold of. It keeps the distance at which the pointer took it, so that it does not
 * jump; it begins to move along the axis, and is then held there, only when the pointer means it.
 */
final class NodeDrag implements Drag {
    /** A node thinner or thicker than this is refused by every shape, mm. */
    private static final double LEAST_MM = 1;

    private static final double GREATEST_MM = 200;

    private final PlacedNode node;
    private final NodeEdits edits;
    private final double fromPx;
    private final double offX;
    private final double offRadius;
    private final double below;
    private boolean isAlong;

    NodeDrag(PlacedNode node, NodeEdits edits, View view, double px, double py) {
        this.node = node;
        this.edits = edits;
        fromPx = px;
        below = view.radius(py) < 0 ? -1 : 1;
        offX = node.x() - view.mm(px);
        offRadius = node.radiusMm() - below * view.radius(py);
    }

    @Override
    public Optional<Command> to(View view, double px, double py, Snap snap) {
        isAlong = isAlong || Math.abs(px - fromPx) >= STRAY_PX;
        double x = snap.nearest(view.mm(px) + offX);
        double diameter = snap.nearest(2 * (below * view.radius(py) + offRadius));
        boolean isSameDiameter = snap.nearest(2 * node.radiusMm()) == diameter;
        return isAlong || !isSameDiameter
                ? Optional.of(move(x, diameter, isSameDiameter))
                : Optional.empty();
    }

    private Command move(double x, double diameter, boolean isSameDiameter) {
        double wanted = Math.min(GREATEST_MM, Math.max(LEAST_MM, diameter));
        return edits.move(
                node.name(),
                isAlong ? OptionalDouble.of(between(x)) : OptionalDouble.empty(),
                isSameDiameter ? OptionalDouble.empty() : OptionalDouble.of(wanted));
    }

    /** The wanted place, or the nearest that leaves the neighbours room. */
    private double between(double x) {
        Range range = Range.of(edits.handle(), node.name());
        return Math.min(range.high(), Math.max(range.low(), x));
    }
}
