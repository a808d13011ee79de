package haftline.ui.theme;

import javafx.scene.Node;
import javafx.scene.layout.VBox;

/**
 * A column that remembers how tall it is until something in it changes, and then asks the panel for
 * another place only if it has become taller or lower. Without it a figure that changes in one row
 * would have all rows with wrapped words measured anew, word by word.
 */
public class SteadyBox extends VBox {
    private Height least = Height.UNKNOWN;
    private Height wanted = Height.UNKNOWN;

    /** What the panel was told last, while a change waits for the layout. */
    private Height told = Height.UNKNOWN;

    /**
     * A column.
     *
     * @param nodes what stands in it, from the top
     */
    public SteadyBox(Node... nodes) {
        super(nodes);
    }

    private record Height(double width, double height) {
        static final Height UNKNOWN = new Height(Double.NaN, 0);
    }

    @Override
    public void requestLayout() {
        if (wanted != Height.UNKNOWN) {
            told = wanted;
        }
        least = Height.UNKNOWN;
        wanted = Height.UNKNOWN;
        if (told == Height.UNKNOWN) {
            super.requestLayout();
        } else {
            setNeedsLayout(true);
        }
    }

    @Override
    protected void layoutChildren() {
        Height before = told;
        told = Height.UNKNOWN;
        if (before != Height.UNKNOWN && computePrefHeight(before.width()) != before.height()) {
            super.requestLayout();
        }
        super.layoutChildren();
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
            // Whoever asks in the meantime knows.
            told = Height.UNKNOWN;
        }
        return wanted.height();
    }
}
