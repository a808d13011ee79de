package haftline.ui.production;

import haftline.set.production.Progress;
import haftline.set.production.Progress.PieceProgress;
import haftline.ui.model.ProductionModel;
import haftline.ui.theme.WideCell;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** How far each piece is in each step, to be ticked off. */
final class ProgressTable extends VBox {
    private static final PseudoClass DONE = PseudoClass.getPseudoClass("done");
    private static final KeyCombination UNDO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    private static final KeyCombination REDO =
            new KeyCodeCombination(
                    KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    private static final double NAME_WIDTH = 118;
    private static final double GAP = 4;

    private final ProductionModel model;
    private final HBox head = new HBox(GAP);
    private final ListView<PieceProgress> list = new ListView<>();
    private final Button undo = new Button("Undo");
    private final Button redo = new Button("Redo");
    private List<String> steps = List.of();

    ProgressTable(ProductionModel model) {
        this.model = model;
        getStyleClass().add("progress");
        list.setId("progress-rows");
        list.setAccessibleText("How far each piece is");
        list.setCellFactory(view -> new Row());
        list.widthProperty().addListener(o -> list.refresh());
        Label none =
                new Label(
                        "No batch was begun. \"Begin this batch\" takes the numbers on the left.");
        none.getStyleClass().add("small");
        none.setWrapText(true);
        list.setPlaceholder(none);
        VBox.setVgrow(list, Priority.ALWAYS);
        undo.setId("progress-undo");
        redo.setId("progress-redo");
        undo.setOnAction(e -> model.undo());
        redo.setOnAction(e -> model.redo());
        Label how =
                new Label(
                        "Press a box to tick one more off; the right button or Backspace takes one"
                                + " back; a step's name ticks it off for all. Kept at once.");
        how.setWrapText(true);
        how.setMinWidth(0);
        how.getStyleClass().add("small");
        HBox.setHgrow(how, Priority.ALWAYS);
        how.setMaxWidth(Double.MAX_VALUE);
        HBox foot = new HBox(10, how, undo, redo);
        foot.setAlignment(Pos.CENTER_LEFT);
        foot.getStyleClass().add("progress-foot");
        foot.setMinHeight(Region.USE_PREF_SIZE);
        for (Button button : List.of(undo, redo)) {
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        head.getStyleClass().add("progress-head");
        getChildren().addAll(head, list, foot);
        // Whoever has just ticked means the tick, not the last change of the set.
        addEventHandler(KeyEvent.KEY_PRESSED, this::undoOrRedo);
    }

    private void undoOrRedo(KeyEvent e) {
        if (UNDO.match(e)) {
            model.undo();
            e.consume();
        } else if (REDO.match(e)) {
            model.redo();
            e.consume();
        }
    }

    void show(ProductionModel.Status status) {
        undo.setDisable(status.undoName().isEmpty());
        redo.setDisable(status.redoName().isEmpty());
        undo.setText(status.undoName().map(name -> "Undo: " + name).orElse("Undo"));
        redo.setText(status.redoName().map(name -> "Redo: " + name).orElse("Redo"));
        Optional<Progress> progress = status.progress();
        List<String> now = progress.map(Progress::steps).orElse(List.of());
        if (!now.equals(steps) || head.getChildren().isEmpty()) {
            steps = now;
            heads();
        }
        List<PieceProgress> pieces = progress.map(Progress::pieces).orElse(List.of());
        if (list.getItems().size() != pieces.size()) {
            list.getItems().setAll(pieces);
            return;
        }
        for (int i = 0; i < pieces.size(); i++) {
            if (!list.getItems().get(i).equals(pieces.get(i))) {
                list.getItems().set(i, pieces.get(i));
            }
        }
    }

    private void heads() {
        head.getChildren().clear();
        if (steps.isEmpty()) {
            return;
        }
        Region corner = new Region();
        corner.setMinWidth(NAME_WIDTH);
        head.getChildren().add(corner);
        for (String step : steps) {
            Button all = new Button(step);
            all.getStyleClass().add("quiet");
            all.setAccessibleText("Tick " + step + " off for all pieces");
            all.setOnAction(e -> model.allDone(step));
            grow(all);
            head.getChildren().add(all);
        }
    }

    private static void grow(Button button) {
        button.setMinWidth(0);
        button.setPrefWidth(40);
        button.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(button, Priority.ALWAYS);
    }

    private final class Row extends WideCell<PieceProgress> {
        private final Label name = new Label();
        private final List<Button> boxes = new ArrayList<>();
        private final HBox row = new HBox(GAP);

        Row() {
            super(list);
            name.setMinWidth(NAME_WIDTH);
            name.setPrefWidth(NAME_WIDTH);
            name.getStyleClass().add("piece-name");
            row.setAlignment(Pos.CENTER_LEFT);
        }

        @Override
        protected void updateItem(PieceProgress piece, boolean empty) {
            super.updateItem(piece, empty);
            if (empty || piece == null) {
                setText(null);
                setGraphic(null);
                return;
            }
            if (boxes.size() != steps.size()) {
                boxes.clear();
                for (int i = 0; i < steps.size(); i++) {
                    boxes.add(box(i));
                }
                row.getChildren().setAll(name);
                row.getChildren().addAll(boxes);
            }
            name.setText(piece.piece());
            for (int i = 0; i < boxes.size(); i++) {
                int done = piece.done().get(i);
                Button box = boxes.get(i);
                box.setText(done + " / " + piece.quantity());
                box.pseudoClassStateChanged(DONE, done == piece.quantity());
                box.setAccessibleText(
                        piece.piece()
                                + ", "
                                + steps.get(i)
                                + ": "
                                + done
                                + " of "
                                + piece.quantity()
                                + " done");
            }
            show(row);
        }

        private Button box(int step) {
            Button box = new Button();
            box.getStyleClass().add("tick");
            grow(box);
            box.setOnAction(e -> tick(step, 1));
            box.setOnMouseClicked(
                    e -> {
                        if (e.getButton() == MouseButton.SECONDARY) {
                            tick(step, -1);
                        }
                    });
            box.setOnKeyPressed(
                    e -> {
                        if (e.getCode() == KeyCode.BACK_SPACE || e.getCode() == KeyCode.MINUS) {
                            tick(step, -1);
                            e.consume();
                        }
                    });
            return box;
        }

        private void tick(int step, int by) {
            PieceProgress piece = getItem();
            if (piece == null) {
                return;
            }
            int done = piece.done().get(step) + by;
            // A full box has no more to tick.
            if (done >= 0 && done <= piece.quantity()) {
                model.tick(piece.piece(), steps.get(step), by);
            }
        }
    }
}
