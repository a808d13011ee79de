package haftline.adjust.fair;

import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Handle;
import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * The curvature of a handle's visible outline as teeth of a comb: where the teeth's ends make an
 * even line the eye sees none of the joints. At a joint there are two teeth, one for either side.
 *
 * @param teeth in order of x
 */
public record CurvatureComb(List<Tooth> teeth) {
    /** Copies the list. */
    public CurvatureComb {
        teeth = List.copyOf(teeth);
    }

    /**
     * One tooth.
     *
     * @param x place on the outline, mm from the shoulder
     * @param radiusMm radius there, mm
     * @param curvature 1/mm, positive where the wood is hollow, negative where it is round
     * @param normalX x of the unit normal that points out of the wood
     * @param normalR r of that normal
     */
    public record Tooth(
            double x, double radiusMm, double curvature, double normalX, double normalR) {
        /**
         * Where the tooth ends: outward where the wood is round, inward where it is hollow.
         *
         * @param lengthMm length of a tooth of curvature 1/mm, mm
         * @return x, mm
         */
        public double endX(double lengthMm) {
            return x - curvature * lengthMm * normalX;
        }

        /**
         * The other coordinate of its end.
         *
         * @param lengthMm length of a tooth of curvature 1/mm, mm
         * @return r, mm
         */
        public double endR(double lengthMm) {
            return radiusMm - curvature * lengthMm * normalR;
        }
    }

    /**
     * The comb of a handle, from the shoulder to the seat, details included.
     *
     * @param handle the handle
     * @param spacingMm greatest distance of neighbouring teeth along x, mm, 0.05 to 50
     * @return the comb
     */
    public static CurvatureComb of(Handle handle, double spacingMm) {
        Checks.within("spacing of the comb", spacingMm, 0.05, 50);
        double seatX = handle.buttX() - handle.brief().shape().butt().lengthMm();
        Outline outline = handle.outline();
        List<Tooth> teeth = new ArrayList<>();
        for (int s = outline.indexAt(0); s < outline.segments().size(); s++) {
            Segment segment = outline.segments().get(s);
            double from = Math.max(0, segment.startX());
            double to = Math.min(seatX, segment.endX());
            if (from < to) {
                int steps = (int) Math.ceil((to - from) / spacingMm);
                for (int i = 0; i <= steps; i++) {
                    double x = i == steps ? to : from + (to - from) * i / steps;
                    add(teeth, segment, x);
                }
            }
        }
        return new CurvatureComb(teeth);
    }

    /** Half a circle stands upright at its ends, where a slope is no number. */
    private static void add(List<Tooth> teeth, Segment segment, double x) {
        double slope = segment.slope(x);
        double curvature = segment.curvature(x);
        if (Double.isFinite(slope) && Double.isFinite(curvature)) {
            double root = Math.sqrt(1 + slope * slope);
            teeth.add(new Tooth(x, segment.r(x), curvature, -slope / root, 1 / root));
        }
    }
}
