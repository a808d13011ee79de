package haftline.ui.inspector;

import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One figure that follows from others. */
final class FigureRow extends VBox implements Refreshed {
    private final Label figure = new Label();
    private final Label note = new Label();
    private final Supplier<String> value;
    private final Supplier<String> reason;

    FigureRow(String name, Supplier<String> value, Supplier<String> reason) {
        this.value = value;
        this.reason = reason;
        getStyleClass().add("field-row");
        Label label = new Label(name);
        label.getStyleClass().add("field-label");
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setLabelFor(figure);
        figure.getStyleClass().add("figure");
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        HBox line = new HBox(8, label, gap, figure);
        line.setAlignment(Pos.CENTER_LEFT);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        getChildren().addAll(line, note);
        refresh();
    }

    @Override
    public void refresh() {
        figure.setText(value.get());
        note.setText(reason.get());
        note.setVisible(!note.getText().isEmpty());
        note.setManaged(!note.getText().isEmpty());
    }
}
