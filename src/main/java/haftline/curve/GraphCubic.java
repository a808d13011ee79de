package haftline.curve;

/**
 * A graph cubic: r a cubic polynomial of x, kept by radius and slope at both ends (Hermite form),
 * so that neighbours that share a node share its radius and slope to the last bit. It is exactly
 * the cubic Bezier curve whose control points stand at thirds of x.
 *
 * <p>It is evaluated in Bernstein form, which meets both ends exactly and does not cancel.
 *
 * @param x0 start, mm
 * @param x1 end, mm, greater than x0
 * @param r0 radius at the start, mm
 * @param d0 slope at the start
 * @param r1 radius at the end, mm
 * @param d1 slope at the end
 */
public record GraphCubic(double x0, double x1, double r0, double d0, double r1, double d1)
        implements Segment {
    /** Refuses a cubic that does not run forward or dips below the axis. */
    public GraphCubic {
        Checks.increasing(x0, x1);
        Checks.radius("r0", r0);
        Checks.radius("r1", r1);
        Checks.finite("d0", d0);
        Checks.finite("d1", d1);
        double third = (x1 - x0) / 3;
        double b1 = r0 + d0 * third;
        double b2 = r1 - d1 * third;
        // The curve lies in the hull of its control points, so only a hull that dips needs a look.
        if (b1 < 0 || b2 < 0) {
            Checks.radius("least r", leastBetween(x0, x1, r0, d0, r1, d1));
        }
    }

    private static double leastBetween(
            double x0, double x1, double r0, double d0, double r1, double d1) {
        double h = x1 - x0;
        double m = 3 * ((r1 - r0) / h) - d0 - d1;
        double least = Math.min(r0, r1);
        double a = d0 - 2 * m + d1;
        double b = m - d0;
        double root = Math.sqrt(Math.max(0, b * b - a * d0));
        double q = -(b + Math.copySign(root, b));
        for (double t : new double[] {q / a, d0 / q}) {
            if (t > 0 && t < 1) {
                double s = 1 - t;
                double r =
                        s * s * (s * r0 + 3 * t * (r0 + d0 * h / 3))
                                + t * t * (t * r1 + 3 * s * (r1 - d1 * h / 3));
                least = Math.min(least, r);
            }
        }
        return least;
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
     * Returns the radius of the second Bezier control point, at x0 + h/3.
     *
     * @return radius, mm
     */
    public double firstControlR() {
        return r0 + d0 * ((x1 - x0) / 3);
    }

    /**
     * Returns the radius of the third Bezier control point, at x0 + 2h/3.
     *
     * @return radius, mm
     */
    public double secondControlR() {
        return r1 - d1 * ((x1 - x0) / 3);
    }

    /**
     * Returns the slope of the chord.
     *
     * @return (r1 - r0) / (x1 - x0)
     */
    public double chordSlope() {
        return (r1 - r0) / (x1 - x0);
    }

    /**
     * Returns r'' at the start.
     *
     * @return second derivative, 1/mm
     */
    public double startSecond() {
        return 2 * (3 * chordSlope() - 2 * d0 - d1) / (x1 - x0);
    }

    /**
     * Returns r'' at the end.
     *
     * @return second derivative, 1/mm
     */
    public double endSecond() {
        return 2 * (2 * d1 + d0 - 3 * chordSlope()) / (x1 - x0);
    }

    /** Returns the middle Bernstein ordinate of the slope. */
    double middleSlope() {
        return 3 * chordSlope() - d0 - d1;
    }

    @Override
    public double r(double x) {
        double h = x1 - x0;
        double t = (x - x0) / h;
        double s = (x1 - x) / h;
        double third = h / 3;
        return s * s * (s * r0 + 3 * t * (r0 + d0 * third))
                + t * t * (t * r1 + 3 * s * (r1 - d1 * third));
    }

    @Override
    public double slope(double x) {
        double h = x1 - x0;
        double t = (x - x0) / h;
        double s = (x1 - x) / h;
        return s * s * d0 + 2 * s * t * middleSlope() + t * t * d1;
    }

    /**
     * Returns r'', linear in x.
     *
     * @param x place, mm
     * @return second derivative, 1/mm
     */
    public double second(double x) {
        double h = x1 - x0;
        return ((x1 - x) * startSecond() + (x - x0) * endSecond()) / h;
    }

    @Override
    public double curvature(double x) {
        double d = slope(x);
        double w = 1 + d * d;
        return second(x) / (w * Math.sqrt(w));
    }

    @Override
    public Moments moments() {
        // r^4 has degree 12 and x^2 r^2 degree 8: the seven-point rule (degree 13) is exact.
        double half = 0.5 * (x1 - x0);
        double mid = 0.5 * (x0 + x1);
        // Power form about the middle, in t = (x - mid) / half.
        double sum = 0.5 * (r0 + r1);
        double dif = 0.5 * (r1 - r0);
        double ds = 0.5 * half * (d0 + d1);
        double dd = 0.25 * half * (d1 - d0);
        double c0 = sum - dd;
        double c2 = dd;
        double c3 = 0.5 * (ds - dif);
        double c1 = dif - c3;
        double w0 = GaussLegendre.WEIGHTS_7[0];
        double q = c0 * c0;
        double v = w0 * q;
        double f = 0;
        double s = 0;
        double p = w0 * q * q;
        for (int i = 1; i < 4; i++) {
            double t = GaussLegendre.POINTS_7[i];
            double w = GaussLegendre.WEIGHTS_7[i];
            double even = c0 + t * t * c2;
            double odd = t * (c1 + t * t * c3);
            double left = even - odd;
            double right = even + odd;
            left *= left;
            right *= right;
            v += w * (left + right);
            f += w * t * (right - left);
            s += w * t * t * (left + right);
            p += w * (left * left + right * right);
        }
        double k = Math.PI * half;
        return moments(k * v, k * half * f, k * half * half * s, k / 2 * p, mid);
    }

    /** Moves moments taken about the plane through mid to the plane x = 0. */
    static Moments moments(double volume, double first, double second, double axis, double mid) {
        return new Moments(
                volume, first + mid * volume, second + mid * (2 * first + mid * volume), axis);
    }

    @Override
    public Segment part(double fromX, double toX) {
        Checks.inside("fromX", fromX, x0, x1);
        Checks.inside("toX", toX, x0, x1);
        return new GraphCubic(fromX, toX, r(fromX), slope(fromX), r(toX), slope(toX));
    }

    @Override
    public Segment shifted(double dx) {
        return new GraphCubic(x0 + dx, x1 + dx, r0, d0, r1, d1);
    }

    @Override
    public Gap leastAbove(double c, double m, double fromX, double toX) {
        return extreme(c, m, fromX, toX, 1);
    }

    @Override
    public Gap greatestAbove(double c, double m, double fromX, double toX) {
        return extreme(c, m, fromX, toX, -1);
    }

    /** Least (sign 1) or greatest (sign -1) height over the line: ends and roots of r' = m. */
    private Gap extreme(double c, double m, double fromX, double toX, int sign) {
        Checks.overlap(fromX, toX, x0, x1);
        double from = Math.max(fromX, x0);
        double to = Math.min(toX, x1);
        double bestX = from;
        double best = r(from) - (c + m * from);
        double atEnd = r(to) - (c + m * to);
        if (sign * atEnd < sign * best) {
            best = atEnd;
            bestX = to;
        }
        double[] places = new double[2];
        int count = placesOfSlope(m, places);
        for (int i = 0; i < count; i++) {
            double x = places[i];
            if (x > from && x < to) {
                double g = r(x) - (c + m * x);
                if (sign * g < sign * best) {
                    best = g;
                    bestX = x;
                }
            }
        }
        return new Gap(bestX, best);
    }

    /** The places inside where the slope is m: none, one or two. */
    int placesOfSlope(double m, double[] places) {
        double q0 = d0 - m;
        double q1 = middleSlope() - m;
        double q2 = d1 - m;
        double a = q0 - 2 * q1 + q2;
        double b = q1 - q0;
        double disc = b * b - a * q0;
        if (!(disc >= 0)) {
            return 0;
        }
        // The stable pair q / a and q0 / q; a root that is infinite or no number is not inside.
        double q = -(b + Math.copySign(Math.sqrt(disc), b));
        double h = x1 - x0;
        int count = 0;
        double first = x0 + h * (q / a);
        if (first > x0 && first < x1) {
            places[count++] = first;
        }
        double second = x0 + h * (q0 / q);
        if (second > x0 && second < x1) {
            places[count++] = second;
        }
        return count;
    }

    @Override
    public double steepest(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        double from = Math.max(fromX, x0);
        double to = Math.min(toX, x1);
        double steepest = Math.max(Math.abs(slope(from)), Math.abs(slope(to)));
        double k0 = startSecond();
        double k1 = endSecond();
        double inflection = x0 + (x1 - x0) * (k0 / (k0 - k1));
        return inflection > from && inflection < to
                ? Math.max(steepest, Math.abs(slope(inflection)))
                : steepest;
    }

    @Override
    public BendRadius tightestConcave(double fromX, double toX) {
        return tightest(fromX, toX, 1);
    }

    @Override
    public BendRadius tightestConvex(double fromX, double toX) {
        return tightest(fromX, toX, -1);
    }

    /** The curvature is extreme at an end or where r''' (1 + r'^2) = 3 r' r''^2, a quartic in x. */
    private BendRadius tightest(double fromX, double toX, int sign) {
        Checks.overlap(fromX, toX, x0, x1);
        double from = Math.max(fromX, x0);
        double to = Math.min(toX, x1);
        double h = x1 - x0;
        double p0 = d0;
        double p1 = 2 * (middleSlope() - d0);
        double p2 = d0 - 2 * middleSlope() + d1;
        // r' = p0 + p1 t + p2 t^2; times h^2: 2 p2 (1 + r'^2) - 3 r' (p1 + 2 p2 t)^2.
        double[] quartic = {
            2 * p2 * (1 + p0 * p0) - 3 * p0 * p1 * p1,
            4 * p2 * p0 * p1 - 3 * (p1 * p1 * p1 + 4 * p0 * p1 * p2),
            2 * p2 * (p1 * p1 + 2 * p0 * p2) - 3 * (5 * p1 * p1 * p2 + 4 * p0 * p2 * p2),
            4 * p2 * p2 * p1 - 24 * p1 * p2 * p2,
            -10 * p2 * p2 * p2
        };
        double[] roots = new double[4];
        int count = RealRoots.within(quartic, 4, (from - x0) / h, (to - x0) / h, roots);
        BendRadius best = bend(from, sign).tighter(bend(to, sign));
        for (int i = 0; i < count; i++) {
            best = best.tighter(bend(Math.min(to, Math.max(from, x0 + h * roots[i])), sign));
        }
        return best;
    }

    private BendRadius bend(double x, int sign) {
        double k = sign * curvature(x);
        return k > 0 ? new BendRadius(x, 1 / k) : BendRadius.NONE;
    }

    @Override
    public double arcLength(double toleranceMm) {
        Checks.positive("toleranceMm", toleranceMm);
        return GaussLegendre.adaptive(this::stretch, x0, x1, toleranceMm);
    }

    @Override
    public double surfaceArea(double toleranceMm2) {
        Checks.positive("toleranceMm2", toleranceMm2);
        return 2
                * Math.PI
                * GaussLegendre.adaptive(
                        x -> r(x) * stretch(x), x0, x1, toleranceMm2 / (2 * Math.PI));
    }

    /** Length of arc for each mm of x. */
    private double stretch(double x) {
        double d = slope(x);
        return Math.sqrt(1 + d * d);
    }
}
