package haftline.curve;

/**
 * How far a segment departs from a circular arc or a straight line, exactly: the departure is
 * extreme at an end or where the curve is square to the ray from the arc's centre, a root of a
 * polynomial.
 *
 * <p>Where every ray of the arc meets the curve once, between the two ends they share, the greatest
 * departure is the Hausdorff distance of the two.
 */
final class ArcDeviation {
    /** The arc's middle, the left normal of its chord, half the chord and the signed bulge. */
    private final double midX;

    private final double midR;
    private final double normalX;
    private final double normalR;
    private final double half;
    private final double bulge;

    private ArcDeviation(double x0, double r0, double x1, double r1, double bulge) {
        double chord = Math.sqrt((x1 - x0) * (x1 - x0) + (r1 - r0) * (r1 - r0));
        midX = 0.5 * (x0 + x1);
        midR = 0.5 * (r0 + r1);
        normalX = -(r1 - r0) / chord;
        normalR = (x1 - x0) / chord;
        half = 0.5 * chord;
        this.bulge = bulge;
    }

    /**
     * Returns the greatest departure of a stretch of a segment.
     *
     * @param fit the straight line or circular arc
     * @param segment the segment it stands for
     * @param fromX start of the stretch, mm
     * @param toX end of the stretch, mm
     * @return mm, without sign
     */
    static double greatest(Segment fit, Segment segment, double fromX, double toX) {
        ArcDeviation deviation;
        if (fit instanceof CircularArc a) {
            deviation = new ArcDeviation(a.x0(), a.r0(), a.x1(), a.r1(), a.bulge());
        } else {
            StraightLine l = (StraightLine) fit;
            deviation = new ArcDeviation(l.x0(), l.r0(), l.x1(), l.r1(), 0);
        }
        double ends =
                Math.max(deviation.at(fromX, segment.r(fromX)), deviation.at(toX, segment.r(toX)));
        if (segment instanceof GraphCubic cubic) {
            return Math.max(ends, deviation.inside(cubic, fromX, toX));
        }
        return Math.max(ends, deviation.inside((EllipseQuarter) segment, fromX, toX));
    }

    /** Distance of a point from the whole circle, written so that nothing grows as it flattens. */
    private double at(double x, double r) {
        double dx = x - midX;
        double dr = r - midR;
        double v = normalX * dx + normalR * dr;
        double rest = half * (1 - bulge * bulge);
        double nx = bulge * dx - 0.5 * rest * normalX;
        double nr = bulge * dr - 0.5 * rest * normalR;
        double over = bulge * (dx * dx + dr * dr - half * half) - v * rest;
        return Math.abs(over) / (Math.sqrt(nx * nx + nr * nr) + 0.5 * half * (1 + bulge * bulge));
    }

    private double inside(GraphCubic cubic, double fromX, double toX) {
        double h = cubic.x1() - cubic.x0();
        double c1 = cubic.d0() * h;
        double c2 = (cubic.middleSlope() - cubic.d0()) * h;
        double c3 = (cubic.d0() - 2 * cubic.middleSlope() + cubic.d1()) * h / 3;
        double rest = 0.5 * half * (1 - bulge * bulge);
        // bulge times the vector from the centre: (x + bulge h t, r + bulge (c1 t + c2 t^2 + c3
        // t^3)).
        double x = bulge * (cubic.x0() - midX) - rest * normalX;
        double r = bulge * (cubic.r0() - midR) - rest * normalR;
        double[] quintic = {
            h * x + r * c1,
            bulge * (h * h + c1 * c1) + 2 * r * c2,
            3 * (r * c3 + bulge * c1 * c2),
            bulge * (4 * c1 * c3 + 2 * c2 * c2),
            bulge * 5 * c2 * c3,
            bulge * 3 * c3 * c3
        };
        double[] roots = new double[5];
        int count =
                RealRoots.within(
                        quintic, 5, (fromX - cubic.x0()) / h, (toX - cubic.x0()) / h, roots);
        double greatest = 0;
        for (int i = 0; i < count; i++) {
            double place = Math.max(fromX, Math.min(toX, cubic.x0() + h * roots[i]));
            greatest = Math.max(greatest, at(place, cubic.r(place)));
        }
        return greatest;
    }

    /** With w = tan(t/2) from the nearer pole, as for the distance of a point. */
    private double inside(EllipseQuarter ellipse, double fromX, double toX) {
        double a = ellipse.semiX();
        double b = (ellipse.upper() ? 1 : -1) * ellipse.semiR();
        double rest = 0.5 * half * (1 - bulge * bulge);
        double x = bulge * (ellipse.centreX() - midX) - rest * normalX;
        double r = bulge * (ellipse.centreR() - midR) - rest * normalR;
        double[] roots = new double[4];
        double greatest = 0;
        for (int side = -1; side <= 1; side += 2) {
            // -(side x + bulge a cos t) a sin t + (r + bulge b sin t) b cos t = 0.
            double cross = bulge * (b * b - a * a);
            double[] quartic = {
                b * r, 2 * cross - 2 * side * a * x, 0, -2 * cross - 2 * side * a * x, -b * r
            };
            int count = RealRoots.within(quartic, 4, 0, 1, roots);
            for (int i = 0; i < count; i++) {
                double w = roots[i];
                double place = ellipse.centreX() + side * a * (1 - w * w) / (1 + w * w);
                if (place > fromX && place < toX) {
                    greatest = Math.max(greatest, at(place, ellipse.r(place)));
                }
            }
        }
        return greatest;
    }
}
