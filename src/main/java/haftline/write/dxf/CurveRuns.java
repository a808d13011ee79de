package haftline.write.dxf;

import haftline.drawing.Cubic;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Takes a path apart into what one entity can hold: lines and arcs, cubics, single arcs of
 * ellipses. The pieces share their vertices; a path of lines and arcs alone stays whole.
 */
final class CurveRuns {
    private enum Kind {
        STRAIGHT_AND_ROUND,
        CUBIC,
        ELLIPSE
    }

    private CurveRuns() {}

    static List<Path> of(Path path) {
        List<Segment> segments = new ArrayList<>(path.segments());
        if (segments.stream().allMatch(s -> kind(s) == Kind.STRAIGHT_AND_ROUND)) {
            return List.of(path);
        }
        if (path.closed()) {
            // A run must not fall in two where the loop happens to start.
            int turned = 0;
            while (turned < segments.size() && joins(segments.get(segments.size() - 1), segments)) {
                Collections.rotate(segments, 1);
                turned++;
            }
        }
        List<Path> runs = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (Segment segment : segments) {
            if (!run.isEmpty() && !joins(run.get(run.size() - 1), List.of(segment))) {
                runs.add(new Path(path.layer(), run, false));
                run.clear();
            }
            run.add(segment);
        }
        runs.add(new Path(path.layer(), run, false));
        return runs;
    }

    private static boolean joins(Segment before, List<Segment> after) {
        Kind kind = kind(before);
        return kind != Kind.ELLIPSE && kind == kind(after.get(0));
    }

    private static Kind kind(Segment segment) {
        if (segment instanceof Cubic) {
            return Kind.CUBIC;
        }
        return ShortSegments.isLineOrArc(segment) ? Kind.STRAIGHT_AND_ROUND : Kind.ELLIPSE;
    }
}
