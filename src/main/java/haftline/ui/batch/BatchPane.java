package haftline.ui.batch;

import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.measure.Length;
import haftline.measure.OutOfRange;
import haftline.measure.Units;
import haftline.set.BatchChange;
import haftline.template.ComparedPiece;
import haftline.ui.model.BatchModel;
import haftline.ui.model.BatchModel.Candidate;
import haftline.ui.model.BatchModel.Compared;
import haftline.ui.model.BatchRows;
import haftline.ui.model.BatchRows.Line;
import haftline.ui.model.EditorModel;
import haftline.ui.model.Watched;
import haftline.ui.theme.Later;
import haftline.ui.theme.Mark;
import haftline.ui.theme.Palette;
import haftline.ui.theme.WideCell;
import haftline.ui.theme.WrapBar;
import haftline.ui.words.Shown;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What a new batch of parts changes, piece by piece, and taking it into use. */
public final class BatchPane extends BorderPane {
    private static final double PIECES_WIDTH = 216;

    /** Tolerances that are worked to, mm. */
    private static final double LEAST_MM = 0.001;

    private static final double GREATEST_MM = 5;

    private final EditorModel editor;
    private final BatchModel model;
    private final ComboBox<Candidate> other = new ComboBox<>();
    private final Label inUse = new Label();
    private final TextField tolerance = new TextField();
    private final Button use = new Button("Use this batch");
    private final Label says = new Label();
    private final ListView<ComparedPiece> pieces = new ListView<>();
    private final ListView<Line> lines = new ListView<>();
    private final OutlinePicture picture = new OutlinePicture();
    private boolean filling;

    /**
     * The view.
     *
     * @param editor what all views share
     * @param model the batches
     * @param palette colours of the theme
     * @param open asks for another parts document
     * @param name asks for the name of a batch, given one to begin with
     */
    public BatchPane(
            EditorModel editor,
            BatchModel model,
            Watched<Palette> palette,
            Supplier<Optional<Path>> open,
            Function<String, Optional<String>> name) {
        this.editor = editor;
        this.model = model;
        getStyleClass().add("paged");
        setId("batch-view");
        setTop(new VBox(bar(open, name), second()));
        setLeft(list());
        setCenter(detail());
        palette.follow(picture::colours);
        Later later = new Later(this::follow);
        visibleProperty().addListener(o -> later.call());
        editor.draft().watch(draft -> later.call());
        editor.piece().watch(piece -> chooseInHand());
        editor.units().watch(units -> show());
        model.candidates().watch(all -> fillOther());
        model.chosen().watch(one -> fillOther());
        model.compared().watch(now -> show());
        model.text().follow(says::setText);
    }

    private WrapBar bar(Supplier<Optional<Path>> open, Function<String, Optional<String>> name) {
        inUse.setId("batch-in-use");
        inUse.setMinWidth(0);
        inUse.setWrapText(true);
        other.setId("batch-other");
        other.setAccessibleText("Batch that is held against the one in use");
        other.setButtonCell(new CandidateCell());
        other.setCellFactory(view -> new CandidateCell());
        other.setPrefWidth(150);
        other.setMinWidth(Region.USE_PREF_SIZE);
        other.setOnAction(
                e -> {
                    if (!filling && other.getValue() != null) {
                        model.choose(other.getValue());
                    }
                });
        Button file = button("batch-file", "Another file…");
        file.setOnAction(e -> open.get().ifPresent(model::open));
        Button add = button("batch-add", "Add a batch…");
        add.setOnAction(e -> name.apply(model.nextId()).ifPresent(model::add));
        use.setId("batch-use");
        use.getStyleClass().add("first");
        use.setMinWidth(Region.USE_PREF_SIZE);
        use.setOnAction(e -> model.use());
        Label against = new Label("held against");
        against.getStyleClass().add("small");
        against.setMinWidth(Region.USE_PREF_SIZE);
        HBox pair = new HBox(10, against, other);
        pair.setAlignment(Pos.CENTER_LEFT);
        return new WrapBar(List.of(inUse, pair, file), List.of(add, use));
    }

