package haftline.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * Builds a path vertex by vertex; each vertex is made once and shared by the segments that meet
 * there. A line or arc to the place where the chain already stands is left out, so that a step of
 * no height needs no special case.
 */
public final class PathBuilder {
    private final Vertex first;
    private final List<Segment> segments = new ArrayList<>();
    private Vertex current;

    PathBuilder(Vertex first) {
        this.first = first;
        this.current = first;
    }

    /**
     * Adds a straight line.
     *
     * @param xMm where it ends
     * @param yMm where it ends
     * @return this builder
     */
    public PathBuilder lineTo(double xMm, double yMm) {
        return lineTo(new Vertex(xMm, yMm));
    }

    /**
     * Adds an arc.
     *
     * @param xMm where it ends
     * @param yMm where it ends
     * @param bulge tangent of a quarter of its angle, positive anticlockwise; 0 gives a line
     * @return this builder
     */
    public PathBuilder arcTo(double xMm, double yMm, double bulge) {
        Vertex end = new Vertex(xMm, yMm);
        return bulge == 0 || end.equals(current) ? lineTo(end) : add(new Arc(current, end, bulge));
    }

    /**
     * Adds a cubic Bezier curve.
     *
     * @param x1Mm first control point
     * @param y1Mm first control point
     * @param x2Mm second control point
     * @param y2Mm second control point
     * @param xMm where it ends
     * @param yMm where it ends
     * @return this builder
     */
    public PathBuilder cubicTo(
            double x1Mm, double y1Mm, double x2Mm, double y2Mm, double xMm, double yMm) {
        return add(
                new Cubic(
                        current,
                        new Vertex(x1Mm, y1Mm),
                        new Vertex(x2Mm, y2Mm),
                        new Vertex(xMm, yMm)));
    }

    /**
     * Adds an arc of an ellipse whose axes lie along x and y.
     *
     * @param xMm where it ends
     * @param yMm where it ends
     * @param centreXMm centre of the ellipse
     * @param centreYMm centre of the ellipse
     * @param semiXMm half the axis along x
     * @param semiYMm half the axis along y
     * @param anticlockwise which way round
     * @return this builder
     */
    public PathBuilder ellipseTo(
            double xMm,
            double yMm,
            double centreXMm,
            double centreYMm,
            double semiXMm,
            double semiYMm,
            boolean anticlockwise) {
        return add(
                new EllipseArc(
                        current,
                        new Vertex(xMm, yMm),
                        new Vertex(centreXMm, centreYMm),
                        semiXMm,
                        semiYMm,
                        anticlockwise));
    }

    /**
     * Adds a segment that starts where the chain stands.
     *
     * @param segment the segment
     * @return this builder
     * @throws IllegalArgumentException where it starts elsewhere
     */
    public PathBuilder add(Segment segment) {
        if (!segment.start().equals(current)) {
            throw new IllegalArgumentException(
                    "segment starts at " + segment.start() + ", expected " + current);
        }
        segments.add(segment);
        current = segment.end();
        return this;
    }

    /**
     * Ends the chain where it stands.
     *
     * @param layer the layer it lies on
     * @return an open path
     */
    public Path open(Layer layer) {
        return new Path(layer, segments, false);
    }

    /**
     * Closes the loop, with a straight line where the chain does not stand at its start.
     *
     * @param layer the layer it lies on
     * @return a closed path
     */
    public Path close(Layer layer) {
        lineTo(first);
        return new Path(layer, segments, true);
    }

    private PathBuilder lineTo(Vertex end) {
        if (!end.equals(current)) {
            add(new Line(current, end));
        }
        return this;
    }
}
