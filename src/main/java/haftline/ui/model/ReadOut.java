package haftline.ui.model;

import haftline.curve.Outline;
import haftline.handle.Bore;
import haftline.handle.Handle;
import java.util.OptionalDouble;

/**
 * What the cross-hair reads at one place of the wood.
 *
 * @param xMm from the shoulder
 * @param diameterMm of the wood
 * @param wallMm over the bore at the worst wander; empty where no bore lies under it, 0 or less
 *     where the bore breaks out
 * @param slopeDeg of the outline, positive where the wood thickens towards the butt; ±90 at a face
 * @param bendRadiusMm radius of curvature along the axis, positive where hollow; empty where
 *     straight
 */
public record ReadOut(
        double xMm,
        double diameterMm,
        OptionalDouble wallMm,
        double slopeDeg,
        OptionalDouble bendRadiusMm) {
    /** A bend wider than this is straight to any eye, mm. */
    private static final double STRAIGHT_MM = 10_000;

    /**
     * Reads a handle.
     *
     * @param handle the handle
     * @param xMm from the shoulder; moved to the nearest wood where there is none
     * @return the figures there
     */
    public static ReadOut of(Handle handle, double xMm) {
        Outline outline = handle.outline();
        double x = Math.min(outline.endX(), Math.max(outline.startX(), xMm));
        double bend = 1 / outline.curvature(x);
        return new ReadOut(
                x,
                2 * outline.r(x),
                wall(handle, x),
                Math.toDegrees(Math.atan(outline.slope(x))),
                Math.abs(bend) < STRAIGHT_MM ? OptionalDouble.of(bend) : OptionalDouble.empty());
    }

    /** The wall at a place at the worst wander: the least over all bores. */
    static OptionalDouble wall(Handle handle, double x) {
        double tang = wall(handle, handle.tangBore(), x);
        double cap =
                handle.capBore()
                        .map(bore -> wall(handle, bore, x))
                        .orElse(Double.POSITIVE_INFINITY);
        double least = Math.min(tang, cap);
        return least == Double.POSITIVE_INFINITY
                ? OptionalDouble.empty()
                : OptionalDouble.of(least);
    }

    private static double wall(Handle handle, Bore bore, double x) {
        double depth = bore.depthAt(x);
        double radius = depth < 0 ? 0 : bore.radiusAt(x);
        return radius <= 0
                ? Double.POSITIVE_INFINITY
                : handle.outline().r(x) - radius - handle.wander().at(depth);
    }
}
