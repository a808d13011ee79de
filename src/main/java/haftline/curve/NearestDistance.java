package haftline.curve;

import java.util.List;

/**
 * The shortest distance from a point or a straight edge to a segment or an outline, in the
 * half-plane of the profile, which for coaxial surfaces is the distance in space. Exact to
 * rounding: the feet are roots of polynomials found from their shape, never by sampling. Segments
 * whose bounding box is farther than the best foot so far are passed over.
 */
public final class NearestDistance {
    private NearestDistance() {}

    /**
     * Returns the distance from a point to a segment.
     *
     * @param segment the segment
     * @param x the point's x, mm
     * @param r the point's radius, mm
     * @return distance and feet
     */
    public static Nearest ofPoint(Segment segment, double x, double r) {
        NearestSearch search = new NearestSearch();
        search.point(segment, x, r);
        return search.result();
    }

    /**
     * Returns the distance from a point to an outline.
     *
     * @param outline the outline
     * @param x the point's x, mm
     * @param r the point's radius, mm
     * @param stepFaces whether the flat faces at the outline's steps count
     * @return distance and feet
     */
    public static Nearest ofPoint(Outline outline, double x, double r, boolean stepFaces) {
        return ofEdge(outline, new Edge(x, r, x, r), stepFaces);
    }

    /**
     * Returns the distance from an edge to a segment.
     *
     * @param segment the segment
     * @param edge the edge
     * @return distance and feet
     */
    public static Nearest ofEdge(Segment segment, Edge edge) {
        NearestSearch search = new NearestSearch();
        search.edge(segment, edge);
        return search.result();
    }

    /**
     * Returns the distance from an edge to an outline.
     *
     * @param outline the outline
     * @param edge the edge
     * @param stepFaces whether the flat faces at the outline's steps count
     * @return distance and feet
     */
    public static Nearest ofEdge(Outline outline, Edge edge, boolean stepFaces) {
        NearestSearch search = new NearestSearch();
        scan(search, outline, edge, stepFaces);
        return search.result();
    }

    /**
     * Returns the shortest distance from several edges, a whole bore, to an outline.
     *
     * @param outline the outline
     * @param edges at least one
     * @param stepFaces whether the flat faces at the outline's steps count
     * @return distance and feet of the nearest edge
     */
    public static Nearest ofEdges(Outline outline, List<Edge> edges, boolean stepFaces) {
        if (edges.isEmpty()) {
            throw new IllegalArgumentException("edges must hold at least one edge");
        }
        NearestSearch search = new NearestSearch();
        for (int i = 0; i < edges.size(); i++) {
            scan(search, outline, edges.get(i), stepFaces);
        }
        return search.result();
    }

    /** The segment with the nearest box first, then every other that may still be nearer. */
    private static void scan(NearestSearch search, Outline outline, Edge edge, boolean stepFaces) {
        List<Segment> segments = outline.segments();
        int n = segments.size();
        int nearest = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            double bound = NearestSearch.boxSquare(segments.get(i), edge);
            if (bound < least) {
                least = bound;
                nearest = i;
            }
        }
        search.edge(segments.get(nearest), edge);
        for (int i = 0; i < n; i++) {
            if (i != nearest && NearestSearch.boxSquare(segments.get(i), edge) < search.square()) {
                search.edge(segments.get(i), edge);
            }
            if (stepFaces && i > 0) {
                face(search, segments.get(i - 1), segments.get(i), edge);
            }
        }
    }

    private static void face(NearestSearch search, Segment before, Segment after, Edge edge) {
        double x = after.startX();
        double far = Math.max(0, Math.max(x - edge.highX(), edge.lowX() - x));
        if (far * far >= search.square()) {
            return;
        }
        double low = before.r(x);
        double high = after.r(x);
        if (low != high) {
            search.face(new Edge(x, low, x, high), edge);
        }
    }
}
