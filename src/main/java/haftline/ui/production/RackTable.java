package haftline.ui.production;

import haftline.ui.model.RackModel;
import haftline.ui.model.RackModel.Column;
import haftline.ui.model.RackModel.Line;
import haftline.ui.theme.MenuColours;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Control;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;

/** The sticks that blanks are cut from, under the name of their stock. */
final class RackTable extends LinesTable<Column, Line> {
    private static final Tooltip COUNT = new Tooltip("0 for a length that only the merchant has");
    private static final Tooltip PRICE = new Tooltip("Takes 11.5/m, 3.5/ft, 7.2 each or nothing");

    private final RackModel model;
    private final MenuButton add = new MenuButton("Add sticks of");

    RackTable(RackModel model) {
        super(model, "stick", Column.values(), "across", "long", "count", "price", "");
        this.model = model;
        getStyleClass().add("rack-table");
        add.setId("add-sticks");
        add.setOnShowing(e -> offer());
        // A menu without items does not open, and so is never asked for them.
        offer();
        getChildren().add(add);
        follow();
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
        MenuColours.lend(add);
    }

    /** The first figure of what was added is the one that is typed next. */
    private void add(String name) {
        tell(model.add(name));
        List<String> stocks = model.lines().value().stream().map(Line::stock).toList();
        focus(stocks.lastIndexOf(name), Column.ACROSS);
    }

    @Override
    String shape(Line line) {
        return line.stock();
    }

    @Override
    Control control(Column column) {
        Control field = super.control(column);
        if (column == Column.COUNT) {
            field.setTooltip(COUNT);
        } else if (column == Column.PRICE) {
            field.setTooltip(PRICE);
        }
        return field;
    }

    @Override
    Optional<Node> over(Line line, Optional<Line> before) {
        return before.map(Line::stock).filter(line.stock()::equals).isPresent()
                ? Optional.empty()
                : Optional.of(heading(line.stock()));
    }
}
