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
        Butt butt,
        double shadowLineMm) {
    /** Checks the ranges; node names are unique. */
    public Shape {
        Checks.named("shape name", name);
        nodes = List.copyOf(nodes);
        details = List.copyOf(details);
        Checks.within("shadow line", shadowLineMm, -3, 3);
        shoulderSlopeDeg.ifPresent(
                d -> Checks.within("shoulder slope", d, -Node.STEEPEST_DEG, Node.STEEPEST_DEG));
        seatSlopeDeg.ifPresent(
                d -> Checks.within("seat slope", d, -Node.STEEPEST_DEG, Node.STEEPEST_DEG));
        if (nodes.stream().map(Node::name).distinct().count() != nodes.size()) {
            throw new IllegalArgumentException("shape " + name + ": two nodes have one name");
        }
    }

    /**
     * The same shape with other nodes.
     *
     * @param newNodes the nodes, in order from the shoulder
     * @return the changed copy
     */
    public Shape withNodes(List<Node> newNodes) {
        return new Shape(
                name, note, shoulderSlopeDeg, newNodes, seatSlopeDeg, details, butt, shadowLineMm);
    }
}
