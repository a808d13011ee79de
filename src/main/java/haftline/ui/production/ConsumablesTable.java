package haftline.ui.production;

import haftline.ui.model.ConsumablesModel;
import haftline.ui.model.ConsumablesModel.Column;
import haftline.ui.model.ConsumablesModel.Line;
import javafx.scene.control.Control;
import javafx.scene.control.Tooltip;

/** What is used up beside stock, kits and adhesive. */
final class ConsumablesTable extends LinesTable<Column, Line> {
    private static final Tooltip UNIT =
            new Tooltip("What it is counted in, such as ml or sheet; may be empty");
    private static final Tooltip EACH = new Tooltip("How much one piece takes");
    private static final Tooltip PRICE = new Tooltip("Price of one unit");

    ConsumablesTable(ConsumablesModel model) {
        super(model, "used", Column.values(), "what", "unit", "a piece", "price", "");
        getStyleClass().add("consumables-table");
        getChildren().add(adding("what else is used up", model::add, Column.UNIT));
        follow();
    }

    @Override
    String shape(Line line) {
        return "";
    }

    @Override
    Control control(Column column) {
        Control field = super.control(column);
        switch (column) {
            case UNIT -> field.setTooltip(UNIT);
            case EACH -> field.setTooltip(EACH);
            case PRICE -> field.setTooltip(PRICE);
            case NAME -> {}
        }
        return field;
    }

    @Override
    String said(Column column) {
        return switch (column) {
            case NAME -> "name";
            case UNIT -> "unit";
            case EACH -> "how much one piece takes";
            case PRICE -> "price of one unit";
        };
    }
}
