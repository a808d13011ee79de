package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Rows of lengths along x under an object. Lengths that end at one x share one extension line,
 * drawn once and as long as the lowest of them needs.
 */
public final class DimensionRows {
    private static final int MOST_ROWS = 100;

    private final DimensionStyle style;
    private final double firstYMm;
    private final List<Length> lengths = new ArrayList<>();

    private record Length(int row, Vertex left, Vertex right, String figure) {}

    private DimensionRows(DimensionStyle style, double firstYMm) {
        this.style = style;
        this.firstYMm = firstYMm;
    }

    /**
     * No rows yet.
     *
     * @param style sizes
     * @param firstYMm y of the uppermost dimension line, under the object
     * @return rows to add to
     */
    public static DimensionRows below(DimensionStyle style, double firstYMm) {
        return new DimensionRows(style, firstYMm);
    }

    /**
     * Adds a length.
     *
     * @param row its row, 0 the uppermost
     * @param a one end of what is measured
     * @param b the other end, at another x
     * @param figure what it says
     * @return these rows
     */
    public DimensionRows add(int row, Vertex a, Vertex b, String figure) {
        Checks.within("row", row, 0, MOST_ROWS);
        boolean inOrder = a.xMm() <= b.xMm();
        lengths.add(new Length(row, inOrder ? a : b, inOrder ? b : a, figure));
        return this;
    }

    /**
     * Draws them.
     *
     * @return lines, arrows and text on {@link Layer#DIMENSION}
     */
    public List<Element> elements() {
        Map<Double, Double> tops = new TreeMap<>();
        Map<Double, Double> bottoms = new TreeMap<>();
        List<Element> out = new ArrayList<>();
        for (Length length : lengths) {
            double y = lineYMm(length.row());
            for (Vertex end : List.of(length.left(), length.right())) {
                tops.merge(end.xMm(), end.yMm(), Math::min);
                bottoms.merge(end.xMm(), y, Math::min);
            }
        }
        tops.forEach(
                (x, top) ->
                        Dimension.extension(
                                out, style, new Vertex(x, top), new Vertex(x, bottoms.get(x))));
        for (Length length : lengths) {
            double y = lineYMm(length.row());
            Vertex from = new Vertex(length.left().xMm(), y);
            Vertex to = new Vertex(length.right().xMm(), y);
            Dimension.line(out, style, from, to, 0, length.figure());
        }
        return List.copyOf(out);
    }

    private double lineYMm(int row) {
        return firstYMm - row * style.rowMm();
    }
}
