package haftline.ui.app;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.TextInputDialog;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The questions as real windows, in the look of the window that they belong to. */
final class WindowDialogs implements Dialogs {
    private final Stage stage;

    WindowDialogs(Stage stage) {
        this.stage = stage;
    }

    @Override
    public Optional<Path> openSet(Path folder) {
        FileChooser chooser = sets(folder);
        chooser.setTitle("Open a set");
        return path(chooser.showOpenDialog(stage));
    }

    @Override
    public Optional<Path> saveSet(Path folder, String name) {
        FileChooser chooser = sets(folder);
        chooser.setTitle("Save the set");
        chooser.setInitialFileName(name);
        return path(chooser.showSaveDialog(stage));
    }

    private static FileChooser sets(Path folder) {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters()
                .add(new FileChooser.ExtensionFilter("Sets", "*.yaml", "*.yml"));
        // A chooser that is shown a folder which is gone does not open at all.
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return chooser;
    }

    @Override
    public Optional<Path> folder(Path folder) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Write into");
        if (folder != null && Files.isDirectory(folder)) {
            chooser.setInitialDirectory(folder.toFile());
        }
        return path(chooser.showDialog(stage));
    }

    private static Optional<Path> path(File file) {
        return Optional.ofNullable(file).map(File::toPath);
    }

    @Override
    public Unsaved unsaved(String set) {
        ButtonType save = new ButtonType("Save", ButtonData.YES);
        ButtonType drop = new ButtonType("Drop the changes", ButtonData.NO);
        ButtonType stay = new ButtonType("Go on working", ButtonData.CANCEL_CLOSE);
        Optional<ButtonType> answer =
                ask("Not saved", set + " has changes that are not saved.", save, drop, stay);
        return answer.filter(save::equals).isPresent()
                ? Unsaved.SAVE
                : answer.filter(drop::equals).isPresent() ? Unsaved.DROP : Unsaved.STAY;
    }

    @Override
    public Changed changedOnDisk(List<Path> files) {
        ButtonType keep = new ButtonType("Keep mine", ButtonData.OTHER);
        ButtonType read = new ButtonType("Read again", ButtonData.OTHER);
        ButtonType later = new ButtonType("Decide later", ButtonData.CANCEL_CLOSE);
        String names = files.stream().map(Path::toString).collect(Collectors.joining("\n"));
        Optional<ButtonType> answer =
                ask(
                        "Changed on the disk",
                        "Another program has changed or removed:\n\n" + names,
                        keep,
                        read,
                        later);
        return answer.filter(keep::equals).isPresent()
                ? Changed.KEEP_MINE
                : answer.filter(read::equals).isPresent() ? Changed.READ_AGAIN : Changed.LATER;
    }

    @Override
    public LeftBehind leftBehind(String set, String when) {
        ButtonType take = new ButtonType("Take it up", ButtonData.YES);
        ButtonType away = new ButtonType("Throw it away", ButtonData.NO);
        ButtonType later = new ButtonType("Decide later", ButtonData.CANCEL_CLOSE);
        Optional<ButtonType> answer =
                ask(
                        "Unsaved work",
                        "Unsaved work on " + set + " was left behind, last written down " + when,
                        take,
                        away,
                        later);
        return answer.filter(take::equals).isPresent()
                ? LeftBehind.TAKE_UP
                : answer.filter(away::equals).isPresent()
                        ? LeftBehind.THROW_AWAY
                        : LeftBehind.LATER;
    }

    @Override
    public Optional<String> name(String what, String name) {
        TextInputDialog dialog = new TextInputDialog(name);
        dialog.setTitle("Name");
        dialog.setHeaderText(null);
        dialog.setGraphic(null);
        dialog.setContentText("Name of the " + what);
        dress(dialog);
        return dialog.showAndWait().map(String::strip).filter(n -> !n.isEmpty());
    }

    private Optional<ButtonType> ask(String title, String question, ButtonType... answers) {
        Alert alert = new Alert(Alert.AlertType.NONE, question, answers);
        alert.setTitle(title);
        dress(alert);
        return alert.showAndWait();
    }

    private void dress(Dialog<?> dialog) {
        if (stage.getScene() != null) {
            dialog.initOwner(stage);
            var root = stage.getScene().getRoot();
            dialog.getDialogPane().getStylesheets().setAll(((Workbench) root).getStylesheets());
            dialog.getDialogPane().getStyleClass().addAll(root.getStyleClass());
        }
    }
}
