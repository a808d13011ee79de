package haftline.ui.inspector;

import haftline.edit.Outcome;
import haftline.ui.model.BoardModel;
import haftline.ui.model.NodeTableModel;
import haftline.ui.model.NodeTableModel.Column;
import haftline.ui.model.NodeTableModel.Line;
import haftline.ui.theme.SteadyBox;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** The nodes by number; what fixes the ends is said where the pointer rests. */
final class NodeTable extends SteadyBox {
    private static final PseudoClass OWN = PseudoClass.getPseudoClass("own");
    private static final Column[] COLUMNS = {Column.PLACE, Column.DIAMETER, Column.SLOPE};
    private static final String[] HEADS = {"node", "at", "diameter", "slope", ""};

    private final NodeTableModel model;
    private final BoardModel board;
    private final GridPane grid = new GridPane();
    private final Label note = new Label();
    private final List<Cell> cells = new ArrayList<>();
    private final List<Hyperlink> releases = new ArrayList<>();
    private final Runnable stop;
    private String built = "";

    private record Cell(String node, Column column, Field field) {}

    NodeTable(NodeTableModel model, BoardModel board) {
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
        for (Hyperlink release : releases) {
            boolean own =
                    line((String) release.getUserData())
                            .filter(l -> l.isPlaceOwn() || l.isDiameterOwn())
                            .isPresent();
            release.setVisible(own);
        }
    }

    private Optional<Line> line(String node) {
        return model.lines().value().stream().filter(l -> l.name().equals(node)).findFirst();
    }

    private void build(List<Line> lines) {
        grid.getChildren().clear();
        cells.clear();
        releases.clear();
        for (int i = 0; i < HEADS.length; i++) {
            Label head = new Label(HEADS[i]);
            head.getStyleClass().add("small");
            grid.add(head, i, 0);
        }
        int row = 1;
        for (Line line : lines) {
            boolean crisp = line.fixedBy().isEmpty() && line.join().equals("crisp");
            Label name = new Label((crisp ? "◇ " : "") + line.name());
            name.setTooltip(new Tooltip(line.name() + (crisp ? ", a crisp edge" : "")));
            name.getStyleClass().add("field-label");
            name.setMinWidth(0);
            grid.add(name, 0, row);
            for (int i = 0; i < COLUMNS.length; i++) {
                grid.add(cell(line, COLUMNS[i]), i + 1, row);
            }
            grid.add(release(line), COLUMNS.length + 1, row++);
        }
    }

    private Hyperlink release(Line line) {
        Hyperlink release = new Hyperlink("set's");
        release.getStyleClass().add("whose");
        release.setTooltip(
                new Tooltip("Gives this piece's own place and diameter up for the set's"));
        release.setAccessibleText(line.name() + " back to the set's");
        release.setUserData(line.name());
        release.setOnAction(e -> tell(model.release(line.name())));
        releases.add(release);
        return release;
    }

    private Field cell(Line line, Column column) {
        Field field = new Field();
        String what =
                column == Column.PLACE ? "place" : column == Column.DIAMETER ? "diameter" : "slope";
        field.setId(what + "-" + line.name().replace(' ', '-'));
        field.setAccessibleText(line.name() + ", " + what);
        cells.add(new Cell(line.name(), column, field));
        boolean fixed = !line.fixedBy().isEmpty() && column != Column.SLOPE;
        if (fixed) {
            field.setEditable(false);
            field.setFocusTraversable(false);
            field.getStyleClass().add("fixed");
            field.setTooltip(new Tooltip("Does not move: " + line.fixedBy()));
            return field;
        }
        field.setOnAction(e -> enter(line.name(), column, field));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                board.selected().set(Optional.of(line.name()));
                            } else {
                                enter(line.name(), column, field);
                            }
                        });
        return field;
    }

    private void enter(String node, Column column, TextField field) {
        Outcome outcome = model.enter(node, column, field.getText());
        tell(outcome);
        // The last good value stands.
        line(node).ifPresent(l -> field.setText(l.text(column)));
    }

    private void tell(Outcome outcome) {
        note.setText(outcome.refusal().orElse(""));
        note.pseudoClassStateChanged(
                PseudoClass.getPseudoClass("wrong"), outcome.refusal().isPresent());
        note.setManaged(outcome.refusal().isPresent());
        note.setVisible(outcome.refusal().isPresent());
    }
}
