package haftline.curve;

/**
 * A circular arc that is single-valued in x: at most a half circle, its pole only at an end. Kept
 * by its end points and its <em>bulge</em>, the tangent of a quarter of its sweep as in the
 * published DXF reference (group 42): both ends are exact, and a shallow arc of huge radius loses
 * nothing. Positive runs anticlockwise from start to end and is a hollow (cove), negative clockwise
 * and a round (bead), so the bulge has the sign of the curvature.
 *
 * <p>Along an arc the sine of the tangent's angle is linear in x: sin(phi) = sin(phi0) + k (x - x0)
 * with k the curvature. Every closed form here rests on that.
 *
 * @param x0 start, mm
 * @param r0 radius at the start, mm
 * @param x1 end, mm, greater than x0
 * @param r1 radius at the end, mm
 * @param bulge tan(sweep / 4), not 0, from -1 to 1
 */
public record CircularArc(double x0, double r0, double x1, double r1, double bulge)
        implements Segment {
    /** Rounding by which a tangent may seem to lean back past the vertical at a pole. */
    private static final double POLE_ROUNDING = 1e-9;

    /**
     * Under this half sweep (1 - h cot h) / h is taken from its series; the next term is 2 h^5/945.
     */
    private static final double SMALL_HALF_SWEEP = 1e-2;

    /** Refuses an arc that does not run forward, leans back over itself or dips below the axis. */
    public CircularArc {
        Checks.increasing(x0, x1);
        Checks.radius("r0", r0);
        Checks.radius("r1", r1);
        if (bulge == 0) {
            throw new IllegalArgumentException("bulge must not be 0: that is a straight line");
        }
        Checks.inside("bulge", bulge, -1, 1);
        double b2 = bulge * bulge;
        double x = (x1 - x0) * (1 - b2);
        double r = (r1 - r0) * 2 * bulge;
        double size = Math.sqrt((x1 - x0) * (x1 - x0) + (r1 - r0) * (r1 - r0)) * (1 + b2);
        if (Math.min(x + r, x - r) < -POLE_ROUNDING * size) {
            throw new IllegalArgumentException(
                    "bulge "
                            + bulge
                            + " makes the arc lean back over itself; its tangent must stay within"
                            + " 90 degrees of the axis");
        }
        if (bulge > 0) {
            Checks.radius("least r", low(x0, r0, x1, r1, bulge));
        }
    }

    /** Least radius of a hollow: its lowest point where the arc holds it, or the lower end. */
    private static double low(double x0, double r0, double x1, double r1, double bulge) {
        double b2 = bulge * bulge;
        double dx = x1 - x0;
        double dr = r1 - r0;
        // A tangent stands off the chord by half the sweep: it is level inside if the chord is
        // less.
        if (Math.abs(dr) * (1 - b2) >= dx * 2 * bulge) {
            return Math.min(r0, r1);
        }
        // Centre height less radius, multiplied out: ((1 - b^2) dx - (1 + b^2) chord) / (4 b).
        double chord = Math.sqrt(dx * dx + dr * dr);
        double fall = -(4 * b2 * dx * dx + (1 + b2) * (1 + b2) * dr * dr);
        return 0.5 * (r0 + r1) + fall / (4 * bulge * ((1 - b2) * dx + (1 + b2) * chord));
    }

    private ArcFrame frame() {
        return ArcFrame.of(this);
    }

    /**
     * Returns the arc of a circle between two places.
     *
     * @param centreX centre, mm
     * @param centreR centre's distance from the axis, mm, negative under it
     * @param radius radius of the circle, mm
     * @param startX start, mm
     * @param endX end, mm
     * @param upper true for the half away from the axis (a round), false for the near half (a
     *     hollow)
     * @return the arc
     */
    public static CircularArc about(
            double centreX,
            double centreR,
            double radius,
            double startX,
            double endX,
            boolean upper) {
        Checks.finite("centreX", centreX);
        Checks.finite("centreR", centreR);
        Checks.positive("radius", radius);
        Checks.increasing(startX, endX);
        double from = halfTurn(centreX, radius, startX);
        double to = halfTurn(centreX, radius, endX);
        double side = upper ? 1 : -1;
        return new CircularArc(
                startX,
                onCircle(centreX, centreR, radius, startX, side),
                endX,
                onCircle(centreX, centreR, radius, endX, side),
                side * Math.tan((to - from) / 4));
    }

    /** The radius at x, by the fall from the crown near it, so that a huge circle loses nothing. */
    private static double onCircle(
            double centreX, double centreR, double radius, double x, double side) {
        double s = x - centreX;
        double height = height(centreX, radius, x);
        return 2 * Math.abs(s) < radius
                ? centreR + side * radius - side * (s * s / (radius + height))
                : centreR + side * height;
    }

    /** Height of the upper half over the centre; exactly 0 at the ends of the diameter. */
    private static double height(double centreX, double radius, double x) {
        double s = Math.abs(x - centreX);
        double rest = radius - s;
        // The end of the diameter is often given as centre + radius, which rounds.
        double rounding = 4 * Math.ulp(Math.abs(centreX) + radius);
        if (!(rest >= -rounding)) {
            throw new IllegalArgumentException(
                    "x "
                            + x
                            + " must lie within the circle, "
                            + (centreX - radius)
                            + " to "
                            + (centreX + radius));
        }
        return rest <= rounding ? 0 : Math.sqrt(rest * (radius + s));
    }

    /** Angle at the centre from +x to the place on the upper half. */
    private static double halfTurn(double centreX, double radius, double x) {
        return Math.atan2(height(centreX, radius, x), x - centreX);
    }

    @Override
    public double startX() {
        return x0;
    }

    @Override
    public double endX() {
        return x1;
    }

    /**
     * Returns the chord's length.
     *
     * @return mm
     */
    public double chord() {
        return Math.sqrt((x1 - x0) * (x1 - x0) + (r1 - r0) * (r1 - r0));
    }

    /**
     * Returns the signed curvature, the same everywhere.
     *
     * @return 1/mm, positive in a hollow
     */
    public double curvature() {
        return 4 * bulge / ((1 + bulge * bulge) * chord());
    }

    /**
     * Returns the circle's radius.
     *
     * @return mm
     */
    public double radius() {
        return (1 + bulge * bulge) * chord() / (4 * Math.abs(bulge));
    }

    /**
     * Returns the circle's centre.
     *
     * @return the centre; below the axis its r is negative
     */
    public Point centre() {
        // From the chord's middle along its left normal by (1 - b^2) / (4 b) chord lengths.
        double k = (1 - bulge * bulge) / (4 * bulge);
        return new Point(0.5 * (x0 + x1) - k * (r1 - r0), 0.5 * (r0 + r1) + k * (x1 - x0));
    }

    /**
     * Tells a round (bead) from a hollow (cove).
     *
     * @return true where the arc bulges away from the axis
     */
    boolean isConvex() {
        return bulge < 0;
    }

    /**
     * Returns the angle at the centre of the start, in degrees anticlockwise from +x in the (x, r)
     * plane, in [-180, 180].
     *
     * @return degrees; a round runs from here clockwise, a hollow anticlockwise
     */
    public double fromDegrees() {
        return angleDegrees(Math.atan2(frame().sin0(), frame().cos0()));
    }

    /**
     * Returns the angle at the centre of the end, in degrees anticlockwise from +x.
     *
     * @return degrees in [-180, 180]
     */
    public double toDegrees() {
        return angleDegrees(Math.atan2(frame().sin1(), frame().cos1()));
    }

    /** The radius stands square to the tangent, on its left for a round, on its right otherwise. */
    private double angleDegrees(double tangent) {
        return Math.toDegrees(tangent) + (bulge < 0 ? 90 : -90);
    }

    @Override
    public double r(double x) {
        return frame().r(x);
    }

    @Override
    public double slope(double x) {
        return frame().slope(x);
    }

    @Override
    public double curvature(double x) {
        return curvature();
    }

    @Override
    public Moments moments() {
        double c = chord();
        double cosA = (x1 - x0) / c;
        double sinA = (r1 - r0) / c;
        double half = 2 * Math.atan(bulge);
        double sinHalf = Math.sin(half);
        double scale = 0.5 * c / sinHalf;
        double quarterSin = Math.sin(half / 2);
        double midX = 0.5 * (x0 + x1);
        double midR = 0.5 * (r0 + r1);
        boolean few = Math.abs(half) <= GaussLegendre.SEVEN_POINTS_HALF_SWEEP;
        double[] points = few ? GaussLegendre.POINTS_7 : GaussLegendre.POINTS_16;
        double[] weights = few ? GaussLegendre.WEIGHTS_7 : GaussLegendre.WEIGHTS_16;
        double v = 0;
        double f = 0;
        double s = 0;
        double p = 0;
        for (int i = 0; i < points.length; i++) {
            double sh = Math.sin(0.5 * half * points[i]);
            double ch = Math.cos(0.5 * half * points[i]);
            double along = scale * 2 * sh * ch;
            // Offset to the left of the chord: cos b - cos half, written so that nothing cancels.
            double off = -2 * scale * (quarterSin - sh) * (quarterSin + sh);
            double cosB = 1 - 2 * sh * sh;
            double sinB = 2 * sh * ch;
            // The two points at +b and -b; the middle point of the odd rule is one, not two.
            double w = points[i] == 0 ? 0.5 * weights[i] : weights[i];
            for (int side = -1; side <= 1; side += 2) {
                double u = cosA * side * along - sinA * off;
                double r = midR + sinA * side * along + cosA * off;
                double dx = w * (cosA * cosB - sinA * side * sinB);
                double rr = r * r;
                v += dx * rr;
                f += dx * rr * u;
                s += dx * rr * u * u;
                p += dx * rr * rr;
            }
        }
        double k = Math.PI * scale * half;
        return GraphCubic.moments(k * v, k * f, k * s, k / 2 * p, midX);
    }

    @Override
    public Segment part(double fromX, double toX) {
        Checks.inside("fromX", fromX, x0, x1);
        Checks.inside("toX", toX, x0, x1);
        Checks.increasing(fromX, toX);
        if (fromX == x0 && toX == x1) {
            return this;
        }
        ArcFrame f = frame();
        double sweep = Math.atan2(f.sin(toX), f.cos(toX)) - Math.atan2(f.sin(fromX), f.cos(fromX));
        double b = Math.tan(sweep / 4);
        return b == 0
                ? new StraightLine(fromX, f.r(fromX), toX, f.r(toX))
                : new CircularArc(fromX, f.r(fromX), toX, f.r(toX), b);
    }

    @Override
    public Segment shifted(double dx) {
        return new CircularArc(x0 + dx, r0, x1 + dx, r1, bulge);
    }

    @Override
    public Gap leastAbove(double c, double m, double fromX, double toX) {
        return extreme(c, m, fromX, toX, 1);
    }

    @Override
    public Gap greatestAbove(double c, double m, double fromX, double toX) {
        return extreme(c, m, fromX, toX, -1);
    }

    /** Least (sign 1) or greatest (sign -1): the ends, and the tangent point where it is inside. */
    private Gap extreme(double c, double m, double fromX, double toX, int sign) {
        Checks.overlap(fromX, toX, x0, x1);
        ArcFrame f = frame();
        double from = Math.max(fromX, x0);
        double to = Math.min(toX, x1);
        double bestX = from;
        double best = f.r(from) - (c + m * from);
        double atEnd = f.r(to) - (c + m * to);
        if (sign * atEnd < sign * best) {
            best = atEnd;
            bestX = to;
        }
        if (sign * bulge > 0) {
            double x = f.placeOfSine(m / Math.sqrt(1 + m * m));
            if (x > from && x < to) {
                double g = f.r(x) - (c + m * x);
                if (sign * g < sign * best) {
                    return new Gap(x, g);
                }
            }
        }
        return new Gap(bestX, best);
    }

    /** Where the slope is m; may lie outside the arc. */
    double placeOfSlope(double m) {
        return frame().placeOfSine(m / Math.sqrt(1 + m * m));
    }

    @Override
    public double steepest(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        ArcFrame f = frame();
        double from = Math.max(fromX, x0);
        double to = Math.min(toX, x1);
        return Math.max(Math.abs(f.slope(from)), Math.abs(f.slope(to)));
    }

    @Override
    public BendRadius tightestConcave(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        return bulge > 0 ? new BendRadius(Math.max(fromX, x0), radius()) : BendRadius.NONE;
    }

    @Override
    public BendRadius tightestConvex(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        return bulge < 0 ? new BendRadius(Math.max(fromX, x0), radius()) : BendRadius.NONE;
    }

    /**
     * Returns the length along the arc, exactly.
     *
     * @return mm
     */
    public double length() {
        return 4 * Math.atan(Math.abs(bulge)) * radius();
    }

    @Override
    public double arcLength(double toleranceMm) {
        return length();
    }

    @Override
    public double surfaceArea(double toleranceMm2) {
        // 2 pi times the mean radius times the length; the mean offset from the chord's middle is
        // -(chord/2) (sin h - h cos h) / (h sin h), h half the sweep.
        double h = 2 * Math.atan(bulge);
        double mean =
                Math.abs(h) < SMALL_HALF_SWEEP
                        ? h / 3 * (1 + h * h / 15)
                        : (1 - h / Math.tan(h)) / h;
        return 2 * Math.PI * length() * (0.5 * (r0 + r1) - 0.5 * (x1 - x0) * mean);
    }
}
