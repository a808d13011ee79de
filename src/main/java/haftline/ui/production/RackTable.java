package haftline.ui.production;

import haftline.edit.Outcome;
import haftline.ui.inspector.TypedTable;
import haftline.ui.model.RackModel;
import haftline.ui.model.RackModel.Column;
import haftline.ui.model.RackModel.Line;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;

/** The sticks that blanks are cut from, under the name of their stock. */
final class RackTable extends TypedTable {
    private static final Tooltip COUNT = new Tooltip("0 for a length that only the merchant has");
    private static final Tooltip PRICE = new Tooltip("Takes 11.5/m, 3.5/ft, 7.2 each or nothing");

    private final RackModel model;
    private final MenuButton add = new MenuButton("Add sticks of");
    private final List<Cell> cells = new ArrayList<>();
    private List<String> built = List.of();

    private record Cell(int index, Column column, TextField field) {}

    RackTable(RackModel model) {
        super("across", "long", "count", "price", "");
        this.model = model;
        getStyleClass().add("rack-table");
        add.setId("add-sticks");
        add.setOnShowing(e -> offer());
        // A menu without items does not open, and so is never asked for them.
        offer();
        getChildren().add(add);
        model.lines().follow(this::show);
    }

    private void offer() {
        add.getItems()
                .setAll(
                        model.stockNames().stream()
                                .map(
                                        name -> {
                                            MenuItem item = new MenuItem(name);
                                            item.setMnemonicParsing(false);
                                            item.setOnAction(e -> add(name));
                                            return item;
                                        })
                                .toList());
    }

    /** The first figure of what was added is the one that is typed next. */
    private void add(String name) {
        Outcome outcome = model.add(name);
        tell(outcome);
        List<String> stocks = model.lines().value().stream().map(Line::stock).toList();
        cells.stream()
                .filter(cell -> cell.index() == stocks.lastIndexOf(name))
                .findFirst()
                .ifPresent(cell -> cell.field().requestFocus());
    }

    private void show(List<Line> lines) {
        boolean isThere = model.isThere();
        setVisible(isThere);
        setManaged(isThere);
        List<String> stocks = lines.stream().map(Line::stock).toList();
        if (!stocks.equals(built)) {
            built = stocks;
            build(lines);
        }
        for (Cell cell : cells) {
            String text = lines.get(cell.index()).text(cell.column());
            if (!cell.field().getText().equals(text)) {
                cell.field().setText(text);
            }
        }
    }

    private void build(List<Line> lines) {
        clear();
        cells.clear();
        int row = 1;
        for (int i = 0; i < lines.size(); i++) {
            String stock = lines.get(i).stock();
            if (i == 0 || !stock.equals(lines.get(i - 1).stock())) {
                Label heading = new Label(stock);
                heading.getStyleClass().add("field-label");
                putAcross(heading, row++);
            }
            for (Column column : Column.values()) {
                put(cell(i, stock, column), column.ordinal(), row);
            }
            put(strike(i, stock), Column.values().length, row++);
        }
    }

    private TextField cell(int index, String stock, Column column) {
        TextField field = new TextField();
        String name = column.name().toLowerCase(Locale.ROOT);
        field.setId("stick-" + index + "-" + name);
        field.getStyleClass().add(name);
        field.setAccessibleText(
                "Sticks " + (index + 1) + ", " + stock + ", " + head(column.ordinal()));
        if (column == Column.COUNT) {
            field.setTooltip(COUNT);
        } else if (column == Column.PRICE) {
            field.setTooltip(PRICE);
        }
        listen(field, () -> {}, () -> enter(index, column, field));
        cells.add(new Cell(index, column, field));
        return field;
    }

    private void enter(int index, Column column, TextField field) {
        tell(model.enter(index, column, field.getText()));
        // The last good value stands.
        if (index < model.lines().value().size()) {
            field.setText(model.lines().value().get(index).text(column));
        }
    }

    private Button strike(int index, String stock) {
        Button button = new Button("×");
        button.setId("stick-" + index + "-strike");
        button.getStyleClass().add("strike");
        button.setAccessibleText("Strike out sticks " + (index + 1) + ", " + stock);
        button.setOnAction(e -> tell(model.remove(index)));
        return button;
    }
}
