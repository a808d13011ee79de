package haftline.ui.app;

import haftline.ui.model.Watched;
import haftline.ui.theme.Palette;
import javafx.scene.Node;
import javafx.scene.Scene;

/** What lies under all of a window: its style sheet, and the board's paper. */
final class Ground {
    static final String STYLE = Ground.class.getResource("/haftline/ui/haftline.css").toString();

    private Ground() {}

    /**
     * Lays the ground of whatever window something comes to stand in.
     *
     * @param content what the window shows
     * @param palette colours of the theme
     */
    static void lay(Node content, Watched<Palette> palette) {
        content.sceneProperty()
                .addListener(
                        (o, was, scene) -> {
                            if (scene != null) {
                                lay(scene, palette);
                                // A scene gets a fill of its own at the end of its making.
                                scene.windowProperty().addListener(window -> lay(scene, palette));
                            }
                        });
        palette.watch(
                theme -> {
                    if (content.getScene() != null) {
                        lay(content.getScene(), palette);
                    }
                });
    }

    private static void lay(Scene scene, Watched<Palette> palette) {
        // Of its root every control would gather the style anew.
        if (!scene.getStylesheets().contains(STYLE)) {
            scene.getStylesheets().add(STYLE);
        }
        scene.setFill(palette.value().paper());
    }
}
