package haftline.write.pdf;

import haftline.drawing.Anchor;
import haftline.drawing.Circle;
import haftline.drawing.Element;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import java.io.IOException;
import java.util.List;

/** What stands on a sheet beside the drawing: check bars, label, seams and register marks. */
final class SheetMarks {
    private static final double BAR_WIDTH_MM = 0.2;
    private static final double LETTER_MM = SheetBars.LETTER_MM;

    /** Seams and register marks alone have this colour, so that they are told from the drawing. */
    private static final float[] REGISTER_RGB = {0, 0.45f, 0.75f};

    private static final double REGISTER_WIDTH_MM = 0.12;
    private static final double CROSS_MM = 2.6;
    private static final double RING_MM = 1.5;
    private static final List<Double> SEAM_DASH_MM = List.of(4.0, 2.0);

    /** Marks stand at these shares of a seam's length between two sheets. */
    private static final double[] MARK_SHARES = {0.25, 0.75};

    private final PageCanvas canvas;
    private final Tiling tiling;
    private final SheetBars bars;

    SheetMarks(PageCanvas canvas, Tiling tiling) {
        this.canvas = canvas;
        this.tiling = tiling;
        this.bars = new SheetBars(tiling.sheet());
    }

    /** A bar along each edge of the field: both lengths both ways. */
    void bars() throws IOException {
        canvas.colour(new float[] {0, 0, 0});
        canvas.pen(BAR_WIDTH_MM, List.of());
        put(bars.bars());
    }

    private void put(List<Element> elements) throws IOException {
        for (Element element : elements) {
            if (element instanceof Text text) {
                canvas.text(text, Mapping.PAPER);
            } else {
                canvas.stroke((Path) element, Mapping.PAPER);
            }
        }
    }

    /** Number of the sheet and how to print it; above, its title or what is corrected. */
    void label(String title, int column, int row) throws IOException {
        put(
                tiling.count() == 1
                        ? bars.label(title)
                        : bars.label(
                                "Sheet "
                                        + tiling.number(column, row)
                                        + " of "
                                        + tiling.count()
                                        + ", column "
                                        + (column + 1)
                                        + ", row "
                                        + (row + 1)
                                        + ". ",
                                title));
    }

    /**
     * The seams of one sheet with their marks, at places of the drawing, so that both neighbours
     * show the very same marks.
     */
    void seams(int column, int row, Mapping mapping) throws IOException {
        canvas.colour(REGISTER_RGB);
        if (column > 0) {
            upright(column - 1, row, mapping);
        }
        if (column < tiling.columns() - 1) {
            upright(column, row, mapping);
        }
        if (row > 0) {
            level(column, row - 1, mapping);
        }
        if (row < tiling.rows() - 1) {
            level(column, row, mapping);
        }
    }

    private void upright(int leftColumn, int row, Mapping mapping) throws IOException {
        double x = tiling.seamX(leftColumn);
        double bottom = tiling.shown(leftColumn, row).minYMm();
        double top = tiling.shown(leftColumn, row).maxYMm();
        seam(new Vertex(x, bottom), new Vertex(x, top), mapping);
        String text =
                "sheets "
                        + tiling.number(leftColumn, row)
                        + " and "
                        + tiling.number(leftColumn + 1, row)
                        + ": cut one here, lay it on the other";
        canvas.text(
                new Text(
                        Layer.TEXT,
                        new Vertex(x - 0.8, (bottom + top) / 2),
                        LETTER_MM,
                        Anchor.MIDDLE,
                        90,
                        text),
                mapping);
    }

    private void level(int column, int upperRow, Mapping mapping) throws IOException {
        double y = tiling.seamY(upperRow);
        double left = tiling.shown(column, upperRow).minXMm();
        double right = tiling.shown(column, upperRow).maxXMm();
        seam(new Vertex(left, y), new Vertex(right, y), mapping);
        String text =
                "sheets "
                        + tiling.number(column, upperRow)
                        + " and "
                        + tiling.number(column, upperRow + 1)
                        + ": cut one here, lay it on the other";
        canvas.text(
                Text.level(Layer.TEXT, (left + right) / 2, y + 0.8, LETTER_MM, Anchor.MIDDLE, text),
                mapping);
    }

    private void seam(Vertex from, Vertex to, Mapping mapping) throws IOException {
        canvas.pen(REGISTER_WIDTH_MM, SEAM_DASH_MM);
        canvas.stroke(Path.line(Layer.SCORE, from, to), mapping);
        canvas.pen(REGISTER_WIDTH_MM, List.of());
        for (double share : MARK_SHARES) {
            mark(
                    new Vertex(
                            from.xMm() + share * (to.xMm() - from.xMm()),
                            from.yMm() + share * (to.yMm() - from.yMm())),
                    mapping);
        }
    }

    private void mark(Vertex at, Mapping mapping) throws IOException {
        canvas.stroke(new Circle(Layer.SCORE, at, RING_MM), mapping);
        canvas.stroke(
                Path.line(Layer.SCORE, at.towards(180, CROSS_MM), at.towards(0, CROSS_MM)),
                mapping);
        canvas.stroke(
                Path.line(Layer.SCORE, at.towards(270, CROSS_MM), at.towards(90, CROSS_MM)),
                mapping);
    }
}
