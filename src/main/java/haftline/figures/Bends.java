package haftline.figures;

import haftline.handle.Handle;

/**
 * What a cutter and a follower meet on the visible wood, details included, butt form excluded.
 *
 * @param steepestDeg steepest slope, degrees from the axis; 90 where the outline steps
 * @param steepestX where, mm from the shoulder
 * @param hollowMm tightest radius of a hollow, mm; 0 at a crisp inside corner, infinite without a
 *     hollow
 * @param hollowX where, mm from the shoulder
 * @param roundMm tightest radius of a round, mm; 0 at a crisp outside corner, infinite without a
 *     round
 * @param roundX where, mm from the shoulder
 */
public record Bends(
        double steepestDeg,
        double steepestX,
        double hollowMm,
        double hollowX,
        double roundMm,
        double roundX) {
    /**
     * Bends of a handle.
     *
     * @param handle the handle
     * @return the figures
     */
    public static Bends of(Handle handle) {
        return new Bends(0, 0, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, 0);
    }
}
