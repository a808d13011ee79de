package haftline.write.dxf;

import haftline.drawing.Arc;
import haftline.drawing.Cubic;
import haftline.drawing.Element;
import haftline.drawing.EllipseArc;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Leaves out what is drawn already on the same layer, whichever way it is walked: a cutter would
 * follow it twice.
 *
 * <p>Closed loops go first and stay whole, for a loop is one part; only a second loop over the very
 * same segments is left out. An open path loses the segments that are there already and may fall
 * into several.
 *
 * @param elements what is left, in its old order
 * @param duplicates how many lines and arcs were left out
 * @param doubled how many are in two closed loops
 */
record DrawnOnce(List<Element> elements, int duplicates, int doubled) {
    private static final Comparator<Vertex> LEFT_TO_RIGHT =
            Comparator.comparingDouble(Vertex::xMm).thenComparingDouble(Vertex::yMm);

    /** Bulges that differ by less are the same arc, fitted twice. */
    private static final double BULGE_GRID = 1e9;

    /** A segment whichever way it is walked. */
    private record Key(Layer layer, Vertex low, Vertex high, long bulge, List<Vertex> guides) {
        static Key of(Layer layer, Segment segment) {
            boolean isForward = LEFT_TO_RIGHT.compare(segment.start(), segment.end()) < 0;
            Segment walked = isForward ? segment : segment.reversed();
            return new Key(
                    layer,
                    walked.start(),
                    walked.end(),
                    Math.round(bend(walked) * BULGE_GRID),
                    guides(walked));
        }

        private static double bend(Segment segment) {
            if (segment instanceof EllipseArc ellipse) {
                return ellipse.anticlockwise() ? 1 : -1;
            }
            return segment instanceof Arc arc ? arc.bulge() : 0;
        }

        private static List<Vertex> guides(Segment segment) {
            if (segment instanceof Cubic cubic) {
                return List.of(cubic.control1(), cubic.control2());
            }
            return segment instanceof EllipseArc ellipse ? List.of(ellipse.centre()) : List.of();
        }
    }

    static DrawnOnce of(List<Element> elements) {
        Set<Key> drawn = new HashSet<>();
        Set<Element> seen = new HashSet<>();
        int duplicates = 0;
        int doubled = 0;
        List<List<Element>> kept = new ArrayList<>();
        Set<Set<Key>> loops = new HashSet<>();
        for (Element element : elements) {
            if (element instanceof Path path && path.closed()) {
                Set<Key> keys = keys(path);
                if (loops.add(keys)) {
                    doubled += (int) keys.stream().filter(drawn::contains).count();
                    drawn.addAll(keys);
                    kept.add(List.of(path));
                } else {
                    duplicates += keys.size();
                    kept.add(List.of());
                }
            } else {
                kept.add(List.of(element));
            }
        }
        for (int i = 0; i < kept.size(); i++) {
            Element element = elements.get(i);
            if (element instanceof Path path && !path.closed()) {
                List<Element> runs = newRuns(path, drawn);
                duplicates += path.segments().size() - segmentCount(runs);
                kept.set(i, runs);
            } else if (!(element instanceof Path) && !seen.add(element)) {
                kept.set(i, List.of());
            }
        }
        return new DrawnOnce(kept.stream().flatMap(List::stream).toList(), duplicates, doubled);
    }

    private static Set<Key> keys(Path path) {
        return path.segments().stream()
                .map(segment -> Key.of(path.layer(), segment))
                .collect(Collectors.toSet());
    }

    private static List<Element> newRuns(Path path, Set<Key> drawn) {
        List<Element> runs = new ArrayList<>();
        List<Segment> run = new ArrayList<>();
        for (Segment segment : path.segments()) {
            if (drawn.add(Key.of(path.layer(), segment))) {
                run.add(segment);
            } else if (!run.isEmpty()) {
                runs.add(new Path(path.layer(), run, false));
                run.clear();
            }
        }
        if (!run.isEmpty()) {
            runs.add(new Path(path.layer(), run, false));
        }
        return runs;
    }

    private static int segmentCount(List<Element> paths) {
        return paths.stream().mapToInt(path -> ((Path) path).segments().size()).sum();
    }
}
