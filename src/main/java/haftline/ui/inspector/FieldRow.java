package haftline.ui.inspector;

import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.Tooltip;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** One figure that can be typed: its name, the field, and the reason or what was wrong under it. */
final class FieldRow extends VBox implements Refreshed {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private final TextField field = new TextField();
    private final Label note = new Label();
    private final Supplier<String> value;
    private final Supplier<String> reason;
    private final Function<String, Optional<String>> take;
    private String shown = "";
    private boolean wrong;

    /**
     * A row.
     *
     * @param name what the figure is
     * @param value its text
     * @param reason why it is so; may be empty
     * @param take takes what was typed; answers what was expected where it cannot
     */
    FieldRow(
            String name,
            Supplier<String> value,
            Supplier<String> reason,
            Function<String, Optional<String>> take) {
        this.value = value;
        this.reason = reason;
        this.take = take;
        getStyleClass().add("field-row");
        Label label = new Label(name);
        label.getStyleClass().add("field-label");
        label.setMinWidth(Region.USE_PREF_SIZE);
        label.setLabelFor(field);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        field.setAccessibleText(name);
        field.setId("field-" + name.replaceAll("[^a-z]+", "-"));
        field.setTooltip(new Tooltip("Takes 12.5, 12,5 mm, 1/2\" or 31/64 in"));
        HBox line = new HBox(8, label, gap, field);
        line.setAlignment(Pos.CENTER_LEFT);
        note.getStyleClass().add("field-note");
        note.setWrapText(true);
        getChildren().addAll(line, note);
        field.setOnAction(e -> commit(false));
        field.focusedProperty()
                .addListener(
                        (o, was, is) -> {
                            if (was) {
                                commit(true);
                            }
                        });
        field.setOnKeyPressed(
                e -> {
                    if (e.getCode() == KeyCode.ESCAPE) {
                        wrong = false;
                        refresh();
                        e.consume();
                    }
                });
        refresh();
    }

    private void commit(boolean leaving) {
        if (field.getText().equals(shown)) {
            return;
        }
        Optional<String> expected = take.apply(field.getText());
        wrong = expected.isPresent();
        if (wrong) {
            note.setText(expected.get());
            mark();
            if (leaving) {
                // The last good value stands; what was expected stays to be read.
                field.setText(shown);
            } else {
                field.selectAll();
            }
        } else {
            refresh();
        }
    }

    private void mark() {
        field.pseudoClassStateChanged(WRONG, wrong);
        note.pseudoClassStateChanged(WRONG, wrong);
        note.setVisible(!note.getText().isEmpty());
        note.setManaged(!note.getText().isEmpty());
        field.setAccessibleHelp(note.getText());
    }

    @Override
    public void refresh() {
        shown = value.get();
        field.setText(shown);
        note.setText(reason.get());
        wrong = false;
        mark();
    }
}
