package haftline.ui.inspector;

import haftline.edit.Outcome;
import haftline.ui.theme.SteadyBox;
import haftline.ui.words.Shown;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;

/** A table whose cells are typed in; why a figure is refused stands beneath. */
public abstract class TypedTable extends SteadyBox {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    /** Most names are read whole, px. */
    private static final double LEAST_NAME = 54;

    private final GridPane grid = new GridPane();
    private final Label note = new Label();
    private final String[] heads;

    /**
     * An empty table.
     *
     * @param heads what stands over its columns
     */
    protected TypedTable(String... heads) {
        this.heads = heads.clone();
        getStyleClass().add("node-table");
        grid.getStyleClass().add("node-grid");
        ColumnConstraints name = new ColumnConstraints();
        name.setHgrow(Priority.ALWAYS);
        name.setMinWidth(LEAST_NAME);
        grid.getColumnConstraints().add(name);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        note.setManaged(false);
        getChildren().addAll(grid, note);
    }

    /**
     * Gives the names less room than is usual: they are broken between their words.
     *
     * @param px room of the longest word
     */
    protected final void leastName(double px) {
        grid.getColumnConstraints().get(0).setMinWidth(px);
    }

    /** Empties the table but for its heading, row 0. */
    protected final void clear() {
        grid.getChildren().clear();
        for (int i = 0; i < heads.length; i++) {
            Label head = new Label(heads[i]);
            head.getStyleClass().add("small");
            grid.add(head, i, 0);
        }
    }

    /**
     * Puts something in its cell.
     *
     * @param cell what
     * @param column from 0
     * @param row from 1
     */
    protected final void put(Node cell, int column, int row) {
        grid.add(cell, column, row);
    }

    /**
     * Puts a heading over the rows below, as wide as the table.
     *
     * @param heading what
     * @param row from 1
     */
    protected final void putAcross(Node heading, int row) {
        grid.add(heading, 0, row, heads.length, 1);
    }

    /**
     * What stands over a column.
     *
     * @param column from 0
     * @return its words
     */
    protected final String head(int column) {
        return heads[column];
    }

    /**
     * Takes what is typed on Enter and when the field is left; tells when it is entered.
     *
     * @param field where it is typed
     * @param entered called when the field is entered
     * @param taken called when something was typed
     */
    protected static void listen(TextField field, Runnable entered, Runnable taken) {
        field.setOnAction(e -> taken.run());
        field.focusedProperty().addListener((o, was, is) -> (is ? entered : taken).run());
    }

    /**
     * Takes Escape for what stood in the field before, and the menu's key of removal, which a field
     * would take for a word of its own.
     *
     * @param field where it is typed
     * @param before shows what stands there
     * @param remove takes the line out
     */
    protected final void keys(TextField field, Runnable before, Runnable remove) {
        field.addEventFilter(
                KeyEvent.KEY_PRESSED,
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        before.run();
                        tell(Outcome.DONE);
                        e.consume();
                    } else if (e.getCode() == KeyCode.DELETE && e.isShortcutDown()) {
                        e.consume();
                        before.run();
                        remove.run();
                    }
                });
    }

    /**
     * A small button of a line.
     *
     * @param sign what stands on it
     * @param id by which it is found
     * @return the button
     */
    protected static Button small(String sign, String id) {
        Button button = new Button(sign);
        button.setId(id);
        button.getStyleClass().add("strike");
        return button;
    }

    /**
     * Says why something was refused, nothing where it was not.
     *
     * @param outcome what came of it
     */
    protected final void tell(Outcome outcome) {
        boolean isRefused = outcome.refusal().isPresent();
        note.setText(outcome.refusal().map(Shown::unbroken).orElse(""));
        note.pseudoClassStateChanged(WRONG, isRefused);
        note.setManaged(isRefused);
        note.setVisible(isRefused);
    }
}
