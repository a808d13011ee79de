package haftline.ui.board;

import javafx.geometry.Rectangle2D;

/** The part of the board that shows the piece: under the ruler, over the curves. */
public final class BoardArea {
    private BoardArea() {}

    /**
     * That part.
     *
     * @param width width of the board, px
     * @param height its height, px
     * @return its bounds within the board, px
     */
    public static Rectangle2D of(double width, double height) {
        double bottom = new Sheet(Math.floor(width), Math.floor(height)).curvesTop();
        return new Rectangle2D(0, Sheet.RULER, width, Math.max(0, bottom - Sheet.RULER));
    }
}
