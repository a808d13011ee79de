package haftline.drawing;

import haftline.measure.Checks;
import java.util.Collection;
import java.util.Iterator;

/**
 * A rectangle along the axes that holds something, in mm. A single point is a valid, empty one.
 *
 * @param minXMm left
 * @param minYMm bottom
 * @param maxXMm right, not less than left
 * @param maxYMm top, not less than bottom
 */
public record Bounds(double minXMm, double minYMm, double maxXMm, double maxYMm) {
    /**
     * Checks the order of the sides.
     *
     * @throws IllegalArgumentException where a side is not a number or on the wrong side of its
     *     opposite
     */
    public Bounds {
        Checks.within("left", minXMm, -Double.MAX_VALUE, maxXMm);
        Checks.within("bottom", minYMm, -Double.MAX_VALUE, maxYMm);
    }

    /**
     * The least rectangle that holds two places.
     *
     * @param a one place
     * @param b the other
     * @return the rectangle
     */
    public static Bounds of(Vertex a, Vertex b) {
        return new Bounds(
                Math.min(a.xMm(), b.xMm()),
                Math.min(a.yMm(), b.yMm()),
                Math.max(a.xMm(), b.xMm()),
                Math.max(a.yMm(), b.yMm()));
    }

    /**
     * The least rectangle that holds all of some rectangles.
     *
     * @param all one or more rectangles
     * @return the rectangle
     * @throws IllegalArgumentException where there is none
     */
    public static Bounds union(Collection<Bounds> all) {
        Iterator<Bounds> rest = all.iterator();
        if (!rest.hasNext()) {
            throw new IllegalArgumentException("bounds: expected at least one");
        }
        Bounds sum = rest.next();
        while (rest.hasNext()) {
            sum = sum.with(rest.next());
        }
        return sum;
    }

    /**
     * The least rectangle that holds this one and another.
     *
     * @param other the other
     * @return the rectangle
     */
    public Bounds with(Bounds other) {
        return new Bounds(
                Math.min(minXMm, other.minXMm),
                Math.min(minYMm, other.minYMm),
                Math.max(maxXMm, other.maxXMm),
                Math.max(maxYMm, other.maxYMm));
    }

    /**
     * This rectangle stretched to hold a place.
     *
     * @param xMm the place
     * @param yMm the place
     * @return the rectangle
     */
    public Bounds with(double xMm, double yMm) {
        return with(new Bounds(xMm, yMm, xMm, yMm));
    }

    /**
     * This rectangle with a margin on every side.
     *
     * @param marginMm 0 or more
     * @return the larger rectangle
     */
    public Bounds grown(double marginMm) {
        return new Bounds(
                minXMm - marginMm, minYMm - marginMm, maxXMm + marginMm, maxYMm + marginMm);
    }

    /**
     * Width.
     *
     * @return mm, 0 or more
     */
    public double widthMm() {
        return maxXMm - minXMm;
    }

    /**
     * Height.
     *
     * @return mm, 0 or more
     */
    public double heightMm() {
        return maxYMm - minYMm;
    }

    /**
     * Whether two have a point in common.
     *
     * @param other the other
     * @return true where they overlap or touch
     */
    public boolean touches(Bounds other) {
        return minXMm <= other.maxXMm
                && maxXMm >= other.minXMm
                && minYMm <= other.maxYMm
                && maxYMm >= other.minYMm;
    }
}
