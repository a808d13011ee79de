package haftline.ui.inspector;

import haftline.ui.model.BoardModel;
import haftline.ui.model.NodeTableModel;
import haftline.ui.model.NodeTableModel.Column;
import haftline.ui.model.NodeTableModel.Line;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.VBox;

/** The nodes by number; what fixes the ends is said where the pointer rests. */
final class NodeTable extends TypedTable {
    private static final PseudoClass OWN = PseudoClass.getPseudoClass("own");
    private static final Column[] COLUMNS = {Column.PLACE, Column.DIAMETER, Column.SLOPE};

    private final NodeTableModel model;
    private final BoardModel board;
    private final List<Cell> cells = new ArrayList<>();

    /** Each node's name, and under it, where a figure is the piece's own, what gives it up. */
    private final Map<String, VBox> named = new HashMap<>();

    private final Runnable stop;
    private String built = "";

    private record Cell(String node, Column column, Field field) {}

    NodeTable(NodeTableModel model, BoardModel board) {
        super("node", "at", "diameter", "slope", "");
        getStyleClass().add("nodes-table");
        this.model = model;
        this.board = board;
        stop = model.lines().follow(this::show);
    }

    void forget() {
        stop.run();
    }

    private void show(List<Line> lines) {
        String form =
                lines.stream().map(l -> l.name() + l.join() + l.fixedBy()).toList().toString();
        if (!form.equals(built)) {
            built = form;
            build(lines);
        }
        for (Cell cell : cells) {
            line(cell.node())
                    .ifPresent(
                            l -> {
                                cell.field().show(l.text(cell.column()));
                                boolean own =
                                        cell.column() == Column.PLACE && l.isPlaceOwn()
                                                || cell.column() == Column.DIAMETER
                                                        && l.isDiameterOwn();
                                cell.field().pseudoClassStateChanged(OWN, own);
                            });
        }
        named.forEach(
                (node, cell) -> {
                    boolean own =
                            line(node).filter(l -> l.isPlaceOwn() || l.isDiameterOwn()).isPresent();
                    if (own && cell.getChildren().size() == 1) {
                        cell.getChildren().add(release(node));
                    } else if (!own) {
                        cell.getChildren().remove(1, cell.getChildren().size());
                    }
                });
    }

    private Optional<Line> line(String node) {
        return model.lines().value().stream().filter(l -> l.name().equals(node)).findFirst();
    }

    private void build(List<Line> lines) {
        clear();
        cells.clear();
        named.clear();
        int row = 1;
        for (Line line : lines) {
            boolean crisp = line.fixedBy().isEmpty() && line.join().equals("crisp");
            Label name = new Label((crisp ? "◇ " : "") + line.name());
            name.setTooltip(new Tooltip(line.name() + (crisp ? ", a crisp edge" : "")));
            name.getStyleClass().add("field-label");
            name.setMinWidth(0);
            // Under the name, where it takes no figure its room.
            VBox cell = new VBox(name);
            cell.setAlignment(Pos.CENTER_LEFT);
            named.put(line.name(), cell);
            put(cell, 0, row);
            for (int i = 0; i < COLUMNS.length; i++) {
                put(cell(line, COLUMNS[i]), i + 1, row);
            }
            if (line.fixedBy().isEmpty()) {
                put(strike(line.name()), COLUMNS.length + 1, row);
            }
            row++;
        }
    }

    private Button strike(String node) {
        Button strike = small("×", "strike-" + node.replace(' ', '-'));
        strike.setAccessibleText("Remove " + node);
        strike.setTooltip(new Tooltip("Removes \"" + node + "\""));
        strike.setOnAction(e -> remove(node));
        return strike;
    }

    private void remove(String node) {
        board.selected().set(Optional.of(node));
        board.deleteSelected();
    }

    private Hyperlink release(String node) {
        Hyperlink release = new Hyperlink("as the set");
        release.getStyleClass().add("whose");
        release.setTooltip(
                new Tooltip("Gives this piece's own place and diameter up for the set's"));
        release.setAccessibleText(node + " back to the set's");
        release.setOnAction(e -> tell(model.release(node)));
        return release;
    }

    private Field cell(Line line, Column column) {
        Field field = new Field();
        String what =
                column == Column.PLACE ? "place" : column == Column.DIAMETER ? "diameter" : "slope";
        field.setId(what + "-" + line.name().replace(' ', '-'));
        field.setAccessibleText(line.name() + ", " + what);
        if (column == Column.SLOPE) {
            field.getStyleClass().add("slope");
        }
        cells.add(new Cell(line.name(), column, field));
        boolean fixed = !line.fixedBy().isEmpty() && column != Column.SLOPE;
        if (fixed) {
            field.setEditable(false);
            field.setFocusTraversable(false);
            field.getStyleClass().add("fixed");
            field.setTooltip(new Tooltip("Does not move: " + line.fixedBy()));
            // The toolkit keeps letters out of such a field, yet lets these keys take its words.
            field.addEventFilter(KeyEvent.KEY_PRESSED, e -> keepWhole(e, line.name()));
            return field;
        }
        listen(
                field,
                () -> board.selected().set(Optional.of(line.name())),
                () -> enter(line.name(), column, field));
        keys(
                field,
                () -> line(line.name()).ifPresent(l -> field.setText(l.text(column))),
                () -> remove(line.name()));
        return field;
    }

    private void keepWhole(KeyEvent event, String node) {
        boolean isDelete = event.getCode() == KeyCode.DELETE;
        if (event.isShortcutDown() && (isDelete || event.getCode() == KeyCode.BACK_SPACE)) {
            event.consume();
            if (isDelete) {
                remove(node);
            }
        }
    }

    private void enter(String node, Column column, TextField field) {
        if (line(node).isEmpty()) {
            // It was taken out while the hand was in it.
            return;
        }
        tell(model.enter(node, column, field.getText()));
        // The last good value stands.
        line(node).ifPresent(l -> field.setText(l.text(column)));
    }
}
