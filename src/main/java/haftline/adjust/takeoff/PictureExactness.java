package haftline.adjust.takeoff;

import haftline.measure.Checks;

/**
 * How exact a trace over a picture can be, from the size of its pixels alone. Points are taken to
 * be marked within one pixel (common practice, no source), each by itself, so that what they miss
 * by adds by its squares.
 *
 * @param mmPerPixel scale of the picture, mm
 * @param apartPx how far apart the two points of known distance stand, pixels
 */
public record PictureExactness(double mmPerPixel, double apartPx) {
    private static final double MARKED_WITHIN_PX = 1;

    /** Checks the ranges. */
    public PictureExactness {
        Checks.within("mm a pixel", mmPerPixel, 1e-9, 1e6);
        Checks.within("pixels apart", apartPx, PictureFit.LEAST_APART_PX, 1e9);
    }

    /**
     * Doubt of a diameter that is twice the radius traced on one side.
     *
     * @return mm, plus or minus
     */
    public double oneSideMm() {
        return 2 * MARKED_WITHIN_PX * mmPerPixel;
    }

    /**
     * Doubt of a diameter from both sides; where the axis was marked has no part in it.
     *
     * @return mm, plus or minus
     */
    public double bothSidesMm() {
        return Math.sqrt(2) * MARKED_WITHIN_PX * mmPerPixel;
    }

    /**
     * Doubt of every length by the two points, as a share of it.
     *
     * @return plus or minus, 0 to 0.15
     */
    public double scaleShare() {
        return Math.sqrt(2) * MARKED_WITHIN_PX / apartPx;
    }

    /**
     * The tolerance that a take-off of such a trace wants: twice a pixel, since a line that follows
     * closer follows the hand and not the handle (common practice, no source).
     *
     * @return mm on the diameter
     */
    public double toleranceMm() {
        return 2 * mmPerPixel;
    }
}
