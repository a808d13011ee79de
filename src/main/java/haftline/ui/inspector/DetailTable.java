package haftline.ui.inspector;

import haftline.edit.Outcome;
import haftline.ui.model.BoardModel;
import haftline.ui.model.DetailTableModel;
import haftline.ui.model.DetailTableModel.Column;
import haftline.ui.model.DetailTableModel.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The details by number; a field that is typed in chooses its detail on the board. */
final class DetailTable extends VBox {
    private static final String[] HEADS = {"detail", "at", "width", "high, deep"};

    private final DetailTableModel model;
    private final BoardModel board;
    private final GridPane grid = new GridPane();
    private final Label note = new Label();
    private final List<Cell> cells = new ArrayList<>();
    private final Runnable stop;
    private List<String> built = List.of();

    private record Cell(int index, Column column, TextField field) {}

    DetailTable(DetailTableModel model, BoardModel board) {
        this.model = model;
        this.board = board;
        getStyleClass().add("node-table");
        grid.getStyleClass().add("node-grid");
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(name);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.setManaged(false);
        getChildren().addAll(grid, note);
        stop = model.lines().follow(this::show);
    }

    void forget() {
        stop.run();
    }

    private void show(List<Line> lines) {
        setVisible(!lines.isEmpty());
        setManaged(!lines.isEmpty());
        List<String> kinds = lines.stream().map(Line::kind).toList();
        if (!kinds.equals(built)) {
            built = kinds;
            build(lines);
        }
        for (Cell cell : cells) {
            cell.field().setText(lines.get(cell.index()).text(cell.column()));
        }
    }

    private void build(List<Line> lines) {
        grid.getChildren().clear();
        cells.clear();
        for (int i = 0; i < HEADS.length; i++) {
            Label head = new Label(HEADS[i]);
            head.getStyleClass().add("small");
            grid.add(head, i, 0);
        }
        for (int row = 0; row < lines.size(); row++) {
            Label kind = new Label(lines.get(row).kind());
            kind.getStyleClass().add("field-label");
            grid.add(kind, 0, row + 1);
            for (Column column : Column.values()) {
                if (!lines.get(row).text(column).isEmpty()) {
                    grid.add(
                            cell(row, lines.get(row).kind(), column),
                            column.ordinal() + 1,
                            row + 1);
                }
            }
        }
    }

    private TextField cell(int index, String kind, Column column) {
        TextField field = new TextField();
        String what = HEADS[column.ordinal() + 1];
        field.setId("detail-" + index + "-" + column.name().toLowerCase(Locale.ROOT));
        field.setAccessibleText(kind + " " + (index + 1) + ", " + what);
        field.setOnAction(e -> enter(index, column, field));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                board.details().chosen().set(Optional.of(index));
                            } else {
                                enter(index, column, field);
                            }
                        });
        cells.add(new Cell(index, column, field));
        return field;
    }

    private void enter(int index, Column column, TextField field) {
        Outcome outcome = model.enter(index, column, field.getText());
        note.setText(outcome.refusal().orElse(""));
        note.pseudoClassStateChanged(
                PseudoClass.getPseudoClass("wrong"), outcome.refusal().isPresent());
        note.setManaged(outcome.refusal().isPresent());
        note.setVisible(outcome.refusal().isPresent());
        // The last good value stands.
        if (index < model.lines().value().size()) {
            field.setText(model.lines().value().get(index).text(column));
        }
    }
}
