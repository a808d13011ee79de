package haftline.support;

import haftline.drawing.Arc;
import haftline.drawing.ArcFitting;
import haftline.drawing.Cubic;
import haftline.drawing.EllipseArc;
import haftline.drawing.Line;
import haftline.drawing.Segment;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleFunction;

/**
 * Plain biarc fitting by halving, for tests of the writers only: it keeps a tolerance at sampled
 * places and does not count its arcs.
 */
public final class Biarcs implements ArcFitting {
    private static final int SAMPLES = 16;
    private static final double STEP = 1e-5;

    private final double toleranceMm;

    public Biarcs(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    @Override
    public List<Segment> arcs(Segment curve) {
        DoubleFunction<Vertex> at = place(curve);
        List<Segment> out = new ArrayList<>();
        split(out, at, 0, 1, curve.start(), curve.end());
        return out;
    }

    private void split(
            List<Segment> out,
            DoubleFunction<Vertex> at,
            double t0,
            double t1,
            Vertex from,
            Vertex to) {
        double[] a = tangent(at, t0);
        double[] b = tangent(at, t1);
        List<Segment> biarc = biarc(from, a, to, b);
        boolean good = true;
        for (int i = 1; i < SAMPLES && good; i++) {
            Vertex v = at.apply(t0 + (t1 - t0) * i / SAMPLES);
            good = biarc.stream().anyMatch(s -> distance(v, s) < toleranceMm);
        }
        if (good) {
            out.addAll(biarc);
            return;
        }
        double middle = (t0 + t1) / 2;
        Vertex joint = at.apply(middle);
        split(out, at, t0, middle, from, joint);
        split(out, at, middle, t1, joint, to);
    }

    private static List<Segment> biarc(Vertex p, double[] a, Vertex q, double[] b) {
        double vx = q.xMm() - p.xMm();
        double vy = q.yMm() - p.yMm();
        double vt = vx * (a[0] + b[0]) + vy * (a[1] + b[1]);
        double denominator = 2 * (1 - a[0] * b[0] - a[1] * b[1]);
        double vv = vx * vx + vy * vy;
        // The positive root of denominator d^2 + 2 vt d - vv = 0, in the form that does not cancel.
        double d = vv / (vt + Math.sqrt(vt * vt + denominator * vv));
        Vertex joint =
                new Vertex(
                        (p.xMm() + d * a[0] + q.xMm() - d * b[0]) / 2,
                        (p.yMm() + d * a[1] + q.yMm() - d * b[1]) / 2);
        double first = turn(a[0], a[1], joint.xMm() - p.xMm(), joint.yMm() - p.yMm());
        double second = turn(q.xMm() - joint.xMm(), q.yMm() - joint.yMm(), b[0], b[1]);
        return List.of(segment(p, joint, first), segment(joint, q, second));
    }

    private static Segment segment(Vertex from, Vertex to, double turn) {
        double bulge = Math.tan(turn / 2);
        return Math.abs(bulge) < 1e-9 ? new Line(from, to) : new Arc(from, to, bulge);
    }

    private static double turn(double ax, double ay, double bx, double by) {
        return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }

    private static double[] tangent(DoubleFunction<Vertex> at, double t) {
        Vertex before = at.apply(t - STEP);
        Vertex after = at.apply(t + STEP);
        double length = before.distanceMm(after);
        return new double[] {
            (after.xMm() - before.xMm()) / length, (after.yMm() - before.yMm()) / length
        };
    }

    private static double distance(Vertex v, Segment segment) {
        double least = Double.POSITIVE_INFINITY;
        Vertex from = segment.start();
        for (Vertex to : segment.chords(1e-4)) {
            double vx = to.xMm() - from.xMm();
            double vy = to.yMm() - from.yMm();
            double wx = v.xMm() - from.xMm();
            double wy = v.yMm() - from.yMm();
            double t = Math.max(0, Math.min(1, (vx * wx + vy * wy) / (vx * vx + vy * vy)));
            least = Math.min(least, Math.hypot(wx - t * vx, wy - t * vy));
            from = to;
        }
        return least;
    }

    private static DoubleFunction<Vertex> place(Segment curve) {
        if (curve instanceof Cubic cubic) {
            return cubic::at;
        }
        EllipseArc ellipse = (EllipseArc) curve;
        return t -> {
            double angle = Math.toRadians(ellipse.startDeg() + t * ellipse.sweepDeg());
            return new Vertex(
                    ellipse.centre().xMm() + ellipse.semiXMm() * Math.cos(angle),
                    ellipse.centre().yMm() + ellipse.semiYMm() * Math.sin(angle));
        };
    }
}
