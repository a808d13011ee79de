package haftline.ui.board;

import haftline.handle.PlacedNode;
import haftline.shape.Join;
import java.util.OptionalDouble;
import javafx.scene.Node;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;

/** What can be done to one node, or why nothing can. */
final class NodeMenu {
    private final BoardActions actions;
    private final ContextMenu menu = new ContextMenu();

    NodeMenu(BoardActions actions) {
        this.actions = actions;
    }

    void show(Node owner, PlacedNode node, double screenX, double screenY) {
        menu.getItems().clear();
        if (!node.isFree()) {
            MenuItem fixed = new MenuItem("Does not move: " + node.fixedBy());
            fixed.setDisable(true);
            menu.getItems().add(fixed);
        } else {
            String name = node.name();
            boolean crisp = node.join() == Join.CRISP;
            MenuItem join = new MenuItem(crisp ? "Join smoothly" : "Join with a crisp edge");
            join.setOnAction(e -> actions.join(name, crisp ? Join.SMOOTH : Join.CRISP));
            MenuItem level = new MenuItem("Hold level here");
            level.setDisable(crisp);
            level.setOnAction(e -> actions.slope(name, OptionalDouble.of(0)));
            MenuItem free = new MenuItem("Leave the slope to the batten");
            free.setDisable(crisp);
            free.setOnAction(e -> actions.slope(name, OptionalDouble.empty()));
            MenuItem remove = new MenuItem("Remove \"" + name + "\"");
            remove.setOnAction(e -> actions.remove(name));
            menu.getItems().addAll(join, level, free, new SeparatorMenuItem(), remove);
        }
        menu.show(owner, screenX, screenY);
    }
}
