package haftline.ui.model;

import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.set.PieceChange;
import java.util.Optional;

/**
 * Two outlines over one another, sampled, and how much their deviation is enlarged to be seen.
 *
 * @param x places from the shoulder, mm, rising
 * @param before radius with the batch in use, mm, at each place
 * @param after radius with the other batch, mm, at each place
 * @param times how many times the deviation is drawn larger than it is; 1 where there is none
 */
public record OutlinePair(double[] x, double[] before, double[] after, int times) {
    private static final int SAMPLES = 240;

    /** The largest deviation is drawn about so large, mm. */
    private static final double SEEN_MM = 3;

    private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200};

    /**
     * The outlines of a piece.
     *
     * @param change the piece's change
     * @return the pair; empty where one of the two cannot be drawn
     */
    public static Optional<OutlinePair> of(PieceChange change) {
        if (change.before().figures().isEmpty() || change.after().figures().isEmpty()) {
            return Optional.empty();
        }
        Handle old = change.before().figures().get().handle();
        Handle now = change.after().figures().get().handle();
        double end = Math.min(old.outline().endX(), now.outline().endX());
        double[] x = new double[SAMPLES + 1];
        double[] before = new double[SAMPLES + 1];
        double[] after = new double[SAMPLES + 1];
        for (int i = 0; i <= SAMPLES; i++) {
            x[i] = end * i / SAMPLES;
            before[i] = radius(old.outline(), x[i]);
            after[i] = radius(now.outline(), x[i]);
        }
        double most = change.outline().map(off -> Math.abs(off.mm())).orElse(0.0);
        return Optional.of(new OutlinePair(x, before, after, times(most)));
    }

    private static double radius(Outline outline, double x) {
        // At the shoulder the outline steps up from the tenon: the wood that shows lies behind.
        return x >= outline.endX() ? outline.rBefore(outline.endX()) : outline.rAfter(x);
    }

    /** The round number that makes a deviation seen and no larger. */
    static int times(double mostMm) {
        int times = 1;
        for (int step : STEPS) {
            if (mostMm >= BatchRows.NONE_MM && step * mostMm <= SEEN_MM) {
                times = step;
            }
        }
        return times;
    }
}
