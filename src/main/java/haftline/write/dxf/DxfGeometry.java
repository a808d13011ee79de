package haftline.write.dxf;

import haftline.drawing.Arc;
import haftline.drawing.Bounds;
import haftline.drawing.Cubic;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.EllipseArc;
import haftline.drawing.Layer;
import haftline.drawing.Line;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A drawing made ready for a DXF file: vertices rounded once to what the file holds, short segments
 * merged, nothing twice.
 *
 * @param elements what is to be written
 * @param merged how many short segments were merged
 * @param duplicates how many lines and arcs were left out
 * @param doubled how many are in two closed loops
 */
record DxfGeometry(List<Element> elements, int merged, int duplicates, int doubled) {
    private static final double GRID = Math.pow(10, DxfTags.DECIMALS);

    static DxfGeometry of(Drawing drawing, boolean keepsCurves) {
        List<Element> rounded = new ArrayList<>();
        int merged = 0;
        for (Element element : drawing.elements().toList()) {
            if (element instanceof Path path) {
                List<Segment> segments = rounded(path, keepsCurves);
                List<Segment> whole = ShortSegments.merged(segments, path.closed());
                merged += segments.size() - whole.size();
                if (!whole.isEmpty()) {
                    rounded.add(new Path(path.layer(), whole, path.closed()));
                }
            } else {
                rounded.add(element);
            }
        }
        DrawnOnce once = DrawnOnce.of(rounded);
        return new DxfGeometry(once.elements(), merged, once.duplicates(), once.doubled());
    }

    /** Layers that are drawn on, in the order of drawing. */
    List<Layer> layers() {
        return elements.stream().map(Element::layer).distinct().sorted().toList();
    }

    /** What everything but text takes up; of a drawing of nothing but text, its positions. */
    Bounds extents() {
        List<Bounds> bounds =
                elements.stream()
                        .filter(element -> !(element instanceof Text))
                        .map(Element::bounds)
                        .toList();
        if (!bounds.isEmpty()) {
            return Bounds.union(bounds);
        }
        return Bounds.union(
                elements.stream()
                        .map(element -> ((Text) element).position())
                        .map(position -> Bounds.of(position, position))
                        .toList());
    }

    DxfReport report(Map<String, Integer> counts) {
        double[] lengths = segments().mapToDouble(ShortSegments::lengthMm).sorted().toArray();
        int tooShort = 0;
        while (tooShort < lengths.length && lengths[tooShort] < DxfWriter.SHORTEST_SEGMENT_MM) {
            tooShort++;
        }
        return new DxfReport(
                counts,
                lengths.length == 0 ? Double.POSITIVE_INFINITY : lengths[0],
                tooShort,
                merged,
                duplicates,
                doubled,
                extents());
    }

    private Stream<Segment> segments() {
        return elements.stream()
                .flatMap(
                        element ->
                                element instanceof Path path
                                        ? path.segments().stream()
                                        : Stream.empty());
    }

    private static List<Segment> rounded(Path path, boolean keepsCurves) {
        List<Segment> rounded = new ArrayList<>(path.segments().size());
        for (Segment segment : path.segments()) {
            Vertex start = rounded(segment.start());
            Vertex end = rounded(segment.end());
            if (!start.equals(end)) {
                rounded.add(between(start, end, segment, keepsCurves));
            }
        }
        return rounded;
    }

    private static Segment between(Vertex start, Vertex end, Segment segment, boolean keepsCurves) {
        if (segment instanceof Line) {
            return new Line(start, end);
        }
        if (segment instanceof Arc arc) {
            return new Arc(start, end, arc.bulge());
        }
        if (keepsCurves && segment instanceof Cubic cubic) {
            return new Cubic(start, rounded(cubic.control1()), rounded(cubic.control2()), end);
        }
        if (keepsCurves && segment instanceof EllipseArc ellipse) {
            return new EllipseArc(
                    start,
                    end,
                    ellipse.centre(),
                    ellipse.semiXMm(),
                    ellipse.semiYMm(),
                    ellipse.anticlockwise());
        }
        throw new IllegalArgumentException(
                "DXF of lines and arcs: a path holds a "
                        + segment.getClass().getSimpleName()
                        + "; expected the drawing's withArcs(...) to have replaced it");
    }

    private static Vertex rounded(Vertex vertex) {
        return new Vertex(
                Math.rint(vertex.xMm() * GRID) / GRID, Math.rint(vertex.yMm() * GRID) / GRID);
    }
}
