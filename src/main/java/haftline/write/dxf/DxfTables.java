package haftline.write.dxf;

import haftline.drawing.Bounds;
import haftline.drawing.Layer;
import haftline.drawing.LineType;
import java.util.List;

/** The TABLES section: views, line types, layers, styles, block records. */
final class DxfTables {
    static final String STANDARD = "Standard";
    static final String MODEL_SPACE = "*Model_Space";
    static final String PAPER_SPACE = "*Paper_Space";

    /** Line types are drawn with narrow lines; their patterns are made for that width. */
    private static final double PATTERN_WIDTH_MM = Layer.CENTRE.widthMm();

    private static final double VIEW_MARGIN = 1.1;

    private DxfTables() {}

    static DxfTags tables(DxfFrame frame) {
        DxfTags out = new DxfTags().tag(0, "SECTION").tag(2, "TABLES");
        viewports(out, frame.extents());
        lineTypes(out);
        layers(out, frame.layers());
        styles(out);
        table(out, "VIEW", DxfHandles.VIEW_TABLE, 0).tag(0, "ENDTAB");
        table(out, "UCS", DxfHandles.UCS_TABLE, 0).tag(0, "ENDTAB");
        applications(out);
        dimensionStyles(out);
        blockRecords(out);
        return out.tag(0, "ENDSEC");
    }

    private static DxfTags table(DxfTags out, String name, int handle, int entries) {
        return out.tag(0, "TABLE")
                .tag(2, name)
                .handle(5, handle)
                .handle(330, DxfHandles.NONE)
                .tag(100, "AcDbSymbolTable")
                .tag(70, entries);
    }

    private static DxfTags record(
            DxfTags out, String type, int handle, int table, String subclass, String name) {
        return out.tag(0, type)
                .handle(5, handle)
                .handle(330, table)
                .tag(100, "AcDbSymbolTableRecord")
                .tag(100, subclass)
                .tag(2, name);
    }

    /** One view that shows the whole drawing. */
    private static void viewports(DxfTags out, Bounds extents) {
        table(out, "VPORT", DxfHandles.VPORT_TABLE, 1);
        record(
                out,
                "VPORT",
                DxfHandles.VPORT,
                DxfHandles.VPORT_TABLE,
                "AcDbViewportTableRecord",
                "*Active");
        double aspect = 1.5;
        double height =
                VIEW_MARGIN * Math.max(1, Math.max(extents.heightMm(), extents.widthMm() / aspect));
        out.tag(70, 0).place(10, 0, 0).place(11, 1, 1);
        out.place(
                12,
                (extents.minXMm() + extents.maxXMm()) / 2,
                (extents.minYMm() + extents.maxYMm()) / 2);
        out.place(13, 0, 0).place(14, 1, 1).place(15, 10, 10).point(16, 0, 0, 1).point(17, 0, 0);
        out.real(40, height).real(41, aspect).real(42, 50).real(43, 0).real(44, 0);
        out.real(50, 0).real(51, 0).tag(71, 0).tag(72, 100).tag(73, 1).tag(74, 3);
        out.tag(75, 0).tag(76, 0).tag(77, 0).tag(78, 0).tag(0, "ENDTAB");
    }

    private static void lineTypes(DxfTags out) {
        table(out, "LTYPE", DxfHandles.LTYPE_TABLE, 2 + LineType.values().length);
        lineType(out, DxfHandles.BY_BLOCK, "ByBlock", "", List.of());
        lineType(out, DxfHandles.BY_LAYER, "ByLayer", "", List.of());
        for (LineType type : LineType.values()) {
            lineType(
                    out,
                    DxfHandles.of(type),
                    DxfLayer.lineType(type),
                    DxfLayer.description(type),
                    type.patternMm(PATTERN_WIDTH_MM));
        }
        out.tag(0, "ENDTAB");
    }

