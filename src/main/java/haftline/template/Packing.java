package haftline.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Cards set down one after another, each where its top comes to lie lowest, on the skyline of those
 * before it, either way up.
 */
final class Packing {
    /** Columns from one place tried to the next before the best is looked at closely. */
    private static final int STRIDE = 5;

    /** What fits to the last figure fits, mm. */
    private static final double ROUNDING_MM = 1e-6;

    /** A rise of the skyline that is the side of a card, mm. */
    private static final double EDGE_MM = 4;

    /** A card at its place. */
    private record Placing(Silhouette shape, int column, double y) {}

    private final SheetSize size;
    private final double widthMm;
    private final int columns;
    private final double wasteWeight;
    private final double heightMm;
    private final double insetMm;
    private final List<double[]> skylines = new ArrayList<>();
    private final List<List<Placing>> sheets = new ArrayList<>();

    /**
     * An empty packing.
     *
     * @param size the sheet
     * @param widthMm how much of the sheet's width may be used, grown shapes counted
     * @param wasteWeight what the mean waste under a card counts against the height of its top
     */
    Packing(SheetSize size, double widthMm, double wasteWeight) {
        this.size = size;
        this.widthMm = widthMm;
        this.columns = (int) Math.ceil(widthMm / Silhouette.COLUMN_MM);
        this.wasteWeight = wasteWeight;
        this.insetMm = insetMm(size);
        this.heightMm = size.heightMm() - 2 * insetMm;
    }

    /** From the sheet's edge to where grown shapes may begin. */
    private static double insetMm(SheetSize size) {
        return size.marginMm() - Silhouette.reachMm(size.gapMm());
    }

    /** Width of the whole sheet for grown shapes, mm. */
    static double widthMm(SheetSize size) {
        return size.widthMm() - 2 * insetMm(size);
    }

    static boolean fits(Silhouette shape, SheetSize size) {
        return shape.width() <= widthMm(size) + ROUNDING_MM
                && shape.height() <= size.heightMm() - 2 * insetMm(size) + ROUNDING_MM;
    }

    /** Sets a card down on the first sheet that has room. */
    void add(Silhouette up, Silhouette down) {
        for (int sheet = 0; ; sheet++) {
            if (sheet == skylines.size()) {
                // One column more: a shape may end a rounding past the last.
                skylines.add(new double[columns + 1]);
                sheets.add(new ArrayList<>());
            }
            best = null;
            bestCost = Double.POSITIVE_INFINITY;
            look(skylines.get(sheet), up);
            look(skylines.get(sheet), down);
            if (best != null) {
                settle(skylines.get(sheet), best);
                sheets.get(sheet).add(best);
                return;
            }
        }
    }

    /**
     * Holes left under cards, mm2: of two packings that use up the same, the one with less is
     * nearer to using up less.
     */
    double waste() {
        return waste;
    }

    private double waste;
    private double bestCost;
    private Placing best;

    /** Looks for the best place: along the sheet in strides, at every edge, then close by. */
    private void look(double[] skyline, Silhouette shape) {
        int last = (int) Math.floor((widthMm - shape.width() + ROUNDING_MM) / Silhouette.COLUMN_MM);
        int before = best == null ? -1 : best.column;
        Placing former = best;
        for (int column = 0; column <= last; column += STRIDE) {
            tryAt(skyline, shape, column);
        }
        tryAt(skyline, shape, last);
        for (int i = 1; i < columns; i++) {
            if (Math.abs(skyline[i] - skyline[i - 1]) > EDGE_MM) {
                tryAt(skyline, shape, Math.min(last, i));
                tryAt(skyline, shape, Math.min(last, i - shape.lower().length));
            }
        }
        if (best != former || before >= 0) {
            int centre = best == null ? 0 : best.column;
            for (int column = centre - STRIDE + 1;
                    column < centre + STRIDE && column <= last;
                    column++) {
                tryAt(skyline, shape, column);
            }
        }
    }

    private void tryAt(double[] skyline, Silhouette shape, int column) {
        double[] lower = shape.lower();
        int n = lower.length;
        if (column < 0) {
            return;
        }
        double room = Math.min(heightMm + ROUNDING_MM, bestCost) - shape.height();
        double y = 0;
        for (int i = 0; i < n; i++) {
            double rest = skyline[column + i] - lower[i];
            if (rest > y) {
                y = rest;
                if (y > room) {
                    return;
                }
            }
        }
        double waste = 0;
        for (int i = 0; i < n; i++) {
            waste += y + lower[i] - skyline[column + i];
        }
        double cost = y + shape.height() + wasteWeight * waste / n;
        if (y <= room && cost < bestCost) {
            bestCost = cost;
            best = new Placing(shape, column, y);
        }
    }

    private void settle(double[] skyline, Placing placing) {
        double[] lower = placing.shape.lower();
        double[] upper = placing.shape.upper();
        for (int i = 0; i < upper.length; i++) {
            waste += (placing.y + lower[i] - skyline[placing.column + i]) * Silhouette.COLUMN_MM;
            skyline[placing.column + i] = placing.y + upper[i];
        }
    }

    /**
     * What the packing uses up, mm2: the rectangles round the cards of each sheet, and another
     * whole sheet for each sheet but the first, so that fewer sheets always win.
     */
    double used() {
        double used = (sheets.size() - 1) * widthMm(size) * heightMm;
        for (List<Placing> sheet : sheets) {
            double width = 0;
            double height = 0;
            for (Placing placing : sheet) {
                double left = placing.column * Silhouette.COLUMN_MM;
                width = Math.max(width, left + placing.shape.width());
                height = Math.max(height, placing.y + placing.shape.height());
            }
            used += width * height;
        }
        return used;
    }

    /** The cards where they lie. */
    List<SheetLayout.Sheet> sheets() {
        List<SheetLayout.Sheet> out = new ArrayList<>();
        for (List<Placing> sheet : sheets) {
            List<Placing> inOrder = new ArrayList<>(sheet);
            inOrder.sort(
                    Comparator.comparingDouble((Placing placing) -> placing.y)
                            .thenComparingInt(placing -> placing.column));
            List<Card> cards = inOrder.stream().map(this::placed).toList();
            Box used = cards.get(0).box();
            for (Card card : cards) {
                used = used.with(card.box());
            }
            out.add(new SheetLayout.Sheet(cards, used));
        }
        return out;
    }

    private Card placed(Placing placing) {
        Silhouette shape = placing.shape;
        Card card = shape.turned() ? shape.card().turned() : shape.card();
        return card.moved(
                insetMm + placing.column * Silhouette.COLUMN_MM - shape.offsetX(),
                insetMm + placing.y - shape.offsetY());
    }
}
