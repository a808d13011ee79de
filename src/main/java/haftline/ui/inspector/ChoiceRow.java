package haftline.ui.inspector;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One of several words. */
final class ChoiceRow extends VBox implements Refreshed {
    private final ComboBox<String> box = new ComboBox<>();
    private final Label note = new Label();
    private final Supplier<String> value;
    private final Supplier<String> reason;
    private boolean filling;

    ChoiceRow(
            String name,
            List<String> words,
            Supplier<String> value,
            Supplier<String> reason,
            Consumer<String> take) {
        this.value = value;
        this.reason = reason;
        getStyleClass().add("field-row");
        Label label = new Label(name);
        label.getStyleClass().add("field-label");
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setLabelFor(box);
        box.getItems().setAll(words);
        box.setAccessibleText(name);
        box.setId("choice-" + name.replace(' ', '-'));
        box.setVisibleRowCount(14);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox line = new HBox(8, label, gap, box);
        line.setAlignment(Pos.CENTER_LEFT);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        getChildren().addAll(line, note);
        box.setOnAction(
                e -> {
                    if (!filling && box.getValue() != null) {
                        take.accept(box.getValue());
                    }
                });
        refresh();
    }

    @Override
    public void refresh() {
        filling = true;
        box.setValue(value.get());
        filling = false;
        note.setText(reason.get());
        note.setVisible(!note.getText().isEmpty());
        note.setManaged(!note.getText().isEmpty());
    }
}
