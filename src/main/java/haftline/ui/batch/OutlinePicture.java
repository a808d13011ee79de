package haftline.ui.batch;

import haftline.curve.OutlineDeviation;
import haftline.measure.Units;
import haftline.set.PieceChange;
import haftline.ui.model.BatchRows;
import haftline.ui.model.OutlinePair;
import haftline.ui.theme.Letters;
import haftline.ui.theme.Palette;
import java.util.Optional;
import javafx.geometry.VPos;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** The outlines of a piece with two batches over one another, their deviation enlarged. */
final class OutlinePicture extends Region {
    private static final double HEIGHT = 176;
    private static final double MARGIN = 16;

    /** Above the outline stand the words, px. */
    private static final double WORDS = 42;

    private static final Font SMALL = Font.font(11);

    /** A piece of its line before a name, and the air behind a name, px. */
    private static final double SAMPLE = 28;

    private static final double GAP = 14;

    private final Canvas canvas = new Canvas();
    private Optional<PieceChange> change = Optional.empty();
    private Optional<OutlinePair> pair = Optional.empty();
    private String before = "";
    private String after = "";
    private Units units = Units.MM;
    private Palette palette = Palette.PAPER;

    OutlinePicture() {
        getStyleClass().add("outline-picture");
        setMinHeight(HEIGHT);
        setPrefHeight(HEIGHT);
        setMaxHeight(HEIGHT);
        setMinWidth(0);
        canvas.setManaged(false);
        getChildren().add(canvas);
        widthProperty().addListener(o -> paint());
    }

    void show(Optional<PieceChange> now, String batchBefore, String batchAfter, Units shownIn) {
        change = now;
        pair = now.flatMap(OutlinePair::of);
        before = batchBefore;
        after = batchAfter;
        units = shownIn;
        paint();
    }

    void colours(Palette now) {
        palette = now;
        paint();
    }

    private void paint() {
        canvas.setWidth(Math.max(1, getWidth()));
        canvas.setHeight(HEIGHT);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.clearRect(0, 0, canvas.getWidth(), HEIGHT);
        setAccessibleText("");
        if (pair.isEmpty() || getWidth() < 6 * MARGIN) {
            return;
        }
        OutlinePair p = pair.get();
        int last = p.x().length - 1;
        double room = HEIGHT - WORDS - MARGIN;
        double tallest = 1;
        for (int i = 0; i <= last; i++) {
            tallest = Math.max(tallest, Math.max(p.before()[i], enlarged(p, i)));
        }
        double scale = Math.min((getWidth() - 2 * MARGIN) / p.x()[last], room / tallest);
        double left = Math.round((getWidth() - p.x()[last] * scale) / 2);
        double axis = HEIGHT - MARGIN + 0.5;
        words(gc, p);
        gc.setStroke(palette.soft());
        gc.setLineWidth(1);
        gc.setLineDashes(16, 3, 3, 3);
        gc.strokeLine(left - 8, axis, left + p.x()[last] * scale + 8, axis);
        gc.setLineDashes();
        double[] xs = new double[2 * (last + 1)];
        double[] ys = new double[2 * (last + 1)];
        for (int i = 0; i <= last; i++) {
            xs[i] = left + p.x()[i] * scale;
            ys[i] = axis - p.before()[i] * scale;
            xs[2 * last + 1 - i] = xs[i];
            ys[2 * last + 1 - i] = axis - enlarged(p, i) * scale;
        }
        gc.setGlobalAlpha(0.28);
        gc.setFill(palette.accent());
        gc.fillPolygon(xs, ys, xs.length);
        gc.setGlobalAlpha(1);
        gc.setStroke(palette.ink());
        gc.setLineWidth(1.6);
        line(gc, xs, ys, 0, last + 1);
        gc.setStroke(palette.accent());
        gc.setLineWidth(1.4);
        gc.setLineDashes(6, 3);
        line(gc, xs, ys, last + 1, xs.length);
        gc.setLineDashes();
        change.flatMap(PieceChange::outline)
                .filter(off -> p.times() > 1 || Math.abs(off.mm()) > 1)
                .ifPresent(off -> mark(gc, p, off, left, axis, scale));
    }

    private static double enlarged(OutlinePair p, int i) {
        return Math.max(0, p.before()[i] + p.times() * (p.after()[i] - p.before()[i]));
    }

    private static void line(GraphicsContext gc, double[] xs, double[] ys, int from, int to) {
        gc.beginPath();
        gc.moveTo(xs[from], ys[from]);
        for (int i = from + 1; i < to; i++) {
            gc.lineTo(xs[i], ys[i]);
        }
        gc.stroke();
    }

    /** Where the outlines are furthest apart. */
    private void mark(
            GraphicsContext gc,
            OutlinePair p,
            OutlineDeviation off,
            double left,
            double axis,
            double scale) {
        double x = left + off.atX() * scale;
        gc.setStroke(palette.accent());
        gc.setLineWidth(1);
        gc.strokeLine(x, WORDS - 4, x, axis);
        gc.setFill(palette.accent());
        gc.fillPolygon(
                new double[] {x - 4, x + 4, x}, new double[] {WORDS - 8, WORDS - 8, WORDS}, 3);
    }

    private void words(GraphicsContext gc, OutlinePair p) {
        String deviation = BatchRows.deviation(change.orElseThrow(), units).orElse("");
        gc.setTextBaseline(VPos.BASELINE);
        gc.setTextAlign(TextAlignment.LEFT);
        gc.setFont(SMALL);
        gc.setLineWidth(1.6);
        gc.setStroke(palette.ink());
        gc.strokeLine(MARGIN, 12, MARGIN + 22, 12);
        gc.setFill(palette.ink());
        double half = getWidth() / 2;
        String inUse = Letters.cut(before + ", in use", SMALL, half - MARGIN - SAMPLE - GAP);
        gc.fillText(inUse, MARGIN + SAMPLE, 16);
        String times = p.times() > 1 ? ", deviation drawn " + p.times() + " times as large" : "";
        // From the middle on, unless there it has too little room.
        double wanted = SAMPLE + Letters.width(after + times, SMALL) + MARGIN;
        double least = MARGIN + SAMPLE + Letters.width(inUse, SMALL) + GAP;
        double x = Math.max(least, Math.min(half, getWidth() - wanted));
        gc.setStroke(palette.accent());
        gc.setLineDashes(6, 3);
        gc.strokeLine(x, 12, x + 22, 12);
        gc.setLineDashes();
        gc.setFill(palette.accent());
        double room = getWidth() - MARGIN - x - SAMPLE;
        gc.fillText(Letters.cut(after + times, SMALL, room), x + SAMPLE, 16);
        gc.setFill(palette.soft());
        gc.fillText(
                Letters.cut("Outline: " + deviation, SMALL, getWidth() - 2 * MARGIN), MARGIN, 31);
        canvas.setAccessibleText("Outlines with " + before + " and " + after + ": " + deviation);
    }
}
