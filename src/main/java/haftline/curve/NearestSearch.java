package haftline.curve;

/** The best pair of feet so far; one search is one thread's work. */
final class NearestSearch {
    /** Secant and bisection steps after which a crossing is known to the last bit. */
    private static final int MOST_STEPS = 100;

    private double square = Double.POSITIVE_INFINITY;
    private double outlineX;
    private double outlineR;
    private double otherX;
    private double otherR;
    private final double[] places = new double[2];

    /** Square of the best distance so far. */
    double square() {
        return square;
    }

    Nearest result() {
        return new Nearest(
                Math.hypot(outlineX - otherX, outlineR - otherR),
                outlineX,
                outlineR,
                otherX,
                otherR);
    }

    private void feet(double x, double r, double farX, double farR) {
        double dx = x - farX;
        double dr = r - farR;
        double s = dx * dx + dr * dr;
        if (s < square) {
            square = s;
            outlineX = x;
            outlineR = r;
            otherX = farX;
            otherR = farR;
        }
    }

    private void foot(Segment segment, double x, double px, double pr) {
        feet(x, segment.r(x), px, pr);
    }

    private void footOnEdge(Edge edge, double x, double r) {
        double share = edge.footShare(x, r);
        feet(x, r, edge.xAt(share), edge.rAt(share));
    }

    /** Square of a distance that the segment and the edge cannot undercut. */
    static double boxSquare(Segment segment, Edge edge) {
        double dx =
                Math.max(
                        0, Math.max(segment.startX() - edge.highX(), edge.lowX() - segment.endX()));
        double dr =
                Math.max(
                        0,
                        Math.max(
                                Hull.low(segment) - edge.highR(),
                                edge.lowR() - Hull.high(segment)));
        return dx * dx + dr * dr;
    }

    /** Takes in the distance between a flat face of the outline and an edge. */
    void face(Edge face, Edge edge) {
        double x = face.x0();
        if (edge.lowX() <= x && x <= edge.highX() && edge.lowX() < edge.highX()) {
            double r = edge.rAt((x - edge.x0()) / (edge.x1() - edge.x0()));
            if (face.lowR() <= r && r <= face.highR()) {
                feet(x, r, x, r);
                return;
            }
        }
        footOnFace(face, edge.x0(), edge.r0());
        footOnFace(face, edge.x1(), edge.r1());
        footOnEdge(edge, x, face.r0());
        footOnEdge(edge, x, face.r1());
    }

    private void footOnFace(Edge face, double px, double pr) {
        feet(face.x0(), Math.max(face.lowR(), Math.min(face.highR(), pr)), px, pr);
    }

    /**
     * Takes in the distance between a segment and an edge. The nearest pair has an end of one of
     * them, or the curve is parallel to the edge there, or the two cross.
     */
    void edge(Segment segment, Edge edge) {
        boolean single = edge.x0() == edge.x1() && edge.r0() == edge.r1();
        if (!single) {
            if (crossing(segment, edge)) {
                return;
            }
            footOnEdge(edge, segment.startX(), segment.r(segment.startX()));
            footOnEdge(edge, segment.endX(), segment.r(segment.endX()));
            if (edge.x0() != edge.x1()) {
                double slope = (edge.r1() - edge.r0()) / (edge.x1() - edge.x0());
                int count = placesOfSlope(segment, slope);
                for (int i = 0; i < count; i++) {
                    footOnEdge(edge, places[i], segment.r(places[i]));
                }
            }
            if (pointBox(segment, edge.x1(), edge.r1()) < square) {
                point(segment, edge.x1(), edge.r1());
            }
        }
        if (pointBox(segment, edge.x0(), edge.r0()) < square) {
            point(segment, edge.x0(), edge.r0());
        }
    }

    private static double pointBox(Segment segment, double px, double pr) {
        double dx = Math.max(0, Math.max(segment.startX() - px, px - segment.endX()));
        double dr = Math.max(0, Math.max(Hull.low(segment) - pr, pr - Hull.high(segment)));
        return dx * dx + dr * dr;
    }

    private int placesOfSlope(Segment segment, double slope) {
        if (segment instanceof GraphCubic cubic) {
            return cubic.placesOfSlope(slope, places);
        }
        if (segment instanceof CircularArc arc) {
            places[0] = arc.placeOfSlope(slope);
        } else if (segment instanceof EllipseQuarter ellipse) {
            places[0] = ellipse.placeOfSlope(slope);
        } else {
            return 0;
        }
        return places[0] > segment.startX() && places[0] < segment.endX() ? 1 : 0;
    }

