package haftline.ui.board;

import javafx.scene.Group;
import javafx.scene.shape.Rectangle;
import javafx.scene.text.Text;

/**
 * A small table of names and figures that goes with the pointer. It is put on the window anew with
 * every frame of a drag, so it is made of nothing that has to be laid out, and its ground of
 * rectangles along the axes, which cost the toolkit least; one pixel short of its corners, they
 * look rounded.
 */
final class ReadOutCard extends Group {
    /** Room for the longest words and figures in either unit, px. */
    private static final double WORDS = 112;

    private static final double FIGURES = 104;

    private static final double BETWEEN = 14;
    private static final double ASIDE = 11;
    private static final double ABOVE = 7;
    private static final double WIDE = 2 * ASIDE + WORDS + BETWEEN + FIGURES;

    private final Text[] names;
    private final Text[] figures;
    private final Rectangle upright = new Rectangle();
    private final Rectangle level = new Rectangle();
    private final Rectangle ground = new Rectangle();
    private double tall;

    /**
     * A card with nothing on it.
     *
     * @param rows how many
     */
    ReadOutCard(int rows) {
        names = new Text[rows];
        figures = new Text[rows];
        setManaged(false);
        setMouseTransparent(true);
        setAutoSizeChildren(false);
        getStyleClass().add("readout");
        upright.getStyleClass().add("readout-edge");
        level.getStyleClass().add("readout-edge");
        ground.getStyleClass().add("readout-ground");
        getChildren().addAll(upright, level, ground);
        for (int i = 0; i < rows; i++) {
            names[i] = text("readout-label", ASIDE);
            figures[i] = text("readout-value", ASIDE + WORDS + BETWEEN);
        }
    }

    private Text text(String style, double x) {
        Text text = new Text();
        // A figure that changes asks for no layout.
        text.setManaged(false);
        text.getStyleClass().add(style);
        text.setX(x);
        getChildren().add(text);
        return text;
    }

    /**
     * Writes a row.
     *
     * @param row from 0
     * @param name what is read
     * @param figure what it is
     */
    void write(int row, String name, String figure) {
        names[row].setText(name);
        figures[row].setText(figure);
    }

    double wide() {
        return WIDE;
    }

    double tall() {
        return tall;
    }

    /** Lays the rows out, once it is written: style and font must be known. */
    void lay() {
        if (tall > 0) {
            return;
        }
        applyCss();
        double ascent = 0;
        double row = 0;
        for (Text text : new Text[] {names[0], figures[0]}) {
            ascent = Math.max(ascent, Math.ceil(text.getBaselineOffset()));
            row = Math.max(row, Math.ceil(text.getLayoutBounds().getHeight()) + 1);
        }
        for (int i = 0; i < names.length; i++) {
            names[i].setY(ABOVE + i * row + ascent);
            figures[i].setY(ABOVE + i * row + ascent);
        }
        tall = 2 * ABOVE + names.length * row - 1;
        place(upright, 1, 0, WIDE - 2, tall);
        place(level, 0, 1, WIDE, tall - 2);
        place(ground, 1, 1, WIDE - 2, tall - 2);
    }

    private static void place(Rectangle rectangle, double x, double y, double wide, double tall) {
        rectangle.setX(x);
        rectangle.setY(y);
        rectangle.setWidth(wide);
        rectangle.setHeight(tall);
    }
}
