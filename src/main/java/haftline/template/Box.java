package haftline.template;

/**
 * A rectangle along the axes.
 *
 * @param minX left, mm
 * @param minY bottom, mm
 * @param maxX right, mm, not less than left
 * @param maxY top, mm, not less than bottom
 */
public record Box(double minX, double minY, double maxX, double maxY) {
    /** Checks the order of the sides. */
    public Box {
        if (!(minX <= maxX && minY <= maxY)) {
            throw new IllegalArgumentException(
                    "box from "
                            + minX
                            + ", "
                            + minY
                            + " to "
                            + maxX
                            + ", "
                            + maxY
                            + ": expected"
                            + " left to right and bottom to top");
        }
    }

    static Box of(Spot a, Spot b) {
        return new Box(
                Math.min(a.x(), b.x()),
                Math.min(a.y(), b.y()),
                Math.max(a.x(), b.x()),
                Math.max(a.y(), b.y()));
    }

    Box with(Spot spot) {
        return with(new Box(spot.x(), spot.y(), spot.x(), spot.y()));
    }

    Box with(Box other) {
        return new Box(
                Math.min(minX, other.minX),
                Math.min(minY, other.minY),
                Math.max(maxX, other.maxX),
                Math.max(maxY, other.maxY));
    }

    /** Whether the two come nearer than a distance. */
    boolean isNear(Box other, double mm) {
        return minX <= other.maxX + mm
                && other.minX <= maxX + mm
                && minY <= other.maxY + mm
                && other.minY <= maxY + mm;
    }

    /** How far a place lies outside, mm, 0 inside; not more than its true distance. */
    double distance(Spot spot) {
        double dx = Math.max(0, Math.max(minX - spot.x(), spot.x() - maxX));
        double dy = Math.max(0, Math.max(minY - spot.y(), spot.y() - maxY));
        return Math.hypot(dx, dy);
    }

    /**
     * Width.
     *
     * @return mm
     */
    public double width() {
        return maxX - minX;
    }

    /**
     * Height.
     *
     * @return mm
     */
    public double height() {
        return maxY - minY;
    }
}
