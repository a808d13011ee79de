package haftline.sheet.page;

import haftline.drawing.Anchor;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.set.production.Progress;
import java.util.List;

/** Boxes to tick off on paper: for every piece and step one for each piece made. */
final class TickBoxes {
    private static final double PIECE_MM = 38;
    private static final double BOX_MM = 3;
    private static final double STEP_MM = 4.2;

    /** More steps than these go in a band of their own. */
    private static final int MOST_STEPS = 8;

    /** More boxes than these in one field are a number to write instead. */
    private static final int MOST_BOXES = 60;

    private final TextPages pages;
    private final Progress progress;

    private TickBoxes(TextPages pages, Progress progress) {
        this.pages = pages;
        this.progress = progress;
    }

    static void write(TextPages pages, Progress progress) {
        new TickBoxes(pages, progress).write();
    }

    private void write() {
        List<String> steps = progress.steps();
        for (int from = 0; from < steps.size(); from += MOST_STEPS) {
            band(from, Math.min(steps.size(), from + MOST_STEPS));
        }
    }

    private void band(int from, int to) {
        double room = pages.rightMm() - TextPages.LEFT_MM - PIECE_MM;
        double column = room / Math.max(4, to - from);
        int perRow = (int) Math.max(1, Math.floor((column - 2) / STEP_MM));
        TableBlock.title(pages, "Tick off", 2 * TableBlock.ROW_MM + height(0, perRow));
        pages.down(TableBlock.ROW_MM - 0.6);
        for (int step = from; step < to; step++) {
            pages.text(
                    TextPages.LEFT_MM + PIECE_MM + (step - from) * column,
                    pages.y(),
                    TableBlock.SMALL_MM,
                    Anchor.START,
                    Type.cut(progress.steps().get(step), column - 1, TableBlock.SMALL_MM));
        }
        pages.down(1.5);
        for (int i = 0; i < progress.pieces().size(); i++) {
            piece(i, from, to, column, perRow);
        }
        pages.down(4);
    }

    private double height(int piece, int perRow) {
        int quantity = progress.pieces().get(piece).quantity();
        int rows = quantity > MOST_BOXES ? 1 : (quantity + perRow - 1) / perRow;
        return Math.max(2, rows) * STEP_MM + 3;
    }

    private void piece(int index, int from, int to, double column, int perRow) {
        Progress.PieceProgress piece = progress.pieces().get(index);
        double height = height(index, perRow);
        pages.need(height);
        pages.rule(TextPages.LEFT_MM, pages.rightMm(), pages.y(), Layer.TEXT);
        double top = pages.y() - 1.5;
        pages.text(
                TextPages.LEFT_MM,
                top - 3,
                TableBlock.TEXT_MM,
                Anchor.START,
                Type.cut(piece.piece(), PIECE_MM - 2, TableBlock.TEXT_MM));
        pages.text(
                TextPages.LEFT_MM,
                top - 6.8,
                TableBlock.SMALL_MM,
                Anchor.START,
                piece.quantity() + " to make");
        for (int step = from; step < to; step++) {
            double x = TextPages.LEFT_MM + PIECE_MM + (step - from) * column;
            int done = piece.done().get(step);
            if (piece.quantity() > MOST_BOXES) {
                pages.rule(x, x + column - 3, top - 5, Layer.TEXT);
                pages.text(
                        x,
                        top - 4,
                        TableBlock.TEXT_MM,
                        Anchor.START,
                        done > 0 ? Integer.toString(done) : "");
            } else {
                for (int n = 0; n < piece.quantity(); n++) {
                    box(x + n % perRow * STEP_MM, top - (1 + n / perRow) * STEP_MM, n < done);
                }
            }
        }
        pages.down(height);
    }

    private void box(double x, double y, boolean isDone) {
        pages.box(x, y, BOX_MM, BOX_MM, Layer.TEXT);
        if (isDone) {
            pages.add(
                    Path.from(x + 0.6, y + 1.6)
                            .lineTo(x + 1.3, y + 0.7)
                            .lineTo(x + 2.6, y + 2.7)
                            .open(Layer.OUTLINE));
        }
    }
}
