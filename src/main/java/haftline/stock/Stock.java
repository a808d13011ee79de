package haftline.stock;

import java.util.List;

/** The material of the handle itself. */
public sealed interface Stock extends Keyed permits Wood, Plastic {
    /**
     * The common name.
     *
     * @return such as {@code black cherry}
     */
    String name();

    /**
     * Density in use.
     *
     * @param moisturePercent moisture content of the wood in percent of its oven-dry mass, 0 to 30;
     *     a plastic ignores it
     * @return kg/m3
     * @throws IllegalArgumentException where the moisture is out of range
     */
    double densityKgM3(double moisturePercent);

    /**
     * Where the density comes from.
     *
     * @return the figure, at the moisture it was stated for
     */
    Figure statedDensity();

    /**
     * Whether a pressed tang suits the stock: it has fibres that part, and is not so hard or
     * brittle that it splits instead.
     *
     * @return false where the tang must be bonded
     */
    boolean isFibrous();

    /**
     * What is known to irritate or harm in working it. An empty list means that the lists used name
     * nothing, not that the dust is harmless.
     *
     * @return the cautions
     */
    List<Caution> cautions();

    /**
     * Colours for pictures.
     *
     * @return the colours
     */
    Colours colours();

    /**
     * Whether there is any caution about working it.
     *
     * @return true where {@link #cautions()} holds one
     */
    boolean isCautioned();
}
