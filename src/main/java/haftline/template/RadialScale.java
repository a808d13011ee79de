package haftline.template;

import haftline.curve.CircularArc;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.util.ArrayList;
import java.util.List;

/**
 * Heights of a chain multiplied by a factor. A line stays a line; an arc becomes part of an ellipse
 * and is replaced by pairs of arcs with the ellipse's own ends and tangents, halved until they lie
 * within a tolerance.
 */
final class RadialScale {
    /** Places along a stretch at which a pair of arcs is held against the ellipse. */
    private static final int PROBES = 12;

    /** A stretch this short is close enough whatever the arcs do, mm. */
    private static final double SHORTEST_MM = 1e-5;

    /** A chord that leaves its line by less than this is straight, radians. */
    private static final double STRAIGHT_RAD = 1e-9;

    private final double axis;
    private final double factor;
    private final double toleranceMm;
    private final List<Segment> out = new ArrayList<>();

    private RadialScale(double axis, double factor, double toleranceMm) {
        this.axis = axis;
        this.factor = factor;
        this.toleranceMm = toleranceMm;
    }

    static Outline of(Outline outline, double axis, double factor, double toleranceMm) {
        RadialScale scale = new RadialScale(axis, factor, toleranceMm);
        for (Segment segment : outline.segments()) {
            if (segment instanceof CircularArc arc) {
                scale.halve(arc, arc.x0(), arc.x1());
            } else {
                StraightLine line = (StraightLine) segment;
                scale.out.add(
                        new StraightLine(
                                line.x0(), scale.y(line.r0()), line.x1(), scale.y(line.r1())));
            }
        }
        return new Outline(scale.out);
    }

    private double y(double r) {
        return axis + factor * (r - axis);
    }

    private void halve(CircularArc arc, double from, double to) {
        List<Segment> pair = pair(arc, from, to);
        if (to - from < SHORTEST_MM || fits(arc, pair, from, to)) {
            out.addAll(pair);
            return;
        }
        double middle = (from + to) / 2;
        halve(arc, from, middle);
        halve(arc, middle, to);
    }

    private boolean fits(CircularArc arc, List<Segment> pair, double from, double to) {
        for (int i = 1; i < PROBES; i++) {
            // Closer together at the ends, where an upright tangent makes arc and ellipse part.
            double t = (1 - Math.cos(Math.PI * i / PROBES)) / 2;
            double x = from + t * (to - from);
            Segment piece = x <= pair.get(0).endX() ? pair.get(0) : pair.get(pair.size() - 1);
            double miss = Math.abs(piece.r(x) - y(arc.r(x)));
            double slope = factor * arc.slope(x);
            // Across the curve, not along y.
            if (!(miss <= toleranceMm * Math.sqrt(1 + slope * slope))) {
                return false;
            }
        }
        return true;
    }

    /** Two arcs that share a tangent, with given ends and end tangents (a biarc of equal arms). */
    private List<Segment> pair(CircularArc arc, double from, double to) {
        double y0 = y(arc.r(from));
        double y1 = y(arc.r(to));
        double a = Math.atan(factor * arc.slope(from));
        double b = Math.atan(factor * arc.slope(to));
        double chord = Math.atan2(y1 - y0, to - from);
        double in = chord - a;
        double turn = b - a;
        if (Math.abs(in) < STRAIGHT_RAD && Math.abs(turn) < STRAIGHT_RAD) {
            return List.of(new StraightLine(from, y0, to, y1));
        }
        // Arms of equal length d: |v - d (t0 + t1)| = 2 d, v the chord, t0 and t1 the tangents.
        double vx = to - from;
        double vy = y1 - y0;
        double tx = Math.cos(a) + Math.cos(b);
        double ty = Math.sin(a) + Math.sin(b);
        double vv = vx * vx + vy * vy;
        double vt = vx * tx + vy * ty;
        double tt = 4 - (tx * tx + ty * ty);
        double arm = vv / (vt + Math.sqrt(vt * vt + tt * vv));
        double mx = (from + arm * Math.cos(a) + to - arm * Math.cos(b)) / 2;
        double my = (y0 + arm * Math.sin(a) + y1 - arm * Math.sin(b)) / 2;
        if (!(mx > from && mx < to)) {
            return List.of(new StraightLine(from, y0, to, y1));
        }
        double first = Math.atan2(my - y0, mx - from) - a;
        double second = b - Math.atan2(y1 - my, to - mx);
        return List.of(piece(from, y0, mx, my, first), piece(mx, my, to, y1, second));
    }

    /** An arc whose tangent at an end stands off the chord by an angle. */
    private static Segment piece(double x0, double y0, double x1, double y1, double offChord) {
        return Math.abs(offChord) < STRAIGHT_RAD
                ? new StraightLine(x0, y0, x1, y1)
                : new CircularArc(x0, y0, x1, y1, Math.tan(offChord / 2));
    }
}
