package haftline.handle;

import haftline.shape.Join;

/**
 * A node at its place on one handle.
 *
 * @param name the node's name; {@code shoulder} and {@code seat} for the two ends
 * @param x mm from the shoulder
 * @param radiusMm mm
 * @param join smooth or crisp
 * @param fixedBy why it cannot be moved, a sentence; empty for a node that the maker may move
 * @param curvatureJump second derivative behind the node less that before it, 1/mm; 0 where the
 *     curve passes evenly
 */
public record PlacedNode(
        String name, double x, double radiusMm, Join join, String fixedBy, double curvatureJump) {
    /** Nodes closer than this make no shape that can be turned, mm. */
    public static final double LEAST_SPACING_MM = 0.5;

    /**
     * Whether the maker may move it.
     *
     * @return true for a node that no rule fixes
     */
    public boolean isFree() {
        return fixedBy.isEmpty();
    }
}
