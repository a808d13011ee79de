package haftline.store;

import haftline.measure.Checks;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * How a traced outline is to be read.
 *
 * @param mmPerUnit mm a unit of the drawing, or empty to take what the file says
 * @param axis where the lathe axis lies, as y in the drawing, or empty for the middle of a closed
 *     outline
 * @param part name of the path (SVG: its id) or layer (DXF) that holds the outline, or empty for
 *     all of a DXF file and the widest path of an SVG file
 */
public record Tracing(OptionalDouble mmPerUnit, OptionalDouble axis, Optional<String> part) {
    /** As the file says. */
    public static final Tracing PLAIN =
            new Tracing(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());

    /** Checks the scale. */
    public Tracing {
        mmPerUnit.ifPresent(scale -> Checks.within("mm a unit", scale, 1e-6, 1e6));
    }

    /**
     * The scale that two points of known distance give.
     *
     * @param x1 first point, in the drawing
     * @param y1 first point
     * @param x2 second point
     * @param y2 second point
     * @param mm how far they are apart on the handle, mm
     * @return mm a unit
     */
    public static double scale(double x1, double y1, double x2, double y2, double mm) {
        double apart = Math.hypot(x2 - x1, y2 - y1);
        Checks.within("distance of the two points in the drawing", apart, 1e-9, 1e9);
        Checks.withinMm("known distance", mm, 1e-3, 1e4);
        return mm / apart;
    }
}
