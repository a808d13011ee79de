package haftline.ui.board;

import java.util.Arrays;
import javafx.scene.canvas.GraphicsContext;

/** A long flat line from left to right, in pieces, stroked strip by strip. */
final class Trace {
    /** Room for the ends of what is drawn in a strip to lie outside it, px. */
    private static final double BESIDE = 8;

    private double[] xs = new double[512];
    private double[] ys = new double[512];

    /** How far along its piece a point lies, px; 0 where a piece begins. */
    private double[] along = new double[512];

    private int count;

    void move(double x, double y) {
        add(x, y, 0);
    }

    void line(double x, double y) {
        add(x, y, along[count - 1] + Math.hypot(x - xs[count - 1], y - ys[count - 1]));
    }

    private void add(double x, double y, double far) {
        if (count == xs.length) {
            xs = Arrays.copyOf(xs, 2 * count);
            ys = Arrays.copyOf(ys, 2 * count);
            along = Arrays.copyOf(along, 2 * count);
        }
        xs[count] = x;
        ys[count] = y;
        along[count++] = far;
    }

    /** Strokes it in the pen's style, dashes running on from strip to strip. */
    void stroke(Pen pen, Sheet sheet) {
        if (count > 0) {
            pen.strips(
                    xs[0] - BESIDE,
                    xs[count - 1] + BESIDE,
                    sheet,
                    (from, to) -> between(pen.gc, from - BESIDE, to + BESIDE));
        }
    }

    private void between(GraphicsContext gc, double from, double to) {
        int i = 0;
        while (i + 1 < count && xs[i + 1] < from) {
            i++;
        }
        while (i < count && xs[i] <= to) {
            gc.setLineDashOffset(along[i]);
            gc.beginPath();
            gc.moveTo(xs[i], ys[i]);
            for (i++; i < count && along[i] > 0; i++) {
                gc.lineTo(xs[i], ys[i]);
                if (xs[i] > to) {
                    break;
                }
            }
            gc.stroke();
        }
    }
}
