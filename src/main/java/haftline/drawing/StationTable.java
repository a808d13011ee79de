package haftline.drawing;

import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.IsotonicFit;
import haftline.measure.LengthText;
import haftline.measure.Units;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Diameters and places of the turned wood in two rows over the drawing, a column for each station
 * with a leader down to it. Columns that would overlap are moved apart, no further than needed.
 */
final class StationTable {
    /** Over the drawing to where the leaders bend, mm. */
    private static final double CLEAR_MM = 5;

    private static final double BEND_MM = 4;

    /** A figure of five signs and a gap, mm. */
    private static final double COLUMN_MM = 10.5;

    /** Inches carry one sign more. */
    private static final double INCH_COLUMN_MM = 12.8;

    private static final double ROW_MM = 4.5;
    private static final double GAP_MM = 1;

    /** Stations closer than this are one column, mm. */
    private static final double SAME_MM = 0.05;

    private final DimensionStyle style;
    private final LengthText lengths;
    private final double columnMm;
    private final List<Stop> stops = new ArrayList<>();

    private record Stop(double x, double r) {}

    StationTable(DimensionStyle style, LengthText lengths, Handle handle) {
        this.style = style;
        this.lengths = lengths;
        this.columnMm = lengths.units() == Units.MM ? COLUMN_MM : INCH_COLUMN_MM;
        add(-handle.tenon().lengthMm() / 2, handle.tenon().diameterMm() / 2);
        for (PlacedNode node : handle.nodes()) {
            add(node.x(), node.radiusMm());
        }
        for (Detail detail : handle.brief().shape().details()) {
            double x = detail.place().x(handle.buttX());
            add(x, handle.outline().r(x));
        }
        double end = handle.outline().rBefore(handle.buttX());
        if (end > 0) {
            add(handle.buttX(), end);
        }
        stops.sort(Comparator.comparingDouble(Stop::x));
    }

    private void add(double x, double r) {
        if (stops.stream().noneMatch(stop -> Math.abs(stop.x() - x) < SAME_MM)) {
            stops.add(new Stop(x, r));
        }
    }

    /** Height of the table over the level where it begins, mm. */
    static double heightMm() {
        return CLEAR_MM + BEND_MM + GAP_MM + 2 * ROW_MM;
    }

    /**
     * The table.
     *
     * @param aboveYMm top of what is drawn
     * @param titleXMm where the rows' titles end
     */
    List<Element> over(double aboveYMm, double titleXMm) {
        List<Element> out = new ArrayList<>();
        double bend = aboveYMm + CLEAR_MM;
        double foot = bend + BEND_MM;
        double lower = foot + GAP_MM;
        double[] columns = columns();
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            Vertex at = new Vertex(stop.x(), stop.r());
            out.add(
                    Path.from(columns[i], foot)
                            .lineTo(stop.x(), bend)
                            .lineTo(stop.x(), stop.r())
                            .open(Layer.DIMENSION));
            out.add(new Arrowhead(Layer.DIMENSION, at, -90, style.arrowMm()));
            out.add(text(columns[i], lower, Anchor.MIDDLE, lengths.contour(stop.x())));
            out.add(text(columns[i], lower + ROW_MM, Anchor.MIDDLE, lengths.contour(2 * stop.r())));
        }
        double title = Math.min(titleXMm, columns[0] - columnMm / 2);
        out.add(text(title, lower, Anchor.END, "from shoulder"));
        out.add(text(title, lower + ROW_MM, Anchor.END, Dimension.DIAMETER));
        return out;
    }

    private Text text(double x, double y, Anchor anchor, String string) {
        return Text.level(Layer.DIMENSION, x, y, style.textHeightMm(), anchor, string);
    }

    /** Places of the columns: each as near its station as the others let it. */
    private double[] columns() {
        double[] columns = new double[stops.size()];
        for (int i = 0; i < columns.length; i++) {
            columns[i] = stops.get(i).x() - i * columnMm;
        }
        columns = IsotonicFit.of(columns);
        for (int i = 0; i < columns.length; i++) {
            columns[i] += i * columnMm;
        }
        return columns;
    }
}
