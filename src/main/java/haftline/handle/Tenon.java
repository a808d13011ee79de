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
        Checks.withinMm("tenon diameter", diameterMm, 0.5, 80);
        Checks.withinMm("tenon length", lengthMm, 0.1, 100);
    }
}