    private static void lineType(
            DxfTags out, int handle, String name, String description, List<Double> pattern) {
        record(out, "LTYPE", handle, DxfHandles.LTYPE_TABLE, "AcDbLinetypeTableRecord", name);
        out.tag(70, 0).tag(3, description).tag(72, 65).tag(73, pattern.size());
        out.real(40, pattern.stream().mapToDouble(Double::doubleValue).sum());
        for (int i = 0; i < pattern.size(); i++) {
            // Gaps count negative.
            out.real(49, i % 2 == 0 ? pattern.get(i) : -pattern.get(i)).tag(74, 0);
        }
    }

    private static void layers(DxfTags out, List<Layer> layers) {
        table(out, "LAYER", DxfHandles.LAYER_TABLE, 1 + layers.size());
        layer(out, DxfHandles.LAYER_0, "0", 7, DxfLayer.lineType(LineType.CONTINUOUS), 25);
        for (Layer layer : layers) {
            layer(
                    out,
                    DxfHandles.of(layer),
                    DxfLayer.name(layer),
                    DxfLayer.colour(layer),
                    DxfLayer.lineType(layer.lineType()),
                    DxfLayer.weight(layer));
        }
        out.tag(0, "ENDTAB");
    }

    private static void layer(
            DxfTags out, int handle, String name, int colour, String lineType, int weight) {
        record(out, "LAYER", handle, DxfHandles.LAYER_TABLE, "AcDbLayerTableRecord", name);
        out.tag(70, 0).tag(62, colour).tag(6, lineType).tag(370, weight);
        out.handle(390, DxfHandles.PLOT_STYLE);
    }

    /** A single-stroke font every reader has or replaces. */
    private static void styles(DxfTags out) {
        table(out, "STYLE", DxfHandles.STYLE_TABLE, 1);
        record(
                out,
                "STYLE",
                DxfHandles.STYLE,
                DxfHandles.STYLE_TABLE,
                "AcDbTextStyleTableRecord",
                STANDARD);
        out.tag(70, 0).real(40, 0).real(41, 1).real(50, 0).tag(71, 0).real(42, 2.5);
        out.tag(3, "txt").tag(4, "").tag(0, "ENDTAB");
    }

    private static void applications(DxfTags out) {
        table(out, "APPID", DxfHandles.APPID_TABLE, 1);
        record(
                out,
                "APPID",
                DxfHandles.APPID,
                DxfHandles.APPID_TABLE,
                "AcDbRegAppTableRecord",
                "ACAD");
        out.tag(70, 0).tag(0, "ENDTAB");
    }

    /** Its handle has a code of its own, 105: 5 means something else in this table. */
    private static void dimensionStyles(DxfTags out) {
        table(out, "DIMSTYLE", DxfHandles.DIMSTYLE_TABLE, 1).tag(100, "AcDbDimStyleTable");
        out.tag(0, "DIMSTYLE").handle(105, DxfHandles.DIMSTYLE);
        out.handle(330, DxfHandles.DIMSTYLE_TABLE).tag(100, "AcDbSymbolTableRecord");
        out.tag(100, "AcDbDimStyleTableRecord").tag(2, STANDARD).tag(70, 0);
        out.tag(0, "ENDTAB");
    }

    private static void blockRecords(DxfTags out) {
        table(out, "BLOCK_RECORD", DxfHandles.BLOCK_RECORD_TABLE, 2);
        blockRecord(out, MODEL_SPACE, DxfHandles.MODEL_SPACE, DxfHandles.MODEL_LAYOUT);
        blockRecord(out, PAPER_SPACE, DxfHandles.PAPER_SPACE, DxfHandles.PAPER_LAYOUT);
        out.tag(0, "ENDTAB");
    }

    private static void blockRecord(DxfTags out, String name, int handle, int layout) {
        record(
                out,
                "BLOCK_RECORD",
                handle,
                DxfHandles.BLOCK_RECORD_TABLE,
                "AcDbBlockTableRecord",
                name);
        out.handle(340, layout);
    }
}
