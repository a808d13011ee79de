package haftline.write.dxf;

/**
 * The OBJECTS section: the dictionaries and the two layouts that every file of this version has.
 */
final class DxfObjects {
    private static final String LAYOUTS = "ACAD_LAYOUT";
    private static final String PLOT_STYLES = "ACAD_PLOTSTYLENAME";
    private static final String NORMAL = "Normal";

    /**
     * Plot flags: use standard scale, print line weights, and for the model that it is the model.
     */
    private static final int PAPER_FLAGS = 688;

    private static final int MODEL_FLAGS = 1712;

    private DxfObjects() {}

    static DxfTags objects() {
        DxfTags out = new DxfTags().tag(0, "SECTION").tag(2, "OBJECTS");
        dictionary(out, DxfHandles.ROOT_DICTIONARY, DxfHandles.NONE);
        entry(out, "ACAD_GROUP", DxfHandles.GROUP_DICTIONARY);
        entry(out, LAYOUTS, DxfHandles.LAYOUT_DICTIONARY);
        entry(out, PLOT_STYLES, DxfHandles.PLOT_STYLE_DICTIONARY);
        dictionary(out, DxfHandles.GROUP_DICTIONARY, DxfHandles.ROOT_DICTIONARY);
        dictionary(out, DxfHandles.LAYOUT_DICTIONARY, DxfHandles.ROOT_DICTIONARY);
        entry(out, "Model", DxfHandles.MODEL_LAYOUT);
        entry(out, "Layout1", DxfHandles.PAPER_LAYOUT);
        plotStyles(out);
        layout(out, "Model", 0, MODEL_FLAGS, DxfHandles.MODEL_LAYOUT, DxfHandles.MODEL_SPACE);
        layout(out, "Layout1", 1, PAPER_FLAGS, DxfHandles.PAPER_LAYOUT, DxfHandles.PAPER_SPACE);
        return out.tag(0, "ENDSEC");
    }

    private static void dictionary(DxfTags out, int handle, int owner) {
        out.tag(0, "DICTIONARY").handle(5, handle).handle(330, owner);
        out.tag(100, "AcDbDictionary").tag(281, 1);
    }

    private static void entry(DxfTags out, String name, int handle) {
        out.tag(3, name).handle(350, handle);
    }

    /** Every layer names a plot style; this is the one there is. */
    private static void plotStyles(DxfTags out) {
        out.tag(0, "ACDBDICTIONARYWDFLT").handle(5, DxfHandles.PLOT_STYLE_DICTIONARY);
        out.handle(330, DxfHandles.ROOT_DICTIONARY).tag(100, "AcDbDictionary").tag(281, 1);
        entry(out, NORMAL, DxfHandles.PLOT_STYLE);
        out.tag(100, "AcDbDictionaryWithDefault").handle(340, DxfHandles.PLOT_STYLE);
        out.tag(0, "ACDBPLACEHOLDER").handle(5, DxfHandles.PLOT_STYLE);
        out.handle(330, DxfHandles.PLOT_STYLE_DICTIONARY);
    }

    private static void layout(
            DxfTags out, String name, int order, int flags, int handle, int block) {
        out.tag(0, "LAYOUT").handle(5, handle).handle(330, DxfHandles.LAYOUT_DICTIONARY);
        out.tag(100, "AcDbPlotSettings").tag(1, "").tag(2, "none_device").tag(4, "").tag(6, "");
        for (int code = 40; code <= 49; code++) {
            out.real(code, 0);
        }
        out.real(140, 0).real(141, 0).real(142, 1).real(143, 1);
        // Paper in millimetres, not turned, one to one.
        out.tag(70, flags).tag(72, 1).tag(73, 0).tag(74, 5).tag(7, "").tag(75, 16);
        out.real(147, 1).real(148, 0).real(149, 0);
        out.tag(100, "AcDbLayout").tag(1, name).tag(70, 1).tag(71, order);
        out.place(10, 0, 0).place(11, 297, 210).point(12, 0, 0).point(14, 0, 0).point(15, 0, 0);
        out.real(146, 0).point(13, 0, 0).point(16, 1, 0).point(17, 0, 1).tag(76, 0);
        out.handle(330, block);
    }
}
