package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.edit.ShapeEdits;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Something taken hold of. It keeps the distance at which the pointer took it, so that it does not
 * jump; a node begins to move along the axis, and is then held there, only when the pointer means
 * it.
 */
final class Drag {
    /** A hand that draws a node outwards strays this far along the axis, px. */
    private static final double STRAY_PX = 6;

    /** A node thinner or thicker than this is refused by every shape, mm. */
    private static final double LEAST_MM = 1;

    private static final double GREATEST_MM = 200;

    private final Hit hit;
    private final NodeEdits edits;
    private final double fromPx;
    private final double offX;
    private final double offRadius;
    private final double below;
    private final double startRadius;
    private boolean isAlong;

    private Drag(
            Hit hit, NodeEdits edits, View view, double px, double py, double x, double radius) {
        this.hit = hit;
        this.edits = edits;
        fromPx = px;
        below = view.radius(py) < 0 ? -1 : 1;
        startRadius = radius;
        offX = x - view.mm(px);
        offRadius = radius - below * view.radius(py);
    }

    static Drag of(Hit hit, NodeEdits edits, View view, double px, double py) {
        Handle handle = edits.handle();
        if (hit instanceof Hit.OnNode onNode) {
            PlacedNode node = node(handle, onNode.name());
            return new Drag(hit, edits, view, px, py, node.x(), node.radiusMm());
        }
        Detail detail = handle.brief().shape().details().get(((Hit.OnDetail) hit).index());
        double x = detail.place().x(handle.lengths().visibleWoodMm());
        return new Drag(hit, edits, view, px, py, x, 0);
    }

    private static PlacedNode node(Handle handle, String name) {
        return handle.nodes().stream()
                .filter(each -> each.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** What the pointer's place asks for, or empty where it has not moved far enough to mean it. */
    Optional<Command> to(View view, double px, double py, Snap snap) {
        isAlong = isAlong || Math.abs(px - fromPx) >= STRAY_PX;
        double x = snap.nearest(view.mm(px) + offX);
        if (hit instanceof Hit.OnDetail detail) {
            return isAlong ? Optional.of(detail(detail, x)) : Optional.empty();
        }
        double diameter = snap.nearest(2 * (below * view.radius(py) + offRadius));
        boolean isSameDiameter = snap.nearest(2 * startRadius) == diameter;
        return isAlong || !isSameDiameter
                ? Optional.of(node(((Hit.OnNode) hit).name(), x, diameter, isSameDiameter))
                : Optional.empty();
    }

    private Command node(String name, double x, double diameter, boolean isSameDiameter) {
        double wanted = Math.min(GREATEST_MM, Math.max(LEAST_MM, diameter));
        return edits.move(
                name,
                isAlong ? OptionalDouble.of(between(name, x)) : OptionalDouble.empty(),
                isSameDiameter ? OptionalDouble.empty() : OptionalDouble.of(wanted));
    }

    /** The wanted place, or the nearest that leaves the neighbours room. */
    private double between(String name, double x) {
        Range range = Range.of(edits.handle(), name);
        return Math.min(range.high(), Math.max(range.low(), x));
    }

    private Command detail(Hit.OnDetail detail, double x) {
        Handle handle = edits.handle();
        List<Detail> details = handle.brief().shape().details();
        Detail moved = details.get(detail.index());
        double half = moved.widthMm() / 2;
        double seat = handle.nodes().get(handle.nodes().size() - 1).x();
        double within = Math.min(Math.max(half, seat - half), Math.max(half, x));
        return new ShapeEdits(handle.name(), edits.scope())
                .move(detail.index(), detail.kind(), edits.like(moved.place(), within));
    }
}
