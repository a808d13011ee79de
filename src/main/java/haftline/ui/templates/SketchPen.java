package haftline.ui.templates;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.ui.theme.Palette;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/**
 * Draws sketches in the colours of the theme.
 *
 * @param gc what it draws on
 * @param palette colours of the theme
 * @param units unit of lengths
 */
record SketchPen(GraphicsContext gc, Palette palette, Units units) {
    private static final Font SMALL = Font.font(10.5);
    private static final double ARROW = 4;
    private static final Color LIGHT_BOARD = Color.web("#F2E6C9");
    private static final Color DARK_BOARD = Color.web("#4A4134");

    void clear(double width, double height) {
        gc.clearRect(0, 0, width, height);
        gc.setFill(palette.margin());
        gc.fillRoundRect(0, 0, width, height, 6, 6);
        gc.setFont(SMALL);
        gc.setTextBaseline(VPos.BASELINE);
    }

    /** The material of a card. */
    Color card() {
        return hardboard(palette);
    }

    /** Light hardboard on paper, dark on slate: lettering keeps its contrast on either. */
    static Color hardboard(Palette palette) {
        return isDark(palette) ? DARK_BOARD : LIGHT_BOARD;
    }

    static boolean isDark(Palette palette) {
        return palette.paper().getBrightness() < 0.5;
    }

    Color wood() {
        return palette.glue().interpolate(palette.accent(), 0.3);
    }

    String length(double mm) {
        return length(mm, units);
    }

    /** A length as it was entered, without noughts behind. */
    static String length(double mm, Units units) {
        return NumberText.upTo(mm / units.millimetres(), units == Units.MM ? 3 : 4)
                + " "
                + units.symbol();
    }

    void polygon(Color fill, Color edge, double width, double... xy) {
        gc.beginPath();
        gc.moveTo(xy[0], xy[1]);
        for (int i = 2; i < xy.length; i += 2) {
            gc.lineTo(xy[i], xy[i + 1]);
        }
        gc.closePath();
        finish(fill, edge, width);
    }

    /** Fills and strokes the path that was begun. */
    void finish(Color fill, Color edge, double width) {
        gc.setFill(fill);
        gc.fill();
        gc.setStroke(edge);
        gc.setLineWidth(width);
        gc.stroke();
    }

    void line(Color colour, double width, double x1, double y1, double x2, double y2) {
        gc.setStroke(colour);
        gc.setLineWidth(width);
        gc.strokeLine(x1, y1, x2, y2);
    }

    void dashed(Color colour, double x1, double y1, double x2, double y2) {
        gc.setLineDashes(4, 3);
        line(colour, 1, x1, y1, x2, y2);
        gc.setLineDashes();
    }

    void circle(Color fill, Color edge, double x, double y, double r) {
        gc.setFill(fill);
        gc.fillOval(x - r, y - r, 2 * r, 2 * r);
        gc.setStroke(edge);
        gc.setLineWidth(1.2);
        gc.strokeOval(x - r, y - r, 2 * r, 2 * r);
    }

    void text(String words, double x, double y) {
        write(words, x, y, TextAlignment.LEFT, palette.soft());
    }

    void middle(String words, double x, double y) {
        write(words, x, y, TextAlignment.CENTER, palette.soft());
    }

    void right(String words, double x, double y) {
        write(words, x, y, TextAlignment.RIGHT, palette.soft());
    }

    void strong(String words, double x, double y) {
        write(words, x, y, TextAlignment.LEFT, palette.ink());
    }

    private void write(String words, double x, double y, TextAlignment align, Color colour) {
        gc.setFill(colour);
        gc.setTextAlign(align);
        gc.fillText(words, x, y);
    }

    /** A measure across, with arrows at both ends. */
    void across(double x1, double x2, double y) {
        line(palette.soft(), 1, x1, y, x2, y);
        head(x1, y, 1, 0);
        head(x2, y, -1, 0);
    }

    /** A measure upright, with arrows at both ends. */
    void upright(double x, double y1, double y2) {
        line(palette.soft(), 1, x, y1, x, y2);
        head(x, y1, 0, 1);
        head(x, y2, 0, -1);
    }

    /** An arrow from a word to what it means. */
    void pointer(Color colour, double x1, double y1, double x2, double y2) {
        line(colour, 1, x1, y1, x2, y2);
        double length = Math.hypot(x2 - x1, y2 - y1);
        gc.setStroke(colour);
        head(x2, y2, (x1 - x2) / length, (y1 - y2) / length);
    }

    private void head(double x, double y, double dx, double dy) {
        gc.strokeLine(x, y, x + ARROW * dx - ARROW / 2 * dy, y + ARROW * dy + ARROW / 2 * dx);
        gc.strokeLine(x, y, x + ARROW * dx + ARROW / 2 * dy, y + ARROW * dy - ARROW / 2 * dx);
    }
}
