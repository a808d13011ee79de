package haftline.write.pdf;

import haftline.drawing.Vertex;

/**
 * From a drawing to a page: stretched along each axis, then moved.
 *
 * @param factorX what level lengths are multiplied by
 * @param factorY what upright lengths are multiplied by
 * @param atX place on the paper, mm from its left edge, of the drawing's x = 0
 * @param atY place on the paper, mm from its bottom edge, of the drawing's y = 0
 */
record Mapping(double factorX, double factorY, double atX, double atY) {
    /** A PDF unit is 1/72 in (ISO 32000-1, 8.3.2.3); an inch is 25.4 mm. */
    static final double UNITS_PER_MM = 72 / 25.4;

    /** Things that belong to the paper itself. */
    static final Mapping PAPER = new Mapping(1, 1, 0, 0);

    float x(Vertex vertex) {
        return (float) ((atX + factorX * vertex.xMm()) * UNITS_PER_MM);
    }

    float y(Vertex vertex) {
        return (float) ((atY + factorY * vertex.yMm()) * UNITS_PER_MM);
    }
}
