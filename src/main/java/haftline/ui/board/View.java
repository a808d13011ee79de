package haftline.ui.board;

/**
 * Where the piece stands on the screen: one scale for both directions.
 *
 * @param scale pixels a millimetre
 * @param shoulderX pixel of x = 0
 * @param axisY pixel of the lathe axis
 */
public record View(double scale, double shoulderX, double axisY) {
    /** Smallest and greatest scale that a board is drawn at, px/mm. */
    static final double LEAST = 0.5;

    static final double GREATEST = 60;

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

    View moved(double dx, double dy) {
        return new View(scale, shoulderX + dx, axisY + dy);
    }

    /** Larger or smaller, the place under a pixel staying where it is. */
    View zoomed(double factor, double atX, double atY) {
        double next = Math.min(GREATEST, Math.max(LEAST, scale * factor));
        double by = next / scale;
        return new View(next, atX + (shoulderX - atX) * by, atY + (axisY - atY) * by);
    }
}
