package haftline.curve;

/**
 * One piece of an outline, single-valued in x: it starts at the smaller x. Lengths in mm, slopes as
 * dr/dx, curvatures in 1/mm.
 *
 * <p>Curvature carries the sign of the second derivative: positive in a hollow (cove), negative on
 * a round (bead). A stretch [fromX, toX] is cut to the segment; one that does not touch it is
 * refused with an {@link IllegalArgumentException}.
 */
public sealed interface Segment permits StraightLine, CircularArc, EllipseQuarter, GraphCubic {
    /**
     * Returns the x where the segment starts.
     *
     * @return the smaller x, mm
     */
    double startX();

    /**
     * Returns the x where the segment ends.
     *
     * @return the greater x, mm
     */
    double endX();

    /**
     * Returns the radius at a place.
     *
     * @param x place, mm, within the segment
     * @return radius, mm
     */
    double r(double x);

    /**
     * Returns dr/dx.
     *
     * @param x place, mm, within the segment
     * @return the slope; infinite at the pole of a dome
     */
    double slope(double x);

    /**
     * Returns the signed curvature r'' / (1 + r'^2)^(3/2).
     *
     * @param x place, mm, within the segment
     * @return curvature, 1/mm; positive in a hollow
     */
    double curvature(double x);

    /**
     * Returns volume and moments of the solid under the segment, exact to rounding.
     *
     * @return the moments
     */
    Moments moments();

    /**
     * Returns the part of the same curve between two places.
     *
     * @param fromX start, mm, not before the segment's
     * @param toX end, mm, not after the segment's
     * @return the part
     */
    Segment part(double fromX, double toX);

    /**
     * Returns the same curve moved along the axis.
     *
     * @param dx how far towards the butt, mm
     * @return the moved segment
     */
    Segment shifted(double dx);

    /**
     * Returns the least height over the line c + m x, in closed form.
     *
     * @param c the line's height at x = 0, mm
     * @param m the line's slope
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return least of r(x) - (c + m x) and where
     */
    Gap leastAbove(double c, double m, double fromX, double toX);

    /**
     * Returns the greatest height over the line c + m x, in closed form.
     *
     * @param c the line's height at x = 0, mm
     * @param m the line's slope
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return greatest of r(x) - (c + m x) and where
     */
    Gap greatestAbove(double c, double m, double fromX, double toX);

    /**
     * Returns the steepest slope without its sign.
     *
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return greatest |dr/dx|; infinite at the pole of a dome
     */
    double steepest(double fromX, double toX);

    /**
     * Returns the tightest hollow: the least radius where the curvature is positive.
     *
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return radius and place, or {@link BendRadius#NONE}
     */
    BendRadius tightestConcave(double fromX, double toX);

    /**
     * Returns the tightest round: the least radius where the curvature is negative.
     *
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return radius and place, or {@link BendRadius#NONE}
     */
    BendRadius tightestConvex(double fromX, double toX);

    /**
     * Returns the length along the curve.
     *
     * @param toleranceMm greatest error, mm; lines and circular arcs are exact
     * @return length, mm
     */
    double arcLength(double toleranceMm);

    /**
     * Returns the area that the curve sweeps about the axis.
     *
     * @param toleranceMm2 greatest error, mm^2; lines and circular arcs are exact
     * @return area, mm^2
     */
    double surfaceArea(double toleranceMm2);

    /**
     * Returns the least radius.
     *
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return radius and place
     */
    default Extreme least(double fromX, double toX) {
        Gap gap = leastAbove(0, 0, fromX, toX);
        return new Extreme(gap.x(), gap.height());
    }

    /**
     * Returns the greatest radius.
     *
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return radius and place
     */
    default Extreme greatest(double fromX, double toX) {
        Gap gap = greatestAbove(0, 0, fromX, toX);
        return new Extreme(gap.x(), gap.height());
    }

    /**
     * Returns the first point.
     *
     * @return the point at startX
     */
    default Point start() {
        return new Point(startX(), r(startX()));
    }

    /**
     * Returns the last point.
     *
     * @return the point at endX
     */
    default Point end() {
        return new Point(endX(), r(endX()));
    }
}
