package haftline.figures;

import haftline.curve.Extreme;
import haftline.handle.Handle;
import haftline.handle.Use;
import haftline.stock.HandSize;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How a handle fills the hand, beside guidance for its use. Published guidance is for tools that
 * are gripped hard or guided finely; kit table ware lies between and goes by common practice.
 *
 * @param use how it is held
 * @param greatestMm greatest diameter of the visible wood outside of the butt's form, mm
 * @param greatestX where it is, mm from the shoulder
 * @param leastMm least diameter of the visible wood outside of the butt's form, mm
 * @param lengthMm length that the hand can close on, ferrule's front face to butt, mm
 * @param diameterLowMm least greatest diameter by the guidance, mm
 * @param diameterHighMm greatest diameter by the guidance, mm
 * @param lengthLowMm least length that the hand wants, mm
 * @param lengthHighMm greatest length that the hand wants, mm
 * @param diameterRule whose guidance the diameters are
 * @param lengthRule whose guidance the lengths are
 */
public record Grip(
        Use use,
        double greatestMm,
        double greatestX,
        double leastMm,
        double lengthMm,
        double diameterLowMm,
        double diameterHighMm,
        double lengthLowMm,
        double lengthHighMm,
        String diameterRule,
        String lengthRule) {
    private static final String PRACTICE = "common practice";

    /** What a use wants. */
    private record Guidance(
            double diameterLow,
            double diameterHigh,
            double lengthLow,
            double lengthHigh,
            String diameterRule) {
        /**
         * NIOSH 2004-164 advises 31.75 to 50.8 mm for power tasks, more than kit openers and scoops
         * have by common practice (26 to 32 mm), which therefore is the lower bound.
         */
        static final Guidance POWER =
                new Guidance(
                        26,
                        50.8,
                        100,
                        130,
                        "from 26 mm common practice; to 50.8 mm DHHS (NIOSH) 2004-164, power task,"
                                + " which itself advises 31.75 mm and more");

        /** Under about 14 mm is too thin to grip; slicers and servers go to 26 mm. */
        static final Guidance THREE_FINGERS = new Guidance(14, 26, 75, 95, PRACTICE);

        /** NIOSH's precision band, and common practice above it to 16 mm. */
        static final Guidance FINGERTIPS =
                new Guidance(
                        6.35,
                        16,
                        60,
                        120,
                        "from 6.35 mm DHHS (NIOSH) 2004-164, precision task, which itself advises"
                                + " 12.7 mm and less; to 16 mm common practice");

        static Guidance of(Use use) {
            return switch (use) {
                case POWER -> POWER;
                case THREE_FINGERS -> THREE_FINGERS;
                case FINGERTIPS -> FINGERTIPS;
            };
        }
    }

    /**
     * Grip of a handle.
     *
     * @param handle the handle
     * @return the figures
     */
    public static Grip of(Handle handle) {
        Use use = handle.brief().use();
        Guidance guidance = Guidance.of(use);
        double seatX = handle.buttX() - handle.brief().shape().butt().lengthMm();
        Extreme greatest = handle.outline().greatest(0, seatX);
        return new Grip(
                use,
                2 * greatest.r(),
                greatest.x(),
                2 * handle.outline().least(0, seatX).r(),
                handle.lengths().overallMm(),
                guidance.diameterLow(),
                guidance.diameterHigh(),
                guidance.lengthLow(),
                guidance.lengthHigh(),
                guidance.diameterRule(),
                PRACTICE);
    }

    /**
     * Share of people whose hand is not broader than the handle is long, so that it lies across the
     * whole palm: a normal distribution by the survey's mean and deviation.
     *
     * @param breadth hand breadth of those people
     * @return 0 to 1
     */
    public double shareOfHands(HandSize breadth) {
        return new NormalDistribution(null, breadth.meanMm(), breadth.deviationMm())
                .cumulativeProbability(lengthMm);
    }
}
