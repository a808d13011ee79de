package haftline.ui.model;

/**
 * Where a sheet lies on the screen: one scale for both directions, y upwards on the sheet.
 *
 * @param scale pixels a millimetre, over 0
 * @param left pixel of the sheet's left edge
 * @param bottom pixel of its lower edge
 */
public record SheetView(double scale, double left, double bottom) {
    /** No sheet is shown larger than this, px/mm. */
    public static final double GREATEST = 60;

    /** A sheet may be shown smaller than it would fit, by this. */
    private static final double SMALLER = 0.5;

    /**
     * Pixel of a place.
     *
     * @param xMm from the left edge
     * @return px
     */
    public double px(double xMm) {
        return left + xMm * scale;
    }

    /**
     * Pixel of a place.
     *
     * @param yMm over the lower edge
     * @return px from the top
     */
    public double py(double yMm) {
        return bottom - yMm * scale;
    }

    /**
     * Place under a pixel.
     *
     * @param px from the left
     * @return mm from the left edge
     */
    public double xMm(double px) {
        return (px - left) / scale;
    }

    /**
     * Place under a pixel.
     *
     * @param py from the top
     * @return mm over the lower edge
     */
    public double yMm(double py) {
        return (bottom - py) / scale;
    }

    /**
     * Moved over the screen.
     *
     * @param dx px to the right
     * @param dy px down
     * @return the moved view
     */
    public SheetView moved(double dx, double dy) {
        return new SheetView(scale, left + dx, bottom + dy);
    }

    /**
     * Larger or smaller, the place under a pixel staying where it is.
     *
     * @param factor over 1 to enlarge
     * @param atX px
     * @param atY px
     * @param fitting the scale at which all is seen
     * @return the changed view
     */
    public SheetView zoomed(double factor, double atX, double atY, double fitting) {
        double next =
                Math.min(GREATEST, Math.max(SMALLER * fitting, Math.min(GREATEST, scale * factor)));
        double by = next / scale;
        return new SheetView(next, atX + (left - atX) * by, atY + (bottom - atY) * by);
    }

    /**
     * The view that shows a rectangle of the sheet as large as may be.
     *
     * @param minX mm
     * @param minY mm
     * @param maxX mm
     * @param maxY mm
     * @param area where to
     * @return the view
     */
    public static SheetView fitting(
            double minX, double minY, double maxX, double maxY, View.Area area) {
        double scale =
                Math.min(
                        GREATEST,
                        Math.min(area.width() / (maxX - minX), area.height() / (maxY - minY)));
        return new SheetView(
                scale,
                Math.round(area.left() + area.width() / 2 - scale * (minX + maxX) / 2),
                Math.round(area.top() + area.height() / 2 + scale * (minY + maxY) / 2));
    }
}
