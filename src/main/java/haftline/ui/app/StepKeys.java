package haftline.ui.app;

import haftline.ui.model.EditorModel;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;
import javafx.scene.input.KeyEvent;

/**
 * Keys of the menus that fields and lists would keep. One step back and forth: a field takes these
 * keys for its own letters, whether any were typed or not; here it has them only until what was
 * typed is taken. The next piece, the one before and another name: a list would take them for its
 * own rows.
 */
final class StepKeys {
    static final KeyCombination UNDO =
            new KeyCodeCombination(KeyCode.Z, KeyCombination.SHORTCUT_DOWN);
    static final KeyCombination REDO =
            new KeyCodeCombination(
                    KeyCode.Z, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_DOWN);

    private final EditorModel editor;

    /** What the field at hand said when it was entered, or when a step was made last. */
    private String settled = "";

    private StepKeys(EditorModel editor) {
        this.editor = editor;
    }

    /** Keeps the keys for a window with such a content. */
    static void keep(Parent content, EditorModel editor) {
        StepKeys keys = new StepKeys(editor);
        content.addEventFilter(KeyEvent.KEY_PRESSED, keys::press);
        content.sceneProperty()
                .addListener(
                        (o, was, scene) -> {
                            if (scene != null) {
                                scene.focusOwnerProperty()
                                        .addListener((f, before, now) -> keys.settle(now));
                            }
                        });
        // Fields show a step only after it was told.
        editor.status().watch(status -> Platform.runLater(() -> keys.settle(content.getScene())));
    }

    private void settle(Scene scene) {
        if (scene != null) {
            settle(scene.getFocusOwner());
        }
    }

    private void settle(Node at) {
        if (at instanceof TextInputControl field) {
            settled = field.getText();
        }
    }

    /** Lists and panes that scroll keep these keys for themselves, to no use here. */
    private static boolean isOfPieces(KeyEvent event) {
        return event.getCode() == KeyCode.F2
                || event.isShortcutDown()
                        && (event.getCode() == KeyCode.PAGE_UP
                                || event.getCode() == KeyCode.PAGE_DOWN);
    }

    private static void run(KeyEvent event, Scene scene) {
        scene.getAccelerators().entrySet().stream()
                .filter(entry -> entry.getKey().match(event))
                .findFirst()
                .ifPresent(
                        entry -> {
                            event.consume();
                            entry.getValue().run();
                        });
    }

    private void press(KeyEvent event) {
        if (isOfPieces(event) && event.getTarget() instanceof Node at) {
            run(event, at.getScene());
            return;
        }
        if (event.getTarget() instanceof TextInputControl field
                && field.getText().equals(settled)
                && (UNDO.match(event) || REDO.match(event))) {
            if (UNDO.match(event)) {
                editor.undo();
            } else {
                editor.redo();
            }
            event.consume();
        }
    }
}