    private WrapBar second() {
        tolerance.setId("batch-tolerance");
        tolerance.setAccessibleText("Tolerance of gauges and templates");
        tolerance.getStyleClass().add("tolerance");
        tolerance.setMinWidth(Region.USE_PREF_SIZE);
        tolerance.setOnAction(e -> judge());
        tolerance
                .focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (!is) {
                                judge();
                            }
                        });
        Label within = new Label("Gauges serve within");
        within.setMinWidth(Region.USE_PREF_SIZE);
        within.setLabelFor(tolerance);
        within.getStyleClass().add("small");
        says.setId("batch-says");
        says.setWrapText(true);
        says.setMinWidth(0);
        HBox pair = new HBox(10, within, tolerance);
        pair.setAlignment(Pos.CENTER_LEFT);
        return new WrapBar(List.of(says), List.of(pair));
    }

    private static Button button(String id, String words) {
        Button button = new Button(words);
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        return button;
    }

    private ListView<ComparedPiece> list() {
        pieces.setId("batch-pieces");
        pieces.setAccessibleText("Pieces and what the batch asks to be done for them");
        pieces.setPrefWidth(PIECES_WIDTH);
        pieces.setMinWidth(PIECES_WIDTH);
        pieces.getStyleClass().add("side");
        pieces.setCellFactory(view -> new PieceCell());
        pieces.getSelectionModel().selectedItemProperty().addListener(o -> showPiece());
        return pieces;
    }

    private VBox detail() {
        lines.setId("batch-lines");
        lines.setAccessibleText("What changes in the chosen piece");
        lines.getStyleClass().add("lines");
        lines.setCellFactory(view -> new LineCell(lines));
        lines.widthProperty().addListener(o -> lines.refresh());
        VBox.setVgrow(lines, Priority.ALWAYS);
        return new VBox(picture, lines);
    }

    private void follow() {
        if (isVisible()) {
            model.refresh();
            fillOther();
            show();
        }
    }

    private void judge() {
        Units units = editor.units().value();
        OptionalDouble mm = Length.parse(tolerance.getText(), units);
        boolean isLength =
                mm.isPresent() && mm.getAsDouble() >= LEAST_MM && mm.getAsDouble() <= GREATEST_MM;
        if (!isLength) {
            editor.refuse("Expected a tolerance " + OutOfRange.range(LEAST_MM, GREATEST_MM, units));
        } else if (Math.abs(mm.getAsDouble() - model.tolerance().value()) > LEAST_MM / 100) {
            model.judge(mm.getAsDouble());
        }
        showTolerance();
    }

    private void showTolerance() {
        tolerance.setText(new Shown(editor.units().value()).length(model.tolerance().value(), 2));
    }

    private void fillOther() {
        filling = true;
        other.getItems().setAll(model.candidates().value());
        other.setValue(model.chosen().value().orElse(null));
        other.setDisable(model.candidates().value().isEmpty());
        inUse.setText("In use: " + model.inUse());
        use.setText(
                model.chosen()
                        .value()
                        .map(candidate -> "Use " + candidate.batch().id())
                        .orElse("Use this batch"));
        use.setDisable(model.chosen().value().isEmpty());
        filling = false;
    }

    private void show() {
        if (!isVisible()) {
            return;
        }
        showTolerance();
        List<ComparedPiece> now = model.compared().value().map(Compared::pieces).orElse(List.of());
        pieces.getItems().setAll(now);
        chooseInHand();
        showPiece();
    }

    /** The piece at hand is the one that is read. */
    private void chooseInHand() {
        for (int i = 0; i < pieces.getItems().size(); i++) {
            if (pieces.getItems().get(i).change().name().equals(editor.piece().value())) {
                pieces.getSelectionModel().select(i);
                return;
            }
        }
        pieces.getSelectionModel().selectFirst();
    }

    private void showPiece() {
        ComparedPiece piece = pieces.getSelectionModel().getSelectedItem();
        Optional<Compared> compared = model.compared().value();
        if (piece == null || compared.isEmpty()) {
            lines.getItems().clear();
            picture.show(Optional.empty(), "", "", editor.units().value());
            return;
        }
        BatchChange change = compared.get().change();
        picture.show(
                Optional.of(piece.change()),
                change.before().id(),
                change.after().id(),
                editor.units().value());
        lines.getItems()
                .setAll(
                        BatchRows.of(
                                change,
                                piece,
                                model.outliers(piece.change()),
                                editor.units().value()));
    }

    private static final class CandidateCell extends ListCell<Candidate> {
        @Override
        protected void updateItem(Candidate candidate, boolean empty) {
            super.updateItem(candidate, empty);
            setText(empty || candidate == null ? null : candidate.words());
        }
    }

    private final class PieceCell extends WideCell<ComparedPiece> {
        private final Mark mark = new Mark();
        private final Label name = new Label();
        private final Label todo = new Label();
        private final VBox box;

        PieceCell() {
            super(pieces);
            name.getStyleClass().add("piece-name");
            name.setMinWidth(0);
            name.setWrapText(true);
            todo.getStyleClass().add("small");
            todo.setWrapText(true);
            HBox line = new HBox(7, mark, name);
            line.setAlignment(Pos.CENTER_LEFT);
            box = new VBox(2, line, todo);
        }

        @Override
        protected void updateItem(ComparedPiece piece, boolean empty) {
            super.updateItem(piece, empty);
            if (empty || piece == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            mark.show(gravity(piece));
            name.setText(piece.change().name());
            String words = Shown.unbroken(piece.todo());
            todo.setText(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1));
            setAccessibleText(piece.change().name() + ": " + words);
            show(box);
        }

        private Optional<Gravity> gravity(ComparedPiece piece) {
            if (piece.change().after().isStopped()) {
                return Optional.of(Gravity.STOP);
            }
            boolean isWarned =
                    !piece.toCutAgain().isEmpty()
                            || piece.change().appeared().stream()
                                    .map(Finding::gravity)
                                    .anyMatch(gravity -> gravity == Gravity.WARN);
            if (isWarned) {
                return Optional.of(Gravity.WARN);
            }
            return piece.change().changedFigures().isEmpty()
                    ? Optional.empty()
                    : Optional.of(Gravity.NOTE);
        }
    }
}
