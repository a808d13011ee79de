package haftline.ui.inspector;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.VBox;

/** A part of the inspector that folds away under its heading. */
final class Fold extends VBox implements Refreshed {
    private final VBox body = new VBox();
    private final List<Refreshed> rows = new ArrayList<>();

    Fold(String title) {
        getStyleClass().add("fold");
        ToggleButton heading = new ToggleButton(title);
        heading.getStyleClass().setAll("fold-heading");
        heading.setSelected(true);
        heading.setMaxWidth(Double.MAX_VALUE);
        heading.setAccessibleText(title + ", fold or unfold");
        body.getStyleClass().add("fold-body");
        body.visibleProperty().bind(heading.selectedProperty());
        body.managedProperty().bind(heading.selectedProperty());
        getChildren().addAll(heading, body);
    }

    <T extends Node & Refreshed> Fold with(T row) {
        body.getChildren().add(row);
        rows.add(row);
        return this;
    }

    @Override
    public void refresh() {
        rows.forEach(Refreshed::refresh);
    }
}
