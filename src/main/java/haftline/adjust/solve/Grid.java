package haftline.adjust.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/**
 * The points whose quantities stand in few decimals of their documents' units: what is written can
 * be read and turned. A quantity that is not moved stays what it was, however many decimals it has.
 */
final class Grid {
    /** Most points that a search on the grid tries; one takes some ten microseconds a piece. */
    private static final int MOST_TRIALS = 400;

    /** Most points whose cost it asks. */
    private static final int MOST_COSTS = 3000;

    /** What moves by no more steps than these hardly moves. */
    private static final int HARDLY_STEPS = 10;

    /** Steps of another quantity that may make up for it. */
    private static final int ASIDE_STEPS = 3;

    /** A movement under this is none, mm: rounding. */
    private static final double NOTHING_MM = 1e-9;

    private final SetModel model;
    private final int[] decimals;

    /**
     * A grid.
     *
     * @param model the model; quantities of its points are exact
     * @param stepMm how far apart two points may be in one quantity, mm of diameter
     */
    Grid(SetModel model, double stepMm) {
        this(model, decimals(model, stepMm));
    }

    private Grid(SetModel model, int[] decimals) {
        this.decimals = decimals;
        this.model = model.withDecimals(decimals);
    }

    private static int[] decimals(SetModel model, double stepMm) {
        int[] decimals = new int[model.size()];
        for (int i = 0; i < decimals.length; i++) {
            decimals[i] = decimals(model, i, stepMm);
        }
        return decimals;
    }

    private static int decimals(SetModel model, int i, double stepMm) {
        return Math.max(0, (int) Math.ceil(-Math.log10(stepMm / model.weight(i))));
    }

    /** The same, but for one quantity whose neighbours are about so far apart. */
    Grid with(int i, double stepMm) {
        int[] changed = decimals.clone();
        changed[i] = decimals(model, i, stepMm);
        return new Grid(model, changed);
    }

    /** The model whose quantities are rounded as they are written. */
    SetModel model() {
        return model;
    }

    /** How far two neighbours are apart, mm of diameter. */
    double stepMm(int i) {
        return Math.pow(10, -decimals[i]) * model.weight(i);
    }

    /** The point of the grid that is nearest, quantity by quantity. */
    double[] nearest(double[] point) {
        double[] rounded = point.clone();
        for (int i = 0; i < rounded.length; i++) {
            if (Math.abs(point[i]) < NOTHING_MM) {
                rounded[i] = 0;
            } else if (!move(rounded, i, 0)
                    && !move(rounded, i, point[i] > 0 ? -1 : 1)
                    && !move(rounded, i, point[i] > 0 ? 1 : -1)) {
                rounded[i] = 0;
            }
        }
        return rounded;
    }

    /** Moves one quantity to the line of the grid so many behind the nearest, if that may be. */
    private boolean move(double[] point, int i, int steps) {
        double tenths = Math.pow(10, decimals[i]);
        double now = model.start(i) + point[i] / model.weight(i);
        double value = (Math.rint(now * tenths) + steps) / tenths;
        double moved = (value - model.start(i)) * model.weight(i);
        if (moved < model.low(i) - NOTHING_MM || moved > model.high(i) + NOTHING_MM) {
            return false;
        }
        point[i] = Math.abs(moved) < NOTHING_MM ? 0 : moved;
        return true;
    }

    /**
     * The point with what hardly moves left where it was: the least change spreads over all that
     * helps at all, though a few steps of another do as well.
     *
     * @param start where to begin, on the grid
     * @param isAllowed which points count
     */
    double[] fewer(double[] start, Predicate<double[]> isAllowed) {
        double[] best = start;
        int trials = 0;
        for (int i = 0; i < start.length; i++) {
            if (best[i] == 0 || Math.abs(best[i]) > HARDLY_STEPS * stepMm(i)) {
                continue;
            }
            for (double[] point : without(best, i)) {
                if (trials++ < MOST_TRIALS && isAllowed.test(point)) {
                    best = point;
                    break;
                }
            }
        }
        return best;
    }

    /** Points without one movement: all else as it was, then one other a few steps aside. */
    private List<double[]> without(double[] point, int i) {
        double[] still = point.clone();
        still[i] = 0;
        List<double[]> points = new ArrayList<>();
        points.add(still);
        for (int steps = 1; steps <= ASIDE_STEPS; steps++) {
            for (int j = 0; j < point.length; j++) {
                for (int way = -1; way <= 1; way += 2) {
                    double[] aside = still.clone();
                    if (still[j] != 0 && move(aside, j, way * steps)) {
                        points.add(aside);
                    }
                }
            }
        }
        return points;
    }

    /**
     * The best point that steps of one quantity or of two at once lead to.
     *
     * @param start where to begin, on the grid
     * @param cost what is to be as little as can be
     * @param isAllowed which points count; asked only of those that cost less
     * @param enough a cost that is good enough to end with
     */
    double[] best(
            double[] start,
            ToDoubleFunction<double[]> cost,
            Predicate<double[]> isAllowed,
            double enough) {
        double[] best = start;
        double least = cost.applyAsDouble(start);
        int trials = 0;
        int costs = 0;
        boolean moved = true;
        while (moved && costs < MOST_COSTS && least > enough) {
            moved = false;
            for (int i = 0; i < start.length; i++) {
                // With itself: one step of the one.
                for (int j = i; j < start.length; j++) {
                    for (int way = 0; way < (i == j ? 2 : 4); way++) {
                        double[] point = best.clone();
                        boolean isThere =
                                move(point, i, way % 2 == 0 ? 1 : -1)
                                        && (i == j || move(point, j, way < 2 ? 1 : -1));
                        costs++;
                        double here = isThere ? cost.applyAsDouble(point) : least;
                        if (here < least && trials++ < MOST_TRIALS && isAllowed.test(point)) {
                            best = point;
                            least = here;
                            moved = true;
                        }
                    }
                }
            }
        }
        return best;
    }
}
