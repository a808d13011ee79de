package haftline.ui.app;

import javafx.beans.binding.Bindings;
import javafx.scene.Node;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * What stands under the pages: the reason why something was not done, and the findings below it. A
 * reason takes its room from the findings: over the board it would move the piece away from under
 * the hand that drags it.
 */
final class Foot extends VBox {
    /** What is left of the findings beside a long reason, px. */
    private static final double LEAST_LEFT = 30;

    private final StackPane holder = new StackPane();

    Foot(Notice notice, double leastPx) {
        super(notice);
        VBox.setVgrow(holder, Priority.ALWAYS);
        holder.setMinHeight(0);
        getChildren().add(holder);
        minHeightProperty()
                .bind(
                        Bindings.createDoubleBinding(
                                () ->
                                        notice.isManaged()
                                                ? Math.max(leastPx, notice.getHeight() + LEAST_LEFT)
                                                : leastPx,
                                notice.heightProperty(),
                                notice.managedProperty()));
    }

    /** Shows findings, or what stands in their place beside another page. */
    void show(Node found) {
        holder.getChildren().setAll(found);
    }
}
