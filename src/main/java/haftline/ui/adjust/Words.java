package haftline.ui.adjust;

import haftline.ui.words.Shown;
import javafx.scene.control.Label;

/** Labels of the panels. */
final class Words {
    private Words() {}

    /** A heading of a part. */
    static Label heading(String text) {
        Label label = wrapped(text);
        label.getStyleClass().add("part-heading");
        return label;
    }

    static Label small(String text) {
        Label label = wrapped(text);
        label.getStyleClass().add("small");
        return label;
    }

    static Label wrapped(String text) {
        Label label = new Label(Shown.unbroken(text));
        label.setWrapText(true);
        label.setMinHeight(javafx.scene.layout.Region.USE_PREF_SIZE);
        return label;
    }
}
