package haftline.shape;

import haftline.measure.Checks;
import java.util.OptionalDouble;

/**
 * A place on the outline that the maker sets, between the shoulder and the seat.
 *
 * @param name a turner's word for it, unique in its shape, such as {@code waist} or {@code swell}
 * @param place where along the wood
 * @param size its diameter
 * @param join smooth or crisp
 * @param slopeDeg slope of the outline there, degrees from the axis, positive where the wood
 *     thickens towards the butt, -85 to 85; empty to leave it to the batten; only at a smooth node
 * @param slides whether a widest or narrowest node may slide along the axis to where its flat spot
 *     is least
 */
public record Node(
        String name, Place place, Size size, Join join, OptionalDouble slopeDeg, boolean slides) {
    /** Steepest slope that may be asked for, degrees. */
    public static final double STEEPEST_DEG = 85;

    /** Checks the ranges. */
    public Node {
        Checks.named("node name", name);
        slopeDeg.ifPresent(
                deg -> Checks.withinDegrees("slope of " + name, deg, -STEEPEST_DEG, STEEPEST_DEG));
        if (slopeDeg.isPresent() && join == Join.CRISP) {
            throw new IllegalArgumentException(
                    "slope of " + name + ": a crisp node has two slopes, so none may be given");
        }
    }

    /**
     * The same node with another size.
     *
     * @param newSize its diameter
     * @return the changed copy
     */
    public Node withSize(Size newSize) {
        return new Node(name, place, newSize, join, slopeDeg, slides);
    }

    /**
     * The same node at another place, where it stays: it no longer slides.
     *
     * @param newPlace where along the wood
     * @return the changed copy
     */
    public Node pinnedAt(Place newPlace) {
        return new Node(name, newPlace, size, join, slopeDeg, false);
    }

    /**
     * The same node passed in another way; a crisp node has no slope of its own.
     *
     * @param newJoin smooth or crisp
     * @return the changed copy
     */
    public Node withJoin(Join newJoin) {
        OptionalDouble slope = newJoin == Join.CRISP ? OptionalDouble.empty() : slopeDeg;
        return new Node(name, place, size, newJoin, slope, slides);
    }

    /**
     * The same node with another slope.
     *
     * @param newSlopeDeg degrees from the axis, or empty to leave it to the batten
     * @return the changed copy
     */
    public Node withSlopeDeg(OptionalDouble newSlopeDeg) {
        return new Node(name, place, size, join, newSlopeDeg, slides);
    }

    /**
     * The same node under another name.
     *
     * @param newName unique in its shape
     * @return the changed copy
     */
    public Node withName(String newName) {
        return new Node(newName, place, size, join, slopeDeg, slides);
    }
}
