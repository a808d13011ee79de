package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * Where on a sheet, and how large, a thing is drawn that has its own origin.
 *
 * @param xMm where its origin comes to stand
 * @param yMm where its origin comes to stand
 * @param scale drawn size over true size, over 0
 */
record Placement(double xMm, double yMm, double scale) {
    Placement {
        Checks.within("scale", scale, Double.MIN_NORMAL, Vertex.LIMIT_MM);
    }

    double x(double mm) {
        return xMm + scale * mm;
    }

    double y(double mm) {
        return yMm + scale * mm;
    }

    private Vertex of(Vertex vertex) {
        return new Vertex(x(vertex.xMm()), y(vertex.yMm()));
    }

    /** The path where it comes to stand: the same curves, for both axes scale alike. */
    Path of(Path path) {
        List<Segment> placed = new ArrayList<>(path.segments().size());
        for (Segment segment : path.segments()) {
            placed.add(of(segment));
        }
        return new Path(path.layer(), placed, path.closed());
    }

    private Segment of(Segment segment) {
        Vertex start = of(segment.start());
        Vertex end = of(segment.end());
        if (segment instanceof Arc arc) {
            return new Arc(start, end, arc.bulge());
        }
        if (segment instanceof Cubic cubic) {
            return new Cubic(start, of(cubic.control1()), of(cubic.control2()), end);
        }
        if (segment instanceof EllipseArc ellipse) {
            return new EllipseArc(
                    start,
                    end,
                    of(ellipse.centre()),
                    scale * ellipse.semiXMm(),
                    scale * ellipse.semiYMm(),
                    ellipse.anticlockwise());
        }
        return new Line(start, end);
    }
}
