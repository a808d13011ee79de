package haftline.drawing;

import haftline.measure.Checks;

/**
 * A full circle.
 *
 * @param layer the layer it lies on
 * @param centre its centre
 * @param radiusMm its radius, over 0
 */
public record Circle(Layer layer, Vertex centre, double radiusMm) implements Element {
    /**
     * Checks the radius.
     *
     * @throws IllegalArgumentException where the radius is not over 0
     */
    public Circle {
        Checks.within("radius", radiusMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
    }

    @Override
    public Bounds bounds() {
        return Bounds.of(centre, centre).grown(radiusMm);
    }
}
