package haftline.ui.board;

import java.util.HashMap;
import java.util.Map;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.Text;
import javafx.scene.text.TextAlignment;

/** Lines and lettering of one look, sharp on the pixels. */
final class Pen {
    static final Font SMALL = Font.font(11);

    /** Widths of texts that come again in every frame. */
    private static final Map<String, Double> WIDTHS = new HashMap<>();

    private static final int MOST_WIDTHS = 4000;
    private static final Text RULE = new Text();

    final Ink ink;

    Pen(Ink ink) {
        this.ink = ink;
    }

    /** The middle of a pixel, where a line one pixel wide is sharp. */
    static double sharp(double v) {
        return Math.floor(v) + 0.5;
    }

    void line(double x0, double y0, double x1, double y1) {
        ink.strokeLine(x0, y0, x1, y1);
    }

    void style(Color colour, double width) {
        ink.setStroke(colour, width);
    }

    void dashed(Color colour, double width, double... dashes) {
        ink.setStroke(colour, width, dashes);
    }

    void text(String text, double x, double y, Color colour, TextAlignment align) {
        ink.setFill(colour);
        ink.fillText(text, SMALL, width(text), align, Math.round(x), Math.round(y));
    }

    /** Text with a patch of the ground under it, so that no line runs through it. */
    void patched(String text, double x, double y, Color colour, Color ground) {
        double half = width(text) / 2 + 4;
        ink.setFill(ground);
        ink.fillRect(Math.round(x - half), Math.round(y) - 10, Math.round(2 * half), 13);
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
        ink.fillPolygon(
                new double[] {x, x - direction * 8, x - direction * 8},
                new double[] {y, y - 2.4, y + 2.4});
    }
}
