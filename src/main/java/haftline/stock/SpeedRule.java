package haftline.stock;

import haftline.measure.Checks;
import haftline.measure.Units;

/**
 * Turners' rule for the speed of a lathe: diameter in inches times revolutions a minute lies
 * between two numbers. A rule of thumb and a ceiling, not a safety limit; start slower.
 *
 * @param key catalogue key
 * @param name the rule in words
 * @param leastProduct lower product, inch times rpm
 * @param greatestProduct upper product, inch times rpm
 * @param source whose rule it is
 */
public record SpeedRule(
        String key, String name, double leastProduct, double greatestProduct, Source source)
        implements Keyed {
    public SpeedRule {
        Checks.named("key", key);
        Checks.within("least_product", leastProduct, 1, 1e6);
        Checks.within("greatest_product", greatestProduct, leastProduct, 1e6);
    }

    /**
     * A range of speeds.
     *
     * @param leastRpm revolutions a minute
     * @param greatestRpm revolutions a minute
     */
    public record Range(double leastRpm, double greatestRpm) {}

    /**
     * The range at a diameter.
     *
     * @param diameterMm diameter of the work, 1 to 2000 mm
     * @return the range
     */
    public Range at(double diameterMm) {
        double inches = Checks.within("diameterMm", diameterMm, 1, 2000) / Units.INCH.millimetres();
        return new Range(leastProduct / inches, greatestProduct / inches);
    }
}
