package haftline.ui.model;

import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;

/** Finds what is under a pixel. */
final class HitTest {
    /** Grips are small and stand close together, px. */
    private static final double GRIP_REACH_PX = 8;

    /** A burnt line may be thinner than any hand can meet, px. */
    private static final double NARROWEST_PX = 10;

    private HitTest() {}

    /** A grip of what is chosen on the board: it lies over everything else. */
    static Optional<Hit> grip(Handle handle, View view, BoardModel board, double px, double py) {
        Optional<Integer> detail = board.details().chosen().value();
        if (detail.filter(i -> i < handle.brief().shape().details().size()).isPresent()) {
            for (Grip grip : Grip.of(handle, detail.get(), view)) {
                if (Math.hypot(grip.px() - px, grip.py() - py) <= GRIP_REACH_PX) {
                    return Optional.of(new Hit.OnGrip(detail.get(), grip.kind()));
                }
            }
        }
        return board.selected()
                .value()
                .flatMap(node -> SlopeGrip.of(handle, node, view))
                .filter(arm -> Math.hypot(arm.px() - px, arm.py() - py) <= GRIP_REACH_PX)
                .map(arm -> new Hit.OnSlope(arm.slope().node()));
    }

    /** The nearest node within reach, above or below the axis, else a detail. */
    static Optional<Hit> of(Handle handle, View view, double px, double py, double reachPx) {
        PlacedNode nearest = null;
        double least = reachPx;
        for (PlacedNode node : handle.nodes()) {
            double dx = view.px(node.x()) - px;
            double dy = (node.radiusMm() - Math.abs(view.radius(py))) * view.scale();
            double distance = Math.hypot(dx, dy);
            if (distance <= least) {
                least = distance;
                nearest = node;
            }
        }
        return nearest == null
                ? detail(handle, view, px, py, reachPx)
                : Optional.of(new Hit.OnNode(nearest.name(), nearest.fixedBy()));
    }

    private static Optional<Hit> detail(
            Handle handle, View view, double px, double py, double reachPx) {
        double x = view.mm(px);
        double wood = handle.lengths().visibleWoodMm();
        List<Detail> details = handle.brief().shape().details();
        Optional<Hit> hit = Optional.empty();
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < details.size(); i++) {
            Detail detail = details.get(i);
            double away = Math.abs(x - detail.place().x(wood));
            double half = Math.max(detail.widthMm() / 2, NARROWEST_PX / 2 / view.scale());
            if (away <= half && away < least && isOn(handle, view, detail, x, py, reachPx)) {
                least = away;
                hit = Optional.of(new Hit.OnDetail(i, detail.kind()));
            }
        }
        return hit;
    }

    /**
     * On the outline, or on the band that a detail makes of the turned surface; a flat makes none.
     */
    private static boolean isOn(
            Handle handle, View view, Detail detail, double x, double py, double reachPx) {
        double radius = view.radius(py);
        double off = (handle.outline().r(x) - Math.abs(radius)) * view.scale();
        boolean isBand = radius >= 0 && detail.proudMm() != 0;
        return off >= -reachPx && (off <= reachPx || isBand);
    }
}
