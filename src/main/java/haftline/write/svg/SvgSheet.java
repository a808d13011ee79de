package haftline.write.svg;

import haftline.drawing.Bounds;
import haftline.drawing.Vertex;
import haftline.measure.NumberText;

/**
 * Where a drawing lies on its sheet: whole millimetres in size, origin at the upper left, y turned
 * down in the numbers.
 *
 * @param leftMm the drawing's x at the sheet's left edge
 * @param topMm the drawing's y at the sheet's top edge
 * @param widthMm width of the sheet
 * @param heightMm height of the sheet
 */
record SvgSheet(double leftMm, double topMm, double widthMm, double heightMm) {
    /** A tenth of a micrometre: a hundredth of the finest tolerance that is drawn. */
    static final int DECIMALS = 4;

    /** Below this nothing differs in {@link #DECIMALS} decimals. */
    static final double RESOLUTION_MM = 5e-5;

    /** The least sheet in whole millimetres round some bounds and a margin. */
    static SvgSheet round(Bounds bounds, double marginMm) {
        Bounds with = bounds.grown(marginMm);
        double left = Math.floor(with.minXMm());
        double top = Math.ceil(with.maxYMm());
        return new SvgSheet(
                left, top, Math.ceil(with.maxXMm()) - left, top - Math.floor(with.minYMm()));
    }

    String x(Vertex vertex) {
        return length(vertex.xMm() - leftMm);
    }

    String y(Vertex vertex) {
        return length(topMm - vertex.yMm());
    }

    String place(Vertex vertex) {
        return x(vertex) + " " + y(vertex);
    }

    String length(double mm) {
        return NumberText.upTo(mm, DECIMALS);
    }
}
