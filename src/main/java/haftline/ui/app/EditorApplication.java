package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import haftline.ui.model.EditorModel;
import java.nio.file.Path;
import java.util.List;
import javafx.application.Application;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Opens the window. */
public final class EditorApplication extends Application {
    private static final double WIDTH = 1366;
    private static final double HEIGHT = 768;

    @Override
    public void start(Stage stage) throws DocumentException {
        List<String> words = getParameters().getRaw();
        Settings settings = new Settings(Settings.usualFile());
        Path file = Path.of(words.get(0));
        LoadedSet loaded = SetFile.read(file);
        settings.opened(file);
        EditorModel editor = new EditorModel(OpenDocument.of(loaded));
        Workbench workbench = new Workbench(editor, settings, new WindowDialogs(stage));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene =
                new Scene(
                        workbench,
                        Math.min(WIDTH, screen.getWidth()),
                        Math.min(HEIGHT, screen.getHeight()));
        stage.setScene(scene);
        stage.setMinWidth(900);
        stage.setMinHeight(560);
        place(stage, settings.window());
        stage.setOnCloseRequest(
                e -> {
                    if (!workbench.mayClose()) {
                        e.consume();
                    }
                });
        stage.setOnHidden(
                e -> {
                    settings.window(
                            stage.getX(), stage.getY(), stage.getWidth(), stage.getHeight());
                    settings.save();
                });
        editor.status().follow(status -> stage.setTitle(title(editor)));
        editor.draft().watch(draft -> stage.setTitle(title(editor)));
        stage.show();
    }

    private static String title(EditorModel editor) {
        return (editor.status().value().isModified() ? "* " : "")
                + editor.draft().value().set().name()
                + ", Haftline";
    }

    /** Puts the window where it was, if a screen is still there. */
    private static void place(Stage stage, List<Double> window) {
        if (window.isEmpty()) {
            return;
        }
        double x = window.get(0);
        double y = window.get(1);
        double width = window.get(2);
        double height = window.get(3);
        boolean seen =
                Screen.getScreens().stream()
                        .anyMatch(s -> s.getVisualBounds().contains(x + 40, y + 20));
        if (seen && width >= stage.getMinWidth() && height >= stage.getMinHeight()) {
            stage.setX(x);
            stage.setY(y);
            stage.setWidth(width);
            stage.setHeight(height);
        }
    }
}
