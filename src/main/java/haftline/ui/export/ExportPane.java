package haftline.ui.export;

import haftline.cli.Making;
import haftline.ui.model.ExportModel;
import haftline.ui.model.ExportModel.Planned;
import haftline.ui.model.ExportModel.Progress;
import haftline.ui.model.ExportModel.Progress.Stage;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
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
                    "svg", "SVG: drawings for printing and for laser cutters",
                    "dxf", "DXF: the same in lines and arcs, for drawing and cutting programs",
                    "csv", "CSV: calliper tables",
                    "pdf", "PDF: for printing at full size",
                    "stl", "STL: solids",
                    "sheet", "Lathe sheets: PDF to print, HTML for a screen",
                    "instructions", "Instruction sheets for who buys the kit",
                    "care", "Care cards for who buys the piece",
                    "png", "PNG: pictures");

    private final ExportModel model;
    private final Label where = new Label();
    private final ListView<String> list = new ListView<>();
    private final Label placeholder = small("");
    private final Button write = new Button();
    private final Button open = new Button("Open the folder");
    private final Label result = new Label();
    private final ProgressIndicator busy = new ProgressIndicator();

    /**
     * The page.
     *
     * @param model what is planned and written
     * @param choose asks for another folder
     * @param opener opens a folder on the desktop
     * @param close goes back to the board
     */
    public ExportPane(
            ExportModel model,
            Function<Path, Optional<Path>> choose,
            Consumer<Path> opener,
            Runnable close) {
        this.model = model;
        getStyleClass().add("export");
        setId("export-page");
        Label title = new Label("Export");
        title.getStyleClass().add("set-name");
        Button other = new Button("Another folder…");
        other.setOnAction(
                e -> choose.apply(model.folder().value()).ifPresent(f -> model.choose(f)));
        where.setId("export-folder");
        where.setWrapText(true);
        list.setId("export-files");
        list.setFocusTraversable(false);
        list.setAccessibleText("Files that will be written");
        VBox.setVgrow(list, Priority.ALWAYS);
        write.setId("export-write");
        write.getStyleClass().add("first");
        write.setOnAction(e -> model.write());
        busy.setMaxSize(20, 20);
        open.setOnAction(e -> opener.accept(model.folder().value()));
        result.setId("export-result");
        result.setWrapText(true);
        Button back = new Button("Back to the board");
        back.setId("export-back");
        back.getStyleClass().add("quiet");
        back.setOnAction(e -> close.run());
        getChildren()
                .addAll(
                        title,
                        small("What is written"),
                        formats(),
                        small("Where"),
                        row(where, other),
                        small("Files"),
                        list,
                        row(result, busy, open, back, write));
        list.setPlaceholder(placeholder);
        visibleProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                model.plan();
                                write.requestFocus();
                            }
                        });
        model.folder().follow(f -> where.setText(f.toAbsolutePath().normalize().toString()));
        model.progress().follow(this::show);
    }

    /**
     * Where files are made and written: one after the other, on a thread that ends with the
     * program.
     *
     * @return the executor
     */
    public static Executor background() {
        return Executors.newSingleThreadExecutor(
                work -> {
                    Thread thread = new Thread(work, "export");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    private VBox formats() {
        VBox boxes = new VBox(5);
        for (String format : Making.formats()) {
            String plain = format.toUpperCase(Locale.ROOT);
            CheckBox box = new CheckBox(WORDS.getOrDefault(format, plain));
            box.setId("format-" + format);
            box.setSelected(model.formats().value().contains(format));
            box.setOnAction(e -> model.choose(format, box.isSelected()));
            boxes.getChildren().add(box);
        }
        return boxes;
    }

    private static Label small(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("small");
        return label;
    }

    private static HBox row(Region first, Node... others) {
        HBox.setHgrow(first, Priority.ALWAYS);
        first.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(10, first);
        row.getChildren().addAll(others);
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    private void show(Progress progress) {
        list.getItems().setAll(progress.planned().stream().map(ExportPane::words).toList());
        int count = progress.planned().size();
        boolean ready = progress.stage() == Stage.READY || progress.stage() == Stage.WRITTEN;
        write.setText(!ready ? "Write" : count == 1 ? "Write 1 file" : "Write " + count + " files");
        placeholder.setText(
                ready ? "Nothing to write: choose a format" : "Working out what will be written…");
        write.setDisable(!ready || count == 0);
        boolean working =
                progress.stage() == Stage.WRITING
                        || progress.stage() == Stage.PLANNING && isVisible();
        busy.setVisible(working);
        open.setVisible(progress.stage() == Stage.WRITTEN);
        result.setText(progress.text());
    }

    private static String words(Planned file) {
        double kilobytes = Math.max(0.1, file.bytes() / 1000.0);
        return file.name()
                + "   "
                + haftline.measure.NumberText.fixed(kilobytes, 1)
                + " kB"
                + (file.replaces() ? ", in place of the one there" : "");
    }
}
