package haftline.ui.board;

/** How one slice of a round surface takes the light. */
final class Shade {
    private final float radius;
    private final float inverse;
    private final float slope;
    private final float lean;

    /**
     * A slice.
     *
     * @param radius mm, over 0
     * @param slope dr/dx
     */
    Shade(float radius, float slope) {
        this.radius = radius;
        this.slope = slope;
        inverse = 1 / radius;
        lean = 1 / (float) Math.sqrt(1 + slope * slope);
    }

    private float share(float y) {
        return Math.max(-1, Math.min(1, y * inverse));
    }

    /**
     * Polished metal at a height.
     *
     * @param y mm over the axis
     * @param colour the metal
     */
    int metal(float y, int colour) {
        return Tint.mirrored(colour, Light.metal(share(y), slope, lean));
    }

    /**
     * Wood or resin at a height.
     *
     * @param y mm over the axis
     * @param grain the stock, at this slice
     */
    int wood(float y, Grain grain) {
        float v = share(y);
        float depth = (float) Math.sqrt(1 - v * v);
        int shine = Light.shine(v, depth, slope, lean) * grain.gloss() >> 8;
        return Tint.lit(grain.at(y, depth * radius), Light.dull(v, depth, slope, lean), shine);
    }
}
