package haftline.ui.inspector;

import haftline.edit.Command;
import haftline.edit.Differences;
import haftline.edit.NodeEdits;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Length;
import haftline.set.Piece;
import haftline.shape.Join;
import haftline.ui.model.BoardModel;
import haftline.ui.model.EditorModel;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** The nodes by number: place from the shoulder and diameter, with what fixes the ends. */
final class NodeTable extends VBox implements Refreshed {
    private final EditorModel editor;
    private final BoardModel board;
    private final GridPane grid = new GridPane();
    private final Label note = new Label();
    private final Button release = new Button("Back to the set's shape");
    private final List<Cell> cells = new ArrayList<>();

    private record Cell(String node, boolean place, TextField field) {}

    NodeTable(EditorModel editor, BoardModel board) {
        this.editor = editor;
        this.board = board;
        getStyleClass().add("node-table");
        grid.getStyleClass().add("node-grid");
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        grid.getColumnConstraints().add(name);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        release.getStyleClass().add("quiet");
        release.setTooltip(
                new Tooltip("Drops the places and diameters that this piece has of its own"));
        release.setOnAction(e -> release());
        getChildren().addAll(grid, note, release);
        build();
        refresh();
    }

    private void build() {
        grid.addRow(0, head("node"), head("from shoulder"), head("diameter"));
        int row = 1;
        for (PlacedNode node : nodes()) {
            Label name =
                    new Label(
                            (node.join() == Join.CRISP && node.isFree() ? "◇ " : "") + node.name());
            name.getStyleClass().add("field-label");
            TextField place = cell(node, true);
            TextField diameter = cell(node, false);
            grid.addRow(row++, name, place, diameter);
        }
    }

    private static Label head(String text) {
        Label label = new Label(text);
        label.getStyleClass().add("small");
        return label;
    }

    private TextField cell(PlacedNode node, boolean place) {
        TextField field = new TextField();
        field.setId((place ? "place-" : "diameter-") + node.name().replace(' ', '-'));
        field.setAccessibleText(node.name() + (place ? ", from shoulder" : ", diameter"));
        field.setPrefColumnCount(6);
        Cell cell = new Cell(node.name(), place, field);
        cells.add(cell);
        if (!node.isFree()) {
            field.setEditable(false);
            field.setFocusTraversable(false);
            field.getStyleClass().add("fixed");
            field.setTooltip(new Tooltip("Does not move: " + node.fixedBy()));
            return field;
        }
        field.setOnAction(e -> commit(cell));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is) {
                                board.selected().set(Optional.of(node.name()));
                            } else {
                                commit(cell);
                            }
                        });
        return field;
    }

    private void commit(Cell cell) {
        PlacedNode node =
                nodes().stream().filter(n -> n.name().equals(cell.node())).findFirst().orElse(null);
        if (node == null || cell.field().getText().equals(text(node, cell.place()))) {
            return;
        }
        OptionalDouble mm = Length.parse(cell.field().getText(), editor.units().value());
        if (mm.isEmpty()) {
            note.setText("Expected a length, such as 12.5 mm or 31/64 in");
            note.setVisible(true);
            note.setManaged(true);
            cell.field().setText(text(node, cell.place()));
            return;
        }
        Handle handle = editor.drawn().value().flatMap(Worked::figures).orElseThrow().handle();
        OptionalDouble none = OptionalDouble.empty();
        editor.runIfDrawable(
                new NodeEdits(handle, editor.scope().value())
                        .move(cell.node(), cell.place() ? mm : none, cell.place() ? none : mm));
        // A refused figure gives way to the last good one; why stands in the notice.
        refresh();
    }

    private void release() {
        Command all =
                Differences.of(piece()).stream()
                        .filter(difference -> !difference.node().isEmpty())
                        .map(difference -> Differences.release(piece().name(), difference))
                        .reduce(Command.nothing("back to the set's shape"), Command::then);
        editor.run(all);
    }

    private Piece piece() {
        return editor.draft().value().piece(editor.piece().value());
    }

    private List<PlacedNode> nodes() {
        return editor.drawn()
                .value()
                .flatMap(Worked::figures)
                .map(Figures::handle)
                .map(Handle::nodes)
                .orElse(List.of());
    }

    private String text(PlacedNode node, boolean place) {
        return new Shown(editor.units().value()).length(place ? node.x() : 2 * node.radiusMm());
    }

    @Override
    public void refresh() {
        List<PlacedNode> nodes = nodes();
        for (Cell cell : cells) {
            for (PlacedNode node : nodes) {
                if (node.name().equals(cell.node())) {
                    cell.field().setText(text(node, cell.place()));
                }
            }
        }
        Choices own = piece().choices();
        boolean differs = !own.nodeDiametersMm().isEmpty() || !own.nodePlaces().isEmpty();
        release.setVisible(differs);
        release.setManaged(differs);
        note.setText(
                differs
                        ? "Nodes of this piece's own: "
                                + String.join(
                                        ", ",
                                        java.util.stream.Stream.concat(
                                                        own.nodeDiametersMm().keySet().stream(),
                                                        own.nodePlaces().keySet().stream())
                                                .distinct()
                                                .toList())
                        : "");
        note.setVisible(differs);
        note.setManaged(differs);
    }
}
