package haftline.stock;

import haftline.measure.Checks;

/**
 * Stresses where a round part is forced into a round hole that is too small for it: thick-walled
 * cylinders of two elastic, isotropic materials (Lame; Budynas and Nisbett, Shigley's Mechanical
 * Engineering Design, Equations 3-56 and 3-57). For wood, which is not isotropic, it is a screening
 * figure.
 *
 * @param pressureMPa pressure between the parts, MPa
 * @param hoopOuterMPa hoop stress of the outer part at its bore, MPa, tension positive
 * @param hoopInnerMPa hoop stress of the inner part at its outside, MPa, tension positive
 */
public record PressFit(double pressureMPa, double hoopOuterMPa, double hoopInnerMPa) {
    /**
     * An elastic, isotropic material.
     *
     * @param modulusMPa modulus of elasticity, above 0, MPa
     * @param poisson Poisson's ratio, 0 to 1 (above 0.5 only as a stand-in for wood)
     */
    public record Material(double modulusMPa, double poisson) {
        public Material {
            Checks.within("modulusMPa", modulusMPa, Double.MIN_VALUE, 1e7);
            Checks.within("poisson", poisson, 0, 1);
        }
    }

    /**
     * From radii and the radial interference.
     *
     * @param innerRadiusMm bore of the inner part, 0 for a solid one, mm
     * @param fitRadiusMm radius where they meet, mm
     * @param outerRadiusMm outside of the outer part, mm
     * @param radialInterferenceMm by how much the inner part's radius exceeds the hole's, mm
     * @param outer material of the outer part
     * @param inner material of the inner part
     * @return the stresses
     */
    public static PressFit ofRadii(
            double innerRadiusMm,
            double fitRadiusMm,
            double outerRadiusMm,
            double radialInterferenceMm,
            Material outer,
            Material inner) {
        Checks.within("radialInterferenceMm", radialInterferenceMm, 0, fitRadiusMm);
        if (!(innerRadiusMm >= 0 && innerRadiusMm < fitRadiusMm && fitRadiusMm < outerRadiusMm)) {
            throw new IllegalArgumentException(
                    "radii "
                            + innerRadiusMm
                            + ", "
                            + fitRadiusMm
                            + ", "
                            + outerRadiusMm
                            + ": expected 0 <= inner < fit < outer");
        }
        double outerRatio = wallRatio(fitRadiusMm, outerRadiusMm);
        double innerRatio = wallRatio(innerRadiusMm, fitRadiusMm);
        double compliance =
                fitRadiusMm / outer.modulusMPa() * (outerRatio + outer.poisson())
                        + fitRadiusMm / inner.modulusMPa() * (innerRatio - inner.poisson());
        double pressure = radialInterferenceMm / compliance;
        return new PressFit(pressure, pressure * outerRatio, -pressure * innerRatio);
    }

    /**
     * From diameters and the diametral interference, which are all twice the radii and the radial
     * one: the stresses are the same.
     *
     * @param innerDiameterMm bore of the inner part, 0 for a solid one, mm
     * @param fitDiameterMm diameter where they meet, mm
     * @param outerDiameterMm outside of the outer part, mm
     * @param diametralInterferenceMm by how much the inner part's diameter exceeds the hole's, mm
     * @param outer material of the outer part
     * @param inner material of the inner part
     * @return the stresses
     */
    static PressFit ofDiameters(
            double innerDiameterMm,
            double fitDiameterMm,
            double outerDiameterMm,
            double diametralInterferenceMm,
            Material outer,
            Material inner) {
        return ofRadii(
                innerDiameterMm / 2,
                fitDiameterMm / 2,
                outerDiameterMm / 2,
                diametralInterferenceMm / 2,
                outer,
                inner);
    }

    /**
     * Hoop stress at the bore of a tube per unit of pressure in the bore: (b2 + a2) / (b2 - a2) of
     * its radii squared.
     *
     * @param boreRadius radius of the bore
     * @param outerRadius radius of the outside, same unit, greater
     * @return the ratio, 1 or more
     */
    public static double wallRatio(double boreRadius, double outerRadius) {
        double a = boreRadius * boreRadius;
        double b = outerRadius * outerRadius;
        return (b + a) / (b - a);
    }
}
