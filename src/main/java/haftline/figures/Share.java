package haftline.figures;

/**
 * One part of the finished piece.
 *
 * @param part what it is
 * @param massG its mass, g
 * @param x its centre of mass, mm from the shoulder
 * @param estimated whether the mass was reckoned from rough sizes rather than weighed or computed
 */
public record Share(Part part, double massG, double x, boolean estimated) {
    /** A part of the finished piece. */
    public enum Part {
        /**
         * The blade in front of the seating face; with its tang where both were weighed together.
         */
        BLADE,
        /** The tang, where it was not weighed with the blade. */
        TANG,
        /** The ferrule. */
        FERRULE,
        /** The turned wood less its bores. */
        WOOD,
        /** The adhesive, cured. */
        ADHESIVE,
        /** The end cap. */
        CAP
    }
}
