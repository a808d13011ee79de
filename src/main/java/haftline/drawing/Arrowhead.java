package haftline.drawing;

import haftline.measure.Checks;
import java.util.List;

/**
 * A filled arrowhead, slim as drawing offices draw it: three times as long as wide (ISO 129 allows
 * several forms).
 *
 * @param layer the layer it lies on
 * @param tip the place it points at
 * @param pointsDeg the direction it points in, degrees anticlockwise from +x
 * @param lengthMm its length, over 0
 */
public record Arrowhead(Layer layer, Vertex tip, double pointsDeg, double lengthMm)
        implements Element {
    private static final double HALF_WIDTH = 1.0 / 6;

    /**
     * Checks the length and the direction.
     *
     * @throws IllegalArgumentException where the length is not over 0 or the direction not a number
     */
    public Arrowhead {
        Checks.within("direction", pointsDeg, -Angle.FULL_TURN_DEG, Angle.FULL_TURN_DEG);
        Checks.within("length", lengthMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
    }

    /**
     * Its corners.
     *
     * @return the tip and the two barbs
     */
    public List<Vertex> corners() {
        Vertex back = tip.towards(pointsDeg, -lengthMm);
        return List.of(
                tip,
                back.towards(pointsDeg + 90, lengthMm * HALF_WIDTH),
                back.towards(pointsDeg - 90, lengthMm * HALF_WIDTH));
    }

    @Override
    public Bounds bounds() {
        List<Vertex> corners = corners();
        return Bounds.of(corners.get(0), corners.get(1)).with(Bounds.of(tip, corners.get(2)));
    }
}
