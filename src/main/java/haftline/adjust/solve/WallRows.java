package haftline.adjust.solve;

import haftline.curve.Edge;
import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import java.util.List;

/**
 * The smooth pieces of a wall: over each straight piece of the bore's edge and under each segment
 * of the outline the least upright wall and its two ends, and for each segment its shortest
 * distance. Their least is what {@link Walls} finds; see docs/decisions/0002-walls-by-extremes.md.
 */
final class WallRows {
    /** Key of a row: which segment, which piece of the edge, which of the three. */
    private static final int SEGMENT = 256;

    private static final int EDGE = 4;
    private static final int SHORTEST = 3;
    private static final int WHOLE = -1;

    private WallRows() {}

    /** The zone whose wall a need is about. */
    static Zone zone(Need need) {
        return switch (need) {
            case TENON_WALL -> Zone.TENON;
            case CAP_WALL -> Zone.CAP;
            default -> Zone.BODY;
        };
    }

    static void add(Handle handle, Need need, Rows into) {
        Zone zone = zone(need);
        if (zone == Zone.CAP && handle.capBore().isEmpty()) {
            return;
        }
        Bore bore = zone == Zone.CAP ? handle.capBore().get() : handle.tangBore();
        double from = Walls.from(handle, zone);
        double to = Walls.to(handle, zone);
        double limit = Walls.limitMm(handle, zone);
        List<Edge> edges = BoreProfile.edges(bore, handle.wander());
        boolean inside = upright(handle.outline(), edges, from, to, limit, into);
        if (inside && into.size() > 0) {
            shortest(handle, edges, from, to, limit, into);
        }
    }

    /** Returns whether the bore stays inside the outline. */
    private static boolean upright(
            Outline outline, List<Edge> edges, double from, double to, double limit, Rows into) {
        List<Segment> segments = outline.segments();
        boolean inside = true;
        for (int s = outline.indexAt(from); s < segments.size(); s++) {
            Segment segment = segments.get(s);
            for (int e = 0; e < edges.size(); e++) {
                Edge edge = edges.get(e);
                double low = Math.max(Math.max(from, segment.startX()), edge.lowX());
                double high = Math.min(Math.min(to, segment.endX()), edge.highX());
                if (low < high) {
                    double m = (edge.r1() - edge.r0()) / (edge.x1() - edge.x0());
                    double c = edge.r0() - m * edge.x0();
                    int key = s * SEGMENT + e * EDGE;
                    double least = segment.leastAbove(c, m, low, high).height();
                    inside &= least > 0;
                    into.add(key, least - limit);
                    into.add(key + 1, segment.r(low) - c - m * low - limit);
                    into.add(key + 2, segment.r(high) - c - m * high - limit);
                }
            }
        }
        return inside;
    }

    private static void shortest(
            Handle handle, List<Edge> edges, double from, double to, double limit, Rows into) {
        Outline outline = handle.outline();
        List<Segment> segments = outline.segments();
        for (int s = outline.indexAt(from); s < segments.size(); s++) {
            Segment segment = segments.get(s);
            double low = Math.max(from, segment.startX());
            double high = Math.min(to, segment.endX());
            if (low < high && into.asks(s * SEGMENT + SHORTEST)) {
                boolean whole = low == segment.startX() && high == segment.endX();
                Outline alone = Outline.of(whole ? segment : segment.part(low, high));
                double distance = NearestDistance.ofEdges(alone, edges, false).distance();
                into.add(s * SEGMENT + SHORTEST, distance - limit);
            }
        }
        if (!handle.brief().shape().details().isEmpty() && into.asks(WHOLE)) {
            // The faces of steps belong to no segment.
            double distance =
                    NearestDistance.ofEdges(outline.part(from, to), edges, true).distance();
            into.add(WHOLE, distance - limit);
        }
    }
}
