package haftline.ui.model;

import haftline.edit.NodeEdits;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Node;
import java.util.List;

/**
 * How far a node may go along the axis before it meets its neighbours.
 *
 * @param low mm from the shoulder
 * @param high mm from the shoulder
 */
public record Range(double low, double high) {
    /** Shares are rounded to a millionth: keep that far off, mm. */
    private static final double ROUNDING_MM = 0.01;

    /**
     * The range of a node; neighbours count from where they stand before they slide.
     *
     * @param handle the handle
     * @param name the node's name
     * @return its range
     */
    public static Range of(Handle handle, String name) {
        Brief brief = handle.brief();
        double wood = handle.lengths().visibleWoodMm();
        List<Node> nodes = brief.shape().nodes();
        double low = 0;
        double high = wood - brief.shape().butt().lengthMm();
        boolean isBehind = false;
        for (Node node : nodes) {
            double x = NodeEdits.nominalX(node, brief.choices(), wood);
            if (node.name().equals(name)) {
                isBehind = true;
            } else if (isBehind) {
                high = x;
                break;
            } else {
                low = x;
            }
        }
        double room = PlacedNode.LEAST_SPACING_MM + ROUNDING_MM;
        return new Range(low + room, Math.max(low + room, high - room));
    }
}
