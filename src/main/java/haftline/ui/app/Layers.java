package haftline.ui.app;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** Views that lie over each other. */
final class Layers {
    private Layers() {}

    /**
     * Keeps in the window what is visible only, in the order in which it was laid. Views that are
     * hidden would be walked through with every frame, and styled before the first.
     *
     * @param pane a pane with all its views
     */
    static void keepVisible(StackPane pane) {
        List<Node> all = List.copyOf(pane.getChildren());
        for (Node view : all) {
            view.visibleProperty().addListener((o, was, is) -> keep(pane, all, view));
            keep(pane, all, view);
        }
    }

    private static void keep(StackPane pane, List<Node> all, Node view) {
        List<Node> laid = pane.getChildren();
        if (!view.isVisible()) {
            laid.remove(view);
        } else if (!laid.contains(view)) {
            int at = 0;
            for (Node under : all.subList(0, all.indexOf(view))) {
                at = Math.max(at, laid.indexOf(under) + 1);
            }
            laid.add(at, view);
        }
    }
}
