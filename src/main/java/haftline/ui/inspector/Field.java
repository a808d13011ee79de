package haftline.ui.inspector;

import javafx.scene.control.TextField;

/** A field whose size does not go by its text: new text is laid out in it, and nothing round it. */
final class Field extends TextField {
    @Override
    public void requestLayout() {
        setNeedsLayout(true);
    }

    /** Shows a text; the same text again costs nothing. */
    void show(String text) {
        if (!getText().equals(text)) {
            setText(text);
        }
    }
}
