package haftline.write.dxf;

import haftline.drawing.Anchor;
import haftline.drawing.Arc;
import haftline.drawing.Arrowhead;
import haftline.drawing.Bounds;
import haftline.drawing.CheckBar;
import haftline.drawing.Circle;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Line;
import haftline.drawing.LineType;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A file of release 12, after the published reference: no handles, no subclass markers, no
 * dictionaries, no unit. Names are upper case, of letters, digits and hyphens, under 31 characters.
 */
final class R12File {
    private static final String STANDARD = "STANDARD";
    private static final String UNIT = "-MM";
    private static final int CLOSED = 1;
    private static final int VERTICES_FOLLOW = 1;
    private static final double BAR_MM = 50;
    private static final double BAR_GAP_MM = 6;
    private static final double NOTE_GAP_MM = 9;
    private static final double TEXT_HEIGHT_MM = 2.5;

    /** Line types are drawn with narrow lines; their patterns are made for that width. */
    private static final double PATTERN_WIDTH_MM = Layer.CENTRE.widthMm();

    private final DxfTags out = new DxfTags();
    private final Map<String, Integer> counts = new TreeMap<>();

    private R12File() {}

    static DxfFile of(Drawing drawing) {
        DxfGeometry geometry = DxfGeometry.of(drawing.with(unitBar(drawing)), false);
        R12File file = new R12File();
        file.header(geometry.extents());
        file.tables(geometry.layers());
        file.out.tag(0, "SECTION").tag(2, "BLOCKS").tag(0, "ENDSEC");
        file.out.tag(0, "SECTION").tag(2, "ENTITIES");
        geometry.elements().forEach(file::write);
        file.out.tag(0, "ENDSEC").tag(0, "EOF");
        return new DxfFile(file.out.text(), geometry.report(file.counts));
    }

    /** What tells the unit: a bar of known length under the drawing and a line of text. */
    private static Group unitBar(Drawing drawing) {
        Bounds bounds = drawing.bounds();
        Vertex corner = new Vertex(bounds.minXMm(), bounds.minYMm() - BAR_GAP_MM);
        Group check = CheckBar.of(corner, BAR_MM);
        // A drawing that has a bar already gets no second one.
        boolean hasBar = drawing.groups().stream().anyMatch(g -> g.name().equals(check.name()));
        List<Element> bar = new ArrayList<>(hasBar ? List.of() : check.elements());
        bar.add(
                Text.level(
                        Layer.DIMENSION,
                        corner.xMm(),
                        corner.yMm() - NOTE_GAP_MM,
                        TEXT_HEIGHT_MM,
                        Anchor.START,
                        "unit: mm"));
        return new Group("unit bar", bar);
    }

    private void header(Bounds extents) {
        out.tag(0, "SECTION").tag(2, "HEADER");
        out.tag(9, "$ACADVER").tag(1, DxfProfile.OLD_CONTROLLER.version());
        out.tag(9, "$INSBASE").point(10, 0, 0);
        out.tag(9, "$EXTMIN").point(10, extents.minXMm(), extents.minYMm());
        out.tag(9, "$EXTMAX").point(10, extents.maxXMm(), extents.maxYMm());
        out.tag(9, "$LIMMIN").place(10, extents.minXMm(), extents.minYMm());
        out.tag(9, "$LIMMAX").place(10, extents.maxXMm(), extents.maxYMm());
        out.tag(9, "$LTSCALE").real(40, 1);
        out.tag(9, "$TEXTSIZE").real(40, TEXT_HEIGHT_MM);
        out.tag(9, "$TEXTSTYLE").tag(7, STANDARD);
        out.tag(9, "$CLAYER").tag(8, "0");
        // Decimal lengths and degrees.
        out.tag(9, "$LUNITS").tag(70, 2);
        out.tag(9, "$LUPREC").tag(70, 3);
        out.tag(9, "$AUNITS").tag(70, 0);
        out.tag(9, "$AUPREC").tag(70, 2);
        out.tag(0, "ENDSEC");
    }

