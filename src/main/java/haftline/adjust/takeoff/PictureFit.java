package haftline.adjust.takeoff;

import haftline.curve.Point;
import haftline.measure.Checks;

/**
 * Lays a picture under a handle: turned, enlarged and moved, never sheared and never mirrored (a
 * similarity). Two points fix it exactly, so it leaves no residual; what it cannot mend is the
 * picture's perspective. A handle whose butt is on the left of the picture comes to lie on its
 * head, which is the same for round work.
 *
 * <p>A place (u, v) in the picture becomes {@code x = along u + across v + moveX}, {@code r =
 * across u - along v + moveY}.
 *
 * @param along mm along the axis a pixel to the right
 * @param across mm along the axis a pixel down
 * @param moveX mm from the shoulder of the picture's upper left corner
 * @param moveY mm over the axis of that corner
 */
public record PictureFit(double along, double across, double moveX, double moveY) {
    /** Points that stand nearer to each other fix nothing worth having, px. */
    public static final double LEAST_APART_PX = 10;

    /** Greatest distance that is typed, mm. */
    public static final double LONGEST_MM = Reading.LONGEST_MM;

    private static final double LEAST_MM = 0.1;

    /**
     * A place in a picture.
     *
     * @param u pixels from the left edge
     * @param v pixels from the upper edge
     */
    public record Spot(double u, double v) {
        /** Refuses what is no number. */
        public Spot {
            Checks.within("u", u, -1e9, 1e9);
            Checks.within("v", v, -1e9, 1e9);
        }

        /**
         * How far apart two places are.
         *
         * @param other the other
         * @return pixels
         */
        public double to(Spot other) {
            return Math.hypot(other.u - u, other.v - v);
        }
    }

    /** Refuses a picture without size. */
    public PictureFit {
        Checks.within("mm a pixel", Math.hypot(along, across), 1e-9, 1e6);
        Checks.within("move along the axis", moveX, -1e9, 1e9);
        Checks.within("move over the axis", moveY, -1e9, 1e9);
    }

    /**
     * Two points that both lie on the lathe axis, such as the shoulder's and the butt's middle.
     *
     * @param first the one nearer to the shoulder
     * @param second the one nearer to the butt, {@link #LEAST_APART_PX} or more away
     * @param firstMm where the first stands, mm from the shoulder
     * @param apartMm how far apart they are on the handle, mm, 0.1 to {@link #LONGEST_MM}
     * @return how the picture lies
     * @throws IllegalArgumentException where the points are too near or the distance out of range
     */
    public static PictureFit onAxis(Spot first, Spot second, double firstMm, double apartMm) {
        return beside(first, second, apartMm, first, second, firstMm);
    }

    /**
     * Two points of known distance anywhere, such as two marks of a rule, and two on the lathe
     * axis.
     *
     * @param one a point
     * @param other another, {@link #LEAST_APART_PX} or more away
     * @param apartMm how far apart the two are, mm, 0.1 to {@link #LONGEST_MM}
     * @param front on the axis, nearer to the shoulder
     * @param back on the axis, nearer to the butt, {@link #LEAST_APART_PX} or more away
     * @param frontMm where the front one stands, mm from the shoulder
     * @return how the picture lies
     * @throws IllegalArgumentException where points are too near or the distance out of range
     */
    public static PictureFit beside(
            Spot one, Spot other, double apartMm, Spot front, Spot back, double frontMm) {
        Checks.within("distance of the points", apartMm, LEAST_MM, LONGEST_MM);
        double apart = Checks.within("pixels between them", one.to(other), LEAST_APART_PX, 1e9);
        double axis = Checks.within("pixels on the axis", front.to(back), LEAST_APART_PX, 1e9);
        double scale = apartMm / apart;
        double along = scale * (back.u() - front.u()) / axis;
        double across = scale * (back.v() - front.v()) / axis;
        return laid(along, across, front, new Point(frontMm, 0));
    }

    /**
     * A picture upright and not turned, before its points are known.
     *
     * @param mmPerPixel its scale
     * @param spot a place in it
     * @param at where that lies
     * @return how the picture lies
     */
    public static PictureFit upright(double mmPerPixel, Spot spot, Point at) {
        return laid(mmPerPixel, 0, spot, at);
    }

    private static PictureFit laid(double along, double across, Spot spot, Point at) {
        return new PictureFit(
                along,
                across,
                at.x() - along * spot.u() - across * spot.v(),
                at.r() - across * spot.u() + along * spot.v());
    }

    /**
     * Where a place in the picture lies on the handle.
     *
     * @param spot the place
     * @return mm from the shoulder; mm over the axis, negative below it
     */
    public Point at(Spot spot) {
        return new Point(
                along * spot.u() + across * spot.v() + moveX,
                across * spot.u() - along * spot.v() + moveY);
    }

    /**
     * What of the picture lies at a place.
     *
     * @param at mm from the shoulder; mm over the axis, negative below it
     * @return the place in the picture, which may be outside its edges
     */
    public Spot spot(Point at) {
        double square = along * along + across * across;
        double x = at.x() - moveX;
        double y = at.r() - moveY;
        return new Spot((along * x + across * y) / square, (across * x - along * y) / square);
    }

    /**
     * Its scale.
     *
     * @return mm a pixel
     */
    public double mmPerPixel() {
        return Math.hypot(along, across);
    }

    /**
     * How far it is turned.
     *
     * @return degrees, anticlockwise as it is seen, -180 to 180
     */
    public double turnDeg() {
        return Math.toDegrees(Math.atan2(across, along));
    }
}
