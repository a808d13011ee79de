package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;

/**
 * Thickening of a tang at its root: a weld fillet, a collar or the skirt of a bolster, which wants
 * a countersink in the bore's mouth.
 *
 * @param diameter greatest diameter over the flare, mm, over 0 to 60
 * @param length how far it reaches from the seating face along the tang, mm, over 0 to 60
 */
public record Flare(Measured diameter, Measured length) {
    /** Checks the ranges. */
    public Flare {
        Checks.withinMm("flare diameter", diameter, Tang.LEAST, 60);
        Checks.withinMm("flare length", length, Tang.LEAST, 60);
    }
}
