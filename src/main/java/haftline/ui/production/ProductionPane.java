package haftline.ui.production;

import haftline.ui.model.EditorModel;
import haftline.ui.model.Preferences;
import haftline.ui.model.ProductionModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Palette;
import haftline.ui.theme.Switches;
import haftline.ui.theme.WideCell;
import haftline.ui.theme.WrapBar;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** A batch of pieces: how many of each, what they take and cost, how far they are. */
public final class ProductionPane extends BorderPane {
    private static final double SIDE_WIDTH = 214;

    private final EditorModel editor;
    private final ProductionModel model;
    private final ListView<String> counts = new ListView<>();
    private final TextField every = new TextField();
    private final PlanList plan;
    private final ProgressTable progress;
    private final ToggleButton showPlan = new ToggleButton("Plan");
    private final ToggleButton showProgress = new ToggleButton("Progress");
    private final Label says = new Label();
    private final Button begin = new Button();
    private final Preferences preferences;
    private Optional<Node> costs = Optional.empty();

    /**
     * The view.
     *
     * @param editor what all views share
     * @param preferences what is folded away
     * @param model the batch
     * @param palette colours of the theme
     * @param folder asks for a folder to write into
     */
    public ProductionPane(
            EditorModel editor,
            Preferences preferences,
            ProductionModel model,
            Watched<Palette> palette,
            Function<Path, Optional<Path>> folder) {
        this.editor = editor;
        this.preferences = preferences;
        this.model = model;
        getStyleClass().add("paged");
        setId("production-view");
        plan = new PlanList(palette);
        progress = new ProgressTable(model);
        setTop(bar(folder));
        setLeft(side());
        setCenter(new StackPane(plan, progress));
        Later later = new Later(this::follow);
        visibleProperty().addListener(o -> later.call());
        editor.draft().watch(draft -> later.call());
        editor.units().watch(units -> showPlan());
        palette.watch(theme -> plan.refresh());
        model.quantities().watch(this::fill);
        model.production().watch(production -> showPlan());
        model.status().watch(status -> showStatus());
        model.beginsAnew().watch(anew -> showStatus());
        turn();
        showStatus();
    }

    private WrapBar bar(Function<Path, Optional<Path>> folder) {
        Switches pair = new Switches(showPlan, showProgress);
        showPlan.setOnAction(e -> turn());
        showProgress.setOnAction(e -> turn());
        showPlan.setId("production-plan");
        showProgress.setId("production-progress");
        says.setId("production-says");
        says.setMinWidth(0);
        says.setWrapText(true);
        says.getStyleClass().add("small");
        begin.setId("production-begin");
        begin.setMinWidth(Region.USE_PREF_SIZE);
        begin.setOnAction(e -> model.begin());
        Button write = new Button("CSV and PDF…");
        write.setId("production-export");
        write.setMinWidth(Region.USE_PREF_SIZE);
        write.setAccessibleText("Write tables as CSV and sheets as PDF");
        write.setOnAction(e -> folder.apply(beside()).ifPresent(model::export));
        return new WrapBar(List.of(pair, says), List.of(begin, write));
    }

    private Path beside() {
        return editor.document().loaded().file().toAbsolutePath().getParent();
    }

    private VBox side() {
        Label title = new Label("How many");
        title.getStyleClass().add("line-heading");
        every.setId("production-every");
        every.getStyleClass().add("short");
        every.setMinWidth(Region.USE_PREF_SIZE);
        every.setPromptText("all");
        every.setAccessibleText("How many of every piece");
        every.setOnAction(
                e -> {
                    model.all(every.getText());
                    every.clear();
                });
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox head = new HBox(8, title, gap, every);
        head.setAlignment(Pos.CENTER_LEFT);
        head.getStyleClass().add("side-head");
        counts.setId("production-counts");
        counts.setAccessibleText("Pieces and how many of each are made");
        counts.setCellFactory(view -> new CountCell());
        VBox.setVgrow(counts, Priority.ALWAYS);
        VBox side = new VBox(head, counts);
        side.setPrefWidth(SIDE_WIDTH);
        side.setMinWidth(SIDE_WIDTH);
        side.getStyleClass().add("side");
        return side;
    }

    /**
     * Sticks and rates by which the batch is cut and priced, for the side of the window.
     *
     * @return the panel
     */
    public Node costs() {
        if (costs.isEmpty()) {
            costs = Optional.of(new CostsPane(editor, preferences));
        }
        return costs.get();
    }

    private void follow() {
        if (isVisible()) {
            model.refresh();
        }
    }

    private void turn() {
        plan.setVisible(showPlan.isSelected());
        progress.setVisible(showProgress.isSelected());
    }

    private void fill(Map<String, Integer> quantities) {
        plan.awaits(quantities.values().stream().anyMatch(count -> count > 0));
        List<String> names = new ArrayList<>(quantities.keySet());
        if (!counts.getItems().equals(names)) {
            counts.getItems().setAll(names);
        } else {
            counts.refresh();
        }
    }

    private void showPlan() {
        plan.show(model.production().value(), editor.units().value());
    }

    private void showStatus() {
        ProductionModel.Status status = model.status().value();
        boolean anew = model.beginsAnew().value();
        says.setText(
                anew
                        ? "The ticks so far will stay in a file with a tilde behind its name"
                        : status.text());
        begin.setText(
                anew
                        ? "Begin anew all the same"
                        : status.progress().isPresent() ? "Begin anew" : "Begin this batch");
        progress.show(status);
    }

    private final class CountCell extends WideCell<String> {
        private final Label name = new Label();
        private final TextField count = new TextField();
        private final HBox row;

        CountCell() {
            super(counts);
            name.setMinWidth(0);
            name.setWrapText(true);
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            count.getStyleClass().add("short");
            count.setMinWidth(Region.USE_PREF_SIZE);
            count.setOnAction(e -> set());
            count.focusedProperty()
                    .addListener(
                            (o, was, is) -> {
                                if (!is) {
                                    set();
                                }
                            });
            row = new HBox(8, name, gap, count);
            row.setAlignment(Pos.CENTER_LEFT);
        }

        private void set() {
            String piece = getItem();
            if (piece == null || isEmpty()) {
                return;
            }
            String now = Integer.toString(model.quantities().value().getOrDefault(piece, 0));
            if (!count.getText().strip().equals(now)) {
                model.quantity(piece, count.getText());
                count.setText(Integer.toString(model.quantities().value().getOrDefault(piece, 0)));
            }
        }

        @Override
        protected void updateItem(String piece, boolean empty) {
            super.updateItem(piece, empty);
            if (empty || piece == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            name.setText(piece);
            if (!count.isFocused()) {
                count.setText(Integer.toString(model.quantities().value().getOrDefault(piece, 0)));
            }
            count.setAccessibleText("How many of " + piece);
            show(row);
        }
    }
}
