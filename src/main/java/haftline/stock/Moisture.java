package haftline.stock;

import haftline.measure.Checks;

/**
 * Wood and the moisture of the air. Equations and tables are those of the Wood Handbook, USDA
 * Forest Products Laboratory, FPL-GTR-190 (2010); moisture content is in percent of the oven-dry
 * mass.
 */
public final class Moisture {
    /** Above it wood neither swells nor shrinks (the Wood Handbook's average). */
    public static final double FIBRE_SATURATION_PERCENT = 30;

    /** Least moisture at which the linear coefficients of Table 13-5 hold. */
    public static final double MOVEMENT_LEAST_PERCENT = 6;

    /** Greatest moisture at which the linear coefficients of Table 13-5 hold. */
    public static final double MOVEMENT_GREATEST_PERCENT = 14;

    /** Table 4-2 runs from 30 to 270 degrees Fahrenheit; the equation was fitted to it. */
    private static final double EMC_LEAST_C = -1.2;

    private static final double EMC_GREATEST_C = 132.3;

    private Moisture() {}

    /**
     * Moisture content at which wood neither takes up nor gives off water, Equation 4-5.
     *
     * @param tempC temperature of the air, -1.2 to 132.3 degrees Celsius
     * @param rhPercent relative humidity, 0 to 100 %
     * @return percent
     */
    public static double emcPercent(double tempC, double rhPercent) {
        double t = Checks.within("temperature", tempC, EMC_LEAST_C, EMC_GREATEST_C);
        double h = Checks.within("relative humidity", rhPercent, 0, 100) / 100;
        double w = 349 + 1.29 * t + 0.0135 * t * t;
        double k = 0.805 + 0.000736 * t - 0.00000273 * t * t;
        double k1 = 6.27 - 0.00938 * t - 0.000303 * t * t;
        double k2 = 1.91 + 0.0407 * t - 0.000293 * t * t;
        double kh = k * h;
        double first = kh / (1 - kh);
        double second = (k1 * kh + 2 * k1 * k2 * kh * kh) / (1 + k1 * kh + k1 * k2 * kh * kh);
        return 1800 / w * (first + second);
    }

    /**
     * Volumetric shrinkage from green to oven-dry, Equation 4-12.
     *
     * @param basicSpecificGravity oven-dry mass over green volume, above 0 to 1.5
     * @return percent of the green volume
     */
    static double volumetricShrinkagePercent(double basicSpecificGravity) {
        return 26.5 * basic(basicSpecificGravity);
    }

    /**
     * Shrinkage from green to a moisture, Equation 4-9.
     *
     * @param ovenDryPercent shrinkage from green to oven-dry, percent
     * @param moisturePercent 0 to 30 %
     * @return percent of the green size
     */
    static double shrinkageAtPercent(double ovenDryPercent, double moisturePercent) {
        return ovenDryPercent * (1 - moisture(moisturePercent) / FIBRE_SATURATION_PERCENT);
    }

    /**
     * Specific gravity on oven-dry mass and volume at a moisture, Equation 4-13.
     *
     * @param basicSpecificGravity oven-dry mass over green volume, above 0 to 1.5
     * @param moisturePercent 0 to 30 %
     * @return specific gravity
     */
    public static double specificGravityAt(double basicSpecificGravity, double moisturePercent) {
        double basic = basic(basicSpecificGravity);
        return basic / (1 - 0.265 * basic * drying(moisturePercent));
    }

    /**
     * Density at a moisture, Equations 4-13 and 4-14.
     *
     * @param basicSpecificGravity oven-dry mass over green volume, above 0 to 1.5
     * @param moisturePercent 0 to 30 %
     * @return kg/m3
     */
    public static double densityKgM3(double basicSpecificGravity, double moisturePercent) {
        return 1000
                * specificGravityAt(basicSpecificGravity, moisturePercent)
                * (1 + moisturePercent / 100);
    }

    /**
     * Specific gravity on green volume from a density, Equations 4-14 and 4-13 solved for it.
     *
     * @param densityKgM3 density at that moisture, above 0 to 3000 kg/m3
     * @param moisturePercent 0 to 30 %
     * @return basic specific gravity
     */
    public static double basicSpecificGravity(double densityKgM3, double moisturePercent) {
        double density = Checks.within("density", densityKgM3, Double.MIN_VALUE, 3000);
        double drying = drying(moisturePercent);
        double gravity = density / (1000 * (1 + moisturePercent / 100));
        return gravity / (1 + 0.265 * gravity * drying);
    }

    /**
     * Coefficient of dimensional change from the total shrinkage: C = S / (3000 - 20 S), the
     * relation behind Table 13-5 (slope at 10 % moisture).
     *
     * @param shrinkagePercent from green to oven-dry, 0 to 30 %
     * @return fraction of the size per percent of moisture
     */
    static double movementCoefficient(double shrinkagePercent) {
        double s = Checks.within("shrinkage", shrinkagePercent, 0, 30);
        return s / (3000 - 20 * s);
    }

    /**
     * Change of a size with moisture, Equation 13-2.
     *
     * @param sizeMm size at the first moisture, mm
     * @param coefficient fraction per percent of moisture (Table 13-5)
     * @param fromPercent first moisture, 0 to 30 %
     * @param toPercent second moisture, 0 to 30 %
     * @return the change, mm, and whether the equation holds there
     */
    public static Movement movement(
            double sizeMm, double coefficient, double fromPercent, double toPercent) {
        double from = moisture(fromPercent);
        double to = moisture(toPercent);
        boolean holds =
                Math.min(from, to) >= MOVEMENT_LEAST_PERCENT
                        && Math.max(from, to) <= MOVEMENT_GREATEST_PERCENT;
        return new Movement(sizeMm * coefficient * (to - from), holds);
    }

    /**
     * A change of size.
     *
     * @param changeMm mm, positive where the piece grows
     * @param holds whether both moistures lie within 6 to 14 %, where the equation is linear enough
     */
    public record Movement(double changeMm, boolean holds) {}

    private static double drying(double moisturePercent) {
        return 1 - moisture(moisturePercent) / FIBRE_SATURATION_PERCENT;
    }

    private static double moisture(double percent) {
        return Checks.within("moisture", percent, 0, FIBRE_SATURATION_PERCENT);
    }

    private static double basic(double gravity) {
        return Checks.within("basic specific gravity", gravity, Double.MIN_VALUE, 1.5);
    }
}
