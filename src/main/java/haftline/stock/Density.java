package haftline.stock;

import haftline.measure.Checks;

/**
 * Density of a wood at a stated moisture content.
 *
 * @param kgM3 mass over volume, both at that moisture, 50 to 2000 kg/m3
 * @param moisturePercent the moisture it was stated for, 0 to 30 %
 */
public record Density(Figure kgM3, double moisturePercent) {
    public Density {
        Checks.within("density_kg_m3", kgM3.value(), 50, 2000);
        Checks.within(
                "density_moisture_percent", moisturePercent, 0, Moisture.FIBRE_SATURATION_PERCENT);
    }

    /**
     * Specific gravity on oven-dry mass and green volume, the constant of the wood from which its
     * density at any moisture follows.
     *
     * @return basic specific gravity
     */
    public double basicSpecificGravity() {
        return Moisture.basicSpecificGravity(kgM3.value(), moisturePercent);
    }

    /**
     * Specific gravity on oven-dry mass and volume at 12 % moisture, by which the Wood Handbook
     * ranks strength.
     *
     * @return specific gravity at 12 %
     */
    public double specificGravityAt12() {
        return Moisture.specificGravityAt(basicSpecificGravity(), 12);
    }

    /**
     * Density at another moisture.
     *
     * @param moisture percent, 0 to 30
     * @return kg/m3
     */
    public double at(double moisture) {
        return moisture == moisturePercent
                ? kgM3.value()
                : Moisture.densityKgM3(basicSpecificGravity(), moisture);
    }
}
