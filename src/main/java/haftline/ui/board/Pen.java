package haftline.ui.board;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.paint.Paint;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.Font;
import javafx.scene.text.FontWeight;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Draws lines and lettering on the canvas, sharp on the pixels. */
final class Pen {
    static final Font SMALL = Font.font(11);
    static final Font SMALL_BOLD = Font.font(null, FontWeight.BOLD, 11);

    /** Widths of texts that come again in every frame. */
    private static final Map<String, Double> WIDTHS = new HashMap<>();

    private static final int MOST_WIDTHS = 4000;
    private static final Text RULE = new Text();

    /** A stroke across the whole board is made in pieces this wide, px. */
    private static final int STRIP = 96;

    final GraphicsContext gc;
    private boolean isHair;

    Pen(GraphicsContext gc) {
        this.gc = gc;
        gc.setLineCap(StrokeLineCap.BUTT);
        gc.setLineJoin(StrokeLineJoin.ROUND);
        gc.setFont(SMALL);
    }

    /** The middle of a pixel, where a line one pixel wide is sharp. */
    static double sharp(double v) {
        return Math.floor(v) + 0.5;
    }

    void line(double x0, double y0, double x1, double y1) {
        if (isHair && (x0 == x1 || y0 == y1)) {
            hair(x0, y0, x1, y1);
        } else {
            gc.strokeLine(x0, y0, x1, y1);
        }
    }

    /** The same pixels as a stroke, several times faster in software. */
    private void hair(double x0, double y0, double x1, double y1) {
        Paint before = gc.getFill();
        gc.setFill(gc.getStroke());
        if (x0 == x1) {
            gc.fillRect(x0 - 0.5, Math.min(y0, y1), 1, Math.abs(y1 - y0));
        } else {
            gc.fillRect(Math.min(x0, x1), y0 - 0.5, Math.abs(x1 - x0), 1);
        }
        gc.setFill(before);
    }

    void style(Color colour, double width) {
        gc.setStroke(colour);
        gc.setLineWidth(width);
        gc.setLineDashes();
        isHair = width == 1;
    }

    /**
     * Draws a long flat stroke strip by strip. In software a stroke costs as much as the rectangle
     * round it, and the rectangles round its strips are a small part of that; the pixels are the
     * same.
     *
     * @param from left end, px
     * @param to right end, px
     * @param sheet how far up and down the strips go
     * @param stroke draws what is between two places, and may draw more
     */
    void strips(double from, double to, Sheet sheet, Strip stroke) {
        int end = (int) Math.ceil(Math.min(to, sheet.width()));
        for (int x = (int) Math.floor(Math.max(0, from)); x < end; x += STRIP) {
            gc.save();
            gc.beginPath();
            gc.rect(x, 0, STRIP, sheet.height());
            gc.clip();
            stroke.draw(x, x + STRIP);
            gc.restore();
        }
    }

    /** Draws at least what is between two places along x, px. */
    interface Strip {
        void draw(double from, double to);
    }

    void dashed(Color colour, double width, double... dashes) {
        gc.setStroke(colour);
        gc.setLineWidth(width);
        gc.setLineDashes(dashes);
        isHair = false;
    }

    void text(String text, double x, double y, Color colour, TextAlignment align) {
        gc.setTextAlign(align);
        gc.setFill(colour);
        gc.fillText(text, Math.round(x), Math.round(y));
    }

    /** Text with a patch of the ground under it, so that no line runs through it. */
    void patched(String text, double x, double y, Color colour, Color ground) {
        double half = width(text) / 2 + 4;
        gc.setFill(ground);
        gc.fillRect(Math.round(x - half), Math.round(y) - 10, Math.round(2 * half), 13);
        text(text, x, y, colour, TextAlignment.CENTER);
    }

    static double width(String text) {
        Double known = WIDTHS.get(text);
        if (known == null) {
            if (WIDTHS.size() > MOST_WIDTHS) {
                WIDTHS.clear();
            }
            RULE.setFont(SMALL);
            RULE.setText(text);
            known = RULE.getLayoutBounds().getWidth();
            WIDTHS.put(text, known);
        }
        return known;
    }

    /** A slim filled arrowhead of a dimension line (ISO 129-1), pointing along x. */
    void arrow(double x, double y, double direction) {
        gc.fillPolygon(
                new double[] {x, x - direction * 8, x - direction * 8},
                new double[] {y, y - 2.4, y + 2.4},
                3);
    }
}
