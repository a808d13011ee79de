package haftline.handle;

import haftline.measure.Checks;

/**
 * The spigot of wood that the ferrule goes over, from the shoulder forwards.
 *
 * @param diameterMm mm
 * @param lengthMm mm
 */
public record Tenon(double diameterMm, double lengthMm) {
    /** Checks the ranges. */
    public Tenon {
        Checks.within("tenon diameter", diameterMm, 0.5, 80);
        Checks.within("tenon length", lengthMm, 0.1, 100);
    }
}
