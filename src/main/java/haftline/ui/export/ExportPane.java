package haftline.ui.export;

import haftline.cli.Making;
import haftline.stock.CatalogueException;
import haftline.store.LoadedSet;
import haftline.ui.model.EditorModel;
import haftline.write.OutputException;
import haftline.write.OutputFile;
import haftline.write.OutputFolder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.concurrent.Task;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressIndicator;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The page on which files are chosen, seen beforehand, and written. */
public final class ExportPane extends VBox {
    private static final Map<String, String> WORDS =
            Map.of(
                    "svg", "SVG: sections and half-profiles, for printing and laser cutters",
                    "dxf", "DXF: the same in lines and arcs, for drawing and cutting programs",
                    "csv", "CSV: calliper tables",
                    "pdf", "PDF: sheets for printing at full size",
                    "stl", "STL: solids",
                    "sheet", "Sheets to stand at the lathe with",
                    "png", "PNG: pictures");

    private final EditorModel editor;
    private final Consumer<Path> remember;
    private final List<CheckBox> formats = new ArrayList<>();
    private final Label where = new Label();
    private final ListView<String> list = new ListView<>();
    private final Button write = new Button();
    private final Button open = new Button("Open the folder");
    private final Label result = new Label();
    private final ProgressIndicator busy = new ProgressIndicator();
    private Path folder;
    private List<OutputFile> files = List.of();

    /**
     * The page.
     *
     * @param editor what all views share
     * @param first the folder to begin with
     * @param choose asks for another folder
     * @param remember told the folder that was written to
     * @param opener opens a folder on the desktop
     * @param close goes back to the board
     */
    public ExportPane(
            EditorModel editor,
            Path first,
            Function<Path, Optional<Path>> choose,
            Consumer<Path> remember,
            Consumer<Path> opener,
            Runnable close) {
        this.editor = editor;
        this.remember = remember;
        folder = first;
        getStyleClass().add("export");
        setId("export-page");
        Label title = new Label("Export");
        title.getStyleClass().add("set-name");
        VBox kinds = new VBox(5);
        for (String format : Making.formats()) {
            CheckBox box = new CheckBox(WORDS.getOrDefault(format, format.toUpperCase()));
            box.setId("format-" + format);
            box.setSelected(true);
            box.setUserData(format);
            box.setOnAction(e -> plan());
            formats.add(box);
            kinds.getChildren().add(box);
        }
        Button other = new Button("Another folder…");
        other.setOnAction(
                e ->
                        choose.apply(folder)
                                .ifPresent(
                                        chosen -> {
                                            folder = chosen;
                                            plan();
                                        }));
        where.setId("export-folder");
        where.setWrapText(true);
        HBox place = row(where, other);
        list.setId("export-files");
        list.setFocusTraversable(false);
        list.setAccessibleText("Files that will be written");
        VBox.setVgrow(list, Priority.ALWAYS);
        write.setId("export-write");
        write.getStyleClass().add("first");
        write.setOnAction(e -> write());
        busy.setMaxSize(20, 20);
        busy.setVisible(false);
        open.setVisible(false);
        open.setOnAction(e -> opener.accept(folder));
        result.setId("export-result");
        result.setWrapText(true);
        Button back = new Button("Back to the board");
        back.setId("export-back");
        back.getStyleClass().add("quiet");
        back.setCancelButton(true);
        back.setOnAction(e -> close.run());
        getChildren()
                .addAll(
                        title,
                        small("What is written"),
                        kinds,
                        small("Where"),
                        place,
                        small("Files, each piece of the set for itself"),
                        list,
                        row(result, busy, open, back, write));
        visibleProperty().addListener(o -> plan());
        editor.draft().watch(draft -> plan());
    }

    private static Label small(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("small");
        return label;
    }

    private static HBox row(Region first, javafx.scene.Node... others) {
        HBox.setHgrow(first, Priority.ALWAYS);
        first.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, first);
        row.getChildren().addAll(others);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** What would be written now. */
    private void plan() {
        if (!isVisible()) {
            return;
        }
        Set<String> wanted = new HashSet<>();
        formats.stream()
                .filter(CheckBox::isSelected)
                .forEach(box -> wanted.add((String) box.getUserData()));
        LoadedSet set = editor.document().loaded();
        result.setText("");
        open.setVisible(false);
        try {
            files = Making.files(set, wanted);
        } catch (CatalogueException spoilt) {
            files = List.of();
            result.setText(spoilt.getMessage());
        }
        where.setText(
                folder.toAbsolutePath().normalize().toString()
                        + trouble().map(t -> ": " + t).orElse(""));
        list.getItems()
                .setAll(
                        files.stream()
                                .map(
                                        file ->
                                                file.name()
                                                        + (Files.exists(folder.resolve(file.name()))
                                                                ? "   (in place of the one there)"
                                                                : ""))
                                .toList());
        write.setText(files.size() == 1 ? "Write 1 file" : "Write " + files.size() + " files");
        write.setDisable(files.isEmpty() || trouble().isPresent());
    }

    private Optional<String> trouble() {
        if (!Files.exists(folder)) {
            return Optional.empty();
        }
        return Files.isDirectory(folder) && Files.isWritable(folder)
                ? Optional.empty()
                : Optional.of("nothing can be written there; choose another folder");
    }

    private void write() {
        List<OutputFile> now = files;
        Path to = folder;
        Task<Integer> task =
                new Task<>() {
                    @Override
                    protected Integer call() throws OutputException {
                        return OutputFolder.at(to).write(now).size();
                    }
                };
        busy.setVisible(true);
        write.setDisable(true);
        task.setOnSucceeded(
                e -> {
                    busy.setVisible(false);
                    remember.accept(to);
                    plan();
                    result.setText("Written: " + task.getValue() + " files");
                    open.setVisible(true);
                });
        task.setOnFailed(
                e -> {
                    busy.setVisible(false);
                    plan();
                    result.setText(task.getException().getMessage());
                });
        Thread worker = new Thread(task, "export");
        worker.setDaemon(true);
        worker.start();
    }
}
