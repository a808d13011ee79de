package haftline.handle;

import haftline.curve.Outline;
import java.util.List;
import java.util.Optional;

/**
 * One handle, resolved: everything about its geometry, nothing about whether it is good.
 *
 * @param brief what it follows from
 * @param lengths its lengths
 * @param tenon the spigot that the ferrule goes over
 * @param fit how the tang is held
 * @param tangBore the bore from the tenon's end
 * @param capBore the bore from the butt, or empty without a cap
 * @param wander how far either bore may leave the axis
 * @param outline finished size of the turned wood from the tenon's end to the butt
 * @param nodes the nodes from the shoulder to the seat, both included
 * @param reasons why the numbers are what they are
 */
public record Handle(
        Brief brief,
        Lengths lengths,
        Tenon tenon,
        TangFit fit,
        Bore tangBore,
        Optional<Bore> capBore,
        Wander wander,
        Outline outline,
        List<PlacedNode> nodes,
        List<Reason> reasons) {
    /** Copies the lists. */
    public Handle {
        nodes = List.copyOf(nodes);
        reasons = List.copyOf(reasons);
    }

    /**
     * Name of the piece.
     *
     * @return the name
     */
    public String name() {
        return brief.name();
    }

    /**
     * x of the ferrule's front face.
     *
     * @return mm, negative
     */
    public double ferruleFaceX() {
        return -lengths.ferruleMm();
    }

    /**
     * x of the tenon's end.
     *
     * @return mm, negative
     */
    public double tenonEndX() {
        return -tenon.lengthMm();
    }

    /**
     * x of the wood's butt face.
     *
     * @return mm
     */
    public double buttX() {
        return lengths.visibleWoodMm();
    }
}
