package haftline.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A cubic Bezier curve.
 *
 * @param start where it starts
 * @param control1 first control point: the curve leaves the start towards it
 * @param control2 second control point: the curve reaches the end from it
 * @param end where it ends, another place
 */
public record Cubic(Vertex start, Vertex control1, Vertex control2, Vertex end) implements Segment {
    /**
     * Checks that the curve goes somewhere.
     *
     * @throws IllegalArgumentException where start and end are one place
     */
    public Cubic {
        Segment.requireDistinct("cubic", start, end);
    }

    /**
     * A place on the curve.
     *
     * @param t parameter from 0 (start) to 1 (end)
     * @return the place
     */
    public Vertex at(double t) {
        return new Vertex(
                value(start.xMm(), control1.xMm(), control2.xMm(), end.xMm(), t),
                value(start.yMm(), control1.yMm(), control2.yMm(), end.yMm(), t));
    }

    @Override
    public Bounds bounds() {
        Bounds bounds = Bounds.of(start, end);
        for (double t : stationary(start.xMm(), control1.xMm(), control2.xMm(), end.xMm())) {
            bounds = bounds.with(at(t).xMm(), bounds.minYMm());
        }
        for (double t : stationary(start.yMm(), control1.yMm(), control2.yMm(), end.yMm())) {
            bounds = bounds.with(bounds.minXMm(), at(t).yMm());
        }
        return bounds;
    }

    /** Integral of (x dy - y dx)/2, the polynomial integrated exactly. */
    @Override
    public double sweptAreaMm2() {
        double weighted =
                6 * cross(start, control1)
                        + 3 * cross(start, control2)
                        + cross(start, end)
                        + 3 * cross(control1, control2)
                        + 3 * cross(control1, end)
                        + 6 * cross(control2, end);
        return weighted / 20;
    }

    @Override
    public Cubic reversed() {
        return new Cubic(end, control2, control1, start);
    }

    @Override
    public Cubic mirrored() {
        return new Cubic(
                start.mirrored(), control1.mirrored(), control2.mirrored(), end.mirrored());
    }

    @Override
    public List<Vertex> chords(double toleranceMm) {
        Segment.requireTolerance(toleranceMm);
        // The chord of a span of 1/n in t is off by at most the greatest second derivative / (8 n
        // n).
        double bend =
                6
                        * Math.max(
                                secondDifference(start, control1, control2),
                                secondDifference(control1, control2, end));
        int count = (int) Math.max(1, Math.ceil(Math.sqrt(bend / (8 * toleranceMm))));
        List<Vertex> vertices = new ArrayList<>(count);
        for (int i = 1; i < count; i++) {
            vertices.add(at((double) i / count));
        }
        vertices.add(end);
        return vertices;
    }

    private static double value(double a, double b, double c, double d, double t) {
        double s = 1 - t;
        return s * s * s * a + 3 * s * s * t * b + 3 * s * t * t * c + t * t * t * d;
    }

    private static double cross(Vertex a, Vertex b) {
        return a.xMm() * b.yMm() - b.xMm() * a.yMm();
    }

    private static double secondDifference(Vertex a, Vertex b, Vertex c) {
        return Math.hypot(a.xMm() - 2 * b.xMm() + c.xMm(), a.yMm() - 2 * b.yMm() + c.yMm());
    }

    /** Parameters inside (0, 1) at which one coordinate stands still. */
    private static double[] stationary(double p0, double p1, double p2, double p3) {
        // Derivative / 3 = a t^2 + 2 b t + c.
        double a = p3 - 3 * p2 + 3 * p1 - p0;
        double b = p2 - 2 * p1 + p0;
        double c = p1 - p0;
        double discriminant = b * b - a * c;
        if (discriminant < 0) {
            return new double[0];
        }
        // The stable pair: q never cancels; the roots are q/a and c/q.
        double q = -(b + Math.copySign(Math.sqrt(discriminant), b));
        List<Double> inside = new ArrayList<>(2);
        for (double t : new double[] {q / a, c / q}) {
            if (t > 0 && t < 1) {
                inside.add(t);
            }
        }
        return inside.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
