package haftline.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A chain of segments, open or closed.
 *
 * @param layer the layer it lies on
 * @param segments at least one; each starts at the very vertex at which the one before it ends
 * @param closed whether it is a loop; it then also ends at the vertex at which it starts. The flag
 *     comes from what is drawn, never from a guess that two ends are near each other
 */
public record Path(Layer layer, List<Segment> segments, boolean closed) implements Element {
    /**
     * Checks that the chain holds.
     *
     * @throws IllegalArgumentException where there is no segment, two neighbours do not meet, or a
     *     loop does not close
     */
    public Path {
        segments = List.copyOf(segments);
        if (segments.isEmpty()) {
            throw new IllegalArgumentException("path: expected at least one segment");
        }
        for (int i = 1; i < segments.size(); i++) {
            Vertex end = segments.get(i - 1).end();
            Vertex start = segments.get(i).start();
            if (!end.equals(start)) {
                throw new IllegalArgumentException(
                        "path: segment " + i + " starts at " + start + ", expected " + end);
            }
        }
        Vertex first = segments.get(0).start();
        Vertex last = segments.get(segments.size() - 1).end();
        if (closed && !first.equals(last)) {
            throw new IllegalArgumentException(
                    "closed path: ends at " + last + ", expected " + first);
        }
    }

    /**
     * A path of one straight line.
     *
     * @param layer the layer it lies on
     * @param start where it starts
     * @param end where it ends
     * @return the path
     */
    public static Path line(Layer layer, Vertex start, Vertex end) {
        return new Path(layer, List.of(new Line(start, end)), false);
    }

    /**
     * Starts a chain.
     *
     * @param xMm where it starts
     * @param yMm where it starts
     * @return a builder at that place
     */
    public static PathBuilder from(double xMm, double yMm) {
        return new PathBuilder(new Vertex(xMm, yMm));
    }

    /**
     * The same path walked the other way.
     *
     * @return the reversed path
     */
    public Path reversed() {
        List<Segment> backwards = new ArrayList<>(segments.size());
        for (int i = segments.size() - 1; i >= 0; i--) {
            backwards.add(segments.get(i).reversed());
        }
        return new Path(layer, backwards, closed);
    }

    /**
     * The same path on the other side of the axis y = 0, walked the same way.
     *
     * @return the reflected path
     */
    public Path mirrored() {
        return new Path(layer, segments.stream().map(Segment::mirrored).toList(), closed);
    }

    /**
     * The same path with every curve that is neither line nor arc replaced by lines and arcs.
     *
     * @param fitting how a curve is replaced
     * @return a path of lines and arcs through the same shared vertices
     * @throws IllegalArgumentException where the fitting moves an end or hands back another curve
     */
    public Path withArcs(ArcFitting fitting) {
        List<Segment> fitted = new ArrayList<>(segments.size());
        for (Segment segment : segments) {
            if (segment instanceof Line || segment instanceof Arc) {
                fitted.add(segment);
            } else {
                fitted.addAll(fitting.checkedArcs(segment));
            }
        }
        return new Path(layer, fitted, closed);
    }

    /**
     * Area inside a closed path.
     *
     * @return mm2, in closed form, positive where the path runs anticlockwise
     * @throws IllegalArgumentException where the path is open
     */
    public double signedAreaMm2() {
        if (!closed) {
            throw new IllegalArgumentException("area of an open path: expected a closed one");
        }
        return segments.stream().mapToDouble(Segment::sweptAreaMm2).sum();
    }

    @Override
    public Bounds bounds() {
        return Bounds.union(segments.stream().map(Segment::bounds).toList());
    }
}
