package haftline.figures;

import haftline.handle.Handle;
import java.util.List;

/**
 * How the finished piece lies on a table: on the edge of the lower hull of outline, ferrule, cap
 * and blade that spans the centre of mass, the blade's edge down.
 *
 * @param touches the two places that touch; nearly one where the piece lies on a round under its
 *     centre of mass and rocks
 * @param bladeClearanceMm how far the blade's edge hangs above the table at its lowest, mm; 0 where
 *     it touches
 * @param rolls whether nothing stops it from rolling: only round parts touch
 */
public record Rest(List<Touch> touches, double bladeClearanceMm, boolean rolls) {
    /** Copies the list. */
    public Rest {
        touches = List.copyOf(touches);
    }

    /** A part that may touch the table. */
    public enum Part {
        /** The blade's edge. */
        BLADE,
        /** The ferrule. */
        FERRULE,
        /** The wood. */
        WOOD,
        /** The cap. */
        CAP
    }

    /**
     * A place that touches the table.
     *
     * @param part what touches
     * @param x mm from the shoulder
     * @param belowAxisMm mm below the axis
     */
    public record Touch(Part part, double x, double belowAxisMm) {}

    /**
     * How a handle with its kit lies.
     *
     * @param handle the handle
     * @param balance its balance
     * @return how it lies
     */
    public static Rest of(Handle handle, Balance balance) {
        Silhouette silhouette = new Silhouette(handle);
        Touch[] edge = silhouette.spanning(balance.x());
        boolean blade = edge[0].part() == Part.BLADE || edge[1].part() == Part.BLADE;
        return new Rest(
                List.of(edge[0], edge[1]),
                blade ? 0 : silhouette.bladeClearance(edge[0], edge[1]),
                !blade);
    }
}
