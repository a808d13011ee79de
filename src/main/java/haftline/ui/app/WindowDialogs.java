package haftline.ui.app;

import haftline.ui.model.Question;
import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Alert;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.TextInputDialog;
import javafx.scene.layout.Region;
import javafx.stage.DirectoryChooser;
import javafx.stage.FileChooser;
import javafx.stage.Stage;

/** The questions as real windows, in the look of the window that they belong to. */
final class WindowDialogs implements Dialogs {
    private static final double WIDTH = 440;

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
        return save(chooser, name);
    }

    @Override
    public Optional<Path> openParts(Path folder) {
        FileChooser chooser = chooser(folder, "Parts", "*.yaml", "*.yml");
        chooser.setTitle("Open a parts file");
        return path(chooser.showOpenDialog(stage));
    }

    @Override
    public Optional<Path> openReadings(Path folder) {
        FileChooser chooser =
                chooser(folder, "Readings and traced outlines", "*.csv", "*.svg", "*.dxf");
        chooser.setTitle("Take off a handle");
        return path(chooser.showOpenDialog(stage));
    }

    @Override
    public Optional<Path> openPicture(Path folder) {
        // Cameras write their names in capitals.
        FileChooser chooser =
                chooser(
                        folder,
                        "Photographs",
                        "*.jpg",
                        "*.jpeg",
                        "*.png",
                        "*.JPG",
                        "*.JPEG",
                        "*.PNG");
        chooser.setTitle("Lay a photograph under the board");
        return path(chooser.showOpenDialog(stage));
    }

    @Override
    public Optional<Path> saveReadings(Path folder, String name) {
        FileChooser chooser = chooser(folder, "Readings", "*.csv");
        chooser.setTitle("Save the readings");
        return save(chooser, name);
    }

    @Override
    public Optional<Path> savePdf(Path folder, String name) {
        FileChooser chooser = chooser(folder, "PDF", "*.pdf");
        chooser.setTitle("Save as PDF");
        return save(chooser, name);
    }

    @Override
    public Optional<Path> saveShape(Path folder, String name) {
        FileChooser chooser = chooser(folder, "Shapes", "*.yaml");
        chooser.setTitle("Save the shape");
        return save(chooser, name);
    }

    /**
     * Whether another file is there was asked by the chooser of the name as it was typed; where
     * another name is meant that is there, the chooser is shown again with it, and asks.
     */
    private Optional<Path> save(FileChooser chooser, String name) {
        List<String> endings =
                chooser.getExtensionFilters().get(0).getExtensions().stream()
                        .map(pattern -> pattern.substring(1))
                        .toList();
        chooser.setInitialFileName(name);
        Optional<Path> chosen = path(chooser.showSaveDialog(stage));
        Optional<Path> meant = chosen.map(file -> Ending.meant(file, endings));
        if (meant.isEmpty() || meant.equals(chosen) || Files.notExists(meant.get())) {
            return meant;
        }
        usable(meant.get().getParent()).ifPresent(chooser::setInitialDirectory);
        return save(chooser, meant.get().getFileName().toString());
    }

    private static FileChooser sets(Path folder) {
        return chooser(folder, "Sets", "*.yaml", "*.yml");
    }

    private static FileChooser chooser(Path folder, String what, String... endings) {
        FileChooser chooser = new FileChooser();
        chooser.getExtensionFilters().add(new FileChooser.ExtensionFilter(what, endings));
        usable(folder).ifPresent(chooser::setInitialDirectory);
        return chooser;
    }

    @Override
    public Optional<Path> folder(Path folder) {
        DirectoryChooser chooser = new DirectoryChooser();
        chooser.setTitle("Write into");
        usable(folder).ifPresent(chooser::setInitialDirectory);
        return path(chooser.showDialog(stage));
    }

    /** A chooser that is shown a folder which is gone, or inside a jar, does not open at all. */
    private static Optional<File> usable(Path folder) {
        return Optional.ofNullable(folder)
                .filter(f -> f.getFileSystem().equals(java.nio.file.FileSystems.getDefault()))
                .filter(Files::isDirectory)
                .map(Path::toFile);
    }

    private static Optional<Path> path(File file) {
        return Optional.ofNullable(file).map(File::toPath);
    }

    @Override
    public Question.Answer ask(Question question) {
        List<ButtonType> buttons = new ArrayList<>();
        for (Question.Answer answer : question.answers()) {
            boolean harmless = answer == Question.Answer.STAY || answer == Question.Answer.LATER;
            buttons.add(
                    new ButtonType(
                            answer.words(), harmless ? ButtonData.CANCEL_CLOSE : ButtonData.OTHER));
        }
        Alert alert =
                new Alert(
                        Alert.AlertType.NONE, question.text(), buttons.toArray(new ButtonType[0]));
        alert.setTitle("Haftline");
        dress(alert);
        Optional<ButtonType> pressed = alert.showAndWait();
        int at = pressed.map(buttons::indexOf).orElse(buttons.size() - 1);
        return question.answers().get(at);
    }

    @Override
    public Optional<String> name(String what, String name) {
        TextInputDialog dialog = new TextInputDialog(name);
        dialog.setTitle("Haftline");
        dialog.setHeaderText(null);
        dialog.setGraphic(null);
        dialog.setContentText("Name of the " + what);
        dress(dialog);
        return dialog.showAndWait().map(String::strip).filter(n -> !n.isEmpty());
    }

    private void dress(Dialog<?> dialog) {
        // A question is read whole: the pane's own height cuts it to one line.
        dialog.getDialogPane().setMinHeight(Region.USE_PREF_SIZE);
        dialog.getDialogPane().setPrefWidth(WIDTH);
        if (stage.getScene() != null) {
            dialog.initOwner(stage);
            var root = stage.getScene().getRoot();
            dialog.getDialogPane().getStylesheets().setAll(Ground.STYLE);
            dialog.getDialogPane().getStyleClass().addAll(root.getStyleClass());
        }
    }
}
