package haftline.ui.theme;

import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.layout.Region;

/**
 * A row as wide as its list and as high as its words, wrapped, want.
 *
 * @param <T> what a row shows
 */
public abstract class WideCell<T> extends ListCell<T> {
    /** The scroll bar and the air on both sides, px. */
    private static final double ASIDE = 30;

    private final ListView<T> list;

    /**
     * A row of a list.
     *
     * @param list the list
     */
    protected WideCell(ListView<T> list) {
        this.list = list;
        setPrefWidth(0);
    }

    /**
     * Shows a row.
     *
     * @param row what is to be laid out in the list's width
     */
    protected void show(Region row) {
        double width = Math.max(0, list.getWidth() - ASIDE);
        row.setMinWidth(width);
        row.setPrefWidth(width);
        row.setMaxWidth(width);
        setText(null);
        setGraphic(row);
    }

    @Override
    protected double computePrefHeight(double width) {
        return getGraphic() instanceof Region row && row.getPrefWidth() > 0
                ? snappedTopInset() + row.prefHeight(row.getPrefWidth()) + snappedBottomInset()
                : super.computePrefHeight(width);
    }
}
