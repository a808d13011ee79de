package haftline.ui.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.image.Image;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * All that is drawn in one frame of the board, as a list of marks in their order. It draws nothing
 * itself: {@link Tiles} draws again only where the list differs from that of the frame before.
 */
final class Ink {
    private static final double[] SOLID = {};

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
        marks.add(Mark.filled(Mark.Kind.OVAL, fill, x, y, w, h));
    }

    void strokeOval(double x, double y, double w, double h) {
        marks.add(Mark.ring(stroke, width, x, y, w, h));
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
        marks.add(Mark.filled(Mark.Kind.RECTANGLE, colour, x, y, w, h));
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

    void bezierCurveTo(double x1, double y1, double x2, double y2, double x, double y) {
        step(Mark.CURVE, x1, y1, x2, y2, x, y);
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

    /** A picture, as {@link Mark#picture} has it. */
    void drawImage(
            Image image,
            long[] columns,
            double alpha,
            boolean isOpaque,
            double x,
            double y,
            double w,
            double h) {
        marks.add(Mark.picture(image, columns, alpha, isOpaque, x, y, w, h));
    }
}
