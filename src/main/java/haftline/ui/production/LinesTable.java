package haftline.ui.production;

import haftline.edit.Outcome;
import haftline.ui.inspector.TypedTable;
import haftline.ui.model.TypedLines;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;

/**
 * A list of the workshop: a cell a figure, and a button that strikes the line out. The hand stays
 * where it was when lines come and go.
 */
abstract class LinesTable<C extends Enum<C>, L extends TypedLines.Line<C>> extends TypedTable {
    private final TypedLines<C, L> model;
    private final String id;
    private final List<C> columns;
    private final int last;
    private final List<Cell> cells = new ArrayList<>();
    private final List<Button> strikes = new ArrayList<>();
    private List<String> built = List.of();

    private final class Cell {
        private final int index;
        private final C column;
        private final Control control;

        private Cell(int index, C column, Control control) {
            this.index = index;
            this.column = column;
            this.control = control;
        }

        private String text() {
            return control instanceof TextField field
                    ? field.getText()
                    : ((CheckBox) control).isSelected() ? "yes" : "no";
        }

        private void text(String text) {
            if (control instanceof TextField field) {
                if (!field.getText().equals(text)) {
                    field.setText(text);
                }
            } else {
                ((CheckBox) control).setSelected(text.equals("yes"));
            }
        }
    }

    /**
     * A table that is empty until {@link #follow} is called.
     *
     * @param model what stands in it
     * @param id what the ids of its nodes begin with
     * @param columns from the left
     * @param heads what stands over the columns, those of the buttons included
     */
    LinesTable(TypedLines<C, L> model, String id, C[] columns, String... heads) {
        super(heads);
        this.model = model;
        this.id = id;
        this.columns = List.of(columns);
        last = heads.length - 1;
        getStyleClass().add("lines-table");
    }

    /** Shows the lines from now on. */
    final void follow() {
        model.lines().follow(this::show);
    }

    /** What the table must be built anew for, where it changes. */
    abstract String shape(L line);

    /** What a cell is typed or ticked in. */
    Control control(C column) {
        return new TextField();
    }

    /** What stands over a line, as wide as the table. */
    Optional<Node> over(L line, Optional<L> before) {
        return Optional.empty();
    }

    /** What stands in a line where no cell does, in its first column. */
    Optional<Node> beside(L line) {
        return Optional.empty();
    }

    /** A button of a line besides that which strikes it out. */
    Optional<Button> button(int index, L line) {
        return Optional.empty();
    }

    private void show(List<L> lines) {
        boolean isThere = model.isThere();
        setVisible(isThere);
        setManaged(isThere);
        List<String> shapes = lines.stream().map(this::shape).toList();
        if (!shapes.equals(built)) {
            built = shapes;
            Optional<Cell> held =
                    cells.stream().filter(cell -> cell.control.isFocused()).findFirst();
            build(lines);
            held.ifPresent(cell -> focus(cell.index, cell.column));
        }
        for (Cell cell : cells) {
            L line = lines.get(cell.index);
            cell.text(line.text(cell.column));
            cell.control.setAccessibleText(
                    line.title() + ", " + said(cell.column) + ", line " + (cell.index + 1));
        }
        for (int i = 0; i < strikes.size(); i++) {
            strikes.get(i)
                    .setAccessibleText("Strike out " + lines.get(i).title() + ", line " + (i + 1));
        }
    }

    /** What a cell is of, in words. */
    String said(C column) {
        return head(column.ordinal());
    }

    private void build(List<L> lines) {
        // A field that is taken away loses the hand: what stands in it is not typed anew.
        cells.clear();
        strikes.clear();
        clear();
        int row = 1;
        for (int i = 0; i < lines.size(); i++) {
            L line = lines.get(i);
            Optional<Node> over =
                    over(line, i == 0 ? Optional.empty() : Optional.of(lines.get(i - 1)));
            if (over.isPresent()) {
                putAcross(over.get(), row++);
            }
            int at = row++;
            beside(line).ifPresent(node -> put(node, 0, at));
            for (C column : columns) {
                if (line.has(column)) {
                    put(cell(i, column), column.ordinal(), at);
                }
            }
            button(i, line).ifPresent(button -> put(button, columns.size(), at));
            put(strike(i), last, at);
        }
    }

    private Control cell(int index, C column) {
        Control control = control(column);
        Cell cell = new Cell(index, column, control);
        String name = column.name().toLowerCase(Locale.ROOT);
        control.setId(id + "-" + index + "-" + name);
        control.getStyleClass().add(name);
        if (control instanceof TextField field) {
            listen(field, () -> {}, () -> enter(cell));
            field.setOnKeyPressed(
                    e -> {
                        if (e.getCode() == KeyCode.ESCAPE) {
                            cell.text(model.lines().value().get(index).text(column));
                            tell(Outcome.DONE);
                            e.consume();
                        }
                    });
        } else {
            ((CheckBox) control).setOnAction(e -> enter(cell));
        }
        cells.add(cell);
        return control;
    }

    private void enter(Cell cell) {
        if (!cells.contains(cell)) {
            return;
        }
        tell(model.enter(cell.index, cell.column, cell.text()));
        // The last good value stands.
        if (cells.contains(cell)) {
            cell.text(model.lines().value().get(cell.index).text(cell.column));
        }
    }

    private Button strike(int index) {
        Button button = small("×", id + "-" + index + "-strike");
        button.setOnAction(
                e -> {
                    tell(model.remove(index));
                    if (!strikes.isEmpty()) {
                        strikes.get(Math.min(index, strikes.size() - 1)).requestFocus();
                    }
                });
        strikes.add(button);
        return button;
    }

    /** Gives a cell the hand, or the one above where it is gone. */
    final void focus(int index, C column) {
        cells.stream()
                .filter(cell -> cell.index <= index && cell.column == column)
                .reduce((one, next) -> next)
                .ifPresent(cell -> cell.control.requestFocus());
    }

    /**
     * A field into which the name of a line to be added is typed; what is typed next is the first
     * figure of that line.
     */
    final TextField adding(String prompt, Function<String, Outcome> add, C next) {
        TextField field = new TextField();
        field.setId(id + "-add");
        field.setPromptText(prompt);
        field.setAccessibleText(prompt);
        field.getStyleClass().add("adding");
        listen(field, () -> {}, () -> add(field, add, next));
        field.setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        field.clear();
                        tell(Outcome.DONE);
                        e.consume();
                    }
                });
        return field;
    }

    private void add(TextField field, Function<String, Outcome> add, C next) {
        String text = field.getText();
        if (text.isBlank()) {
            return;
        }
        Outcome outcome = add.apply(text);
        tell(outcome);
        if (outcome.refusal().isEmpty()) {
            field.clear();
            focus(model.lines().value().size() - 1, next);
        } else if (!field.isFocused()) {
            field.clear();
        }
    }

    /** A heading in the panel's own letters. */
    static Label heading(String text) {
        Label heading = new Label(text);
        heading.getStyleClass().add("field-label");
        return heading;
    }
}
