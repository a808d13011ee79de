package haftline.stock;

import haftline.measure.Checks;
import java.util.OptionalDouble;

/**
 * A drill.
 *
 * @param diameterMm diameter, above 0 to 100 mm
 * @param name as it is stamped or asked for: {@code 6.2}, {@code 17/64}, {@code #7}, {@code F}
 * @param fluteLengthMm length of the flutes, mm, where known
 * @param pointAngleDeg included angle of the point, 30 to 180 degrees, where it was measured; 180
 *     is a flat bottom
 */
public record Drill(
        double diameterMm,
        String name,
        OptionalDouble fluteLengthMm,
        OptionalDouble pointAngleDeg) {
    /** Checks the ranges. */
    public Drill {
        Checks.within("diameterMm", diameterMm, Double.MIN_VALUE, 100);
        Checks.named("name", name);
        if (fluteLengthMm.isPresent()) {
            Checks.within("fluteLengthMm", fluteLengthMm.getAsDouble(), 1, 1000);
        }
        if (pointAngleDeg.isPresent()) {
            Checks.within("pointAngleDeg", pointAngleDeg.getAsDouble(), 30, 180);
        }
    }

    /**
     * A drill whose flutes and point nobody measured.
     *
     * @param diameterMm diameter, mm
     * @param name its name
     * @return the drill
     */
    public static Drill of(double diameterMm, String name) {
        return new Drill(diameterMm, name, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The same drill with its point measured.
     *
     * @param angleDeg included angle, 30 to 180 degrees
     * @return a copy
     */
    public Drill withPointAngleDeg(double angleDeg) {
        return new Drill(diameterMm, name, fluteLengthMm, OptionalDouble.of(angleDeg));
    }

    /**
     * The same drill with its flutes measured.
     *
     * @param lengthMm flute length, mm
     * @return a copy
     */
    public Drill withFluteLengthMm(double lengthMm) {
        return new Drill(diameterMm, name, OptionalDouble.of(lengthMm), pointAngleDeg);
    }
}
