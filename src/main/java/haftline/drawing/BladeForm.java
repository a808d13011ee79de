package haftline.write.png;

import haftline.parts.Blade;

/**
 * A blade as its sizes tell it, for no more is known: a neck, a back and an edge at their distances
 * from the axis, a rounded tip on the axis. The last third of the edge rises to the tip, as the
 * figures for the way a piece rests assume too (common practice, no source).
 */
public record BladeForm(
        double tipX, double lengthMm, double backMm, double edgeMm, double neckMm, double heelMm) {
    private static final double TIP_SHARE = 1.0 / 3;
    private static final double BACK_SHARE = 0.16;
    private static final double HEEL_MM = 8;
    private static final double HEEL_SHARE = 0.25;

    /** Share of the depth that the ground bevel takes. */
    static final double BEVEL = 0.2;

    /**
     * The form of a blade.
     *
     * @param blade the blade
     * @param seatX x of its seating face, mm
     * @param ferruleRadiusMm outside radius of the ferrule, mm
     * @return the form
     */
    public static BladeForm of(Blade blade, double seatX, double ferruleRadiusMm) {
        double length = blade.length().mean();
        double edge = blade.edgeMm();
        double neck = Math.max(1.2, Math.min(0.55 * ferruleRadiusMm, 0.4 * blade.widthMm()));
        return new BladeForm(
                seatX - length,
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
        double heel = lengthMm - heelMm;
        double share = Light.smooth(heel - 0.5 * heelMm, heel + 0.6 * heelMm, fromTip);
        return full + share * (neckMm - full);
    }
}
