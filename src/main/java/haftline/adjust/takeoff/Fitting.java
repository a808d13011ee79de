package haftline.adjust.takeoff;

import haftline.curve.Outline;
import java.util.Arrays;

/**
 * Readings with what is known of their scatter: fits drafts to those that count and tells what a
 * draft costs.
 *
 * @param table all readings
 * @param deviation of a diameter, mm
 * @param toleranceMm how far the line may run beside the true one, mm on the diameter
 * @param effort what may still be spent on trials; shared by all of them
 */
record Fitting(Table table, double deviation, double toleranceMm, Effort effort) {
    /**
     * Whoever sets a calliper by a rule's marks misses the place by this, mm (common practice, no
     * source). It takes weight from readings on steep places.
     */
    static final double PLACE_MM = 0.05;

    /**
     * A reading further off than this many deviations is a stray: chance does so once in 150,000
     * readings of a normal distribution.
     */
    private static final double STRAY = 4.5;

    private static final int ROUNDS = 40;
    private static final int MOST_STRAY_ROUNDS = 4;

    /** One over the deviation of each reading that counts, the doubt of its place included. */
    double[] weights(Draft draft, boolean[] counts) {
        return DraftFit.weights(table, draft, deviation, PLACE_MM, counts);
    }

    DraftFit.Fitted fit(Draft draft, boolean[] counts) {
        return new DraftFit(table, weights(draft, counts), effort).fit(draft, ROUNDS);
    }

    /**
     * Fits a draft again and again while readings come to lie off its line or back on it.
     *
     * @param draft one that has an outline
     * @param counts which readings count; changed to what they are for the line that is returned
     */
    Draft fitWithoutStrays(Draft draft, boolean[] counts) {
        Draft now = fit(draft, counts).draft();
        for (int round = 0; round < MOST_STRAY_ROUNDS && judge(now, counts); round++) {
            now = fit(now, counts).draft();
        }
        return now;
    }

    /** Tells every reading's standing from the line alone; true where one has changed. */
    private boolean judge(Draft draft, boolean[] counts) {
        Outline outline = draft.outline().orElseThrow();
        boolean[] all = new boolean[counts.length];
        Arrays.fill(all, true);
        double[] weights = weights(draft, all);
        boolean changed = false;
        for (int j = 0; j < counts.length; j++) {
            double off = Math.abs(table.d(j) - table.fitted(outline, j));
            boolean on = off * weights[j] <= STRAY || off <= toleranceMm;
            changed |= counts[j] != on;
            counts[j] = on;
        }
        return changed;
    }

    /** Squares over the variance, a stray at its limit, and the price of the figures. */
    double score(Draft draft, boolean[] counts) {
        double sum = 0;
        for (double residual :
                table.residuals(draft.outline().orElseThrow(), weights(draft, counts))) {
            sum += residual * residual;
        }
        for (boolean one : counts) {
            sum += one ? 0 : STRAY * STRAY;
        }
        return sum + figures(draft) * Math.log(counts.length);
    }

    /** How many figures a draft's form takes. */
    static double figures(Draft draft) {
        long crisp = draft.nodes().stream().filter(DraftNode::crisp).count();
        double butt = draft.butt().lengthMm() > 0 ? 2 : 0;
        return 2.0 * draft.nodes().size() + crisp + 4.0 * draft.details().size() + butt;
    }
}
