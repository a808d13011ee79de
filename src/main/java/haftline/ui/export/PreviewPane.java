package haftline.ui.export;

import haftline.drawing.Bounds;
import haftline.drawing.Drawing;
import haftline.ui.model.ExportPreview;
import haftline.ui.sheet.DrawingPainter;
import java.io.ByteArrayInputStream;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.image.Image;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;
import javafx.scene.shape.Rectangle;

/** What a file would show, on a desk. */
final class PreviewPane extends Region {
    private static final double AIR = 18;
    private static final double PAPER_MARGIN_MM = 6;

    private final Canvas canvas = new Canvas();
    private final ImageView picture = new ImageView();
    private final Label words = new Label();
    private Optional<Drawing> drawing = Optional.empty();

    PreviewPane() {
        getStyleClass().addAll("desk", "preview");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(0, 0);
        picture.setPreserveRatio(true);
        picture.setSmooth(true);
        words.setWrapText(true);
        Rectangle edge = new Rectangle();
        edge.widthProperty().bind(widthProperty());
        edge.heightProperty().bind(heightProperty());
        setClip(edge);
        getChildren().addAll(canvas, picture, words);
        show(new ExportPreview.Waiting(""));
    }

    void show(ExportPreview preview) {
        drawing = Optional.empty();
        picture.setImage(null);
        words.setText("");
        words.getStyleClass().setAll("label", "small");
        if (preview instanceof ExportPreview.Drawn drawn) {
            drawing = Optional.of(drawn.drawing());
        } else if (preview instanceof ExportPreview.Picture png) {
            picture.setImage(new Image(new ByteArrayInputStream(png.png())));
        } else if (preview instanceof ExportPreview.Words text) {
            words.setText(text.text());
            words.getStyleClass().setAll("label", "table-text");
        } else if (preview instanceof ExportPreview.Failed failed) {
            words.setText(failed.why());
        } else {
            words.setText(
                    preview.name().isEmpty()
                            ? "Choose a file to see what it will show"
                            : "Making " + preview.name() + "…");
        }
        setAccessibleText(
                preview.name().isEmpty() ? words.getText() : "Preview of " + preview.name());
        requestLayout();
    }

    @Override
    protected void layoutChildren() {
        double width = Math.floor(getWidth());
        double height = Math.floor(getHeight());
        canvas.setWidth(width);
        canvas.setHeight(height);
        canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        drawing.ifPresent(shown -> paint(shown, width, height));
        if (picture.getImage() != null) {
            picture.setFitWidth(Math.min(picture.getImage().getWidth(), width - 2 * AIR));
            picture.setFitHeight(Math.min(picture.getImage().getHeight(), height - 2 * AIR));
            double w = picture.getLayoutBounds().getWidth();
            double h = picture.getLayoutBounds().getHeight();
            picture.relocate(Math.round((width - w) / 2), Math.round((height - h) / 2));
        }
        double wide = Math.max(1, width - 2 * AIR);
        words.resizeRelocate(AIR, AIR, wide, words.prefHeight(wide));
    }

    private void paint(Drawing shown, double width, double height) {
        Bounds bounds = shown.bounds().grown(PAPER_MARGIN_MM);
        double scale =
                Math.min(
                        (width - 2 * AIR) / bounds.widthMm(),
                        (height - 2 * AIR) / bounds.heightMm());
        if (!(scale > 0)) {
            return;
        }
        double w = bounds.widthMm() * scale;
        double h = bounds.heightMm() * scale;
        double x = Math.round((width - w) / 2);
        double y = Math.round((height - h) / 2);
        GraphicsContext gc = canvas.getGraphicsContext2D();
        gc.setFill(Color.gray(0, 0.18));
        gc.fillRect(x + 3, y + 4, w, h);
        gc.setFill(Color.WHITE);
        gc.fillRect(x, y, w, h);
        new DrawingPainter(gc, scale, x - bounds.minXMm() * scale, y + bounds.maxYMm() * scale)
                .paint(shown);
    }
}