    private void tables(List<Layer> layers) {
        out.tag(0, "SECTION").tag(2, "TABLES");
        table("LTYPE", LineType.values().length);
        for (LineType type : LineType.values()) {
            lineType(type);
        }
        out.tag(0, "ENDTAB");
        table("LAYER", layers.size() + 1);
        layer("0", 7, LineType.CONTINUOUS);
        for (Layer layer : layers) {
            layer(name(layer), DxfLayer.colour(layer), layer.lineType());
        }
        out.tag(0, "ENDTAB");
        table("STYLE", 1);
        out.tag(0, "STYLE").tag(2, STANDARD).tag(70, 0).real(40, 0).real(41, 1).real(50, 0);
        out.tag(71, 0).real(42, TEXT_HEIGHT_MM).tag(3, "txt").tag(4, "").tag(0, "ENDTAB");
        out.tag(0, "ENDSEC");
    }

    private void table(String name, int entries) {
        out.tag(0, "TABLE").tag(2, name).tag(70, entries);
    }

    private void lineType(LineType type) {
        List<Double> pattern = type.patternMm(PATTERN_WIDTH_MM);
        out.tag(0, "LTYPE").tag(2, DxfLayer.lineType(type)).tag(70, 0);
        out.tag(3, DxfLayer.description(type)).tag(72, 65).tag(73, pattern.size());
        out.real(40, pattern.stream().mapToDouble(Double::doubleValue).sum());
        for (int i = 0; i < pattern.size(); i++) {
            // Gaps count negative.
            out.real(49, i % 2 == 0 ? pattern.get(i) : -pattern.get(i));
        }
    }

    private void layer(String name, int colour, LineType lineType) {
        out.tag(0, "LAYER").tag(2, name).tag(70, 0).tag(62, colour);
        out.tag(6, DxfLayer.lineType(lineType));
    }

    /** Such as CUT-MM: the one place for the unit that every reader shows. */
    static String name(Layer layer) {
        return DxfLayer.name(layer) + UNIT;
    }

    private DxfTags begin(String type, Layer layer) {
        counts.merge(type, 1, Integer::sum);
        return out.tag(0, type).tag(8, name(layer));
    }

    private void write(Element element) {
        if (element instanceof Path path) {
            path(path);
        } else if (element instanceof Circle circle) {
            begin("CIRCLE", circle.layer()).point(10, circle.centre());
            out.real(40, circle.radiusMm());
        } else if (element instanceof Arrowhead arrowhead) {
            List<Vertex> corners = arrowhead.corners();
            begin("SOLID", arrowhead.layer()).point(10, corners.get(0)).point(11, corners.get(1));
            // A triangle repeats its third corner.
            out.point(12, corners.get(2)).point(13, corners.get(2));
        } else if (element instanceof Text text) {
            text(text);
        }
    }

    private void path(Path path) {
        Segment only = path.segments().size() == 1 ? path.segments().get(0) : null;
        if (only instanceof Line line) {
            begin("LINE", path.layer()).point(10, line.start()).point(11, line.end());
        } else if (only instanceof Arc arc) {
            begin("ARC", path.layer()).point(10, arc.centreXMm(), arc.centreYMm());
            // An ARC always runs anticlockwise.
            boolean anticlockwise = arc.bulge() > 0;
            out.real(40, arc.radiusMm());
            out.real(50, anticlockwise ? arc.startDeg() : arc.endDeg());
            out.real(51, anticlockwise ? arc.endDeg() : arc.startDeg());
        } else {
            polyline(path);
        }
    }

    private void polyline(Path path) {
        begin("POLYLINE", path.layer()).tag(66, VERTICES_FOLLOW).point(10, 0, 0);
        out.tag(70, path.closed() ? CLOSED : 0);
        for (Segment segment : path.segments()) {
            begin("VERTEX", path.layer()).point(10, segment.start());
            if (segment instanceof Arc arc) {
                out.bulge(arc.bulge());
            }
        }
        if (!path.closed()) {
            begin("VERTEX", path.layer())
                    .point(10, path.segments().get(path.segments().size() - 1).end());
        }
        begin("SEQEND", path.layer());
    }

    private void text(Text text) {
        begin("TEXT", text.layer()).point(10, text.position()).real(40, text.heightMm());
        out.tag(1, DxfText.plain(text.string())).real(50, text.rotationDeg()).tag(7, STANDARD);
        if (text.anchor() != Anchor.START) {
            out.tag(72, text.anchor() == Anchor.MIDDLE ? 1 : 2).point(11, text.position());
        }
    }
}
