package haftline.curve;

/**
 * The shortest distance and where it stands.
 *
 * @param distance mm; 0 where the two cross or touch
 * @param outlineX foot on the outline, x in mm
 * @param outlineR foot on the outline, r in mm
 * @param otherX foot on the point or edge, x in mm
 * @param otherR foot on the point or edge, r in mm
 */
public record Nearest(
        double distance, double outlineX, double outlineR, double otherX, double otherR) {
    /**
     * Returns the foot on the outline.
     *
     * @return the point
     */
    public Point onOutline() {
        return new Point(outlineX, outlineR);
    }

    /**
     * Returns the foot on the other side.
     *
     * @return the point
     */
    Point onOther() {
        return new Point(otherX, otherR);
    }
}
