package haftline.ui.board;

import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;

/** Draws one mark on a canvas, no more of it than is seen between two places. */
final class Brush {
    private final GraphicsContext gc;
    private final double from;
    private final double to;
    private final Mark mark;
    private final double[] n;

    private Brush(Mark mark, GraphicsContext gc, double from, double to) {
        this.gc = gc;
        this.from = from;
        this.to = to;
        this.mark = mark;
        n = mark.numbers;
    }

    /**
     * Draws a mark with all that it needs, whatever was drawn before.
     *
     * @param mark the mark
     * @param gc the canvas
     * @param from left edge of what is seen of it, px
     * @param to right edge, px
     */
    static void draw(Mark mark, GraphicsContext gc, double from, double to) {
        new Brush(mark, gc, from, to).draw();
    }

    private void draw() {
        switch (mark.kind) {
            case RECTANGLE -> {
                gc.setFill(mark.colour);
                gc.fillRect(n[0], n[1], n[2], n[3]);
            }
            case OVAL -> {
                gc.setFill(mark.colour);
                gc.fillOval(n[0], n[1], n[2], n[3]);
            }
            case RING -> {
                pen();
                gc.strokeOval(n[0], n[1], n[2], n[3]);
            }
            case AREA -> {
                gc.setFill(mark.colour);
                path();
                gc.fill();
            }
            case STROKE -> stroke();
            case WORDS -> {
                Mark.Lettered lettered = (Mark.Lettered) mark.what;
                gc.setFill(mark.colour);
                gc.setFont(lettered.font());
                gc.setTextAlign(mark.align);
                gc.fillText(lettered.text(), n[0], n[1]);
            }
            case PICTURE -> {
                gc.setGlobalAlpha(n[4]);
                gc.drawImage((Image) mark.what, n[0], n[1], n[2], n[3]);
                gc.setGlobalAlpha(1);
            }
            default -> throw new IllegalStateException(mark.kind.name());
        }
    }

    private void stroke() {
        if (isLevelDashes()) {
            levelDashes();
            return;
        }
        pen();
        if (mark.isRun) {
            run(from - Mark.BESIDE, to + Mark.BESIDE);
        } else {
            path();
        }
        gc.stroke();
    }

    private boolean isLevelDashes() {
        return mark.dashes.length > 0 && mark.steps.length == 2 && n[1] == n[3] && n[0] <= n[2];
    }

    /** Dashes along the axis are rectangles: the same pixels as of a path, and quicker. */
    private void levelDashes() {
        gc.setFill(mark.colour);
        double at = n[0];
        for (int i = 0; at < n[2] && at < to; i++) {
            double end = Math.min(n[2], at + mark.dashes[i % mark.dashes.length]);
            if (i % 2 == 0 && end > from) {
                gc.fillRect(at, n[1] - mark.width / 2, end - at, mark.width);
            }
            at = end;
        }
    }

    private void pen() {
        gc.setStroke(mark.colour);
        gc.setLineWidth(mark.width);
        gc.setLineDashes(mark.dashes);
        gc.setLineDashOffset(0);
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.MITER);
    }

    /** The stretch between two places, dashes as they would fall in the whole. */
    private void run(double left, double right) {
        gc.beginPath();
        boolean begun = false;
        double along = 0;
        double before = 0;
        int at = 0;
        for (byte step : mark.steps) {
            int end = at + (step == Mark.CURVE ? 4 : 0);
            if (step == Mark.MOVE) {
                begun = false;
                along = 0;
            } else if (n[end] >= left && n[at - 2] <= right) {
                if (!begun) {
                    gc.moveTo(n[at - 2], n[at - 1]);
                    before = along;
                    begun = true;
                }
                if (step == Mark.LINE) {
                    gc.lineTo(n[at], n[at + 1]);
                } else {
                    gc.bezierCurveTo(n[at], n[at + 1], n[at + 2], n[at + 3], n[end], n[end + 1]);
                }
            }
            if (step == Mark.LINE && mark.dashes.length > 0) {
                along += Math.hypot(n[at] - n[at - 2], n[at + 1] - n[at - 1]);
            }
            at = end + 2;
        }
        gc.setLineDashOffset(before);
    }

    private void path() {
        gc.beginPath();
        int at = 0;
        for (byte step : mark.steps) {
            switch (step) {
                case Mark.MOVE -> gc.moveTo(n[at++], n[at++]);
                case Mark.LINE -> gc.lineTo(n[at++], n[at++]);
                case Mark.CURVE ->
                        gc.bezierCurveTo(n[at++], n[at++], n[at++], n[at++], n[at++], n[at++]);
                default -> gc.closePath();
            }
        }
    }
}
