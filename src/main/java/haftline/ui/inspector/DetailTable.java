package haftline.ui.inspector;

import haftline.ui.model.BoardModel;
import haftline.ui.model.DetailTableModel;
import haftline.ui.model.DetailTableModel.Column;
import haftline.ui.model.DetailTableModel.Line;
import haftline.ui.model.Hit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.Region;

/** The details by number; a field that is typed in chooses its detail on the board. */
final class DetailTable extends TypedTable {
    /** "burnt", px. */
    private static final double LONGEST_WORD = 38;

    private final DetailTableModel model;
    private final BoardModel board;
    private final List<Cell> cells = new ArrayList<>();
    private final Runnable stop;
    private List<String> built = List.of();

    private record Cell(int index, Column column, TextField field) {}

    DetailTable(DetailTableModel model, BoardModel board) {
        super("detail", "at", "width", "high, deep", "");
        getStyleClass().add("detail-table");
        leastName(LONGEST_WORD);
        this.model = model;
        this.board = board;
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
        clear();
        cells.clear();
        for (int row = 0; row < lines.size(); row++) {
            Label kind = new Label(lines.get(row).kind());
            kind.getStyleClass().add("field-label");
            kind.setWrapText(true);
            kind.setMinHeight(Region.USE_PREF_SIZE);
            put(kind, 0, row + 1);
            for (Column column : Column.values()) {
                if (!lines.get(row).text(column).isEmpty()) {
                    put(cell(row, lines.get(row).kind(), column), column.ordinal() + 1, row + 1);
                }
            }
            put(strike(row, lines.get(row).kind()), Column.values().length + 1, row + 1);
        }
    }

    private Button strike(int index, String kind) {
        Button strike = small("×", "detail-" + index + "-strike");
        strike.setAccessibleText("Remove the " + kind + ", line " + (index + 1));
        strike.setTooltip(new Tooltip("Removes the " + kind));
        strike.setOnAction(e -> remove(index));
        return strike;
    }

    private void remove(int index) {
        tell(
                board.details()
                        .remove(new Hit.OnDetail(index, model.lines().value().get(index).kind())));
    }

    private TextField cell(int index, String kind, Column column) {
        TextField field = new TextField();
        String what = head(column.ordinal() + 1);
        field.setId("detail-" + index + "-" + column.name().toLowerCase(Locale.ROOT));
        field.setAccessibleText(kind + " " + (index + 1) + ", " + what);
        listen(
                field,
                () -> board.details().chosen().set(Optional.of(index)),
                () -> enter(index, column, field));
        keys(
                field,
                () -> field.setText(model.lines().value().get(index).text(column)),
                () -> remove(index));
        cells.add(new Cell(index, column, field));
        return field;
    }

    private void enter(int index, Column column, TextField field) {
        if (index >= model.lines().value().size()) {
            // It was taken out while the hand was in it.
            return;
        }
        tell(model.enter(index, column, field.getText()));
        // The last good value stands.
        if (index < model.lines().value().size()) {
            field.setText(model.lines().value().get(index).text(column));
        }
    }
}
