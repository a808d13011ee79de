package haftline.ui.photo;

import haftline.adjust.takeoff.PictureFit;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.View;
import haftline.ui.model.Watched;
import javafx.scene.image.ImageView;
import javafx.scene.layout.Region;
import javafx.scene.shape.Rectangle;
import javafx.scene.transform.Affine;

/** The photograph itself, under the board's drawing. */
final class PhotoPane extends Region {
    private final PhotoModel model;
    private final Watched<View> view;
    private final ImageView image = new ImageView();
    private final Affine lies = new Affine();

    PhotoPane(PhotoModel model, Watched<View> view) {
        this.model = model;
        this.view = view;
        setId("photograph");
        // The board leaves its paper open where a photograph is.
        getStyleClass().add("photograph");
        setMouseTransparent(true);
        Rectangle seen = new Rectangle();
        seen.widthProperty().bind(widthProperty());
        seen.heightProperty().bind(heightProperty());
        // Else it would lie over the panels beside the board.
        setClip(seen);
        image.setManaged(false);
        image.setSmooth(true);
        image.getTransforms().add(lies);
        getChildren().add(image);
        model.state().follow(state -> show());
        model.share().follow(share -> image.setOpacity(share));
        view.watch(moved -> lay());
    }

    private void show() {
        image.setImage(
                model.state()
                        .value()
                        .picture()
                        .filter(PictureReader.Read.class::isInstance)
                        .map(picture -> ((PictureReader.Read) picture).image())
                        .orElse(null));
        lay();
    }

    private void lay() {
        PictureFit fit = model.state().value().lying();
        View at = view.value();
        double along = at.scale() * fit.along();
        double across = at.scale() * fit.across();
        lies.setToTransform(along, across, at.px(fit.moveX()), -across, along, at.py(fit.moveY()));
    }
}
