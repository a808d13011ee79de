package haftline.ui.app;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar;
import javafx.scene.control.ButtonType;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The questions as real windows. */
final class WindowDialogs implements Dialogs {
    private final Stage stage;

    WindowDialogs(Stage stage) {
        this.stage = stage;
    }

    @Override
    public Optional<Path> openSet(Path folder) {
        FileChooser chooser = new FileChooser();
        chooser.setTitle("Open a set");
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter("Sets", "*.yaml", "*.yml"));
        // A chooser that is shown a folder which is gone does not open at all.
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        File chosen = chooser.showOpenDialog(stage);
        return Optional.ofNullable(chosen).map(File::toPath);
    }

    @Override
    public boolean dropChanges(String set) {
        ButtonType drop = new ButtonType("Drop the changes", ButtonBar.ButtonData.OTHER);
        ButtonType keep = new ButtonType("Go back", ButtonBar.ButtonData.CANCEL_CLOSE);
        Alert alert = new Alert(Alert.AlertType.NONE, "", drop, keep);
        alert.initOwner(stage);
        alert.setTitle("Unsaved changes");
        alert.setContentText(set + " has changes that are not saved.");
        return alert.showAndWait().filter(drop::equals).isPresent();
    }
}
