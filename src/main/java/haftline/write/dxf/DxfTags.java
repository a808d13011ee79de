package haftline.write.dxf;

import haftline.drawing.Vertex;
import haftline.measure.NumberText;
import java.util.Locale;

/** A run of tags: a group code on one line, its value on the next. */
final class DxfTags {
    /**
     * A millionth of a micrometre: far under any tolerance, and the same vertex is the same text.
     */
    static final int DECIMALS = 9;

    /**
     * A bulge has no unit; twelve decimals keep the arc of a metre to a millionth of a micrometre.
     */
    private static final int BULGE_DECIMALS = 12;

    private final StringBuilder out = new StringBuilder();

    DxfTags tag(int code, String value) {
        out.append(code).append('\n').append(value).append('\n');
        return this;
    }

    DxfTags tag(int code, int value) {
        return tag(code, Integer.toString(value));
    }

    DxfTags handle(int code, int handle) {
        return tag(code, Integer.toHexString(handle).toUpperCase(Locale.ROOT));
    }

    DxfTags real(int code, double value) {
        return tag(code, decimal(value, DECIMALS));
    }

    DxfTags bulge(double value) {
        return parameter(42, value);
    }

    /** A parameter in radians: twelve decimals, as for a bulge. */
    DxfTags parameter(int code, double value) {
        return tag(code, decimal(value, BULGE_DECIMALS));
    }

    /** Two coordinates; the code of y is that of x plus 10. */
    DxfTags place(int code, double x, double y) {
        return real(code, x).real(code + 10, y);
    }

    /** Three coordinates, the third 0. */
    DxfTags point(int code, double x, double y) {
        return point(code, x, y, 0);
    }

    DxfTags point(int code, double x, double y, double z) {
        return place(code, x, y).real(code + 20, z);
    }

    DxfTags point(int code, Vertex vertex) {
        return point(code, vertex.xMm(), vertex.yMm());
    }

    DxfTags add(DxfTags other) {
        out.append(other.out);
        return this;
    }

    String text() {
        return out.toString();
    }

    /** A number that is seen to be a real one: 12.0, not 12. */
    private static String decimal(double value, int decimals) {
        String text = NumberText.upTo(value, decimals);
        return text.indexOf('.') < 0 ? text + ".0" : text;
    }
}
