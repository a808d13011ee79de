package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.OptionalDouble;

/**
 * The metal ring between blade and wood. Its rear rim meets the wood's shoulder; its front may be
 * closed by a lip.
 *
 * @param bore inside diameter, mm
 * @param outside outside diameter at the wood's end, mm; of an oval ferrule the greater axis
 * @param outsideLeast the lesser axis of an oval ferrule, mm; the same as {@code outside} for a
 *     round one
 * @param length front face to rear rim, mm
 * @param lipMm thickness of the lip that closes the front, mm; 0 for an open ferrule
 * @param lipHoleMm hole in the lip that the tang passes, mm; empty where there is no lip or it was
 *     not measured
 * @param chamferMm chamfer at the outside of the rear rim, mm, 0 or more
 * @param material key of the metal in the catalogue
 * @param massG g, where weighed
 */
public record Ferrule(
        Measured bore,
        Measured outside,
        Measured outsideLeast,
        Measured length,
        double lipMm,
        OptionalDouble lipHoleMm,
        double chamferMm,
        String material,
        OptionalDouble massG) {
    /** Checks the ranges: the bore lies within the outside, the lip within the length. */
    public Ferrule {
        Checks.withinMm("ferrule bore", bore, 1, 60);
        Checks.withinMm("ferrule outside", outside, bore.greatest(), 80);
        Checks.withinMm(
                "ferrule outside, least", outsideLeast, bore.greatest(), outside.greatest());
        Checks.withinMm("ferrule length", length, 0.5, 100);
        Checks.withinMm("ferrule lip", lipMm, 0, length.least());
        lipHoleMm.ifPresent(
                hole -> Checks.withinMm("ferrule lip hole", hole, 0.5, bore.greatest()));
        Checks.withinMm("ferrule chamfer", chamferMm, 0, (outside.mean() - bore.mean()) / 2);
        Checks.named("ferrule material", material);
    }

    /**
     * Volume of metal: the ring, and the lip less its hole.
     *
     * @return mm³
     */
    public double volumeMm3() {
        return ringMm3() + lipMm3();
    }

    /**
     * Centroid of the metal behind the front face.
     *
     * @return mm, from the front face towards the wood
     */
    public double centroidMm() {
        double ring = ringMm3();
        double lip = lipMm3();
        return (ring * length.mean() / 2 + lip * lipMm / 2) / (ring + lip);
    }

    /**
     * A ferrule of the next size: bore and outside grow alike, so that the ring keeps its
     * thickness; its mass is reckoned anew.
     *
     * @param byMm how much wider, mm on the diameter
     * @return the changed copy
     */
    public Ferrule widened(double byMm) {
        return new Ferrule(
                bore.plus(byMm),
                outside.plus(byMm),
                outsideLeast.plus(byMm),
                length,
                lipMm,
                lipHoleMm,
                chamferMm,
                material,
                OptionalDouble.empty());
    }

    private double ringMm3() {
        double inside = bore.mean();
        // An oval ring's area is that of the ellipse of its two axes.
        return Math.PI
                / 4
                * (outside.mean() * outsideLeast.mean() - inside * inside)
                * length.mean();
    }

    private double lipMm3() {
        double inside = bore.mean();
        double hole = lipHoleMm.orElse(0);
        return Math.PI / 4 * (inside * inside - hole * hole) * lipMm;
    }
}
