package haftline.ui.model;

import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Shape;
import java.util.Optional;

/**
 * The arm at a chosen node by which its slope is turned.
 *
 * @param slope the slope that it has
 * @param nodePx the node, px from the left
 * @param nodePy the node, px from the top
 * @param px the arm's end, px from the left
 * @param py the arm's end, px from the top
 */
public record SlopeGrip(NodeSlope slope, double nodePx, double nodePy, double px, double py) {
    private static final double ARM_PX = 52;

    /**
     * The arm at a node, above the axis.
     *
     * @param handle the handle
     * @param name the node's name
     * @param view where the handle stands
     * @return the arm, or empty where the slope cannot be turned
     */
    public static Optional<SlopeGrip> of(Handle handle, String name, View view) {
        return NodeSlope.of(handle, name)
                .filter(slope -> !slope.isOnlyLevel())
                .map(slope -> of(handle, slope, view));
    }

    private static SlopeGrip of(Handle handle, NodeSlope slope, View view) {
        PlacedNode node =
                handle.nodes().stream()
                        .filter(each -> each.name().equals(slope.node()))
                        .findFirst()
                        .orElseThrow();
        double x = view.px(node.x());
        double y = view.py(node.radiusMm());
        double arm = slope.node().equals(Shape.SEAT) ? -ARM_PX : ARM_PX;
        double turn = Math.toRadians(slope.deg());
        return new SlopeGrip(slope, x, y, x + arm * Math.cos(turn), y - arm * Math.sin(turn));
    }

    /** The slope at which the arm points to a pixel; steep at most where that lies behind. */
    double degTowards(double toPx, double toPy) {
        double along = Math.max(1, (toPx - nodePx) * Math.signum(px - nodePx));
        double up = (nodePy - toPy) * Math.signum(px - nodePx);
        return Math.toDegrees(Math.atan2(up, along));
    }
}
