package haftline.ui.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * All that is drawn in one frame of the board, as a list of marks in their order. It draws nothing
 * itself: {@link Tiles} draws again only where the list differs from that of the frame before.
 */
final class Ink {
    private static final double[] SOLID = {};

    /** How far a chord may leave a curve, px. */
    private static final double CHORD_PX = 0.02;

    private final List<Mark> marks = new ArrayList<>(600);
    private Color fill = Color.BLACK;
    private Color stroke = Color.BLACK;
    private double width = 1;
    private double[] dashes = SOLID;
    private byte[] steps = new byte[64];
    private double[] points = new double[128];
    private int stepCount;
    private int pointCount;

    List<Mark> marks() {
        return marks;
    }

    void setFill(Color colour) {
        fill = colour;
    }

    /** How lines are drawn from now on; no dashes for a full line. */
    void setStroke(Color colour, double px, double... dash) {
        stroke = colour;
        width = px;
        dashes = dash;
    }

    void fillRect(double x, double y, double w, double h) {
        fillRect(fill, x, y, w, h);
    }

    void fillOval(double x, double y, double w, double h) {
        oval(x, y, w, h);
        fill();
    }

    void strokeOval(double x, double y, double w, double h) {
        oval(x, y, w, h);
        stroke();
    }

    private void oval(double x, double y, double w, double h) {
        int chords = (int) Math.ceil(Math.PI / Math.sqrt(2 * CHORD_PX / (Math.max(w, h) / 2)));
        beginPath();
        for (int i = 0; i < chords; i++) {
            double a = 2 * Math.PI * i / chords;
            step(
                    i == 0 ? Mark.MOVE : Mark.LINE,
                    x + w / 2 * (1 + Math.cos(a)),
                    y + h / 2 * (1 + Math.sin(a)));
        }
        closePath();
    }

    /** A frame, of four lines that share no pixel but at the corners. */
    void strokeRect(double x, double y, double w, double h) {
        double by = width / 2;
        strokeLine(x - by, y, x + w + by, y);
        strokeLine(x - by, y + h, x + w + by, y + h);
        strokeLine(x, y + by, x, y + h - by);
        strokeLine(x + w, y + by, x + w, y + h - by);
    }

    void fillPolygon(double[] xs, double[] ys) {
        polygon(xs, ys);
        fill();
    }

    void strokePolygon(double[] xs, double[] ys) {
        polygon(xs, ys);
        stroke();
    }

    private void polygon(double[] xs, double[] ys) {
        beginPath();
        for (int i = 0; i < xs.length; i++) {
            step(i == 0 ? Mark.MOVE : Mark.LINE, xs[i], ys[i]);
        }
        closePath();
    }

    /** A line; a full one along an axis is a rectangle: the same pixels, and quicker. */
    void strokeLine(double x0, double y0, double x1, double y1) {
        boolean isFull = dashes.length == 0;
        if (isFull && x0 == x1) {
            fillRect(stroke, x0 - width / 2, Math.min(y0, y1), width, Math.abs(y1 - y0));
        } else if (isFull && y0 == y1) {
            fillRect(stroke, Math.min(x0, x1), y0 - width / 2, Math.abs(x1 - x0), width);
        } else {
            beginPath();
            moveTo(x0, y0);
            lineTo(x1, y1);
            stroke();
        }
    }

    private void fillRect(Color colour, double x, double y, double w, double h) {
        marks.add(Mark.rectangle(colour, x, y, w, h));
    }

    void beginPath() {
        stepCount = 0;
        pointCount = 0;
    }

    void moveTo(double x, double y) {
        step(Mark.MOVE, x, y);
    }

    void lineTo(double x, double y) {
        step(Mark.LINE, x, y);
    }

    /**
     * A cubic, in chords as long as they may be: a chord of one part in n leaves the curve by no
     * more than an eighth of its greatest second derivative by n squared, and that is six times a
     * second difference of its control points (the error bound of linear interpolation).
     */
    void bezierCurveTo(double x1, double y1, double x2, double y2, double x, double y) {
        double x0 = points[pointCount - 2];
        double y0 = points[pointCount - 1];
        double bend =
                Math.max(
                        Math.hypot(x0 - 2 * x1 + x2, y0 - 2 * y1 + y2),
                        Math.hypot(x1 - 2 * x2 + x, y1 - 2 * y2 + y));
        int chords = (int) Math.max(1, Math.ceil(Math.sqrt(6 * bend / 8 / CHORD_PX)));
        for (int i = 1; i < chords; i++) {
            double t = (double) i / chords;
            double u = 1 - t;
            lineTo(
                    u * u * (u * x0 + 3 * t * x1) + t * t * (3 * u * x2 + t * x),
                    u * u * (u * y0 + 3 * t * y1) + t * t * (3 * u * y2 + t * y));
        }
        lineTo(x, y);
    }

    void closePath() {
        step(Mark.CLOSE);
    }

    private void step(byte step, double... to) {
        if (stepCount == steps.length) {
            steps = Arrays.copyOf(steps, 2 * stepCount);
        }
        if (pointCount + to.length > points.length) {
            points = Arrays.copyOf(points, 2 * (pointCount + to.length));
        }
        steps[stepCount++] = step;
        for (double v : to) {
            points[pointCount++] = v;
        }
    }

    void fill() {
        if (stepCount > 0 && steps[stepCount - 1] != Mark.CLOSE) {
            closePath();
        }
        if (pointCount > 0) {
            marks.add(
                    Mark.area(
                            fill,
                            Arrays.copyOf(steps, stepCount),
                            Arrays.copyOf(points, pointCount)));
        }
    }

    void stroke() {
        if (pointCount > 0) {
            marks.add(
                    Mark.stroke(
                            stroke,
                            width,
                            dashes,
                            Arrays.copyOf(steps, stepCount),
                            Arrays.copyOf(points, pointCount)));
        }
    }

    void fillText(String text, Font font, double wide, TextAlignment align, double x, double y) {
        marks.add(Mark.words(text, font, wide, fill, align, x, y));
    }

    void add(Mark mark) {
        marks.add(mark);
    }
}
