package haftline.figures;

/**
 * One part of the finished piece.
 *
 * @param part what it is
 * @param massG its mass, g
 * @param x its centre of mass, mm from the shoulder
 * @param massEstimated whether the mass was reckoned from rough sizes rather than weighed or
 *     computed
 * @param placeEstimated whether where its centre lies was
 */
public record Share(
        Part part, double massG, double x, boolean massEstimated, boolean placeEstimated) {
    static Share known(Part part, double massG, double x) {
        return new Share(part, massG, x, false, false);
    }

    /**
     * Whether anything of it was reckoned from rough sizes.
     *
     * @return true where its mass or its place was
     */
    public boolean estimated() {
        return massEstimated || placeEstimated;
    }

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
