package haftline.write.dxf;

import haftline.drawing.Arc;
import haftline.drawing.Bounds;
import haftline.drawing.Line;
import haftline.drawing.Segment;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Merges segments that are too short for a cutter into a neighbour, where the line hardly moves by
 * it. A short face or notch that is meant is no such place and stays.
 */
final class ShortSegments {
    /** The extents of the drawing must not change, so an extreme must not be merged away. */
    private static final double EXTENT_MM = 5e-7;

    /** Flatter than this, a merged piece is a line. */
    private static final double STRAIGHT_RISE_MM = 1e-6;

    /** Half of the largest arc that merging makes, a half circle; what bends more is a corner. */
    private static final double GREATEST_BEND_RAD = Math.PI / 2;

    private ShortSegments() {}

    /** Length of a line or arc; a curve is at least as long as its chord. */
    static double lengthMm(Segment segment) {
        return segment instanceof Arc arc
                ? arc.radiusMm() * Math.toRadians(Math.abs(arc.sweepDeg()))
                : segment.start().distanceMm(segment.end());
    }

    /**
     * The chain with short segments merged; a closed one may start at its second vertex instead.
     */
    static List<Segment> merged(List<Segment> chain, boolean closed) {
        List<Segment> out = new ArrayList<>(chain);
        int i = 0;
        while (i < out.size()) {
            if (lengthMm(out.get(i)) >= DxfWriter.SHORTEST_SEGMENT_MM || !mergeAt(out, i, closed)) {
                i++;
            } else {
                // What was merged may still be short, and lies one place further back.
                i = Math.max(0, i - 1);
            }
        }
        return out;
    }

    private static boolean mergeAt(List<Segment> chain, int index, boolean closed) {
        int size = chain.size();
        // Two segments of a loop cannot become one that goes nowhere.
        if (size < (closed ? 3 : 2)) {
            return false;
        }
        for (int first : new int[] {index - 1, index}) {
            boolean wraps = first < 0 || first == size - 1;
            if (wraps && !closed) {
                continue;
            }
            int from = Math.floorMod(first, size);
            int to = (from + 1) % size;
            Optional<Segment> one = oneFor(chain.get(from), chain.get(to));
            if (one.isPresent()) {
                chain.set(from, one.get());
                chain.remove(to);
                return true;
            }
        }
        return false;
    }

    /** One segment in place of two, if it stays close to both. */
    private static Optional<Segment> oneFor(Segment a, Segment b) {
        if (!isLineOrArc(a) || !isLineOrArc(b)) {
            return Optional.empty();
        }
        Vertex start = a.start();
        Vertex end = b.end();
        Vertex guide = middle(lengthMm(a) > lengthMm(b) ? a : b);
        double bend = bendRad(start, guide, end);
        if (start.equals(end) || Math.abs(bend) > GREATEST_BEND_RAD) {
            return Optional.empty();
        }
        Segment one = bent(start, end, bend);
        boolean close =
                Stream.of(middle(a), a.end(), middle(b))
                        .allMatch(v -> distanceMm(v, one) <= DxfWriter.MERGE_DEVIATION_MM);
        return close && sameExtent(a.bounds().with(b.bounds()), one.bounds())
                ? Optional.of(one)
                : Optional.empty();
    }

    static boolean isLineOrArc(Segment segment) {
        return segment instanceof Line || segment instanceof Arc;
    }

    private static Vertex middle(Segment segment) {
        Vertex start = segment.start();
        Vertex end = segment.end();
        double bulge = segment instanceof Arc arc ? arc.bulge() : 0;
        // The middle of an arc lies bulge x chord / 2 to the right of the chord's middle.
        return new Vertex(
                (start.xMm() + end.xMm() + bulge * (end.yMm() - start.yMm())) / 2,
                (start.yMm() + end.yMm() - bulge * (end.xMm() - start.xMm())) / 2);
    }

    /** The turn of a chain of two chords at its middle. */
    private static double bendRad(Vertex start, Vertex guide, Vertex end) {
        double ax = guide.xMm() - start.xMm();
        double ay = guide.yMm() - start.yMm();
        double bx = end.xMm() - guide.xMm();
        double by = end.yMm() - guide.yMm();
        return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
    }

    /**
     * The arc from start to end whose chords bend so at any point between; the bend is half the
     * angle swept (inscribed angle), the bulge the tangent of a quarter of that.
     */
    private static Segment bent(Vertex start, Vertex end, double bendRad) {
        double bulge = Math.tan(bendRad / 2);
        double rise = Math.abs(bulge) * start.distanceMm(end) / 2;
        return rise < STRAIGHT_RISE_MM ? new Line(start, end) : new Arc(start, end, bulge);
    }

    private static double distanceMm(Vertex vertex, Segment segment) {
        if (segment instanceof Arc arc) {
            double fromCentre =
                    Math.hypot(vertex.xMm() - arc.centreXMm(), vertex.yMm() - arc.centreYMm());
            return Math.abs(fromCentre - arc.radiusMm());
        }
        Vertex start = segment.start();
        Vertex end = segment.end();
        double cross =
                (end.xMm() - start.xMm()) * (vertex.yMm() - start.yMm())
                        - (end.yMm() - start.yMm()) * (vertex.xMm() - start.xMm());
        return Math.abs(cross) / start.distanceMm(end);
    }

    private static boolean sameExtent(Bounds a, Bounds b) {
        return Math.abs(a.minXMm() - b.minXMm()) <= EXTENT_MM
                && Math.abs(a.maxXMm() - b.maxXMm()) <= EXTENT_MM
                && Math.abs(a.minYMm() - b.minYMm()) <= EXTENT_MM
                && Math.abs(a.maxYMm() - b.maxYMm()) <= EXTENT_MM;
    }
}
