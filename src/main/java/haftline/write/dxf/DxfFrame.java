package haftline.write.dxf;

import haftline.drawing.Bounds;
import haftline.drawing.Layer;
import java.util.List;

/**
 * What stands round the entities: header, classes and blocks.
 *
 * @param profile what the file is for
 * @param layers layers that are drawn on
 * @param extents what the drawing takes up
 */
record DxfFrame(DxfProfile profile, List<Layer> layers, Bounds extents) {
    private static final int MILLIMETRES = 4;
    private static final int METRIC = 1;
    private static final int BY_LAYER = 256;
    private static final int WEIGHT_BY_LAYER = -1;
    private static final double TEXT_HEIGHT_MM = 2.5;

    DxfTags header(int nextHandle) {
        DxfTags out = new DxfTags().tag(0, "SECTION").tag(2, "HEADER");
        out.tag(9, "$ACADVER").tag(1, profile.version());
        // Nothing outside ASCII is written; a code page must be named all the same.
        out.tag(9, "$DWGCODEPAGE").tag(3, "ANSI_1252");
        out.tag(9, "$INSBASE").point(10, 0, 0);
        out.tag(9, "$EXTMIN").point(10, extents.minXMm(), extents.minYMm());
        out.tag(9, "$EXTMAX").point(10, extents.maxXMm(), extents.maxYMm());
        out.tag(9, "$LIMMIN").place(10, extents.minXMm(), extents.minYMm());
        out.tag(9, "$LIMMAX").place(10, extents.maxXMm(), extents.maxYMm());
        out.tag(9, "$LTSCALE").real(40, 1);
        out.tag(9, "$TEXTSIZE").real(40, TEXT_HEIGHT_MM);
        out.tag(9, "$TEXTSTYLE").tag(7, DxfTables.STANDARD);
        out.tag(9, "$CLAYER").tag(8, "0");
        out.tag(9, "$CELTYPE").tag(6, "ByLayer");
        out.tag(9, "$CECOLOR").tag(62, BY_LAYER);
        out.tag(9, "$CELTSCALE").real(40, 1);
        out.tag(9, "$DIMSTYLE").tag(2, DxfTables.STANDARD);
        // Decimal lengths and degrees, anticlockwise from +x.
        out.tag(9, "$LUNITS").tag(70, 2);
        out.tag(9, "$LUPREC").tag(70, 3);
        out.tag(9, "$AUNITS").tag(70, 0);
        out.tag(9, "$AUPREC").tag(70, 2);
        out.tag(9, "$ANGBASE").real(50, 0);
        out.tag(9, "$ANGDIR").tag(70, 0);
        out.tag(9, "$TILEMODE").tag(70, 1);
        out.tag(9, "$MEASUREMENT").tag(70, METRIC);
        out.tag(9, "$CELWEIGHT").tag(370, WEIGHT_BY_LAYER);
        out.tag(9, "$LWDISPLAY").tag(290, 1);
        out.tag(9, "$INSUNITS").tag(70, MILLIMETRES);
        out.tag(9, "$HANDSEED").handle(5, nextHandle);
        return out.tag(0, "ENDSEC");
    }

    DxfTags classes() {
        return new DxfTags().tag(0, "SECTION").tag(2, "CLASSES").tag(0, "ENDSEC");
    }

    DxfTags blocks() {
        DxfTags out = new DxfTags().tag(0, "SECTION").tag(2, "BLOCKS");
        block(
                out,
                DxfTables.MODEL_SPACE,
                DxfHandles.MODEL_SPACE,
                DxfHandles.MODEL_BLOCK,
                DxfHandles.MODEL_END);
        block(
                out,
                DxfTables.PAPER_SPACE,
                DxfHandles.PAPER_SPACE,
                DxfHandles.PAPER_BLOCK,
                DxfHandles.PAPER_END);
        return out.tag(0, "ENDSEC");
    }

    private static void block(DxfTags out, String name, int record, int begin, int end) {
        boolean isPaper = record == DxfHandles.PAPER_SPACE;
        out.tag(0, "BLOCK").handle(5, begin).handle(330, record).tag(100, "AcDbEntity");
        paper(out, isPaper).tag(8, "0").tag(100, "AcDbBlockBegin").tag(2, name).tag(70, 0);
        out.point(10, 0, 0).tag(3, name).tag(1, "");
        out.tag(0, "ENDBLK").handle(5, end).handle(330, record).tag(100, "AcDbEntity");
        paper(out, isPaper).tag(8, "0").tag(100, "AcDbBlockEnd");
    }

    private static DxfTags paper(DxfTags out, boolean isPaper) {
        return isPaper ? out.tag(67, 1) : out;
    }
}
