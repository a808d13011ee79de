package haftline.template;

import haftline.curve.Outline;
import haftline.figures.Stations;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Checks;
import java.util.List;

/**
 * What templates and gauges need to know of a handle.
 *
 * @param name name of the piece
 * @param batch the batch of parts it was measured from, may be empty
 * @param body the visible wood from the shoulder, x = 0, to the butt
 * @param seatX where the body ends and the form of the butt begins, mm
 * @param ferruleLengthMm front face to rear rim, mm
 * @param ferruleDiameterMm greatest outside diameter, mm
 * @param tenonDiameterMm mm
 * @param tenonLengthMm mm
 * @param stations where the work is measured, from the shoulder to the seat
 * @param stopped whether the piece cannot be made so, which its cards then say
 */
public record Workpiece(
        String name,
        String batch,
        Outline body,
        double seatX,
        double ferruleLengthMm,
        double ferruleDiameterMm,
        double tenonDiameterMm,
        double tenonLengthMm,
        List<GaugeStation> stations,
        boolean stopped) {
    /** Checks that the body starts at the shoulder and the seat lies on it. */
    public Workpiece {
        Checks.named("piece name", name);
        if (body.startX() != 0) {
            throw new IllegalArgumentException(
                    "body starts at x " + body.startX() + ": expected 0, the shoulder");
        }
        Checks.within("seat", seatX, Double.MIN_NORMAL, body.endX());
        Checks.withinMm("ferrule length", ferruleLengthMm, 0.5, 100);
        Checks.withinMm("ferrule diameter", ferruleDiameterMm, 1, 100);
        Checks.withinMm("tenon diameter", tenonDiameterMm, 0.5, ferruleDiameterMm);
        Checks.withinMm("tenon length", tenonLengthMm, 0.1, 100);
        stations = List.copyOf(stations);
    }

    /**
     * What templates need to know of a handle.
     *
     * @param handle the handle
     * @param batch the batch of parts, may be empty
     * @param stopped whether it cannot be made so
     * @return the work piece
     */
    public static Workpiece of(Handle handle, String batch, boolean stopped) {
        Outline body = handle.outline().part(0, handle.buttX());
        List<PlacedNode> nodes = handle.nodes();
        double seatX = nodes.get(nodes.size() - 1).x();
        return new Workpiece(
                handle.name(),
                batch,
                body,
                seatX,
                handle.lengths().ferruleMm(),
                handle.brief().kit().ferrule().outside().greatest(),
                handle.tenon().diameterMm(),
                handle.tenon().lengthMm(),
                GaugeStation.of(Stations.of(handle), seatX),
                stopped);
    }

    /**
     * Shoulder to butt.
     *
     * @return mm
     */
    public double buttX() {
        return body.endX();
    }

    /**
     * Greatest diameter.
     *
     * @return mm
     */
    public double greatestDiameterMm() {
        return 2 * body.greatest().r();
    }
}
