package haftline.ui.model;

import haftline.curve.Outline;
import haftline.curve.SlopeRange;
import haftline.edit.NodeEdits;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.measure.NumberText;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Shape;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * The slope of the outline at a node: what it is, and what it may be made without a ripple between
 * its neighbours. Degrees from the axis, positive where the wood thickens towards the butt.
 *
 * @param node the node's name
 * @param deg what it is
 * @param leastDeg least that may be asked for
 * @param greatestDeg greatest that may be asked for
 */
public record NodeSlope(String node, double deg, double leastDeg, double greatestDeg) {
    /** The seat's slope is that of the wood before it, not of the butt's form, mm. */
    private static final double BEFORE_MM = 1e-6;

    /** A tenth of a degree is shown, and what is shown may be typed. */
    private static final double SHOWN = 10;

    /**
     * The slope at a node.
     *
     * @param handle the handle
     * @param name the node's name, an end's too
     * @return the slope, or empty at a crisp node, which has two, and where there is no such node
     */
    public static Optional<NodeSlope> of(Handle handle, String name) {
        List<PlacedNode> nodes = handle.nodes();
        int last = nodes.size() - 1;
        for (int i = 0; i <= last; i++) {
            PlacedNode node = nodes.get(i);
            if (node.name().equals(name)) {
                return node.isFree() && node.join() == Join.CRISP
                        ? Optional.empty()
                        : Optional.of(of(handle, i, last));
            }
        }
        return Optional.empty();
    }

    private static NodeSlope of(Handle handle, int i, int last) {
        List<PlacedNode> nodes = handle.nodes();
        SlopeRange range =
                i == 0
                        ? SlopeRange.beside(chord(handle, 0))
                        : i == last
                                ? SlopeRange.beside(chord(handle, last - 1))
                                : SlopeRange.between(chord(handle, i - 1), chord(handle, i));
        String name = nodes.get(i).name();
        OptionalDouble asked = asked(handle.brief().shape(), name);
        return new NodeSlope(
                name,
                asked.isPresent() ? asked.getAsDouble() : free(handle, i, last),
                degrees(range.least()),
                degrees(range.greatest()));
    }

    /**
     * The slope that is asked for at a node.
     *
     * @param shape the shape
     * @param name the node's name, an end's too
     * @return degrees, or empty where it is left to the batten
     */
    static OptionalDouble asked(Shape shape, String name) {
        return switch (name) {
            case Shape.SHOULDER -> shape.shoulderSlopeDeg();
            case Shape.SEAT -> shape.seatSlopeDeg();
            default ->
                    shape.nodes().stream()
                            .filter(node -> node.name().equals(name))
                            .findFirst()
                            .map(Node::slopeDeg)
                            .orElse(OptionalDouble.empty());
        };
    }

    /** The slope that the batten takes there, whatever detail lies over it. */
    private static double free(Handle handle, int i, int last) {
        double x = handle.nodes().get(i).x();
        double at = i == last ? x - BEFORE_MM : x;
        Brief brief = handle.brief();
        boolean isBare =
                brief.shape().details().stream()
                        .noneMatch(
                                detail ->
                                        Math.abs(
                                                        detail.place()
                                                                        .x(
                                                                                handle.lengths()
                                                                                        .visibleWoodMm())
                                                                - x)
                                                <= detail.widthMm());
        Outline body =
                isBare
                        ? handle.outline()
                        : Resolve.of(brief.withShape(brief.shape().withDetails(List.of())))
                                        instanceof Resolution.Resolved bare
                                ? bare.handle().outline()
                                : handle.outline();
        return degrees(body.slope(at));
    }

    /** A given slope is held against the nodes as they stand before they slide. */
    private static double chord(Handle handle, int i) {
        double rise = handle.nodes().get(i + 1).radiusMm() - handle.nodes().get(i).radiusMm();
        return rise / (nominalX(handle, i + 1) - nominalX(handle, i));
    }

    private static double nominalX(Handle handle, int i) {
        boolean isEnd = i == 0 || i == handle.nodes().size() - 1;
        return isEnd
                ? handle.nodes().get(i).x()
                : NodeEdits.nominalX(
                        handle.brief().shape().nodes().get(i - 1),
                        handle.brief().choices(),
                        handle.lengths().visibleWoodMm());
    }

    private static double degrees(double slope) {
        return Math.toDegrees(Math.atan(slope));
    }

    /**
     * Whether it can be nothing but level, as at the widest place.
     *
     * @return true where the outline turns at the node
     */
    public boolean isOnlyLevel() {
        return leastDeg == greatestDeg;
    }

    /**
     * The nearest slope that may be asked for.
     *
     * @param wanted degrees
     * @return degrees
     */
    public double held(double wanted) {
        return Math.max(leastDeg, Math.min(greatestDeg, wanted));
    }

    /**
     * The nearest slope within what {@link #range} tells: no figure is shown beside a range that it
     * is outside of.
     *
     * @param wanted degrees
     * @return degrees
     */
    double heldAsTold(double wanted) {
        double least = Math.ceil(leastDeg * SHOWN) / SHOWN;
        double greatest = Math.floor(greatestDeg * SHOWN) / SHOWN;
        return least <= greatest ? Math.max(least, Math.min(greatest, wanted)) : held(wanted);
    }

    /**
     * What may be asked for, rounded inwards, so that what is told may be typed.
     *
     * @return a phrase such as {@code from 0° to 12.3°}
     */
    public String range() {
        return isOnlyLevel()
                ? "only 0°, level, for the outline turns here"
                : "from "
                        + NumberText.said(NumberText.upTo(Math.ceil(leastDeg * SHOWN) / SHOWN, 1))
                        + "° to "
                        + NumberText.said(
                                NumberText.upTo(Math.floor(greatestDeg * SHOWN) / SHOWN, 1))
                        + "°";
    }
}
