package haftline.write.dxf;

import haftline.drawing.Anchor;
import haftline.drawing.Arc;
import haftline.drawing.Arrowhead;
import haftline.drawing.Circle;
import haftline.drawing.Cubic;
import haftline.drawing.Element;
import haftline.drawing.EllipseArc;
import haftline.drawing.Layer;
import haftline.drawing.Line;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** The ENTITIES section. */
final class DxfEntities {
    private static final int CLOSED = 1;
    private static final int PLANAR = 8;
    private static final int DEGREE = 3;

    /** The format's own default for telling knots and control points apart. */
    private static final double SPLINE_TOLERANCE = 1e-7;

    private final DxfTags out = new DxfTags();
    private final Map<String, Integer> counts = new TreeMap<>();
    private int nextHandle = DxfHandles.FIRST_ENTITY;

    private DxfEntities() {}

    /** Writes elements. */
    static DxfEntities of(List<Element> elements) {
        DxfEntities entities = new DxfEntities();
        elements.forEach(entities::write);
        return entities;
    }

    DxfTags section() {
        return new DxfTags().tag(0, "SECTION").tag(2, "ENTITIES").add(out).tag(0, "ENDSEC");
    }

    Map<String, Integer> counts() {
        return Map.copyOf(counts);
    }

    int nextHandle() {
        return nextHandle;
    }

    private void write(Element element) {
        if (element instanceof Path path) {
            CurveRuns.of(path).forEach(this::path);
        } else if (element instanceof Circle circle) {
            begin("CIRCLE", circle.layer()).tag(100, "AcDbCircle");
            out.point(10, circle.centre()).real(40, circle.radiusMm());
        } else if (element instanceof Arrowhead arrowhead) {
            arrowhead(arrowhead);
        } else if (element instanceof Text text) {
            text(text);
        }
    }

    private DxfTags begin(String type, Layer layer) {
        counts.merge(type, 1, Integer::sum);
        return out.tag(0, type)
                .handle(5, nextHandle++)
                .handle(330, DxfHandles.MODEL_SPACE)
                .tag(100, "AcDbEntity")
                .tag(8, DxfLayer.name(layer));
    }

    /** A path of lines and arcs, or one of cubics, or a single arc of an ellipse. */
    private void path(Path path) {
        Segment first = path.segments().get(0);
        Segment only = path.segments().size() == 1 ? first : null;
        if (first instanceof Cubic) {
            spline(path);
        } else if (only instanceof EllipseArc ellipse) {
            ellipse(path.layer(), ellipse);
        } else if (only instanceof Line line) {
            begin("LINE", path.layer()).tag(100, "AcDbLine");
            out.point(10, line.start()).point(11, line.end());
        } else if (only instanceof Arc arc) {
            begin("ARC", path.layer()).tag(100, "AcDbCircle");
            out.point(10, arc.centreXMm(), arc.centreYMm()).real(40, arc.radiusMm());
            // An ARC always runs anticlockwise.
            boolean anticlockwise = arc.bulge() > 0;
            out.tag(100, "AcDbArc").real(50, anticlockwise ? arc.startDeg() : arc.endDeg());
            out.real(51, anticlockwise ? arc.endDeg() : arc.startDeg());
        } else {
            polyline(path);
        }
    }

    private void polyline(Path path) {
        List<Segment> segments = path.segments();
        begin("LWPOLYLINE", path.layer()).tag(100, "AcDbPolyline");
        out.tag(90, segments.size() + (path.closed() ? 0 : 1));
        out.tag(70, path.closed() ? CLOSED : 0).real(43, 0);
        for (Segment segment : segments) {
            out.place(10, segment.start().xMm(), segment.start().yMm());
            if (segment instanceof Arc arc) {
                out.bulge(arc.bulge());
            }
        }
        if (!path.closed()) {
            Vertex end = segments.get(segments.size() - 1).end();
            out.place(10, end.xMm(), end.yMm());
        }
    }

    /**
     * Cubics end to end as one spline of degree 3: each joint is a knot of multiplicity 3, so that
     * the control points are those of the cubics. Not flagged closed even where the ends meet, for
     * readers take that for a periodic spline.
     */
    private void spline(Path path) {
        List<Segment> cubics = path.segments();
        int count = cubics.size();
        begin("SPLINE", path.layer()).tag(100, "AcDbSpline").point(210, 0, 0, 1);
        out.tag(70, PLANAR).tag(71, DEGREE).tag(72, DEGREE * count + 5);
        out.tag(73, DEGREE * count + 1).tag(74, 0).real(42, SPLINE_TOLERANCE);
        out.real(43, SPLINE_TOLERANCE);
        for (int joint = 0; joint <= count; joint++) {
            int times = joint == 0 || joint == count ? DEGREE + 1 : DEGREE;
            for (int i = 0; i < times; i++) {
                out.real(40, joint);
            }
        }
        out.point(10, cubics.get(0).start());
        for (Segment segment : cubics) {
            Cubic cubic = (Cubic) segment;
            out.point(10, cubic.control1()).point(10, cubic.control2()).point(10, cubic.end());
        }
    }

    /** An ELLIPSE runs anticlockwise, its parameter from the end of its greater half axis. */
    private void ellipse(Layer layer, EllipseArc arc) {
        EllipseArc ellipse = arc.anticlockwise() ? arc : arc.reversed();
        boolean isWide = ellipse.semiXMm() >= ellipse.semiYMm();
        begin("ELLIPSE", layer).tag(100, "AcDbEllipse").point(10, ellipse.centre());
        out.point(11, isWide ? ellipse.semiXMm() : 0, isWide ? 0 : ellipse.semiYMm());
        out.point(210, 0, 0, 1);
        double ratio = ellipse.semiYMm() / ellipse.semiXMm();
        double start = Math.toRadians(ellipse.startDeg()) - (isWide ? 0 : Math.PI / 2);
        double from = start < 0 ? start + 2 * Math.PI : start;
        out.real(40, isWide ? ratio : 1 / ratio).parameter(41, from);
        out.parameter(42, from + Math.toRadians(ellipse.sweepDeg()));
    }

    private void arrowhead(Arrowhead arrowhead) {
        List<Vertex> corners = arrowhead.corners();
        begin("SOLID", arrowhead.layer()).tag(100, "AcDbTrace");
        out.point(10, corners.get(0)).point(11, corners.get(1)).point(12, corners.get(2));
        // A triangle repeats its third corner.
        out.point(13, corners.get(2));
    }

    private void text(Text text) {
        begin("TEXT", text.layer()).tag(100, "AcDbText").point(10, text.position());
        out.real(40, text.heightMm()).tag(1, DxfText.escaped(text.string()));
        out.real(50, text.rotationDeg()).tag(7, DxfTables.STANDARD);
        if (text.anchor() != Anchor.START) {
            out.tag(72, text.anchor() == Anchor.MIDDLE ? 1 : 2).point(11, text.position());
        }
        out.tag(100, "AcDbText");
    }
}
