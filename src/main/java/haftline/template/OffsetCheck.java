package haftline.template;

import java.util.List;

/**
 * An offset held against its definition: how far its places miss the distance from the source, and
 * whether it crosses itself.
 *
 * @param deviationMm greatest miss at the ends of all strokes and at places along them, mm
 * @param at where that is
 * @param toleranceMm what is allowed, mm
 * @param crossesItself whether a loop crosses itself or another, by the JTS library's validity test
 */
public record OffsetCheck(double deviationMm, Spot at, double toleranceMm, boolean crossesItself) {
    private static final int PLACES_A_STROKE = 8;

    /**
     * Whether the offset is what was asked for.
     *
     * @return true where every place is at its distance and nothing crosses
     */
    public boolean holds() {
        return deviationMm <= toleranceMm && !crossesItself;
    }

    static OffsetCheck of(
            List<Loop> loops, List<Stroke> source, double distanceMm, double toleranceMm) {
        double worst = 0;
        Spot at = new Spot(0, 0);
        for (Loop loop : loops) {
            for (Stroke stroke : loop.strokes()) {
                for (int i = 0; i < PLACES_A_STROKE; i++) {
                    Spot spot = stroke.at((double) i / PLACES_A_STROKE);
                    double miss = Math.abs(Loop.distance(source, spot) - distanceMm);
                    if (miss > worst) {
                        worst = miss;
                        at = spot;
                    }
                }
            }
        }
        return new OffsetCheck(worst, at, toleranceMm, !Flattened.areValid(loops));
    }
}
