package haftline.ui.app;

import haftline.edit.OpenDocument;
import haftline.store.DocumentException;
import haftline.store.SetFile;
import haftline.store.Starter;
import haftline.ui.model.EditorModel;
import haftline.ui.model.FilesModel;
import haftline.ui.model.Preferences;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Group;
import javafx.scene.Scene;
import javafx.stage.Screen;
import javafx.stage.Stage;

/** Opens the window, on the set that was named or else on the demonstration set. */
public final class EditorApplication extends Application {
    private static final double WIDTH = 1366;
    private static final double HEIGHT = 768;
    private static final double LEAST_WIDTH = 960;
    private static final double LEAST_HEIGHT = 600;

    private static final FutureTask<OpenDocument> DEMONSTRATION =
            new FutureTask<>(EditorApplication::readDemonstration);

    /** Reads the demonstration set while the toolkit starts, which leaves another core idle. */
    public static void prepare() {
        Thread reader = new Thread(DEMONSTRATION, "demonstration set");
        reader.setDaemon(true);
        reader.start();
    }

    @Override
    public void start(Stage stage) throws DocumentException {
        Path folder = Preferences.usualFolder();
        Preferences preferences = new Preferences(folder.resolve("editor.properties"));
        EditorModel editor = new EditorModel(demonstration());
        FilesModel files = new FilesModel(editor, preferences, folder.resolve("unsaved"));
        // A file that cannot be read is explained in the window, over the demonstration set.
        getParameters().getRaw().stream().findFirst().map(Path::of).ifPresent(files::open);
        Workbench workbench =
                new Workbench(
                        editor,
                        preferences,
                        files,
                        new WindowDialogs(stage),
                        where -> getHostServices().showDocument(where.toUri().toString()));
        Rectangle2D screen = Screen.getPrimary().getVisualBounds();
        Scene scene =
                new Scene(
                        new Group(),
                        Math.min(WIDTH, screen.getWidth()),
                        Math.min(HEIGHT, screen.getHeight()));
        // Before the content, which is styled as soon as it is in.
        scene.getStylesheets().add(Ground.STYLE);
        scene.setRoot(workbench);
        stage.setScene(scene);
        stage.setMinWidth(Math.min(LEAST_WIDTH, screen.getWidth()));
        stage.setMinHeight(Math.min(LEAST_HEIGHT, screen.getHeight()));
        preferences.window().ifPresent(bounds -> place(stage, bounds));
        stage.setOnCloseRequest(
                e -> {
                    e.consume();
                    workbench.close();
                });
        stage.setOnHiding(
                e -> {
                    preferences.window(
                            new Preferences.Bounds(
                                    stage.getX(),
                                    stage.getY(),
                                    stage.getWidth(),
                                    stage.getHeight()));
                    preferences.save();
                });
        editor.status().follow(status -> stage.setTitle(files.title()));
        editor.draft().watch(draft -> stage.setTitle(files.title()));
        stage.show();
        workbench.showBoard();
        stage.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                files.look();
                            }
                        });
        Platform.runLater(files::offerRecovery);
    }

    /** The set inside the program has no file that could be saved to. */
    private static OpenDocument readDemonstration() throws DocumentException {
        OpenDocument document = OpenDocument.unsaved(SetFile.read(Starter.set()));
        document.draft().set().pieces().forEach(piece -> document.worked(piece.name()));
        return document;
    }

    private static OpenDocument demonstration() throws DocumentException {
        // Does nothing where it was prepared.
        DEMONSTRATION.run();
        try {
            return DEMONSTRATION.get();
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stopped);
        } catch (ExecutionException failed) {
            if (failed.getCause() instanceof DocumentException wrong) {
                throw wrong;
            }
            throw new IllegalStateException(failed.getCause());
        }
    }

    /** Puts the window where it was, if a screen is still there. */
    private static void place(Stage stage, Preferences.Bounds window) {
        List<Preferences.Bounds> screens =
                Screen.getScreens().stream()
                        .map(Screen::getVisualBounds)
                        .map(
                                b ->
                                        new Preferences.Bounds(
                                                b.getMinX(),
                                                b.getMinY(),
                                                b.getWidth(),
                                                b.getHeight()))
                        .toList();
        if (window.isOn(screens)) {
            stage.setX(window.x());
            stage.setY(window.y());
            stage.setWidth(Math.max(window.width(), stage.getMinWidth()));
            stage.setHeight(Math.max(window.height(), stage.getMinHeight()));
        }
    }
}
