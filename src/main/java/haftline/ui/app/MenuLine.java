package haftline.ui.app;

import javafx.scene.control.MenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** Lines of menus and the keys that do the same. */
final class MenuLine {
    private MenuLine() {}

    /**
     * A line of a menu.
     *
     * @param text its words, the letter to be typed behind a low line
     * @param action what it does
     * @param key what does the same, or null
     */
    static MenuItem of(String text, Runnable action, KeyCombination key) {
        MenuItem item = new MenuItem(text);
        item.setAccelerator(key);
        item.setOnAction(e -> action.run());
        return item;
    }

    static KeyCombination key(KeyCode code) {
        return new KeyCodeCombination(code, KeyCombination.SHORTCUT_DOWN);
    }

    static KeyCombination shiftKey(KeyCode code) {
        return new KeyCodeCombination(
                code, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);
    }
}
