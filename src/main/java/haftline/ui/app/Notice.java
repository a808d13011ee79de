package haftline.ui.app;

import haftline.ui.model.EditorModel;
import haftline.ui.words.Shown;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;

/** The line that says why something was not done, until it is put away. */
final class Notice extends HBox {
    private final Label why = new Label();

    Notice(EditorModel editor) {
        super(12);
        why.setWrapText(true);
        why.setId("notice");
        Button close = new Button("Dismiss");
        close.getStyleClass().add("quiet");
        close.setOnAction(e -> editor.notice().set(Optional.empty()));
        // A reason is read whole, however long.
        close.setMinWidth(Region.USE_PREF_SIZE);
        why.setMinHeight(Region.USE_PREF_SIZE);
        why.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(why, Priority.ALWAYS);
        getChildren().addAll(why, close);
        getStyleClass().add("notice");
        setAlignment(Pos.CENTER_LEFT);
        editor.notice().follow(this::tell);
    }

    private void tell(Optional<String> text) {
        why.setText(text.map(Shown::unbroken).orElse(""));
        setVisible(text.isPresent());
        setManaged(text.isPresent());
    }
}
