package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Bounds;
import haftline.drawing.Dimension;
import haftline.drawing.DimensionRows;
import haftline.drawing.DimensionStyle;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Placing;
import haftline.drawing.SectionView;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.figures.Figures;
import haftline.figures.Station;
import haftline.figures.Stations;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import haftline.sheet.Remark;
import haftline.sheet.SheetPiece;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The section across a sheet: full size where the sheet is wide enough, else at a scale of ISO 5455
 * that is said; the stations in rings above, lengths and bores below.
 */
final class SectionFigure {
    /** Full size, and the reductions of ISO 5455. */
    private static final int[] REDUCTIONS = {1, 2, 5, 10};

    private static final DimensionStyle STYLE = new DimensionStyle(2.6, 2.4, 1, 1.2, 0.7, 5.2);

    /** More drills than these make rows that nobody reads: the table has them all. */
    private static final int MOST_BORE_ROWS = 2;

    private static final double SIDE_MM = 4;
    private static final double NOTE_MM = 2.1;

    private final Figures figures;
    private final List<Remark> remarks;
    private final Handle handle;
    private final LengthText lengths;
    private final SectionView view;
    private final int reduction;

    SectionFigure(SheetPiece piece, LengthText lengths, double widthMm) {
        this(piece, lengths, widthMm, 1);
    }

    /**
     * A section.
     *
     * @param leastReduction 1 for as large as it fits
     */
    SectionFigure(SheetPiece piece, LengthText lengths, double widthMm, int leastReduction) {
        this.figures = piece.figures();
        this.remarks = piece.remarks();
        this.handle = figures.handle();
        this.lengths = lengths;
        this.view = SectionView.of(figures, UnaryOperator.identity());
        this.reduction = reduction(view.object().widthMm(), widthMm - 2 * SIDE_MM, leastReduction);
    }

    private static int reduction(double width, double room, int least) {
        for (int by : REDUCTIONS) {
            if (by >= least && width / by <= room) {
                return by;
            }
        }
        return (int) Math.ceil(width / room);
    }

    /** Puts the bare section on the page, its upper edge at a level. */
    Placing place(Ink ink, double x, double width, double topY) {
        Bounds object = view.object();
        double scale = 1.0 / reduction;
        double middle = scale * (object.minXMm() + object.maxXMm()) / 2;
        Placing placing =
                new Placing(scale, x + width / 2 - middle, topY - scale * object.maxYMm());
        for (Group group : view.groups()) {
            group.elements().forEach(element -> ink.add(placing.of(element)));
        }
        return placing;
    }

    /** Sets the figure with numbers and dimensions; tells its height. */
    double set(Ink ink, double x, double top, double width) {
        ink.text(x, top - NOTE_MM, NOTE_MM, Anchor.START, false, scaleNote());
        double objectTop = top - Balloons.heightMm();
        Placing placing = place(ink, x, width, objectTop);
        List<Balloons.Balloon> balloons = new ArrayList<>();
        for (Station station : Stations.of(handle)) {
            Vertex at = new Vertex(station.x(), station.diameterMm() / 2);
            balloons.add(
                    new Balloons.Balloon(Integer.toString(balloons.size() + 1), placing.of(at)));
        }
        double note = Type.widthMm(scaleNote(), NOTE_MM) + 4;
        boolean crowded = balloons.get(0).at().xMm() < x + note + SIDE_MM;
        Balloons.draw(ink, balloons, objectTop, crowded ? x + note : x, x + width);
        double objectFoot = objectTop - heightMm();
        List<Element> dimensions = dimensions(placing, objectFoot - STYLE.rowMm());
        ink.addAll(dimensions);
        PlaceMarks.draw(ink, handle, placing, remarks, dimensions);
        double foot = objectFoot;
        for (Element element : dimensions) {
            foot = Math.min(foot, element.bounds().minYMm());
        }
        return top - foot;
    }

    int reduction() {
        return reduction;
    }

    /** The whole figure's height. */
    double wholeHeightMm(double width) {
        return set(new Ink(), 0, 0, width);
    }

    /** Height of wood and metal on the page. */
    double heightMm() {
        return view.object().heightMm() / reduction;
    }

    String scaleNote() {
        return reduction == 1 ? "section, full size" : "section, scale 1:" + reduction;
    }

    private List<Element> dimensions(Placing placing, double firstY) {
        DimensionRows rows = DimensionRows.below(STYLE, firstY);
        int tangRows = bore(rows, placing, 0, handle.tangBore());
        boolean meet = figures.web().map(web -> web.mm() < 0).orElse(false);
        int capRows =
                handle.capBore()
                        .map(cap -> bore(rows, placing, meet ? tangRows : 0, cap))
                        .orElse(0);
        int row = Math.max(tangRows, capRows);
        double butt = handle.outline().rBefore(handle.buttX());
        Vertex tenonEnd = placing.of(at(handle.tenonEndX(), -handle.tenon().diameterMm() / 2));
        Vertex shoulder = placing.of(at(0, -handle.outline().rAfter(0)));
        Vertex end = placing.of(at(handle.buttX(), -butt));
        String tenon = lengths.contour(handle.tenon().lengthMm());
        rows.add(row, tenonEnd, shoulder, tenon);
        // A figure that does not go between its arrows would stand in its neighbour's way.
        boolean tight =
                shoulder.xMm() - tenonEnd.xMm()
                        < new Text(
                                                Layer.TEXT,
                                                shoulder,
                                                STYLE.textHeightMm(),
                                                Anchor.START,
                                                0,
                                                tenon)
                                        .estimatedWidthMm()
                                + 2 * STYLE.textGapMm();
        row += tight ? 1 : 0;
        rows.add(row, shoulder, end, lengths.contour(handle.buttX()));
        double front = handle.brief().kit().ferrule().outside().mean() / 2;
        double overall = handle.lengths().overallMm();
        rows.add(
                row + 1,
                placing.of(at(handle.ferruleFaceX(), -front)),
                placing.of(
                        at(
                                handle.ferruleFaceX() + overall,
                                handle.lengths().capMm() > 0 ? 0 : -butt)),
                lengths.contour(overall));
        return rows.elements();
    }

    /** Adds the deepest steps of a bore; tells the next row. */
    private int bore(DimensionRows rows, Placing placing, int firstRow, Bore bore) {
        List<BoreStep> steps = new ArrayList<>(bore.steps());
        steps.sort(Comparator.comparingDouble(BoreStep::depthMm));
        if (steps.size() > MOST_BORE_ROWS) {
            steps = List.of(bore.deepest());
        }
        int row = firstRow;
        for (BoreStep step : steps) {
            double r = step.diameterMm() / 2;
            rows.add(
                    row++,
                    placing.of(at(bore.faceX(), -r)),
                    placing.of(at(bore.xAt(step.depthMm()), -r)),
                    Dimension.DIAMETER
                            + lengths.drill(step.diameterMm())
                            + " × "
                            + lengths.contour(step.depthMm()));
        }
        return row;
    }

    private static Vertex at(double x, double y) {
        return new Vertex(x, y);
    }
}
