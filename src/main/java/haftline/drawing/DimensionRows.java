package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.DoubleStream;

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
            line(out, length, barriers(length, tops, bottoms));
        }
        return List.copyOf(out);
    }

    /** Extension lines that pass through the row of a length, and where its neighbours end. */
    private double[] barriers(
            Length length, Map<Double, Double> tops, Map<Double, Double> bottoms) {
        double y = lineYMm(length.row());
        DoubleStream.Builder all = DoubleStream.builder();
        bottoms.forEach(
                (x, bottom) -> {
                    if (bottom <= y && tops.get(x) > y) {
                        all.add(x);
                    }
                });
        for (Length other : lengths) {
            if (other.row() == length.row() && other != length) {
                all.add(other.left().xMm());
                all.add(other.right().xMm());
            }
        }
        return all.build().sorted().distinct().toArray();
    }

    /**
     * Draws a length with its figure as near the middle as no barrier passes through it; where
     * there is no room between its ends, behind its end or else in front of it.
     */
    private void line(List<Element> out, Length length, double[] barriers) {
        double y = lineYMm(length.row());
        double left = length.left().xMm();
        double right = length.right().xMm();
        Text text = Dimension.text(style, new Vertex(0, y), 0, Anchor.MIDDLE, length.figure());
        double room = text.estimatedWidthMm() + 2 * style.textGapMm();
        double middle = (left + right) / 2;
        double best = Double.NaN;
        double from = left;
        for (int i = 0; i <= barriers.length; i++) {
            double to = i < barriers.length ? Math.min(barriers[i], right) : right;
            if (to - from >= room) {
                double near = Math.max(from + room / 2, Math.min(to - room / 2, middle));
                if (!(Math.abs(near - middle) >= Math.abs(best - middle))) {
                    best = near;
                }
            }
            from = Math.max(from, to);
        }
        if (Double.isNaN(best)) {
            double tail = 2 * style.arrowMm() + room / 2;
            double behind = right + tail;
            double before = left - tail;
            best =
                    isFree(behind, room, barriers) || !isFree(before, room, barriers)
                            ? behind
                            : before;
        }
        Dimension.line(
                out,
                style,
                new Vertex(left, y),
                new Vertex(right, y),
                0,
                best - room / 2 - left,
                best + room / 2 - left);
        out.add(Dimension.text(style, new Vertex(best, y), 0, Anchor.MIDDLE, length.figure()));
    }

    private static boolean isFree(double middle, double room, double[] barriers) {
        for (double barrier : barriers) {
            if (Math.abs(barrier - middle) < room / 2) {
                return false;
            }
        }
        return true;
    }

    private double lineYMm(int row) {
        return firstYMm - row * style.rowMm();
    }
}
