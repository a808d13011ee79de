package haftline.write.dxf;

import haftline.drawing.Anchor;
import haftline.drawing.Arc;
import haftline.drawing.Arrowhead;
import haftline.drawing.Circle;
import haftline.drawing.Element;
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

    private final DxfTags out = new DxfTags();
    private final Map<String, Integer> counts = new TreeMap<>();
    private int nextHandle = DxfHandles.FIRST_ENTITY;

    private DxfEntities() {}

    /** Writes elements that hold no other segments than lines and arcs. */
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
            path(path);
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

    private void path(Path path) {
        Segment only = path.segments().size() == 1 ? path.segments().get(0) : null;
        if (only instanceof Line line) {
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
