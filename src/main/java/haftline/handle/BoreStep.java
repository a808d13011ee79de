package haftline.handle;

import haftline.measure.Checks;
import haftline.measure.NumberText;

/**
 * One drill's hole: a full cylinder from the face to its depth, and the drill's point beyond.
 *
 * @param diameterMm the hole as made: drill and twice its eccentricity, mm
 * @param drillMm the drill, mm
 * @param drillName what the maker calls the drill
 * @param depthMm depth to full diameter from the face, mm
 * @param pointAngleDeg included angle of the point, degrees; 180 is flat
 */
public record BoreStep(
        double diameterMm, double drillMm, String drillName, double depthMm, double pointAngleDeg) {
    /** No point is longer, in diameters: one of 30 degrees is 1.87 long. */
    private static final double SHARPEST = 1.9;

    /** Checks the ranges. */
    public BoreStep {
        Checks.withinMm("drill", drillMm, 0.1, 80);
        Checks.withinMm("hole", diameterMm, drillMm, drillMm + 10);
        Checks.withinMm("bore depth", depthMm, 0, 1000);
        Checks.withinDegrees("point angle", pointAngleDeg, 30, 180);
    }

    /**
     * The drill as it is asked for: no bare number, and no letter that could be any.
     *
     * @return such as {@code 6.8 mm}, {@code 1/4 in}, {@code #4} or {@code letter F}
     */
    public String drill() {
        if (drillName.equals(NumberText.upTo(drillMm, 2))) {
            return drillName + " mm";
        }
        if (drillName.matches("[0-9]+/[0-9]+")) {
            return drillName + " in";
        }
        return drillName.matches("[A-Z]") ? "letter " + drillName : drillName;
    }

    /**
     * How much deeper the point goes: d / (2 tan(angle / 2)), none for a flat drill.
     *
     * @return mm
     */
    public double pointMm() {
        // tan 90 degrees is not infinite in floating point; a flat drill has no point.
        return pointAngleDeg == 180
                ? 0
                : diameterMm / (2 * Math.tan(Math.toRadians(pointAngleDeg / 2)));
    }

    /**
     * Depth at which the hole's radius has shrunk to a value, within its point.
     *
     * @param radiusMm 0 to half of the diameter
     * @return mm from the face
     */
    public double depthOfRadius(double radiusMm) {
        return depthMm + pointMm() * (1 - 2 * radiusMm / diameterMm);
    }

    /**
     * Radius of the hole at a depth.
     *
     * @param z depth from the face, mm
     * @return mm, 0 beyond the point
     */
    public double radiusAt(double z) {
        if (z < 0) {
            return 0;
        }
        if (z <= depthMm) {
            return diameterMm / 2;
        }
        if (z >= depthMm + SHARPEST * diameterMm) {
            return 0;
        }
        double point = pointMm();
        return z >= depthMm + point ? 0 : diameterMm / 2 * (1 - (z - depthMm) / point);
    }
}
