package haftline.curve;

/**
 * What happens where two segments meet.
 *
 * @param x place, mm
 * @param rBefore radius at the end of the segment before, mm
 * @param rAfter radius at the start of the segment after, mm
 * @param slopeBefore slope before
 * @param slopeAfter slope after
 * @param curvatureBefore signed curvature before, 1/mm
 * @param curvatureAfter signed curvature after, 1/mm
 */
public record Joint(
        double x,
        double rBefore,
        double rAfter,
        double slopeBefore,
        double slopeAfter,
        double curvatureBefore,
        double curvatureAfter) {
    static Joint between(Segment before, Segment after) {
        double x = after.startX();
        return new Joint(
                x,
                before.r(x),
                after.r(x),
                before.slope(x),
                after.slope(x),
                before.curvature(x),
                after.curvature(x));
    }

    /**
     * Returns the step of the radius.
     *
     * @return mm, positive where it grows towards the butt
     */
    public double step() {
        return rAfter - rBefore;
    }

    /**
     * Returns the turn of the tangent.
     *
     * @return degrees, positive where the outline turns away from the axis (a crisp hollow)
     */
    public double bendDegrees() {
        return Math.toDegrees(Math.atan(slopeAfter) - Math.atan(slopeBefore));
    }

    /**
     * Returns the jump of the curvature.
     *
     * @return 1/mm, after less before
     */
    public double curvatureJump() {
        return curvatureAfter - curvatureBefore;
    }
}
