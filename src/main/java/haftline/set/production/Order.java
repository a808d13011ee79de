package haftline.set.production;

import haftline.figures.Figures;

/**
 * A piece that is made, with its count.
 *
 * @param figures its figures
 * @param kit name of its kit
 * @param quantity how many are made
 * @param spares blanks that are cut beyond them
 * @param isStopped whether it has a finding that stops it and is made all the same
 */
public record Order(Figures figures, String kit, int quantity, int spares, boolean isStopped) {
    /**
     * The piece's name.
     *
     * @return the name
     */
    public String piece() {
        return figures.handle().brief().name();
    }

    /**
     * Blanks to be cut.
     *
     * @return quantity and spares
     */
    public int blanks() {
        return quantity + spares;
    }
}
