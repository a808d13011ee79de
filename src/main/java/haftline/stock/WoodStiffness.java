package haftline.stock;

import java.util.Optional;

/**
 * Stiffness at about 12 % moisture.
 *
 * @param bendingModulusMPa modulus along the grain from static bending, as the tables print it, MPa
 *     (it holds the shear deflection; the Wood Handbook adds 10 % for the true modulus)
 * @param tangentialRatio tangential modulus over that along the grain
 * @param radialRatio radial modulus over that along the grain
 * @param poissonAcross one Poisson's ratio for the plane across the grain, the geometric mean of
 *     the radial-tangential pair
 */
public record WoodStiffness(
        Optional<Figure> bendingModulusMPa,
        Optional<Figure> tangentialRatio,
        Optional<Figure> radialRatio,
        Optional<Figure> poissonAcross) {
    /** Wood Handbook, chapter 5: static bending shows the modulus along the grain 10 % low. */
    private static final double SHEAR_DEFLECTION_ALLOWANCE = 1.10;

    /**
     * One modulus across the grain for isotropic theory: the mean of the radial and the tangential
     * modulus, with the modulus along the grain taken 10 % above the bending modulus (Wood
     * Handbook, chapter 5). Always an estimate, for wood is not isotropic across the grain.
     *
     * @return MPa, or nothing where a figure is missing
     */
    public Optional<Figure> modulusAcrossMPa() {
        if (bendingModulusMPa.isEmpty() || tangentialRatio.isEmpty() || radialRatio.isEmpty()) {
            return Optional.empty();
        }
        Figure along = bendingModulusMPa.get();
        Figure tangential = tangentialRatio.get();
        Figure radial = radialRatio.get();
        double value =
                SHEAR_DEFLECTION_ALLOWANCE
                        * along.value()
                        * (tangential.value() + radial.value())
                        / 2;
        Basis basis =
                Basis.ESTIMATE
                        .orLessSure(along.basis())
                        .orLessSure(tangential.basis())
                        .orLessSure(radial.basis());
        return Optional.of(new Figure(value, tangential.source(), basis));
    }
}
