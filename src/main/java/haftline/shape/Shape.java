package haftline.shape;

import haftline.measure.Checks;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The style of a handle: what a set shares and each kit's parts fill in. The outline begins at the
 * ferrule and ends at the seat; those two ends are never free.
 *
 * @param name its name in the trade's words
 * @param note what it is good for, may be empty
 * @param shoulderSlopeDeg slope where the wood leaves the ferrule, degrees, or empty to leave it to
 *     the batten
 * @param nodes the nodes between the ends, in order from the shoulder; may be empty
 * @param seatSlopeDeg slope where the wood meets the seat, degrees, or empty
 * @param details laid over the body
 * @param monotone runs along which the maker wants the wood to thicken or thin without a turn
 * @param butt form of the butt
 * @param shadowLineMm step in radius at the ferrule, mm: 0 is flush, positive where the wood stands
 *     proud, -3 to 3
 */
public record Shape(
        String name,
        String note,
        OptionalDouble shoulderSlopeDeg,
        List<Node> nodes,
        OptionalDouble seatSlopeDeg,
        List<Detail> details,
        List<Run> monotone,
        Butt butt,
        double shadowLineMm) {
    /** Name of the first node, which the ferrule fixes. */
    public static final String SHOULDER = "shoulder";

    /** Name of the last node, which the cap or the butt fixes. */
    public static final String SEAT = "seat";

    /**
     * A stretch between two nodes.
     *
     * @param from name of the node where it begins, {@value Shape#SHOULDER} for the ferrule's end
     * @param to name of the node where it ends, behind the first; {@value Shape#SEAT} for the
     *     butt's end
     */
    public record Run(String from, String to) {}

    /** Checks the ranges; node names are unique, runs lead from a node to a later one. */
    public Shape {
        Checks.named("shape name", name);
        nodes = List.copyOf(nodes);
        details = List.copyOf(details);
        monotone = List.copyOf(monotone);
        Checks.withinMm("shadow line", shadowLineMm, -3, 3);
        shoulderSlopeDeg.ifPresent(
                d ->
                        Checks.withinDegrees(
                                "shoulder slope", d, -Node.STEEPEST_DEG, Node.STEEPEST_DEG));
        seatSlopeDeg.ifPresent(
                d -> Checks.withinDegrees("seat slope", d, -Node.STEEPEST_DEG, Node.STEEPEST_DEG));
        if (nodes.stream().map(Node::name).distinct().count() != nodes.size()) {
            throw new IllegalArgumentException("shape " + name + ": two nodes have one name");
        }
        for (Run run : monotone) {
            int from = order(nodes, run.from());
            int to = order(nodes, run.to());
            if (from < 0 || to < 0 || from >= to) {
                throw new IllegalArgumentException(
                        "monotone from "
                                + run.from()
                                + " to "
                                + run.to()
                                + ": expected two nodes in order from the shoulder");
            }
        }
    }

    /** Place of a node in the row from shoulder to seat, or -1. */
    private static int order(List<Node> nodes, String name) {
        if (name.equals(SHOULDER)) {
            return 0;
        }
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(name)) {
                return i + 1;
            }
        }
        return name.equals(SEAT) ? nodes.size() + 1 : -1;
    }

    /**
     * The same shape with other nodes.
     *
     * @param newNodes the nodes, in order from the shoulder
     * @return the changed copy
     */
    public Shape withNodes(List<Node> newNodes) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                newNodes,
                seatSlopeDeg,
                details,
                monotone,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with another name.
     *
     * @param newName its name in the trade's words
     * @return the changed copy
     */
    public Shape withName(String newName) {
        return new Shape(
                newName,
                note,
                shoulderSlopeDeg,
                nodes,
                seatSlopeDeg,
                details,
                monotone,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with another slope behind the ferrule.
     *
     * @param newSlopeDeg degrees, or empty to leave it to the batten
     * @return the changed copy
     */
    public Shape withShoulderSlopeDeg(OptionalDouble newSlopeDeg) {
        return new Shape(
                name,
                note,
                newSlopeDeg,
                nodes,
                seatSlopeDeg,
                details,
                monotone,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with another slope at the seat.
     *
     * @param newSlopeDeg degrees, or empty to leave it to the batten
     * @return the changed copy
     */
    public Shape withSeatSlopeDeg(OptionalDouble newSlopeDeg) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                nodes,
                newSlopeDeg,
                details,
                monotone,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with other details.
     *
     * @param newDetails laid over the body
     * @return the changed copy
     */
    public Shape withDetails(List<Detail> newDetails) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                nodes,
                seatSlopeDeg,
                newDetails,
                monotone,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with other runs without a turn.
     *
     * @param newRuns the runs
     * @return the changed copy
     */
    public Shape withMonotone(List<Run> newRuns) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                nodes,
                seatSlopeDeg,
                details,
                newRuns,
                butt,
                shadowLineMm);
    }

    /**
     * The same shape with another form of the butt.
     *
     * @param newButt the form
     * @return the changed copy
     */
    public Shape withButt(Butt newButt) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                nodes,
                seatSlopeDeg,
                details,
                monotone,
                newButt,
                shadowLineMm);
    }

    /**
     * The same shape with another step at the ferrule.
     *
     * @param newStepMm mm on the radius, 0 for flush
     * @return the changed copy
     */
    public Shape withShadowLineMm(double newStepMm) {
        return new Shape(
                name,
                note,
                shoulderSlopeDeg,
                nodes,
                seatSlopeDeg,
                details,
                monotone,
                butt,
                newStepMm);
    }
}