    private boolean crossing(Segment segment, Edge edge) {
        double from = Math.max(segment.startX(), edge.lowX());
        double to = Math.min(segment.endX(), edge.highX());
        if (from > to || Hull.low(segment) > edge.highR() || Hull.high(segment) < edge.lowR()) {
            return false;
        }
        if (edge.x0() == edge.x1()) {
            double r = segment.r(from);
            boolean meets = edge.lowR() <= r && r <= edge.highR();
            if (meets) {
                feet(from, r, from, r);
            }
            return meets;
        }
        double slope = (edge.r1() - edge.r0()) / (edge.x1() - edge.x0());
        double height = edge.r0() - slope * edge.x0();
        Gap least = segment.leastAbove(height, slope, from, to);
        if (least.height() > 0) {
            return false;
        }
        Gap greatest = segment.greatestAbove(height, slope, from, to);
        if (greatest.height() < 0) {
            return false;
        }
        double x = crossing(segment, height, slope, least, greatest);
        double r = segment.r(x);
        feet(x, r, x, r);
        return true;
    }

    /** The place where the height over the line changes its sign: Illinois steps in a bracket. */
    private static double crossing(
            Segment segment, double height, double slope, Gap least, Gap greatest) {
        double a = least.x();
        double b = greatest.x();
        double atA = least.height();
        double atB = greatest.height();
        for (int i = 0; i < MOST_STEPS && atA != 0 && atB != 0; i++) {
            double x = i % 3 == 2 ? 0.5 * (a + b) : (a * atB - b * atA) / (atB - atA);
            if (x == a || x == b) {
                break;
            }
            double g = segment.r(x) - (height + slope * x);
            if (g < 0) {
                a = x;
                atA = g;
            } else {
                b = x;
                atB = g;
            }
        }
        return -atA < atB ? a : b;
    }

    /** Takes in the distance between a segment and a point. */
    void point(Segment segment, double px, double pr) {
        if (segment instanceof GraphCubic cubic) {
            cubicPoint(cubic, px, pr);
        } else if (segment instanceof CircularArc arc) {
            arcPoint(arc, px, pr);
        } else if (segment instanceof EllipseQuarter ellipse) {
            ellipsePoint(ellipse, px, pr);
        } else {
            StraightLine line = (StraightLine) segment;
            Edge edge = new Edge(line.x0(), line.r0(), line.x1(), line.r1());
            double share = edge.footShare(px, pr);
            feet(edge.xAt(share), edge.rAt(share), px, pr);
        }
    }

    /**
     * The foot is where (x - px) + (r - pr) r' changes its sign, a quintic in x. Mostly the point
     * is so near, or the curve so flat, that it rises throughout and has one root at most.
     */
    private void cubicPoint(GraphCubic cubic, double px, double pr) {
        foot(cubic, cubic.x0(), px, pr);
        foot(cubic, cubic.x1(), px, pr);
        double h = cubic.x1() - cubic.x0();
        // r - pr = c0 + c1 t + c2 t^2 + c3 t^3, x - px = x + h t.
        double c0 = cubic.r0() - pr;
        double c1 = cubic.d0() * h;
        double c2 = (cubic.middleSlope() - cubic.d0()) * h;
        double c3 = (cubic.d0() - 2 * cubic.middleSlope() + cubic.d1()) * h / 3;
        double x = cubic.x0() - px;
        double high =
                Math.max(
                        Math.max(Math.abs(c0), Math.abs(cubic.r1() - pr)),
                        Math.max(
                                Math.abs(cubic.firstControlR() - pr),
                                Math.abs(cubic.secondControlR() - pr)));
        double bend = 2 * Math.max(Math.abs(c2), Math.abs(c2 + 3 * c3));
        if (high * bend < h * h) {
            double atEnd = h * (x + h) + (cubic.r1() - pr) * cubic.d1() * h;
            if (h * x + c0 * c1 < 0 && atEnd > 0) {
                double t = risingRoot(x, h, c0, c1, c2, c3);
                foot(cubic, place(cubic, h, t), px, pr);
            }
            return;
        }
        double[] quintic = {
            h * x + c0 * c1,
            h * h + 2 * c0 * c2 + c1 * c1,
            3 * (c0 * c3 + c1 * c2),
            4 * c1 * c3 + 2 * c2 * c2,
            5 * c2 * c3,
            3 * c3 * c3
        };
        double[] roots = new double[5];
        int count = RealRoots.within(quintic, 5, 0, 1, roots);
        for (int i = 0; i < count; i++) {
            foot(cubic, place(cubic, h, roots[i]), px, pr);
        }
    }

