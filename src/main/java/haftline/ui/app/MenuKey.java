package haftline.ui.app;

import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.PickResult;

/**
 * The keyboard's menu key, and Shift with F10 in its place, ask what can be done where the keys
 * are. Not every desktop makes such a request of them by itself; a second one shows the same menu.
 */
final class MenuKey {
    private MenuKey() {}

    /** Heeds the keys that nothing in a window's content takes. */
    static void heed(Parent content) {
        content.addEventHandler(KeyEvent.KEY_PRESSED, MenuKey::press);
    }

    private static void press(KeyEvent event) {
        boolean isAsked =
                event.getCode() == KeyCode.CONTEXT_MENU
                        || event.getCode() == KeyCode.F10 && event.isShiftDown();
        if (isAsked && event.getTarget() instanceof Node at) {
            Bounds own = at.getLayoutBounds();
            double x = own.getCenterX();
            double y = own.getCenterY();
            var onScreen = at.localToScreen(x, y);
            Event.fireEvent(
                    at,
                    new ContextMenuEvent(
                            ContextMenuEvent.CONTEXT_MENU_REQUESTED,
                            x,
                            y,
                            onScreen.getX(),
                            onScreen.getY(),
                            true,
                            new PickResult(at, x, y)));
            event.consume();
        }
    }
}
