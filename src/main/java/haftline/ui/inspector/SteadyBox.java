package haftline.ui.inspector;

import javafx.scene.layout.VBox;

/**
 * A column that remembers how tall it is until something in it changes. Rows with wrapped words are
 * otherwise measured word by word each time that any of them changes.
 */
class SteadyBox extends VBox {
    private Height least = Height.UNKNOWN;
    private Height wanted = Height.UNKNOWN;

    private record Height(double width, double height) {
        static final Height UNKNOWN = new Height(Double.NaN, 0);
    }

    @Override
    public void requestLayout() {
        least = Height.UNKNOWN;
        wanted = Height.UNKNOWN;
        super.requestLayout();
    }

    @Override
    protected double computeMinHeight(double width) {
        if (least.width() != width) {
            least = new Height(width, super.computeMinHeight(width));
        }
        return least.height();
    }

    @Override
    protected double computePrefHeight(double width) {
        if (wanted.width() != width) {
            wanted = new Height(width, super.computePrefHeight(width));
        }
        return wanted.height();
    }
}
