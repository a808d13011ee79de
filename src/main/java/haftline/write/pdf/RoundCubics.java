package haftline.write.pdf;

import haftline.drawing.Arc;
import haftline.drawing.Circle;
import haftline.drawing.Cubic;
import haftline.drawing.EllipseArc;
import haftline.drawing.Line;
import haftline.drawing.Segment;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;

/**
 * Circles and ellipses as cubic curves, the only ones that PDF has.
 *
 * <p>A cubic over the angle a whose control points lie 4/3 tan(a/4) radii along the end tangents
 * touches its circle at both ends and in the middle, and elsewhere stands off it by at most 2/27
 * sin^6(a/4) / cos^2(a/4) of the radius (worked out from the cubic itself: |p|^2 - 1 has its
 * greatest value 4/27 of that quotient; 2.7e-4 at a right angle). An ellipse is a circle stretched,
 * so that its greater half axis takes the radius's place.
 */
final class RoundCubics {
    /** A tenth of a micrometre: a five-hundredth of the finest line that is drawn. */
    static final double TOLERANCE_MM = 1e-4;

    private RoundCubics() {}

    /** Lines and cubics stay what they are. */
    static List<Segment> of(Segment segment) {
        if (segment instanceof Arc arc) {
            return turned(
                    arc.start(),
                    arc.end(),
                    arc.centreXMm(),
                    arc.centreYMm(),
                    arc.radiusMm(),
                    arc.radiusMm(),
                    Math.toRadians(arc.startDeg()),
                    Math.toRadians(arc.sweepDeg()));
        }
        if (segment instanceof EllipseArc ellipse) {
            return turned(
                    ellipse.start(),
                    ellipse.end(),
                    ellipse.centre().xMm(),
                    ellipse.centre().yMm(),
                    ellipse.semiXMm(),
                    ellipse.semiYMm(),
                    Math.toRadians(ellipse.startDeg()),
                    Math.toRadians(ellipse.sweepDeg()));
        }
        return List.of(segment);
    }

    static List<Segment> of(Circle circle) {
        Vertex start = circle.centre().towards(0, circle.radiusMm());
        return turned(
                start,
                start,
                circle.centre().xMm(),
                circle.centre().yMm(),
                circle.radiusMm(),
                circle.radiusMm(),
                0,
                2 * Math.PI);
    }

    private static List<Segment> turned(
            Vertex start,
            Vertex end,
            double centreX,
            double centreY,
            double radiusX,
            double radiusY,
            double fromRad,
            double sweepRad) {
        int count = count(Math.abs(sweepRad), Math.max(radiusX, radiusY));
        double step = sweepRad / count;
        double reach = 4.0 / 3 * Math.tan(step / 4);
        List<Segment> out = new ArrayList<>(count);
        Vertex from = start;
        for (int i = 0; i < count; i++) {
            double a = fromRad + i * step;
            double b = fromRad + (i + 1) * step;
            Vertex to =
                    i == count - 1
                            ? end
                            : new Vertex(
                                    centreX + radiusX * Math.cos(b),
                                    centreY + radiusY * Math.sin(b));
            if (!to.equals(from)) {
                out.add(
                        new Cubic(
                                from,
                                new Vertex(
                                        from.xMm() - reach * radiusX * Math.sin(a),
                                        from.yMm() + reach * radiusY * Math.cos(a)),
                                new Vertex(
                                        to.xMm() + reach * radiusX * Math.sin(b),
                                        to.yMm() - reach * radiusY * Math.cos(b)),
                                to));
            }
            from = to;
        }
        // An arc of no length that rounding can see is its chord.
        return out.isEmpty() ? List.of(new Line(start, end)) : out;
    }

    /** The fewest equal parts that keep the tolerance, none over a right angle. */
    static int count(double sweepRad, double radiusMm) {
        int count = (int) Math.max(1, Math.ceil(sweepRad / (Math.PI / 2) - 1e-9));
        while (offMm(sweepRad / count, radiusMm) > TOLERANCE_MM) {
            count++;
        }
        return count;
    }

    /** How far one cubic over an angle stands off its circle. */
    static double offMm(double angleRad, double radiusMm) {
        double sine = Math.sin(angleRad / 4);
        double cosine = Math.cos(angleRad / 4);
        return radiusMm * 2 / 27 * Math.pow(sine, 6) / (cosine * cosine);
    }
}
