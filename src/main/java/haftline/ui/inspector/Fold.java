package haftline.ui.inspector;

import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** A part of the inspector that folds away under its heading. */
final class Fold extends VBox {
    Fold(String title, List<? extends Node> rows) {
        getStyleClass().add("fold");
        VBox body = new VBox();
        ToggleButton heading = new ToggleButton(title);
        heading.getStyleClass().setAll("fold-heading");
        heading.setSelected(true);
        heading.setMaxWidth(Double.MAX_VALUE);
        heading.setAccessibleText(title + ", fold or unfold");
        body.getStyleClass().add("fold-body");
        body.getChildren().setAll(rows);
        body.visibleProperty().bind(heading.selectedProperty());
        body.managedProperty().bind(heading.selectedProperty());
        getChildren().addAll(heading, body);
    }
}
