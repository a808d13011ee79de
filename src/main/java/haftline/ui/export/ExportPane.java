package haftline.ui.export;

import haftline.cli.Making;
import haftline.ui.model.ExportModel;
import haftline.ui.model.ExportProgress;
import haftline.ui.model.ExportProgress.Planned;
import haftline.ui.model.ExportProgress.Stage;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;
import java.util.concurrent.Executors;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The page on which files are chosen, seen beforehand, and written. */
public final class ExportPane extends VBox {
    private static final Map<String, String> WORDS =
            Map.of(
                    "svg", "SVG: drawings for printing and for laser cutters",
                    "dxf", "DXF: the same in lines and arcs, for cutting programs",
                    "csv", "CSV: calliper tables",
                    "pdf", "PDF: for printing at full size",
                    "stl", "STL: solids",
                    "html", "HTML: sheets for a screen",
                    "txt", "Text: care cards",
                    "png", "PNG: pictures");

    private static final String PREFIX = "format-";
    private static final double FORM_WIDTH = 400;

    /** Some files are always seen; in a low window the form is scrolled, px. */
    private static final double LEAST_LIST = 96;

    /** Room for the scroll bar, px. */
    private static final double BAR = 10;

    private final ExportModel model;
    private final Consumer<Path> opener;
    private final Label where = new Label();
    private final VBox boxes = new VBox(4);
    private final CheckBox alone = new CheckBox("Only the sheets of gauges and templates");
    private final Button other = new Button("Another folder…");
    private final ListView<Planned> list = new ListView<>();
    private final PreviewPane preview = new PreviewPane();
    private final Label placeholder = small("");
    private final Label count = small("");
    private final Button write = new Button();
    private final Button openFile = new Button("Open the file");
    private final Button open = new Button("Open the folder");
    private final Label result = new Label();
    private final ProgressBar bar = new ProgressBar(0);

