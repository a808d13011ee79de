package haftline.drawing;

import haftline.measure.Checks;

/**
 * A place on the drawing.
 *
 * @param xMm along the axis, in mm, at most {@link #LIMIT_MM} either way
 * @param yMm up, in mm, at most {@link #LIMIT_MM} either way
 */
public record Vertex(double xMm, double yMm) {
    /** One kilometre: nothing turned is larger, and nine decimals still fit in a double. */
    public static final double LIMIT_MM = 1e6;

    /**
     * Checks both coordinates; a negative zero becomes zero, so that equal places are equal values.
     *
     * @throws IllegalArgumentException where a coordinate is not a number or beyond the limit
     */
    public Vertex {
        xMm = Checks.within("x", xMm, -LIMIT_MM, LIMIT_MM) + 0.0;
        yMm = Checks.within("y", yMm, -LIMIT_MM, LIMIT_MM) + 0.0;
    }

    /**
     * Distance to another place.
     *
     * @param other the other place
     * @return distance in mm
     */
    public double distanceMm(Vertex other) {
        return Math.hypot(other.xMm - xMm, other.yMm - yMm);
    }

    /**
     * The place so far away in a direction.
     *
     * @param directionDeg direction in degrees, anticlockwise from +x
     * @param lengthMm how far, in mm
     * @return the place
     */
    public Vertex towards(double directionDeg, double lengthMm) {
        return new Vertex(
                xMm + lengthMm * Angle.cos(directionDeg), yMm + lengthMm * Angle.sin(directionDeg));
    }

    /**
     * The place on the other side of the axis.
     *
     * @return the same x, the opposite y
     */
    public Vertex mirrored() {
        return new Vertex(xMm, -yMm);
    }
}
