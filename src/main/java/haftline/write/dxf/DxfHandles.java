package haftline.write.dxf;

import haftline.drawing.Layer;
import haftline.drawing.LineType;

/**
 * The handles of everything that is in each file, whatever is drawn. Fixed, so that two files
 * differ only where their drawings do.
 */
final class DxfHandles {
    static final int NONE = 0;

    static final int BLOCK_RECORD_TABLE = 0x1;
    static final int LAYER_TABLE = 0x2;
    static final int STYLE_TABLE = 0x3;
    static final int LTYPE_TABLE = 0x5;
    static final int VIEW_TABLE = 0x6;
    static final int UCS_TABLE = 0x7;
    static final int VPORT_TABLE = 0x8;
    static final int APPID_TABLE = 0x9;
    static final int DIMSTYLE_TABLE = 0xA;

    static final int ROOT_DICTIONARY = 0xC;
    static final int GROUP_DICTIONARY = 0xD;
    static final int LAYOUT_DICTIONARY = 0xE;
    static final int PLOT_STYLE_DICTIONARY = 0xF;
    static final int PLOT_STYLE = 0x10;

    static final int VPORT = 0x11;
    static final int STYLE = 0x12;
    static final int APPID = 0x13;
    static final int DIMSTYLE = 0x14;
    static final int BY_BLOCK = 0x15;
    static final int BY_LAYER = 0x16;
    static final int LAYER_0 = 0x17;

    static final int MODEL_SPACE = 0x18;
    static final int MODEL_BLOCK = 0x19;
    static final int MODEL_END = 0x1A;
    static final int MODEL_LAYOUT = 0x1B;
    static final int PAPER_SPACE = 0x1C;
    static final int PAPER_BLOCK = 0x1D;
    static final int PAPER_END = 0x1E;
    static final int PAPER_LAYOUT = 0x1F;

    private static final int FIRST_LINE_TYPE = 0x20;
    private static final int FIRST_LAYER = 0x30;

    /** Entities count up from here. */
    static final int FIRST_ENTITY = 0x100;

    private DxfHandles() {}

    static int of(LineType type) {
        return FIRST_LINE_TYPE + type.ordinal();
    }

    static int of(Layer layer) {
        return FIRST_LAYER + layer.ordinal();
    }
}
