package haftline.ui.theme;

import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Region;

/** Switches side by side of which one is on: pressed once more, it stays on. */
public final class Switches extends HBox {
    /**
     * Switches, the first of them on.
     *
     * @param all in their order; what each does is its own action
     */
    public Switches(ToggleButton... all) {
        super(all);
        getStyleClass().add("switches");
        ToggleGroup group = new ToggleGroup();
        for (ToggleButton button : all) {
            button.setToggleGroup(group);
            button.getStyleClass().setAll("switch");
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        all[0].setSelected(true);
        group.selectedToggleProperty()
                .addListener(
                        (o, was, is) -> {
                            if (is == null) {
                                was.setSelected(true);
                            }
                        });
    }
}
