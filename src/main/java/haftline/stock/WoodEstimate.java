package haftline.stock;

/**
 * What a wood's strength is likely to be where no table prints it: P = A G^B with G the specific
 * gravity at 12 % moisture, the form of the Wood Handbook's Table 5-11a.
 *
 * <p>For hardwoods the constants were fitted by least squares of the logarithms to the hardwood
 * rows of Table 5-3a (FPL-GTR-190): 35 rows for tension across the grain, G 0.37 to 0.72; one
 * standard deviation of a row about the line is a factor of 1.20 (hardness 1.11, modulus 1.15). For
 * softwoods they are those of Table 5-11a, from memory.
 */
final class WoodEstimate {
    /** Mean of the hardwood rows of Table 5-1, most of them from memory. */
    static final double HARDWOOD_TANGENTIAL_RATIO = 0.061;

    static final double HARDWOOD_RADIAL_RATIO = 0.122;

    /** Douglas-fir stands for the softwoods (Table 5-1). */
    static final double SOFTWOOD_TANGENTIAL_RATIO = 0.050;

    static final double SOFTWOOD_RADIAL_RATIO = 0.068;

    /** Mean over the hardwood rows of Table 5-2 of the root of nu_RT nu_TR. */
    static final double POISSON_ACROSS = 0.48;

    private WoodEstimate() {}

    static double tensionAcrossMPa(Wood.Group group, double gravity) {
        return power(group, gravity, 10.335, 1.355, 6.0, 1.11);
    }

    static double compressionAcrossMPa(Wood.Group group, double gravity) {
        return power(group, gravity, 22.331, 2.103, 16.5, 1.57);
    }

    static double shearAlongMPa(Wood.Group group, double gravity) {
        return power(group, gravity, 22.137, 1.129, 16.6, 0.85);
    }

    static double sideHardnessN(Wood.Group group, double gravity) {
        return power(group, gravity, 16813, 2.204, 8590, 1.49);
    }

    static double bendingModulusMPa(Wood.Group group, double gravity) {
        return power(group, gravity, 16441, 0.708, 20500, 0.84);
    }

    static double tangentialRatio(Wood.Group group) {
        return group == Wood.Group.HARDWOOD ? HARDWOOD_TANGENTIAL_RATIO : SOFTWOOD_TANGENTIAL_RATIO;
    }

    static double radialRatio(Wood.Group group) {
        return group == Wood.Group.HARDWOOD ? HARDWOOD_RADIAL_RATIO : SOFTWOOD_RADIAL_RATIO;
    }

    private static double power(
            Wood.Group group,
            double gravity,
            double hardwoodFactor,
            double hardwoodExponent,
            double softwoodFactor,
            double softwoodExponent) {
        return group == Wood.Group.HARDWOOD
                ? hardwoodFactor * Math.pow(gravity, hardwoodExponent)
                : softwoodFactor * Math.pow(gravity, softwoodExponent);
    }
}
