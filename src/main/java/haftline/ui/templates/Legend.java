package haftline.ui.templates;

import haftline.drawing.Layer;
import haftline.ui.model.Watched;
import haftline.ui.theme.Palette;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.shape.Line;

/** What the lines on a sheet mean. */
final class Legend extends HBox {
    private final Watched<Palette> palette;

    Legend(Watched<Palette> palette) {
        super(16);
        this.palette = palette;
        setAlignment(Pos.CENTER_LEFT);
        palette.follow(theme -> build());
    }

    private void build() {
        Palette p = palette.value();
        SheetCanvas.Pens pens = new SheetCanvas.Pens(p);
        Line used = line(p.soft(), 1);
        used.getStrokeDashArray().setAll(1.5, 3.5);
        getChildren()
                .setAll(
                        entry(layer(pens, Layer.CUT), "cut through"),
                        entry(layer(pens, Layer.SCORE), "scored"),
                        entry(layer(pens, Layer.TEXT), "written"),
                        entry(used, "used up, the rest is an offcut"));
    }

    private static Line layer(SheetCanvas.Pens pens, Layer layer) {
        return line(pens.colour(layer), pens.leastPx(layer) + 0.4);
    }

    private static Line line(javafx.scene.paint.Color colour, double width) {
        Line line = new Line(0, 0, 24, 0);
        line.setStroke(colour);
        line.setStrokeWidth(width);
        return line;
    }

    private static HBox entry(Line line, String words) {
        Label label = new Label(words);
        label.getStyleClass().add("small");
        HBox entry = new HBox(6, line, label);
        entry.setAlignment(Pos.CENTER_LEFT);
        return entry;
    }
}
