package haftline.drawing;

import haftline.handle.Handle;
import haftline.parts.Blade;
import java.util.List;

/**
 * A blade as its sizes tell it, for no more is known: a neck, a back and an edge at their distances
 * from the axis, a rounded tip on the axis. The last third of the edge rises to the tip, as the
 * figures for the way a piece rests assume too (common practice, no source). Every picture of a
 * whole piece shows this form.
 *
 * @param tipX x of the tip, mm
 * @param lengthMm from the tip to the seating face
 * @param backMm from the axis up to the back
 * @param edgeMm from the axis down to the edge
 * @param neckMm half of the neck's depth
 * @param heelMm over about which the depth falls to the neck's
 */
public record BladeForm(
        double tipX, double lengthMm, double backMm, double edgeMm, double neckMm, double heelMm) {
    /** Share of the depth that the ground bevel takes. */
    public static final double BEVEL = 0.2;

    private static final double TIP_SHARE = 1.0 / 3;
    private static final double BACK_SHARE = 0.16;
    private static final double HEEL_MM = 8;
    private static final double HEEL_SHARE = 0.25;

    /** Where the depth begins and ends to fall, in heels from the heel towards the seat. */
    private static final double FALL_FROM = -0.5;

    private static final double FALL_TO = 0.6;

    /** The line of the bevel follows the tip in so many steps. */
    private static final int TIP_STEPS = 24;

    /**
     * The blade of a handle.
     *
     * @param handle the handle
     * @return the form
     */
    public static BladeForm of(Handle handle) {
        Blade blade = handle.brief().kit().blade();
        double ferruleRadius = handle.brief().kit().ferrule().outside().mean() / 2;
        double length = blade.length().mean();
        double edge = blade.edgeMm();
        double neck = Math.max(1.2, Math.min(0.55 * ferruleRadius, 0.4 * blade.widthMm()));
        return new BladeForm(
                handle.fit().seatX() - length,
                length,
                blade.widthMm() - edge,
                edge,
                neck,
                Math.min(HEEL_MM, HEEL_SHARE * length));
    }

    /**
     * Upper limit.
     *
     * @param x where, mm
     * @return mm from the axis
     */
    public double top(double x) {
        return side(x, backMm, BACK_SHARE);
    }

    /**
     * Lower limit.
     *
     * @param x where, mm
     * @return mm from the axis, negative below it
     */
    public double bottom(double x) {
        return -side(x, edgeMm, TIP_SHARE);
    }

    private double side(double x, double full, double tipShare) {
        double fromTip = x - tipX;
        double tip = lengthMm * tipShare;
        if (fromTip < tip) {
            double rest = 1 - Math.max(0, fromTip) / tip;
            return full * Math.sqrt(Math.max(0, 1 - rest * rest));
        }
        double t = Math.max(0, Math.min(1, (x - fallFromX()) / (fallToX() - fallFromX())));
        return full + t * t * (3 - 2 * t) * (neckMm - full);
    }

    private double fallFromX() {
        return tipX + lengthMm + (FALL_FROM - 1) * heelMm;
    }

    private double fallToX() {
        return tipX + lengthMm + (FALL_TO - 1) * heelMm;
    }

    /**
     * The form in lines, up to where the blade goes out of sight.
     *
     * @param rootX x of that place, mm
     * @param layer what its outline lies on
     * @return the outline, a closed loop, and the line of the bevel; nothing where no more than the
     *     tip would be in sight
     */
    public List<Path> paths(double rootX, Layer layer) {
        double tip = lengthMm * TIP_SHARE;
        if (rootX <= tipX + tip) {
            return List.of();
        }
        double back = tipX + lengthMm * BACK_SHARE;
        PathBuilder loop = Path.from(rootX, bottom(rootX)).lineTo(rootX, top(rootX));
        fall(loop, rootX, backMm, 1, true);
        loop.lineTo(back, backMm);
        quarter(loop, tipX, 0, back, backMm);
        quarter(loop, tipX + tip, -edgeMm, tipX + tip, edgeMm);
        loop.lineTo(Math.min(fallFromX(), rootX), -edgeMm);
        fall(loop, rootX, edgeMm, -1, false);
        PathBuilder bevel = Path.from(tipX, 0);
        for (int i = 1; i <= TIP_STEPS; i++) {
            // Close together at the tip, where the form turns.
            double x = tipX + tip * i * i / (TIP_STEPS * TIP_STEPS);
            bevel.lineTo(x, bevel(x));
        }
        double heel = Math.min(fallFromX(), rootX);
        return List.of(loop.close(layer), bevel.lineTo(heel, bevel(heel)).open(Layer.HATCH));
    }

    /** A quarter round the tip; the other way round where back or edge lies across the axis. */
    private void quarter(PathBuilder path, double x, double y, double centreX, double full) {
        if (full == 0) {
            path.lineTo(x, y);
        } else {
            path.ellipseTo(x, y, centreX, 0, centreX - tipX, Math.abs(full), full > 0);
        }
    }

    private double bevel(double x) {
        return bottom(x) + BEVEL * (top(x) - bottom(x));
    }

    /** The fall to the neck, a cubic of x, or what is in sight of it. */
    private void fall(PathBuilder path, double rootX, double full, int side, boolean towardsTip) {
        double from = fallFromX();
        double to = Math.min(fallToX(), rootX);
        double whole = fallToX() - from;
        if (to <= from) {
            return;
        }
        double t = (to - from) / whole;
        double end = side * (full + t * t * (3 - 2 * t) * (neckMm - full));
        double slope = side * 6 * t * (1 - t) * (neckMm - full) / whole;
        double third = (to - from) / 3;
        if (towardsTip) {
            path.lineTo(to, end)
                    .cubicTo(
                            to - third,
                            end - slope * third,
                            from + third,
                            side * full,
                            from,
                            side * full);
        } else {
            path.cubicTo(from + third, side * full, to - third, end - slope * third, to, end);
        }
    }
}
