package haftline.ui.production;

import haftline.ui.model.StepsModel;
import haftline.ui.model.StepsModel.Column;
import haftline.ui.model.StepsModel.Line;
import haftline.ui.theme.MenuColours;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Control;
import javafx.scene.control.Label;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Tooltip;

/** The steps of the work in their order, each with the pieces that take another time below. */
final class StepsTable extends LinesTable<Column, Line> {
    private static final Tooltip SETUP = new Tooltip("Minutes, once for the batch");
    private static final Tooltip EACH = new Tooltip("Minutes for each piece");
    private static final Tooltip GLUING =
            new Tooltip("Adhesive is mixed for it: its pace tells how many mixes there are");
    private static final Tooltip EARLIER = new Tooltip("Does it before the step above");

    private final StepsModel model;
    private final MenuButton own = new MenuButton("Another time to");

    StepsTable(StepsModel model) {
        super(model, "step", Column.values(), "step", "once\nmin", "a piece\nmin", "glue", "", "");
        this.model = model;
        getStyleClass().add("steps-table");
        own.setId("add-own-time");
        own.setOnShowing(e -> offer());
        getChildren().addAll(adding("another step", model::add, Column.SETUP), own);
        follow();
        model.lines().follow(this::offerAny);
    }

    /** A menu without items does not open, and so is never asked for them. */
    private void offerAny(List<Line> lines) {
        own.setVisible(!lines.isEmpty());
        own.setManaged(!lines.isEmpty());
        if (own.getItems().isEmpty()) {
            own.getItems().add(new Menu());
        }
    }

    private void offer() {
        own.getItems()
                .setAll(
                        model.lines().value().stream()
                                .filter(line -> line.piece().isEmpty())
                                .map(line -> pieces(line.step()))
                                .toList());
        MenuColours.lend(own);
    }

    private Menu pieces(String step) {
        Menu menu = new Menu(step);
        menu.setMnemonicParsing(false);
        List<String> others = model.others(step);
        menu.setDisable(others.isEmpty());
        for (String piece : others) {
            MenuItem item = new MenuItem(piece);
            item.setMnemonicParsing(false);
            item.setOnAction(
                    e -> {
                        tell(model.add(step, piece));
                        focus(line(step, piece), Column.EACH);
                    });
            menu.getItems().add(item);
        }
        return menu;
    }

    private int line(String step, String piece) {
        List<Line> lines = model.lines().value();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).step().equals(step)
                    && lines.get(i).piece().filter(piece::equals).isPresent()) {
                return i;
            }
        }
        return lines.size() - 1;
    }

    @Override
    String shape(Line line) {
        return line.piece().map(piece -> piece + line.isOfSet()).orElse("");
    }

    @Override
    Control control(Column column) {
        Control control = column == Column.GLUING ? new CheckBox() : super.control(column);
        switch (column) {
            case SETUP -> control.setTooltip(SETUP);
            case EACH -> control.setTooltip(EACH);
            case GLUING -> control.setTooltip(GLUING);
            case NAME -> {}
        }
        return control;
    }

    @Override
    String said(Column column) {
        return switch (column) {
            case NAME -> "name";
            case SETUP -> "minutes once for the batch";
            case EACH -> "minutes for each piece";
            case GLUING -> "adhesive is mixed for it";
        };
    }

    @Override
    Optional<Node> beside(Line line) {
        return line.piece()
                .map(
                        piece -> {
                            Label name =
                                    heading(line.isOfSet() ? piece : piece + " (of another set)");
                            name.setWrapText(true);
                            name.getStyleClass().add("own");
                            name.setTooltip(new Tooltip(line.title()));
                            return name;
                        });
    }

    @Override
    Optional<Button> button(int index, Line line) {
        if (!model.canBeEarlier(index)) {
            return Optional.empty();
        }
        Button button = small("↑", "step-" + index + "-earlier");
        button.setTooltip(EARLIER);
        button.setAccessibleText("Do step " + (index + 1) + " earlier");
        button.setOnAction(e -> tell(model.earlier(index)));
        return Optional.of(button);
    }
}
