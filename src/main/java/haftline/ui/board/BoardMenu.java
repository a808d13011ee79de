package haftline.ui.board;

import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Place;
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

/** What can be done at a place of the board, or why nothing can. */
final class BoardMenu {
    private final BoardModel model;
    private final ContextMenu menu = new ContextMenu();

    BoardMenu(BoardModel model) {
        this.model = model;
    }

    void hide() {
        menu.hide();
    }

    void show(Node owner, Optional<Hit> hit, double x, double screenX, double screenY) {
        if (hit.isPresent() && hit.get() instanceof Hit.OnNode node) {
            showForNode(owner, node.name(), screenX, screenY);
        } else if (hit.isPresent()) {
            Hit.OnDetail detail = (Hit.OnDetail) hit.get();
            MenuItem remove = new MenuItem("Remove the " + detail.kind());
            remove.setOnAction(e -> model.removeDetail(detail));
            show(owner, List.of(remove), screenX, screenY);
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

    void showForNode(Node owner, String name, double screenX, double screenY) {
        PlacedNode node = model.node(name).orElse(null);
        if (node == null) {
            return;
        }
        model.selected().set(Optional.of(name));
        boolean crisp = node.isFree() && node.join() == Join.CRISP;
        MenuItem level = new MenuItem("Hold level here");
        level.setDisable(crisp);
        level.setOnAction(e -> model.slope(OptionalDouble.of(0)));
        MenuItem free = new MenuItem("Leave the slope to the batten");
        free.setDisable(crisp);
        free.setOnAction(e -> model.slope(OptionalDouble.empty()));
        if (!node.isFree()) {
            MenuItem fixed = new MenuItem("Does not move: " + node.fixedBy());
            fixed.setDisable(true);
            show(owner, List.of(fixed, level, free), screenX, screenY);
            return;
        }
        MenuItem join = new MenuItem(crisp ? "Join smoothly" : "Join with a crisp edge");
        join.setOnAction(e -> model.join(crisp ? Join.SMOOTH : Join.CRISP));
        MenuItem remove = new MenuItem("Remove \"" + name + "\"");
        remove.setOnAction(e -> model.deleteSelected());
        show(owner, List.of(join, level, free, new SeparatorMenuItem(), remove), screenX, screenY);
    }

    /** Details in sizes that suit a table knife's handle (common practice, no source). */
    private Menu details(double x) {
        Place at = new Place.FromShoulder(Math.round(x * 2) / 2.0);
        Menu add = new Menu("Add a detail here");
        add.getItems()
                .addAll(
                        detail("Bead", new Detail.Bead(at, 4, 1.2)),
                        detail("Cove", new Detail.Cove(at, 5, 1)),
                        detail("Vee", new Detail.Vee(at, 1.5, 0.8)),
                        detail("Fillet", new Detail.Fillet(at, 2, 0.6)),
                        detail("Flat", new Detail.Flat(at, 6)),
                        detail("Burnt line", new Detail.BurntLine(at, 0.8, 0.3)));
        return add;
    }

    private MenuItem detail(String name, Detail detail) {
        MenuItem item = new MenuItem(name);
        item.setOnAction(e -> model.addDetail(detail));
        return item;
    }
}
