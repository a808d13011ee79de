package haftline.set;

import haftline.curve.Extreme;
import haftline.curve.Outline;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the eye compares when pieces of a set lie side by side, and how much of a difference it
 * sees: nobody sees a tenth; 0.3 mm of a diameter and 0.5 mm of a place look alike; over 1.5 mm of
 * either another pattern is read (common practice, no source). A fortieth of a length or diameter
 * is just noticed (from memory). The limits of slopes and of the swell's place are common practice
 * without a source.
 */
public enum Trait {
    /** Greatest diameter of the visible wood, mm. */
    SWELL_DIAMETER("swell", Unit.MM, 0.3, 1.5),
    /** Where the swell stands, as a share of the visible wood. */
    SWELL_PLACE("swell's place", Unit.SHARE, 0.025, 0.05),
    /** Least diameter between shoulder and swell, mm; none where the shoulder is the narrowest. */
    WAIST_DIAMETER("waist", Unit.MM, 0.3, 1.5),
    /** Where the waist stands, mm from the shoulder. */
    WAIST_PLACE("waist's place", Unit.MM, 0.5, 1.5),
    /** Diameter where the wood meets cap or butt, mm. */
    BUTT_DIAMETER("butt", Unit.MM, 0.3, 1.5),
    /** Diameter where the wood meets the ferrule, mm. */
    SHOULDER_DIAMETER("shoulder", Unit.MM, 0.3, 1.5),
    /** Ferrule's front face to the end, mm; the blades differ, so a wide limit. */
    LENGTH("length", Unit.MM, 1, 20),
    /** Slope of the wood where it leaves the ferrule, degrees. */
    SHOULDER_SLOPE("ferrule slope", Unit.DEG, 2, 6),
    /** Slope of the wood where it meets cap or butt, degrees. */
    BUTT_SLOPE("butt slope", Unit.DEG, 2, 6);

    /** What a trait is counted in. */
    public enum Unit {
        /** Millimetres. */
        MM,
        /** Shares of the visible wood, 0 to 1. */
        SHARE,
        /** Degrees. */
        DEG
    }

    /** A narrowest place nearer to the shoulder is the shoulder itself, mm. */
    private static final double NO_PLACE_MM = 1e-6;

    private final String words;
    private final Unit unit;
    private final double alike;
    private final double apart;

    Trait(String words, Unit unit, double alike, double apart) {
        this.words = words;
        this.unit = unit;
        this.alike = alike;
        this.apart = apart;
    }

    /**
     * Its name in the trade's words.
     *
     * @return lower case
     */
    public String words() {
        return words;
    }

    /**
     * Its name as other programs read it.
     *
     * @return lower-case words joined by hyphens
     */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * What it is counted in.
     *
     * @return the unit
     */
    public Unit unit() {
        return unit;
    }

    /**
     * The largest difference that looks alike.
     *
     * @return in the trait's unit
     */
    public double alike() {
        return alike;
    }

    /**
     * The largest difference that still reads as one family.
     *
     * @return in the trait's unit
     */
    public double apart() {
        return apart;
    }

    /**
     * The trait of a handle.
     *
     * @param figures its figures
     * @return in the trait's unit; not a number for a waist that there is none of: where the wood
     *     is nowhere narrower than at the shoulder
     */
    public double of(Figures figures) {
        Handle handle = figures.handle();
        Outline outline = handle.outline();
        List<PlacedNode> nodes = handle.nodes();
        PlacedNode seat = nodes.get(nodes.size() - 1);
        double swellX = figures.grip().greatestX();
        return switch (this) {
            case SWELL_DIAMETER -> figures.grip().greatestMm();
            case SWELL_PLACE -> swellX / handle.buttX();
            case WAIST_DIAMETER ->
                    waist(outline, swellX).map(waist -> 2 * waist.r()).orElse(Double.NaN);
            case WAIST_PLACE -> waist(outline, swellX).map(Extreme::x).orElse(Double.NaN);
            case BUTT_DIAMETER -> 2 * seat.radiusMm();
            case SHOULDER_DIAMETER -> 2 * nodes.get(0).radiusMm();
            case LENGTH -> handle.lengths().overallMm();
            case SHOULDER_SLOPE -> degrees(outline.slope(0));
            case BUTT_SLOPE -> degrees(slopeBefore(outline, seat.x()));
        };
    }

    private static Optional<Extreme> waist(Outline outline, double swellX) {
        return swellX > 0
                ? Optional.of(outline.least(0, swellX)).filter(least -> least.x() > NO_PLACE_MM)
                : Optional.empty();
    }

    private static double slopeBefore(Outline outline, double x) {
        int i = outline.indexAt(x);
        boolean atStart = i > 0 && outline.segments().get(i).startX() == x;
        return outline.segments().get(atStart ? i - 1 : i).slope(x);
    }

    private static double degrees(double slope) {
        return Math.toDegrees(Math.atan(slope));
    }
}
