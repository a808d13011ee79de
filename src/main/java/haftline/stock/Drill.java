package haftline.stock;

import haftline.measure.Checks;
import java.util.OptionalDouble;

/**
 * A drill.
 *
 * @param diameterMm diameter, above 0 to 100 mm
 * @param name as it is stamped or asked for: {@code 6.2}, {@code 17/64}, {@code #7}, {@code F}
 * @param fluteLengthMm length of the flutes, mm, where known
 * @param pointAngleDeg included angle of the point, 30 to 180 degrees; 180 is a flat bottom
 */
public record Drill(
        double diameterMm, String name, OptionalDouble fluteLengthMm, double pointAngleDeg) {
    /** Included angle of a general-purpose twist drill. */
    public static final double USUAL_POINT_ANGLE_DEG = 118;

    public Drill {
        Checks.within("diameterMm", diameterMm, Double.MIN_VALUE, 100);
        Checks.named("name", name);
        if (fluteLengthMm.isPresent()) {
            Checks.within("fluteLengthMm", fluteLengthMm.getAsDouble(), 1, 1000);
        }
        Checks.within("pointAngleDeg", pointAngleDeg, 30, 180);
    }

    /**
     * A drill with the usual point and unknown flutes.
     *
     * @param diameterMm diameter, mm
     * @param name its name
     * @return the drill
     */
    public static Drill of(double diameterMm, String name) {
        return new Drill(diameterMm, name, OptionalDouble.empty(), USUAL_POINT_ANGLE_DEG);
    }

    /**
     * The same drill with another point.
     *
     * @param angleDeg included angle, 30 to 180 degrees
     * @return a copy
     */
    public Drill withPointAngleDeg(double angleDeg) {
        return new Drill(diameterMm, name, fluteLengthMm, angleDeg);
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
