package haftline.adjust.takeoff;

import java.util.Arrays;

/**
 * Readings that are no part of any shape, told before there is a line: one is left out where the
 * cheapest row of stretches through its neighbours becomes so much cheaper without it that the
 * figures it asked for are a slip's, not a shape's. The one that saves most goes first, so a slip
 * does not take its neighbour with it. Who was left out wrongly comes back when the line is there.
 */
final class Strays {
    /** A reading nearer to its neighbours' cubic than this many deviations is looked at no more. */
    private static final double SUSPECT = 3;

    /** Parameters' worth that a reading's absence must save: one alone asks for three. */
    private static final double SAVES = 2.5;

    /**
     * A reading whose neighbours stand this near was taken there on purpose, in a narrow groove; so
     * were the two sides of a step.
     */
    private static final double ON_PURPOSE = 0.6;

    /** Readings on either side whose stretches a reading has a say in. */
    private static final int REACH = 14;

    /** At most one in so many readings is a slip; more, and the shape is not understood. */
    private static final int ONE_IN = 10;

    private final Table table;
    private final double deviation;
    private final double parameter;

    Strays(Table table, double deviation) {
        this.table = table;
        this.deviation = deviation;
        this.parameter = Math.log(table.count());
    }

    /** Whether each reading of the table counts. */
    boolean[] counts() {
        boolean[] counts = new boolean[table.count()];
        Arrays.fill(counts, true);
        double[] saved = new double[counts.length];
        Arrays.fill(saved, Double.NaN);
        for (int left = counts.length / ONE_IN; left > 0; left--) {
            Kept kept = Kept.of(table, counts);
            int worst = -1;
            for (int k = 0; k < kept.count(); k++) {
                int row = kept.rows()[k];
                if (Double.isNaN(saved[row])) {
                    saved[row] = isSuspect(kept, k) ? saved(kept, k) : 0;
                }
                worst = worst < 0 || saved[row] > saved[kept.rows()[worst]] ? k : worst;
            }
            if (saved[kept.rows()[worst]] <= SAVES * parameter) {
                break;
            }
            counts[kept.rows()[worst]] = false;
            int from = Math.max(0, worst - REACH);
            int to = Math.min(kept.count() - 1, worst + REACH);
            for (int k = from; k <= to; k++) {
                saved[kept.rows()[k]] = Double.NaN;
            }
        }
        return counts;
    }

    private boolean isSuspect(Kept kept, int k) {
        double[] x = kept.x();
        double near = ON_PURPOSE * table.spacingMm();
        boolean before = k > 0 && x[k] - x[k - 1] < near;
        boolean after = k + 1 < x.length && x[k + 1] - x[k] < near;
        boolean pair = k > 0 && x[k] == x[k - 1] || k + 1 < x.length && x[k + 1] == x[k];
        return !pair && !(before && after) && !(Noise.off(x, kept.d(), k) <= SUSPECT * deviation);
    }

    /** What the row about a reading costs less without it. */
    private double saved(Kept kept, int k) {
        int from = Math.max(0, k - REACH);
        int to = Math.min(kept.count(), k + REACH + 1);
        double[] x = Arrays.copyOfRange(kept.x(), from, to);
        double[] d = Arrays.copyOfRange(kept.d(), from, to);
        boolean end = to == kept.count();
        return cost(x, d, end) - cost(without(x, k - from), without(d, k - from), end);
    }

    private double cost(double[] x, double[] d, boolean end) {
        return new Segmentation(x, d, deviation, Fitting.PLACE_MM, parameter).cost(end);
    }

    private static double[] without(double[] all, int k) {
        double[] others = new double[all.length - 1];
        System.arraycopy(all, 0, others, 0, k);
        System.arraycopy(all, k + 1, others, k, others.length - k);
        return others;
    }
}
