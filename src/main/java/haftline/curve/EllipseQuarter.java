package haftline.curve;

/**
 * A piece of one half of an ellipse whose axes lie along x and r: a dome, or an elliptical stave.
 * As a dome it is a quarter, from the crown to the pole. The parameter t runs in centre + (semiX
 * cos t, semiR sin t).
 *
 * @param centreX centre, mm
 * @param centreR centre's distance from the axis, mm, negative under it
 * @param semiX half axis along x, mm
 * @param semiR half axis square to x, mm
 * @param startX start, mm
 * @param endX end, mm, greater than startX
 * @param upper true for the half away from the axis (a round), false for the near half (a hollow)
 */
public record EllipseQuarter(
        double centreX,
        double centreR,
        double semiX,
        double semiR,
        double startX,
        double endX,
        boolean upper)
        implements Segment {
    /** Refuses a piece that leaves the ellipse or goes below the axis. */
    public EllipseQuarter {
        Checks.finite("centreX", centreX);
        Checks.finite("centreR", centreR);
        Checks.positive("semiX", semiX);
        Checks.positive("semiR", semiR);
        Checks.increasing(startX, endX);
        double rounding = poleRounding(centreX, semiX);
        Checks.inside("startX", startX, centreX - semiX - rounding, centreX + semiX);
        Checks.inside("endX", endX, centreX - semiX, centreX + semiX + rounding);
        double low = centreR;
        if (!upper) {
            double x = Math.max(startX, Math.min(endX, centreX));
            low = centreR - semiR * unitHeight(centreX, semiX, x);
        } else if (centreR < 0) {
            low +=
                    semiR
                            * Math.min(
                                    unitHeight(centreX, semiX, startX),
                                    unitHeight(centreX, semiX, endX));
        }
        Checks.radius("least r", low);
    }

    /** A pole is often given as centre + semiX, which rounds. */
    private static double poleRounding(double centreX, double semiX) {
        return 4 * Math.ulp(Math.abs(centreX) + semiX);
    }

    /** sqrt(1 - s^2) with s = (x - centre) / semiX; exactly 0 at a pole. */
    private static double unitHeight(double centreX, double semiX, double x) {
        double s = Math.abs(x - centreX);
        double rest = semiX - s;
        return rest <= poleRounding(centreX, semiX) ? 0 : Math.sqrt(rest * (semiX + s)) / semiX;
    }

    private double unitHeight(double x) {
        return unitHeight(centreX, semiX, x);
    }

    private double side() {
        return upper ? semiR : -semiR;
    }

    @Override
    public double r(double x) {
        return centreR + side() * unitHeight(x);
    }

    @Override
    public double slope(double x) {
        return -side() * ((x - centreX) / semiX) / (semiX * unitHeight(x));
    }

    @Override
    public double curvature(double x) {
        double s = (x - centreX) / semiX;
        double y = unitHeight(x);
        double w = semiX * semiX * y * y + semiR * semiR * s * s;
        return (upper ? -1 : 1) * semiX * semiR / (w * Math.sqrt(w));
    }

    /**
     * Returns the parameter of a place on the upper half.
     *
     * @param x place, mm
     * @return t in radians, from pi at the smaller pole to 0 at the greater; on the lower half the
     *     parameter is its negative
     */
    public double parameter(double x) {
        return Math.atan2(unitHeight(x), (x - centreX) / semiX);
    }

    @Override
    public Moments moments() {
        double t0 = parameter(endX);
        double t1 = parameter(startX);
        double half = 0.5 * (t1 - t0);
        double mid = 0.5 * (t0 + t1);
        double v = 0;
        double f = 0;
        double s = 0;
        double p = 0;
        for (int i = 0; i < GaussLegendre.POINTS_16.length; i++) {
            for (int sign = -1; sign <= 1; sign += 2) {
                double t = mid + sign * half * GaussLegendre.POINTS_16[i];
                double sin = Math.sin(t);
                double u = semiX * Math.cos(t);
                double r = centreR + side() * sin;
                double dx = GaussLegendre.WEIGHTS_16[i] * semiX * sin;
                double rr = r * r;
                v += dx * rr;
                f += dx * rr * u;
                s += dx * rr * u * u;
                p += dx * rr * rr;
            }
        }
        double k = Math.PI * half;
        return GraphCubic.moments(k * v, k * f, k * s, k / 2 * p, centreX);
    }

    @Override
    public Segment part(double fromX, double toX) {
        Checks.inside("fromX", fromX, startX, endX);
        Checks.inside("toX", toX, startX, endX);
        return new EllipseQuarter(centreX, centreR, semiX, semiR, fromX, toX, upper);
    }

    @Override
    public Segment shifted(double dx) {
        return new EllipseQuarter(
                centreX + dx, centreR, semiX, semiR, startX + dx, endX + dx, upper);
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
        Checks.overlap(fromX, toX, startX, endX);
        double from = Math.max(fromX, startX);
        double to = Math.min(toX, endX);
        double bestX = from;
        double best = r(from) - (c + m * from);
        double atEnd = r(to) - (c + m * to);
        if (sign * atEnd < sign * best) {
            best = atEnd;
            bestX = to;
        }
        if (upper == (sign < 0)) {
            double x = placeOfSlope(m);
            if (x > from && x < to) {
                double g = r(x) - (c + m * x);
                if (sign * g < sign * best) {
                    return new Gap(x, g);
                }
            }
        }
        return new Gap(bestX, best);
    }

    /** Where the slope is m: s / sqrt(1 - s^2) = -m semiX / side; may lie outside the piece. */
    double placeOfSlope(double m) {
        double steep = -m * semiX / side();
        return centreX + semiX * (steep / Math.sqrt(1 + steep * steep));
    }

    @Override
    public double steepest(double fromX, double toX) {
        Checks.overlap(fromX, toX, startX, endX);
        return Math.max(
                Math.abs(slope(Math.max(fromX, startX))), Math.abs(slope(Math.min(toX, endX))));
    }

    @Override
    public BendRadius tightestConcave(double fromX, double toX) {
        Checks.overlap(fromX, toX, startX, endX);
        return upper ? BendRadius.NONE : tightest(fromX, toX);
    }

    @Override
    public BendRadius tightestConvex(double fromX, double toX) {
        Checks.overlap(fromX, toX, startX, endX);
        return upper ? tightest(fromX, toX) : BendRadius.NONE;
    }

    /** The curvature is monotone from crown to pole. */
    private BendRadius tightest(double fromX, double toX) {
        double from = Math.max(fromX, startX);
        double to = Math.min(toX, endX);
        double crown = Math.max(from, Math.min(to, centreX));
        return bend(from).tighter(bend(crown)).tighter(bend(to));
    }

    private BendRadius bend(double x) {
        return new BendRadius(x, 1 / Math.abs(curvature(x)));
    }

    @Override
    public double arcLength(double toleranceMm) {
        Checks.positive("toleranceMm", toleranceMm);
        return GaussLegendre.adaptive(this::speed, parameter(endX), parameter(startX), toleranceMm);
    }

    @Override
    public double surfaceArea(double toleranceMm2) {
        Checks.positive("toleranceMm2", toleranceMm2);
        return 2
                * Math.PI
                * GaussLegendre.adaptive(
                        t -> (centreR + side() * Math.sin(t)) * speed(t),
                        parameter(endX),
                        parameter(startX),
                        toleranceMm2 / (2 * Math.PI));
    }

    /** Length of arc for each radian of the parameter. */
    private double speed(double t) {
        double along = semiX * Math.sin(t);
        double across = semiR * Math.cos(t);
        return Math.sqrt(along * along + across * across);
    }
}
