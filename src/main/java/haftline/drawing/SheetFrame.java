package haftline.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * The frame of a sheet, its title block in the lower right corner (after the habits of ISO 5457 and
 * ISO 7200, from memory) and the notes beside it.
 */
final class SheetFrame {
    static final double BLOCK_HEIGHT_MM = 42;

    /** Paper off the roll is cut to whole centimetres. */
    private static final double ROLL_STEP_MM = 10;

    private static final double BLOCK_WIDTH_MM = 168;

    /** What the block leaves the notes beside it, mm: a caution of 47 signs. */
    private static final double NOTES_WIDTH_MM = 109;

    private static final double SMALL_MM = 2;
    private static final double TEXT_MM = 2.5;
    private static final double NAME_MM = 5;
    private static final double PAD_MM = 1.5;
    private static final double LINE_MM = 4.4;

    /** Capitals run wider than the prose that texts are planned by. */
    private static final double CAPITALS = 1.15;

    /** More reasons than these say nothing new on a sheet that is not to be made. */
    private static final int MOST_REASONS = 4;

    private static final double MARK_ROW_MM = 16;

    private final Bounds bounds;
    private final TitleBlock title;
    private final SheetFormat format;
    private final double blockWidthMm;
    private final List<Element> out = new ArrayList<>();

    private SheetFrame(Bounds bounds, TitleBlock title, SheetFormat format) {
        this.bounds = bounds;
        this.title = title;
        this.format = format;
        this.blockWidthMm = Math.min(BLOCK_WIDTH_MM, bounds.widthMm() - NOTES_WIDTH_MM);
    }

    /**
     * The frame round a view: the smallest paper that holds it, the view in the middle over the
     * title block. Its sides lie on whole millimetres.
     */
    static Bounds around(Bounds seen, TitleBlock title, SheetFormat format) {
        Bounds view =
                new Bounds(
                        seen.minXMm(),
                        seen.minYMm(),
                        seen.maxXMm(),
                        seen.maxYMm() + markHeight(title));
        double needWidth = view.widthMm() + 2 * SheetFormat.MARGIN_MM;
        double needHeight = view.heightMm() + BLOCK_HEIGHT_MM + 2 * SheetFormat.MARGIN_MM;
        double width = 0;
        double height = 0;
        for (SheetFormat.Frame frame : format.frames()) {
            width = frame.widthMm();
            height = frame.heightMm();
            if (width >= needWidth && height >= needHeight) {
                break;
            }
        }
        width = Math.max(width, ROLL_STEP_MM * Math.ceil(needWidth / ROLL_STEP_MM));
        height = Math.max(height, ROLL_STEP_MM * Math.ceil(needHeight / ROLL_STEP_MM));
        double middleX = (view.minXMm() + view.maxXMm()) / 2;
        double middleY = (view.minYMm() + view.maxYMm()) / 2;
        double left = Math.rint(middleX - width / 2);
        double bottom = Math.rint(middleY - (height - BLOCK_HEIGHT_MM) / 2 - BLOCK_HEIGHT_MM);
        return new Bounds(left, bottom, left + width, bottom + height);
    }

    /** The frame with everything that is written in it. */
    static List<Element> of(Bounds bounds, TitleBlock title, SheetFormat format) {
        return new SheetFrame(bounds, title, format).elements();
    }

    private List<Element> elements() {
        box(bounds.minXMm(), bounds.minYMm(), bounds.maxXMm(), bounds.maxYMm(), Layer.OUTLINE);
        block();
        notes();
        if (!title.stopped().isEmpty()) {
            mark();
        }
        return List.copyOf(out);
    }

    private void block() {
        double right = bounds.maxXMm();
        double left = right - blockWidthMm;
        double bottom = bounds.minYMm();
        double top = bottom + BLOCK_HEIGHT_MM;
        line(left, bottom, left, top, Layer.OUTLINE);
        line(left, top, right, top, Layer.OUTLINE);
        double[] rows = {bottom, bottom + 10, bottom + 20, bottom + 28, top};
        for (int i = 1; i < rows.length - 1; i++) {
            line(left, rows[i], right, rows[i], Layer.TEXT);
        }
        double width = blockWidthMm;
        cell(left, rows[3], width * 2 / 3, "piece", title.piece(), NAME_MM);
        cell(left + width * 2 / 3, rows[3], width / 3, "set", title.set(), TEXT_MM);
        line(left + width * 2 / 3, rows[2], left + width * 2 / 3, top, Layer.TEXT);
        wide(
                left,
                rows[2],
                width * 2 / 3,
                "section at full size, finished, lengths in " + format.units().heading());
        wide(
                left + width * 2 / 3,
                rows[2],
                width / 3,
                title.stopped().isEmpty() ? title.verdict() : TitleBlock.MARK);
        row(
                left,
                rows[1],
                rows[2],
                new double[] {1 / 3.0, 1 / 3.0, 1 / 3.0},
                "stock",
                title.stock(),
                "kit",
                title.kit(),
                "batch",
                title.batch());
        row(
                left,
                rows[0],
                rows[1],
                new double[] {1 / 3.0, 1 / 6.0, 1 / 6.0, 1 / 3.0},
                "fit of the tang",
                title.fit(),
                "scale",
                "1:1",
                "units",
                format.units().symbol(),
                "projection",
                "");
        projection(left + width * 5 / 6 + 6, (rows[0] + rows[1]) / 2);
    }

