package haftline.ui.model;

/**
 * Where the piece stands on the screen: one scale for both directions.
 *
 * @param scale pixels a millimetre
 * @param shoulderX pixel of x = 0
 * @param axisY pixel of the lathe axis
 */
public record View(double scale, double shoulderX, double axisY) {
    /** Smallest scale that a board is drawn at, px/mm. */
    public static final double LEAST = 0.5;

    /** Greatest scale that a board is drawn at, px/mm. */
    public static final double GREATEST = 60;

    /**
     * An area of the screen.
     *
     * @param left px
     * @param top px
     * @param width px
     * @param height px
     */
    public record Area(double left, double top, double width, double height) {}

    /**
     * Pixel of a place.
     *
     * @param mm from the shoulder
     * @return px from the left
     */
    public double px(double mm) {
        return shoulderX + mm * scale;
    }

    /**
     * Pixel of a radius above the axis.
     *
     * @param radiusMm mm, negative below
     * @return px from the top
     */
    public double py(double radiusMm) {
        return axisY - radiusMm * scale;
    }

    /**
     * Place under a pixel.
     *
     * @param px from the left
     * @return mm from the shoulder
     */
    public double mm(double px) {
        return (px - shoulderX) / scale;
    }

    /**
     * Radius under a pixel.
     *
     * @param py from the top
     * @return mm, negative below the axis
     */
    public double radius(double py) {
        return (axisY - py) / scale;
    }

    /**
     * Moved over the screen.
     *
     * @param dx px to the right
     * @param dy px down
     * @return the moved view
     */
    public View moved(double dx, double dy) {
        return new View(scale, shoulderX + dx, axisY + dy);
    }

    /**
     * Larger or smaller, the place under a pixel staying where it is.
     *
     * @param factor over 1 to enlarge
     * @param atX px
     * @param atY px
     * @return the changed view, its scale within {@link #LEAST} and {@link #GREATEST}
     */
    public View zoomed(double factor, double atX, double atY) {
        double next = Math.min(GREATEST, Math.max(LEAST, scale * factor));
        double by = next / scale;
        return new View(next, atX + (shoulderX - atX) * by, atY + (axisY - atY) * by);
    }

    /**
     * The view that fills an area with a stretch of the axis, as far as its height allows; whole
     * pixels, so that the axis is a sharp line.
     *
     * @param fromMm from the shoulder
     * @param toMm from the shoulder
     * @param radiusMm greatest radius
     * @param area where to
     * @return the view
     */
    public static View fitting(double fromMm, double toMm, double radiusMm, Area area) {
        double across = area.width() / (toMm - fromMm);
        double down = area.height() / (2 * radiusMm);
        double scale = Math.min(GREATEST, Math.max(LEAST, Math.min(across, down)));
        double middle = area.left() + area.width() / 2;
        return new View(
                scale,
                Math.round(middle - scale * (fromMm + toMm) / 2),
                Math.round(area.top() + area.height() / 2));
    }
}
