package haftline.template;

import haftline.measure.Checks;

/**
 * A place on a card or a sheet.
 *
 * @param x along the axis towards the butt, mm
 * @param y away from the axis, mm; negative beyond it
 */
public record Spot(double x, double y) {
    /** Ten metres: no sheet is larger. */
    static final double LIMIT_MM = 10_000;

    /** Checks both coordinates; a negative zero becomes zero. */
    public Spot {
        x = Checks.within("x", x, -LIMIT_MM, LIMIT_MM) + 0.0;
        y = Checks.within("y", y, -LIMIT_MM, LIMIT_MM) + 0.0;
    }

    /**
     * Distance to another place.
     *
     * @param other the other place
     * @return mm
     */
    public double distance(Spot other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /**
     * The place moved.
     *
     * @param dx along x, mm
     * @param dy along y, mm
     * @return the moved place
     */
    public Spot moved(double dx, double dy) {
        return new Spot(x + dx, y + dy);
    }

    /**
     * The place turned by half a turn about the origin.
     *
     * @return the turned place
     */
    public Spot turned() {
        return new Spot(-x, -y);
    }
}