    private void row(double left, double bottom, double top, double[] shares, String... words) {
        double x = left;
        for (int i = 0; i < shares.length; i++) {
            double width = shares[i] * blockWidthMm;
            cell(x, bottom, width, words[2 * i], words[2 * i + 1], TEXT_MM);
            if (i > 0) {
                line(x, bottom, x, top, Layer.TEXT);
            }
            x += width;
        }
    }

    /** A cell: what it is in small letters over what it says. */
    private void cell(double x, double bottom, double width, String what, String says, double h) {
        text(x + PAD_MM, bottom + h + 2 * PAD_MM + 0.7, SMALL_MM, what, width);
        text(x + PAD_MM, bottom + PAD_MM + 0.5, h, says, width);
    }

    private void wide(double x, double bottom, double width, String says) {
        if (!says.isEmpty()) {
            text(x + PAD_MM, bottom + 2.6, TEXT_MM, says, width);
        }
    }

    /** The sign of first-angle projection (ISO 5456-2): a frustum, and its view from the left. */
    private void projection(double x, double y) {
        double large = 3;
        double small = 1.5;
        double length = 6;
        out.add(
                Path.from(x - length - 2, y - small)
                        .lineTo(x - length - 2, y + small)
                        .lineTo(x - 2, y + large)
                        .lineTo(x - 2, y - large)
                        .close(Layer.TEXT));
        double eye = x + 2 + large;
        out.add(new Circle(Layer.TEXT, new Vertex(eye, y), large));
        out.add(new Circle(Layer.TEXT, new Vertex(eye, y), small));
        line(x - length - 3.2, y, eye + large + 1.2, y, Layer.CENTRE);
        line(eye, y - large - 1.2, eye, y + large + 1.2, Layer.CENTRE);
    }

    private void notes() {
        double left = bounds.minXMm() + 2 * PAD_MM;
        double width = bounds.widthMm() - blockWidthMm - 3 * PAD_MM;
        double y = bounds.minYMm() + BLOCK_HEIGHT_MM - LINE_MM;
        // Where there is no room for all, a note gives way, never a caution.
        int room = (int) ((BLOCK_HEIGHT_MM - 10) / LINE_MM) - title.caution().size();
        List<String> lines =
                new ArrayList<>(title.notes().subList(0, Math.min(room, title.notes().size())));
        lines.addAll(title.caution());
        for (String note : lines) {
            text(left, y, TEXT_MM, note, width);
            y -= LINE_MM;
        }
        out.addAll(format.checkBar(new Vertex(left, bounds.minYMm() + 8)).elements());
    }

    private static double markHeight(TitleBlock title) {
        return title.stopped().isEmpty()
                ? 0
                : MARK_ROW_MM + LINE_MM * Math.min(MOST_REASONS, title.stopped().size());
    }

    private void mark() {
        double x = (bounds.minXMm() + bounds.maxXMm()) / 2;
        double y = bounds.maxYMm() - 12;
        Text mark =
                Text.level(
                        Layer.TEXT,
                        x,
                        y,
                        TitleBlock.MARK_HEIGHT_MM,
                        Anchor.MIDDLE,
                        TitleBlock.MARK);
        out.add(mark);
        double half = mark.estimatedWidthMm() / 2 * CAPITALS + PAD_MM;
        box(
                x - half,
                y - 2 * PAD_MM,
                x + half,
                y + TitleBlock.MARK_HEIGHT_MM + 2 * PAD_MM,
                Layer.OUTLINE);
        y -= MARK_ROW_MM - 8;
        for (String why :
                title.stopped().subList(0, Math.min(MOST_REASONS, title.stopped().size()))) {
            String shown = Text.shortened(why, bounds.widthMm() - 20, TEXT_MM);
            out.add(Text.level(Layer.TEXT, x, y, TEXT_MM, Anchor.MIDDLE, shown));
            y -= LINE_MM;
        }
    }

    private void text(double x, double y, double height, String string, double room) {
        double width = room - 2 * PAD_MM;
        double size = Text.fittingMm(string, width, height);
        String shown = Text.shortened(string, width, size);
        out.add(Text.level(Layer.TEXT, x, y, size, Anchor.START, shown));
    }

    private void line(double x0, double y0, double x1, double y1, Layer layer) {
        out.add(Path.line(layer, new Vertex(x0, y0), new Vertex(x1, y1)));
    }

    private void box(double x0, double y0, double x1, double y1, Layer layer) {
        out.add(Path.from(x0, y0).lineTo(x1, y0).lineTo(x1, y1).lineTo(x0, y1).close(layer));
    }
}
