package haftline.ui.board;

import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.ui.model.BoardModel;
import haftline.ui.model.Hit;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;

/** What can be done at a place of the board, or why nothing can. */
final class BoardMenu {
    private final BoardModel model;
    private final Runnable askSlope;
    private final ContextMenu menu = new ContextMenu();

    /**
     * A menu.
     *
     * @param askSlope asks for the slope at the chosen node
     */
    BoardMenu(BoardModel model, Runnable askSlope) {
        this.model = model;
        this.askSlope = askSlope;
    }

    void hide() {
        menu.hide();
    }

    /** Whether it has the keys; those that it does not know reach what is under it. */
    boolean isShown() {
        return menu.isShowing();
    }

    void show(Node owner, Optional<Hit> hit, double x, double screenX, double screenY) {
        if (hit.isPresent() && hit.get() instanceof Hit.OnNode node) {
            showForNode(owner, node.name(), screenX, screenY);
        } else if (hit.isPresent() && hit.get() instanceof Hit.OnSlope slope) {
            showForNode(owner, slope.node(), screenX, screenY);
        } else if (hit.isPresent()) {
            if (hit.get() instanceof Hit.OnDetail detail) {
                model.details().chosen().set(Optional.of(detail.index()));
            }
            showForDetail(owner, screenX, screenY);
        } else {
            MenuItem node = new MenuItem("Add a node here");
            node.setOnAction(e -> model.addNodeAt(x));
            show(owner, List.of(node, details(x)), screenX, screenY);
        }
    }

    private void show(Node owner, List<MenuItem> items, double x, double y) {
        menu.getItems().setAll(items);
        menu.show(owner, x, y);
    }

    /** What can be done to the chosen detail; its figures stand in the first line. */
    void showForDetail(Node owner, double screenX, double screenY) {
        String words = model.details().words().orElse("");
        MenuItem figures = new MenuItem(words);
        figures.setDisable(true);
        MenuItem remove =
                keyed("Remove the " + words.split(",")[0], KeyCode.DELETE, model::deleteSelected);
        show(owner, List.of(figures, remove), screenX, screenY);
    }

    private static MenuItem keyed(String text, KeyCode key, Runnable action) {
        MenuItem item = new MenuItem(text);
        item.setMnemonicParsing(false);
        item.setAccelerator(new KeyCodeCombination(key));
        item.setOnAction(e -> action.run());
        return item;
    }

    void showForNode(Node owner, String name, double screenX, double screenY) {
        PlacedNode node = model.node(name).orElse(null);
        if (node == null) {
            return;
        }
        model.selected().set(Optional.of(name));
        boolean crisp = node.isFree() && node.join() == Join.CRISP;
        MenuItem level = new MenuItem("Hold level here");
        level.setDisable(crisp);
        level.setOnAction(e -> model.slopes().set(OptionalDouble.of(0)));
        MenuItem free = new MenuItem("Leave the slope to the batten");
        free.setDisable(crisp);
        free.setOnAction(e -> model.slopes().set(OptionalDouble.empty()));
        MenuItem angle = keyed("Slope…", KeyCode.S, askSlope);
        angle.setDisable(crisp);
        if (!node.isFree()) {
            MenuItem fixed = new MenuItem("Does not move: " + node.fixedBy());
            fixed.setDisable(true);
            show(owner, List.of(fixed, angle, level, free), screenX, screenY);
            return;
        }
        MenuItem join = new MenuItem(crisp ? "Join smoothly" : "Join with a crisp edge");
        join.setOnAction(e -> model.join(crisp ? Join.SMOOTH : Join.CRISP));
        MenuItem remove = keyed("Remove \"" + name + "\"", KeyCode.DELETE, model::deleteSelected);
        show(
                owner,
                List.of(join, angle, level, free, new SeparatorMenuItem(), remove),
                screenX,
                screenY);
    }

    private Menu details(double x) {
        Menu add = new Menu("Add a detail here");
        for (Detail detail : UsualDetails.at(x)) {
            MenuItem item = new MenuItem(UsualDetails.word(detail));
            item.setOnAction(e -> model.details().add(detail));
            add.getItems().add(item);
        }
        return add;
    }
}
