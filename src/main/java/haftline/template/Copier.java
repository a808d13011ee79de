package haftline.template;

import haftline.handle.Rules;
import haftline.measure.Checks;
import haftline.set.TemplateSettings;

/**
 * A copying attachment: a cutter on the work, a follower on the template, both on the outer side.
 *
 * @param noseMm radius of the cutter's nose, mm, 0 to 30
 * @param followerMm radius of the follower, mm, 0 to 30
 * @param steepestDeg steepest slope of the work that the cutter's flank clears, degrees from the
 *     axis, 5 to 89; see {@link #steepestDeg(double, double)}
 * @param radialRatio how far the follower moves for each mm of the cutter across the axis, 0.25 to
 *     4; 1 where both sit on one slide, 2 where the cutter sits half-way to the follower on a pivot
 */
public record Copier(double noseMm, double followerMm, double steepestDeg, double radialRatio) {
    /** A cutter blunter than this copies nothing but cylinders, degrees. */
    private static final double LEAST_SLOPE_DEG = 5;

    /** Checks the ranges. */
    public Copier {
        Checks.withinMm("cutter nose radius", noseMm, 0, 30);
        Checks.withinMm("follower radius", followerMm, 0, 30);
        Checks.withinDegrees("steepest slope", steepestDeg, LEAST_SLOPE_DEG, 89);
        Checks.within("radial ratio", radialRatio, 0.25, 4);
    }

    /**
     * The copier of the maker's rules and workshop. Where the workshop knows the cutter's angle,
     * the lesser of the rules' slope and of what the cutter's flank clears is the limit.
     *
     * @param rules the rules
     * @param workshop the workshop
     * @return the copier
     */
    public static Copier of(Rules.Copying rules, TemplateSettings.Copying workshop) {
        double steepest = rules.steepestDeg();
        if (workshop.cutterAngleDeg().isPresent()) {
            double clears =
                    steepestDeg(
                            workshop.cutterAngleDeg().getAsDouble(), workshop.cutterClearanceDeg());
            steepest = Math.max(LEAST_SLOPE_DEG, Math.min(steepest, clears));
        }
        return new Copier(rules.noseMm(), rules.followerMm(), steepest, workshop.radialRatio());
    }

    /**
     * The steepest slope that a pointed, symmetric cutter clears with its flank: a right angle less
     * half its included angle less the clearance (geometry; at least 2 degrees of clearance, 7 are
     * advised: metal-turning practice).
     *
     * @param includedAngleDeg angle between its flanks, degrees, 10 to 150
     * @param clearanceDeg air between flank and work, degrees, 0 to 20
     * @return degrees from the axis
     */
    public static double steepestDeg(double includedAngleDeg, double clearanceDeg) {
        Checks.withinDegrees("included angle", includedAngleDeg, 10, 150);
        Checks.withinDegrees("clearance", clearanceDeg, 0, 20);
        return 90 - includedAngleDeg / 2 - clearanceDeg;
    }

    /**
     * How far the template's edge lies off the profile along its normal, where the ratio is 1.
     *
     * @return mm, negative inward where the follower is the larger
     */
    public double normalShiftMm() {
        return noseMm - followerMm;
    }

    /**
     * How far the template's edge lies off a straight profile, measured across the axis.
     *
     * @param slopeDeg slope of the profile, degrees from the axis, under 90
     * @return mm, negative inward
     */
    double radialShiftMm(double slopeDeg) {
        Checks.withinDegrees("slope", slopeDeg, -89, 89);
        return normalShiftMm() / Math.cos(Math.toRadians(slopeDeg));
    }
}
