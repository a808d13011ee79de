package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.OptionalDouble;

/**
 * The working part in front of the ferrule.
 *
 * @param length exposed length, seating face to tip, mm
 * @param widthMm greatest depth of the blade, mm
 * @param thicknessMm mm
 * @param edgeBelowAxisMm how far the edge stands below the lathe axis, mm; half of the width where
 *     not said
 * @param material key of the metal in the catalogue
 * @param massG g, where weighed
 * @param includesTang whether the tang was on the scale too
 * @param balanceMm centre of mass of what was weighed, in front of the seating face, mm (negative
 *     towards the handle), with the ferrule off; empty to reckon it from the sizes
 */
public record Blade(
        Measured length,
        double widthMm,
        double thicknessMm,
        OptionalDouble edgeBelowAxisMm,
        String material,
        OptionalDouble massG,
        boolean includesTang,
        OptionalDouble balanceMm) {
    /**
     * Share of the enclosing box that a blade fills, tapered to its tip (common practice, no
     * source).
     */
    private static final double FILL = 0.6;

    /**
     * Where the centre of a blade reckoned from sizes lies, as a share of its length (common
     * practice, no source).
     */
    private static final double CENTRE = 0.42;

    /** Checks the ranges. */
    public Blade {
        Checks.withinMm("blade length", length, 5, 1000);
        Checks.withinMm("blade width", widthMm, 0.5, 300);
        Checks.withinMm("blade thickness", thicknessMm, 0.1, 60);
        Checks.named("blade material", material);
        massG.ifPresent(m -> Checks.withinGrams("blade mass", m, 0.1, 5000));
        balanceMm.ifPresent(x -> Checks.withinMm("blade balance", x, -400, 1000));
    }

    /**
     * How far the edge stands below the axis.
     *
     * @return mm
     */
    public double edgeMm() {
        return edgeBelowAxisMm.orElse(widthMm / 2);
    }

    /**
     * Volume of metal in the blade alone, estimated from its sizes.
     *
     * @return mm³
     */
    public double estimatedVolumeMm3() {
        return FILL * length.mean() * widthMm * thicknessMm;
    }

    /**
     * Centre of mass of the blade alone, estimated from its sizes.
     *
     * @return mm in front of the seating face
     */
    public double estimatedCentreMm() {
        return CENTRE * length.mean();
    }
}
