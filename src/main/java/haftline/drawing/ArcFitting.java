package haftline.drawing;

import java.util.List;

/**
 * How a curve is replaced by lines and circular arcs, for files whose readers follow nothing else.
 *
 * <p>The tolerance belongs to the one who fits: he knows what the curve is for.
 */
@FunctionalInterface
public interface ArcFitting {
    /**
     * Replaces one curve.
     *
     * @param curve a {@link Cubic} or an {@link EllipseArc}
     * @return lines and arcs, one or more, from the very start vertex of the curve to its very end
     *     vertex
     */
    List<Segment> arcs(Segment curve);

    /**
     * Replaces one curve and checks that the ends stayed and nothing but lines and arcs came back.
     *
     * @param curve a {@link Cubic} or an {@link EllipseArc}
     * @return lines and arcs
     * @throws IllegalArgumentException where the fitting broke its promise
     */
    default List<Segment> checkedArcs(Segment curve) {
        List<Segment> arcs = List.copyOf(arcs(curve));
        if (arcs.isEmpty()
                || !arcs.get(0).start().equals(curve.start())
                || !arcs.get(arcs.size() - 1).end().equals(curve.end())) {
            throw new IllegalArgumentException(
                    "arc fitting: expected a chain from " + curve.start() + " to " + curve.end());
        }
        for (Segment segment : arcs) {
            if (!(segment instanceof Line || segment instanceof Arc)) {
                throw new IllegalArgumentException(
                        "arc fitting: gave a "
                                + segment.getClass().getSimpleName()
                                + ", expected lines and arcs");
            }
        }
        return arcs;
    }
}
