package haftline.ui.inspector;

import haftline.ui.model.Preferences;
import haftline.ui.model.Row;
import java.util.List;
import java.util.function.Supplier;
import javafx.beans.binding.Bindings;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** A part of a side panel that folds away under its heading, and is found again as it was left. */
public final class Fold extends VBox {
    private final Label summary = new Label();
    private final ToggleButton heading;
    private Runnable stop = () -> {};

    /**
     * A part that folds.
     *
     * @param title what stands over it
     * @param isOpen whether it is open where nothing is remembered
     * @param preferences where that is remembered
     * @param rows what folds away; asked for once, when it is first unfolded
     */
    public Fold(
            String title,
            boolean isOpen,
            Preferences preferences,
            Supplier<? extends List<? extends Node>> rows) {
        getStyleClass().add("fold");
        VBox body = new VBox();
        heading = new ToggleButton(title);
        heading.setId(
                "fold-" + title.toLowerCase(java.util.Locale.ROOT).replaceAll("[^a-z]+", "-"));
        heading.getStyleClass().setAll("fold-heading");
        heading.setSelected(preferences.isUnfolded(title, isOpen));
        heading.selectedProperty().addListener((o, was, is) -> preferences.unfolded(title, is));
        heading.textProperty()
                .bind(
                        Bindings.when(heading.selectedProperty())
                                .then("▾ " + title)
                                .otherwise("▸ " + title));
        heading.setMaxWidth(Double.MAX_VALUE);
        heading.accessibleTextProperty()
                .bind(
                        Bindings.when(heading.selectedProperty())
                                .then(title + ", fold")
                                .otherwise(
                                        Bindings.concat(
                                                title + ", unfold; ", summary.textProperty())));
        HBox.setHgrow(heading, Priority.ALWAYS);
        summary.getStyleClass().add("small");
        summary.visibleProperty().bind(heading.selectedProperty().not());
        summary.managedProperty().bind(summary.visibleProperty());
        summary.setMinWidth(0);
        summary.setOnMouseClicked(e -> heading.fire());
        HBox line = new HBox(6, heading, summary);
        line.setAlignment(Pos.CENTER_LEFT);
        body.getStyleClass().add("fold-body");
        body.visibleProperty().bind(heading.selectedProperty());
        body.managedProperty().bind(heading.selectedProperty());
        getChildren().addAll(line, body);
        heading.selectedProperty().addListener(o -> fill(body, rows));
        fill(body, rows);
    }

    private void fill(VBox body, Supplier<? extends List<? extends Node>> rows) {
        if (heading.isSelected() && body.getChildren().isEmpty()) {
            body.getChildren().setAll(rows.get());
        }
    }

    /** Says in short what is folded away. */
    Fold saying(Row row) {
        getStyleClass().add("inner-fold");
        stop = row.state().follow(state -> summary.setText(state.text()));
        return this;
    }

    void forget() {
        stop.run();
    }
}
