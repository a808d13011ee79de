package haftline.ui.theme;

import java.util.List;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.MenuButton;

/**
 * The colours of a menu that opens from a button. Such a menu measures itself before it belongs to
 * the button, and so before it can look up what the window's colours are.
 */
public final class MenuColours {
    private MenuColours() {}

    /**
     * Gives a menu the colours of the window that its button stands in; to be called when the menu
     * is about to be shown and has its items.
     *
     * @param button the button
     */
    public static void lend(MenuButton button) {
        if (button.getItems().isEmpty() || button.getScene() == null) {
            return;
        }
        ContextMenu menu = button.getItems().get(0).getParentPopup();
        if (menu == null) {
            return;
        }
        List<String> window = button.getScene().getRoot().getStyleClass();
        for (Palette palette : List.of(Palette.PAPER, Palette.SLATE)) {
            menu.getStyleClass().remove(palette.name());
            if (window.contains(palette.name())) {
                menu.getStyleClass().add(palette.name());
            }
        }
    }
}