    private static double place(GraphCubic cubic, double h, double t) {
        double x = t <= 0.5 ? cubic.x0() + h * t : cubic.x1() - h * (1 - t);
        return Math.max(cubic.x0(), Math.min(cubic.x1(), x));
    }

    /** Newton in a shrinking bracket on a function that rises from under 0 to over 0 on [0, 1]. */
    private static double risingRoot(
            double x, double h, double c0, double c1, double c2, double c3) {
        double low = 0;
        double high = 1;
        double t = Math.max(0, Math.min(1, -x / h));
        for (int i = 0; i < MOST_STEPS; i++) {
            double r = c0 + t * (c1 + t * (c2 + t * c3));
            double d = c1 + t * (2 * c2 + t * 3 * c3);
            double f = h * (x + h * t) + r * d;
            if (f == 0) {
                return t;
            }
            if (f < 0) {
                low = t;
            } else {
                high = t;
            }
            double next = t - f / (h * h + d * d + r * (2 * c2 + 6 * c3 * t));
            if (!(next > low && next < high)) {
                next = 0.5 * (low + high);
            }
            if (Math.abs(next - t) <= Math.ulp(1.0)) {
                return next;
            }
            t = next;
        }
        return t;
    }

    /**
     * In the chord's frame, u along it and v to the side away from the bulge, the distance to the
     * circle is (B (u^2 + v^2 - a^2) - v a (1 - B^2)) / (|B (p - C)| + a (1 + B^2)/2), a the half
     * chord, B the bulge without its sign, C the centre: no term grows as the arc gets shallow.
     */
    private void arcPoint(CircularArc arc, double px, double pr) {
        foot(arc, arc.x0(), px, pr);
        foot(arc, arc.x1(), px, pr);
        double chord = arc.chord();
        double a = 0.5 * chord;
        double cos = (arc.x1() - arc.x0()) / chord;
        double sin = (arc.r1() - arc.r0()) / chord;
        double bulge = Math.abs(arc.bulge());
        double side = Math.signum(arc.bulge());
        double dx = px - 0.5 * (arc.x0() + arc.x1());
        double dr = pr - 0.5 * (arc.r0() + arc.r1());
        double u = cos * dx + sin * dr;
        double v = side * (cos * dr - sin * dx);
        double nu = bulge * u;
        double nv = bulge * v - 0.5 * a * (1 - bulge * bulge);
        double norm = Math.hypot(nu, nv);
        if (!(nv < 0)) {
            return;
        }
        double far =
                (bulge * (u * u + v * v - a * a) - v * a * (1 - bulge * bulge))
                        / (norm + 0.5 * a * (1 + bulge * bulge));
        double footU = u - far * nu / norm;
        if (Math.abs(footU) < a) {
            double footV = side * (v - far * nv / norm);
            feet(
                    0.5 * (arc.x0() + arc.x1()) + cos * footU - sin * footV,
                    0.5 * (arc.r0() + arc.r1()) + sin * footU + cos * footV,
                    px,
                    pr);
        }
    }

    /**
     * With w = tan(t/2) from the pole, (b^2 - a^2) sin t cos t + a p sin t - b q cos t = 0 becomes
     * a quartic in w; each quarter has w in [0, 1].
     */
    private void ellipsePoint(EllipseQuarter ellipse, double px, double pr) {
        foot(ellipse, ellipse.startX(), px, pr);
        foot(ellipse, ellipse.endX(), px, pr);
        double a = ellipse.semiX();
        double b = ellipse.semiR();
        double q = (ellipse.upper() ? 1 : -1) * (pr - ellipse.centreR());
        double[] roots = new double[4];
        for (int side = -1; side <= 1; side += 2) {
            double p = side * (px - ellipse.centreX());
            double[] quartic = {
                -b * q, 2 * (b * b - a * a) + 2 * a * p, 0, 2 * (a * a - b * b) + 2 * a * p, b * q
            };
            int count = RealRoots.within(quartic, 4, 0, 1, roots);
            for (int i = 0; i < count; i++) {
                double w = roots[i];
                double x = ellipse.centreX() + side * a * (1 - w * w) / (1 + w * w);
                if (x > ellipse.startX() && x < ellipse.endX()) {
                    double height = 2 * w / (1 + w * w);
                    feet(x, ellipse.centreR() + (ellipse.upper() ? b : -b) * height, px, pr);
                }
            }
        }
    }
}