    /**
     * The page.
     *
     * @param model what is planned and written
     * @param choose asks for another folder
     * @param opener opens a folder on the desktop
     * @param close goes back to where the page was called from
     */
    public ExportPane(
            ExportModel model,
            Function<Path, Optional<Path>> choose,
            Consumer<Path> opener,
            Runnable close) {
        this.model = model;
        this.opener = opener;
        getStyleClass().add("export");
        setId("export-page");
        Label title = new Label("Export");
        title.getStyleClass().add("set-name");
        other.setOnAction(
                e -> choose.apply(model.folder().value()).ifPresent(f -> model.choose(f)));
        where.setId("export-folder");
        where.setWrapText(true);
        where.setMinHeight(Region.USE_PREF_SIZE);
        formats();
        files();
        write.setId("export-write");
        write.getStyleClass().add("first");
        write.setOnAction(e -> model.write());
        openFile.setId("export-open-file");
        openFile.setOnAction(e -> openChosen());
        open.setId("export-open-folder");
        open.setOnAction(e -> opener.accept(model.folder().value()));
        bar.setAccessibleText("How much is written");
        bar.setPrefWidth(140);
        result.setId("export-result");
        result.setWrapText(true);
        Button back = new Button();
        back.setId("export-back");
        back.getStyleClass().add("quiet");
        back.setOnAction(e -> close.run());
        VBox form =
                new VBox(
                        7,
                        small("What is written"),
                        boxes,
                        alone,
                        small("Where"),
                        row(where, other),
                        count,
                        list);
        VBox.setVgrow(list, Priority.ALWAYS);
        list.setMinHeight(LEAST_LIST);
        list.setPrefHeight(LEAST_LIST);
        HBox.setHgrow(preview, Priority.ALWAYS);
        HBox page = new HBox(18, scrolled(form), preview);
        VBox.setVgrow(page, Priority.ALWAYS);
        for (Button each : List.of(other, openFile, open, back, write)) {
            each.setMinWidth(Region.USE_PREF_SIZE);
        }
        result.setMinHeight(Region.USE_PREF_SIZE);
        Region gap = new Region();
        getChildren().addAll(title, page, result, row(gap, bar, openFile, open, back, write));
        // A list keeps Enter to itself otherwise.
        list.setOnKeyPressed(this::enter);
        setOnKeyPressed(this::enter);
        visibleProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                model.plan();
                                // It gets into the window only after it is visible.
                                Platform.runLater(this::focusList);
                            }
                        });
        model.formats().follow(this::tick);
        alone.setId("export-templates-alone");
        alone.setOnAction(
                e -> {
                    model.choose(alone.isSelected());
                    model.plan();
                });
        model.templatesAlone()
                .follow(
                        only -> {
                            alone.setSelected(only);
                            back.setText(only ? "Back to the templates" : "Back to the board");
                        });
        model.folder().follow(f -> where.setText(f.toAbsolutePath().normalize().toString()));
        model.progress().follow(this::show);
        model.preview().follow(preview::show);
    }

    private void focusList() {
        // What is scrolled comes into the window with the skin of its pane.
        applyCss();
        list.requestFocus();
    }

    private static ScrollPane scrolled(VBox form) {
        form.setPadding(new Insets(0, BAR, 0, 0));
        ScrollPane scroll = new ScrollPane(form);
        scroll.getStyleClass().add("form");
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.setMinWidth(FORM_WIDTH + BAR);
        scroll.setPrefWidth(FORM_WIDTH + BAR);
        scroll.setMaxWidth(FORM_WIDTH + BAR);
        return scroll;
    }

    private void files() {
        list.setId("export-files");
        list.setAccessibleText(
                "Files that will be written; the chosen one is shown beside. Enter writes all of"
                        + " them, and once they are written opens the chosen one");
        list.setPlaceholder(placeholder);
        list.setCellFactory(view -> new FileCell());
        list.getSelectionModel()
                .selectedItemProperty()
                .addListener(
                        (o, was, is) -> {
                            openFile.setDisable(is == null);
                            if (is != null && (was == null || !was.name().equals(is.name()))) {
                                model.preview(is.name());
                            }
                        });
        list.setOnMouseClicked(
                e -> {
                    if (e.getClickCount() == 2) {
                        openChosen();
                    }
                });
    }

    /** Plans anew where the page is seen: something has changed that the files follow from. */
    public void planAgain() {
        if (isVisible()) {
            model.plan();
        }
    }

    /** Enter does what the button under the hand does; in the form it writes, as in any form. */
    private void enter(KeyEvent event) {
        if (event.getCode() != KeyCode.ENTER) {
            return;
        }
        if (event.getTarget() instanceof Button button) {
            button.fire();
        } else if (event.getTarget() == list && isWritten()) {
            openChosen();
        } else {
            model.write();
        }
        event.consume();
    }

    private boolean isWritten() {
        return model.progress().value().stage() == Stage.WRITTEN;
    }

    private static final class FileCell extends ListCell<Planned> {
        @Override
        protected void updateItem(Planned file, boolean empty) {
            super.updateItem(file, empty);
            setText(
                    empty || file == null
                            ? null
                            : file.name() + (file.replaces() ? ", in place of the one there" : ""));
        }
    }

    private void openChosen() {
        Planned chosen = list.getSelectionModel().getSelectedItem();
        if (chosen != null && isWritten()) {
            opener.accept(model.folder().value().resolve(chosen.name()));
        }
    }

    /**
     * Where files are made and written, on threads that end with the program: one for the work, one
     * so that a preview need not wait for it.
     *
     * @return the executor
     */
    public static Executor background() {
        return Executors.newFixedThreadPool(
                2,
                work -> {
                    Thread thread = new Thread(work, "export");
                    thread.setDaemon(true);
                    return thread;
                });
    }

    private void formats() {
        for (String format : Making.formats()) {
            String plain = format.toUpperCase(Locale.ROOT);
            CheckBox box = new CheckBox(WORDS.getOrDefault(format, plain));
            box.setId(PREFIX + format);
            box.setSelected(model.formats().value().contains(format));
            box.setOnAction(e -> model.choose(format, box.isSelected()));
            boxes.getChildren().add(box);
        }
    }

    private void tick(Set<String> chosen) {
        for (Node box : boxes.getChildren()) {
            ((CheckBox) box).setSelected(chosen.contains(box.getId().substring(PREFIX.length())));
        }
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

    private void show(ExportProgress progress) {
        Stage stage = progress.stage();
        fill(progress.planned());
        int files = progress.planned().size();
        boolean growing = stage == Stage.LAYING_OUT;
        boolean writing = stage == Stage.WRITING;
        boolean working = growing || writing || stage == Stage.PLANNING && isVisible();
        count.setText(
                growing
                        ? "Files, and the sheets of templates, which are being laid out…"
                        : files == 0 ? "Files" : "Files, " + files + " of them");
        write.setText(files == 1 ? "Write 1 file" : "Write " + files + " files");
        placeholder.setText(
                working ? "Looking what will be written…" : "Nothing to write: choose a format");
        write.setDisable(!progress.canWrite());
        boxes.setDisable(writing);
        alone.setDisable(writing);
        other.setDisable(writing);
        bar.setVisible(working);
        bar.setManaged(working);
        bar.setProgress(writing ? progress.share() : ProgressBar.INDETERMINATE_PROGRESS);
        for (Button each : List.of(open, openFile)) {
            each.setVisible(stage == Stage.WRITTEN);
            each.setManaged(stage == Stage.WRITTEN);
        }
        result.setText(progress.text());
        result.setManaged(!progress.text().isEmpty());
        if (stage == Stage.WRITTEN && isVisible()) {
            open.requestFocus();
        }
    }

    /** The chosen file stays chosen; the first is chosen where none was. */
    private void fill(List<Planned> planned) {
        if (list.getItems().equals(planned)) {
            return;
        }
        Planned chosen = list.getSelectionModel().getSelectedItem();
        list.getItems().setAll(planned);
        int at = 0;
        for (int i = 0; i < planned.size(); i++) {
            if (chosen != null && planned.get(i).name().equals(chosen.name())) {
                at = i;
            }
        }
        if (!planned.isEmpty()) {
            list.getSelectionModel().select(at);
        }
    }
}
