package haftline.drawing;

import java.util.List;

/** One piece of a path, from a start vertex to an end vertex that is another place. */
public sealed interface Segment permits Line, Arc, Cubic, EllipseArc {
    /**
     * Where the piece starts.
     *
     * @return the vertex
     */
    Vertex start();

    /**
     * Where the piece ends.
     *
     * @return the vertex, never equal to the start
     */
    Vertex end();

    /**
     * The least rectangle that holds the piece; exact, not sampled.
     *
     * @return the rectangle
     */
    Bounds bounds();

    /**
     * The piece's share of the signed area of a loop, half the integral of x dy - y dx along it
     * (Green's theorem); summed over a closed path the area, positive where it runs anticlockwise.
     *
     * @return mm2, in closed form
     */
    double sweptAreaMm2();

    /**
     * The same piece walked the other way.
     *
     * @return the reversed piece
     */
    Segment reversed();

    /**
     * The same piece on the other side of the axis y = 0, walked the same way.
     *
     * @return the reflected piece
     */
    Segment mirrored();

    /**
     * Vertices of a chain of chords, the start left out and the end included.
     *
     * @param toleranceMm greatest distance between the piece and its chords, over 0
     * @return one or more vertices, the last equal to the end
     */
    List<Vertex> chords(double toleranceMm);

    /**
     * Refuses a piece that goes nowhere.
     *
     * @param kind name of the piece, for the message
     * @param start its start
     * @param end its end
     * @throws IllegalArgumentException where the two are one place
     */
    static void requireDistinct(String kind, Vertex start, Vertex end) {
        if (start.equals(end)) {
            throw new IllegalArgumentException(
                    kind + " from and to " + start + ": expected two different places");
        }
    }

    /**
     * Refuses a tolerance that is not a positive number.
     *
     * @param toleranceMm the tolerance
     * @throws IllegalArgumentException where it is zero, negative, infinite or not a number
     */
    static void requireTolerance(double toleranceMm) {
        if (!(toleranceMm > 0 && toleranceMm < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "tolerance " + toleranceMm + ": expected a number over 0 mm");
        }
    }
}
