package haftline.figures;

import haftline.curve.EllipseQuarter;
import haftline.curve.Gap;
import haftline.figures.Rest.Part;
import haftline.figures.Rest.Touch;
import haftline.handle.Handle;
import haftline.parts.Blade;
import haftline.parts.EndCap;

/**
 * The lower edge of a finished piece, as depth below the axis: the visible wood, the ferrule as a
 * plain ring, the cap's head, and a blade.
 *
 * <p>The blade is modelled by its sizes alone. Its heel stands {@link #HEEL} in front of the
 * seating face, since kits have a neck there; from heel to belly its edge runs level at its depth,
 * and the last {@link #TIP_SHARE} of it runs straight to a tip on the axis (common practice, no
 * source).
 */
final class Silhouette {
    /** How far the heel stands in front of the seating face, mm. */
    private static final double HEEL = 8;

    /** On a short blade the heel stands at this share of its length instead. */
    private static final double HEEL_SHARE = 0.25;

    /** Share of the blade's length over which the edge rises to the tip. */
    private static final double TIP_SHARE = 1.0 / 3;

    /** A point this little under the line counts as on it, mm. */
    private static final double TOUCHING = 1e-9;

    /**
     * Most steps of the search: between two rounds it gains more than twice the digits a step, on
     * one round one bit, and a round of 1 mm wants 15.
     */
    private static final int MOST_STEPS = 60;

    private static final int BLADE_CORNERS = 3;

    private final Handle handle;
    private final double[] x = new double[7];
    private final double[] depth = new double[7];
    private final Part[] part = new Part[7];
    private int corners;
    private final EllipseQuarter dome;
    private final double endX;
    private final double endDepth;

    Silhouette(Handle handle) {
        this.handle = handle;
        Blade blade = handle.brief().kit().blade();
        double seat = handle.fit().seatX();
        double length = blade.length().mean();
        double heel = Math.min(HEEL, HEEL_SHARE * length);
        corner(Part.BLADE, seat - length, 0);
        corner(Part.BLADE, seat - (1 - TIP_SHARE) * length, blade.edgeMm());
        corner(Part.BLADE, seat - heel, blade.edgeMm());
        double ferrule = handle.brief().kit().ferrule().outside().greatest() / 2;
        corner(Part.FERRULE, handle.ferruleFaceX(), ferrule);
        corner(Part.FERRULE, 0, ferrule);
        EndCap cap = handle.brief().kit().cap().orElse(null);
        if (cap == null) {
            dome = null;
            endX = handle.buttX();
            endDepth = handle.outline().rBefore(endX);
            return;
        }
        double head = cap.headDiameter().mean() / 2;
        double thickness = cap.headThickness().mean();
        corner(Part.CAP, handle.buttX(), head);
        endX = handle.buttX() + thickness;
        if (cap.form() == EndCap.Form.FLAT) {
            dome = null;
            endDepth = head;
            corner(Part.CAP, endX, head);
        } else {
            dome =
                    new EllipseQuarter(
                            handle.buttX(), 0, thickness, head, handle.buttX(), endX, true);
            endDepth = 0;
        }
    }

    private void corner(Part of, double at, double below) {
        part[corners] = of;
        x[corners] = at;
        depth[corners++] = below;
    }

    /**
     * The edge of the hull that spans a place. From the chord between the two ends on, the point
     * farthest under the chord is on the hull; it takes the place of the end on its side, until
     * nothing is under the chord.
     *
     * @param balanceX the place, mm
     * @return the two ends of the edge, in order of x
     */
    Touch[] spanning(double balanceX) {
        double spanned = Math.max(x[0], Math.min(endX, balanceX));
        Touch left = new Touch(Part.BLADE, x[0], depth[0]);
        Touch right =
                new Touch(
                        handle.brief().kit().cap().isPresent() ? Part.CAP : Part.WOOD,
                        endX,
                        endDepth);
        for (int step = 0; step < MOST_STEPS; step++) {
            double m = (right.belowAxisMm() - left.belowAxisMm()) / (right.x() - left.x());
            Touch lowest = lowest(left.belowAxisMm() - m * left.x(), m);
            if (lowest == null || lowest.x() == left.x() || lowest.x() == right.x()) {
                break;
            }
            if (lowest.x() <= spanned) {
                left = lowest;
            } else {
                right = lowest;
            }
        }
        return new Touch[] {left, right};
    }

    /** The point farthest under the line c + m x, or null where none is under it. */
    private Touch lowest(double c, double m) {
        double most = TOUCHING;
        int corner = -1;
        for (int i = 0; i < corners; i++) {
            double below = depth[i] - (c + m * x[i]);
            if (below > most) {
                most = below;
                corner = i;
            }
        }
        Gap curve = handle.outline().greatestAbove(c, m, 0, handle.buttX());
        Part of = Part.WOOD;
        if (dome != null) {
            Gap cap = dome.greatestAbove(c, m, dome.startX(), dome.endX());
            if (cap.height() > curve.height()) {
                curve = cap;
                of = Part.CAP;
            }
        }
        if (curve.height() > most) {
            return new Touch(of, curve.x(), curve.height() + c + m * curve.x());
        }
        return corner < 0 ? null : new Touch(part[corner], x[corner], depth[corner]);
    }

    /**
     * How far the blade's edge hangs above the table, square to the table.
     *
     * @param left the one end of the edge on which the piece lies
     * @param right the other
     * @return mm at the edge's lowest
     */
    double bladeClearance(Touch left, Touch right) {
        double m = (right.belowAxisMm() - left.belowAxisMm()) / (right.x() - left.x());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < BLADE_CORNERS; i++) {
            double above = left.belowAxisMm() + m * (x[i] - left.x()) - depth[i];
            least = Math.min(least, above);
        }
        return Math.max(0, least / Math.sqrt(1 + m * m));
    }
}
