package haftline.shape;

/**
 * The sizes that a detail can be drawn to, one while the other stays as it is.
 *
 * @param leastWidthMm mm along the axis
 * @param greatestWidthMm mm along the axis
 * @param leastProudMm mm, negative where it is cut in
 * @param greatestProudMm mm, negative where it is cut in
 */
public record DetailLimits(
        double leastWidthMm, double greatestWidthMm, double leastProudMm, double greatestProudMm) {
    /** Shallower than this nothing is seen, mm. */
    private static final double SHALLOWEST = 0.05;

    private static final double WIDEST_LINE = 3;
    private static final double DEEPEST_LINE = 2;
    private static final double GREATEST_FILLET = 10;

    /**
     * The limits of a detail.
     *
     * @param detail the detail
     * @return the sizes that its own checks let pass
     */
    public static DetailLimits of(Detail detail) {
        double width = detail.widthMm();
        double tall = Math.abs(detail.proudMm());
        if (detail instanceof Detail.Bead) {
            return new DetailLimits(wide(2 * tall), Detail.WIDEST, SHALLOWEST, width / 2);
        }
        if (detail instanceof Detail.Cove) {
            return new DetailLimits(wide(2 * tall), Detail.WIDEST, -width / 2, -SHALLOWEST);
        }
        if (detail instanceof Detail.Vee) {
            return new DetailLimits(wide(tall / 2), Detail.WIDEST, -2 * width, -SHALLOWEST);
        }
        if (detail instanceof Detail.BurntLine) {
            return new DetailLimits(Detail.NARROWEST, WIDEST_LINE, -DEEPEST_LINE, -SHALLOWEST);
        }
        double most = detail instanceof Detail.Fillet ? GREATEST_FILLET : 0;
        return new DetailLimits(Detail.NARROWEST, Detail.WIDEST, -most, most);
    }

    private static double wide(double mm) {
        return Math.max(Detail.NARROWEST, mm);
    }

    /**
     * The nearest width that it can have.
     *
     * @param mm the wish
     * @return mm
     */
    public double width(double mm) {
        return Math.max(leastWidthMm, Math.min(greatestWidthMm, mm));
    }

    /**
     * The nearest height or depth that it can have; a fillet is never neither raised nor sunk.
     *
     * @param mm the wish, negative where it is cut in
     * @return mm
     */
    public double proud(double mm) {
        double held = Math.max(leastProudMm, Math.min(greatestProudMm, mm));
        boolean isFillet = leastProudMm < 0 && greatestProudMm > 0;
        return isFillet && Math.abs(held) < SHALLOWEST ? Math.copySign(SHALLOWEST, mm) : held;
    }
}
