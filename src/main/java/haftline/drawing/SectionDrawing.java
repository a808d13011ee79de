package haftline.drawing;

import haftline.curve.Outline;
import haftline.figures.Figures;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Handle;
import haftline.measure.LengthText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The full section of a piece at full size on a sheet of its own: the turned wood cut along its
 * axis, the metal parts for reference, the main dimensions, the title block.
 */
public final class SectionDrawing {
    private final Figures figures;
    private final Handle handle;
    private final SheetFormat format;
    private final LengthText lengths;
    private final UnaryOperator<Outline> shown;
    private final DimensionStyle style = DimensionStyle.standard();

    private SectionDrawing(Figures figures, SheetFormat format, UnaryOperator<Outline> shown) {
        this.figures = figures;
        this.handle = figures.handle();
        this.format = format;
        this.lengths = format.lengths();
        this.shown = shown;
    }

    /**
     * The section of a piece.
     *
     * @param figures its figures
     * @param title what is written beside it
     * @param format paper, and unit of the dimensions
     * @param shown how a curve is to be drawn: as it is, or fitted with lines and arcs for files
     *     that hold nothing else
     * @return the drawing, x from the shoulder, y from the axis
     */
    public static Drawing of(
            Figures figures, TitleBlock title, SheetFormat format, UnaryOperator<Outline> shown) {
        return new SectionDrawing(figures, format, shown).drawing(title);
    }

    private Drawing drawing(TitleBlock title) {
        SectionView section = SectionView.of(figures, shown);
        Bounds object = section.object();
        double left = object.minXMm();
        List<Element> dimensions =
                new ArrayList<>(
                        new StationTable(style, lengths, handle).over(object.maxYMm(), left));
        dimensions.addAll(under(object.minYMm()));
        Group measured = new Group("dimensions", dimensions);
        Bounds view = bounds(measured);
        for (Group group : section.groups()) {
            view = view.with(bounds(group));
        }
        Bounds frame = SheetFrame.around(view, title, format);
        Group sheet = new Group("sheet", SheetFrame.of(frame, title, format));
        List<Group> groups = new ArrayList<>(section.groups());
        groups.add(measured);
        groups.add(sheet);
        return new Drawing(
                title.piece(),
                "Section of a turned handle at full size, lengths in "
                        + format.units().words()
                        + ".",
                groups);
    }

    private static Bounds bounds(Group group) {
        return Bounds.union(group.elements().stream().map(Element::bounds).toList());
    }

    /** Depths of the bores nearest to the wood, then tenon and wood, then the whole length. */
    private List<Element> under(double belowYMm) {
        DimensionRows rows = DimensionRows.below(style, belowYMm - style.rowMm());
        int tangRows = bore(rows, 0, handle.tangBore());
        // Bores that reach past each other, as those of a stopped piece may, are not dimensioned
        // in one row.
        int capRow = figures.web().map(web -> web.mm() < 0).orElse(false) ? tangRows : 0;
        int row =
                Math.max(tangRows, handle.capBore().map(cap -> bore(rows, capRow, cap)).orElse(0));
        Outline outline = handle.outline();
        Vertex tenonEnd = new Vertex(handle.tenonEndX(), -handle.tenon().diameterMm() / 2);
        Vertex shoulder = new Vertex(0, -outline.rAfter(0));
        Vertex butt = new Vertex(handle.buttX(), -outline.rBefore(handle.buttX()));
        rows.add(row, tenonEnd, shoulder, figure(handle.tenon().lengthMm()));
        rows.add(row, shoulder, butt, figure(handle.buttX()));
        double end = handle.ferruleFaceX() + handle.lengths().overallMm();
        double front = handle.brief().kit().ferrule().outside().mean() / 2;
        double back = handle.lengths().capMm() > 0 ? 0 : butt.yMm();
        rows.add(
                row + 1,
                new Vertex(handle.ferruleFaceX(), -front),
                new Vertex(end, back),
                figure(handle.lengths().overallMm()));
        return rows.elements();
    }

    /** Adds a bore's steps, the shallowest nearest to the wood; tells the next row. */
    private int bore(DimensionRows rows, int firstRow, Bore bore) {
        List<BoreStep> steps = new ArrayList<>(bore.steps());
        steps.sort(Comparator.comparingDouble(BoreStep::depthMm));
        int row = firstRow;
        for (BoreStep step : steps) {
            double r = step.diameterMm() / 2;
            rows.add(
                    row++,
                    new Vertex(bore.faceX(), -r),
                    new Vertex(bore.xAt(step.depthMm()), -r),
                    Dimension.DIAMETER
                            + lengths.dimension(step.diameterMm(), 2)
                            + " × "
                            + figure(step.depthMm()));
        }
        return row;
    }

    private String figure(double mm) {
        return lengths.dimension(mm, 1);
    }
}
