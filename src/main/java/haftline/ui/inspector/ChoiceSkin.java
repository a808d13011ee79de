package haftline.ui.inspector;

import javafx.scene.control.ComboBox;
import javafx.scene.control.skin.ComboBoxListViewSkin;

/**
 * The usual looks of a box of choices, but its list is in no window before it is first opened: the
 * toolkit keeps it hidden in the box, for the box's width, which the style sheet gives here, and
 * walks through its twenty nodes in every frame.
 */
final class ChoiceSkin extends ComboBoxListViewSkin<String> {
    ChoiceSkin(ComboBox<String> box) {
        super(box);
        getChildren().remove(getPopupContent());
    }
}
