package haftline.template;

import haftline.curve.CircularArc;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.util.ArrayList;
import java.util.List;

/** What the envelopes of a {@link ProfileEdge} are made of. */
final class EdgePieces {
    /** A corner that turns less than this is smooth, radians. */
    private static final double SMOOTH_RAD = 1e-12;

    /** A hollow arc of less radius is a point that rounding has blown up, mm. */
    private static final double LEAST_RADIUS_MM = 1e-9;

    private EdgePieces() {}

    /**
     * Offset lines and arcs, and the arcs about outer corners: their envelope is the grown edge.
     */
    static List<Segment> offsets(Outline outline, double mm) {
        List<Segment> segments = outline.segments();
        List<Segment> pieces = new ArrayList<>(3 * segments.size());
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            addOffset(pieces, segment, mm);
            if (i + 1 < segments.size()) {
                addJoint(pieces, segment, segments.get(i + 1), mm);
            }
        }
        return pieces;
    }

    private static void addOffset(List<Segment> pieces, Segment segment, double mm) {
        double a = angle(segment, segment.startX());
        double b = angle(segment, segment.endX());
        double x0 = segment.startX() - mm * Math.sin(a);
        double r0 = segment.r(segment.startX()) + mm * Math.cos(a);
        double x1 = segment.endX() - mm * Math.sin(b);
        double r1 = segment.r(segment.endX()) + mm * Math.cos(b);
        // A hollow no wider than the disc has no offset: it comes out backwards, or as a point.
        boolean vanishes =
                segment instanceof CircularArc arc
                        && arc.bulge() > 0
                        && arc.radius() - mm < LEAST_RADIUS_MM;
        if (x1 > x0 && !vanishes) {
            pieces.add(
                    segment instanceof CircularArc arc
                            ? new CircularArc(x0, r0, x1, r1, arc.bulge())
                            : new StraightLine(x0, r0, x1, r1));
        }
    }

    /** The arcs about the outer corners of a joint, of which a step has two corners. */
    private static void addJoint(List<Segment> pieces, Segment before, Segment after, double mm) {
        double x = after.startX();
        double low = before.r(x);
        double high = after.r(x);
        double in = angle(before, x);
        double out = angle(after, x);
        if (low == high) {
            addCorner(pieces, x, low, in, out, mm);
        } else {
            double face = Math.copySign(Math.PI / 2, high - low);
            addCorner(pieces, x, low, in, face, mm);
            addCorner(pieces, x, high, face, out, mm);
        }
    }

    private static void addCorner(
            List<Segment> pieces, double x, double r, double in, double out, double mm) {
        double x0 = x - mm * Math.sin(in);
        double x1 = x - mm * Math.sin(out);
        if (in - out > SMOOTH_RAD && x1 > x0) {
            pieces.add(
                    new CircularArc(
                            x0,
                            r + mm * Math.cos(in),
                            x1,
                            r + mm * Math.cos(out),
                            -Math.tan((in - out) / 4)));
        }
    }

    /** Angle of the tangent, radians, exactly a right angle at a pole. */
    private static double angle(Segment segment, double x) {
        return Math.atan(segment.slope(x));
    }

    /**
     * Ramps down both ways from every place that is steeper than a slope, as far as they may rise
     * over the outline; none where nothing is steeper.
     */
    static List<Segment> ramps(Outline outline, double slope) {
        List<Segment> ramps = new ArrayList<>();
        double floor = outline.least().r();
        List<Segment> segments = outline.segments();
        for (int i = 0; i < segments.size(); i++) {
            Segment segment = segments.get(i);
            double start = segment.startX();
            if (segment.steepest(start, segment.endX()) > slope) {
                addRamps(ramps, start, segment.r(start), slope, floor);
                addRamps(ramps, segment.endX(), segment.r(segment.endX()), slope, floor);
                addTangentRamps(ramps, segment, slope, floor);
            }
            if (i > 0 && segments.get(i - 1).r(start) != segment.r(start)) {
                addRamps(ramps, start, segments.get(i - 1).r(start), slope, floor);
                addRamps(ramps, start, segment.r(start), slope, floor);
            }
        }
        return ramps;
    }

    /** Ramps from the places of a round where it turns steeper than the slope. */
    private static void addTangentRamps(
            List<Segment> pieces, Segment segment, double slope, double floor) {
        if (!(segment instanceof CircularArc arc) || arc.bulge() > 0) {
            return;
        }
        double sine = slope / Math.sqrt(1 + slope * slope);
        double start = Math.sin(angle(arc, arc.x0()));
        double curvature = arc.curvature(arc.x0());
        for (double tangent : new double[] {sine, -sine}) {
            double x = arc.x0() + (tangent - start) / curvature;
            if (x > arc.x0() && x < arc.x1()) {
                addRamps(pieces, x, arc.r(x), slope, floor);
            }
        }
    }

    private static void addRamps(
            List<Segment> pieces, double x, double r, double slope, double floor) {
        double run = (r - floor) / slope;
        if (x - run < x) {
            pieces.add(new StraightLine(x - run, floor, x, r));
            pieces.add(new StraightLine(x, r, x + run, floor));
        }
    }
}
