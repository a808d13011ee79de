package haftline.adjust.solve;

import haftline.adjust.Watch;
import haftline.adjust.fair.CurvatureVariation;
import haftline.adjust.solve.SetModel.At;
import haftline.handle.Handle;
import haftline.measure.Checks;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.BOBYQAOptimizer;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * The fairest line within a band: node diameters moved to where the curvature varies least. Needs
 * that are met stay met, and none that is missed gets worse.
 *
 * @param bandMm how far a diameter may move either way, mm
 * @param variationBefore variation of the curvature of all pieces before, 1/mm³
 * @param variationAfter the same after
 * @param moves what moves
 * @param after the pieces as proposed
 * @param steps what to do to a set
 */
public record Fairing(
        double bandMm,
        double variationBefore,
        double variationAfter,
        List<Move> moves,
        List<Optional<Handle>> after,
        List<Step> steps)
        implements Proposal {
    /** Most trials of a search; one takes some ten microseconds a piece. */
    private static final int MOST_TRIALS = 3000;

    /** Where the search stops, as a share of the band: far finer than can be turned. */
    private static final double STOP = 1e-6;

    /** First step of the search, as a share of the band. */
    private static final double FIRST_STEP = 0.25;

    /** A mm missed of a need costs so many times the variation of the start. */
    private static final double PENALTY = 1e3;

    /** What rounding may cost of the gain, as a share of it. */
    private static final double LOST_BY_ROUNDING = 0.02;

    /** Halvings of the way back from a point that breaks a need. */
    private static final int HALVINGS = 40;

    /** Less gain than this share is none. */
    private static final double NO_GAIN = 1e-6;

    /** Copies the lists. */
    public Fairing {
        moves = List.copyOf(moves);
        after = List.copyOf(after);
        steps = List.copyOf(steps);
    }

    @Override
    public String name() {
        return "fair the line";
    }

    /**
     * Fairs a set.
     *
     * @param set the set; it is not changed
     * @param materials where keys of stock and metals are looked up
     * @param wish the needs that stay met, and whether each piece moves alone
     * @param bandMm how far a diameter may move either way, mm, 0.01 to 5
     * @return a proposal
     */
    public static Fairing of(HandleSet set, Materials materials, Wish wish, double bandMm) {
        return of(set, materials, wish, bandMm, Watch.NOBODY).orElseThrow();
    }

    /**
     * Fairs a set for somebody who may stop waiting.
     *
     * @param set the set; it is not changed
     * @param materials where keys of stock and metals are looked up
     * @param wish the needs that stay met, and whether each piece moves alone
     * @param bandMm how far a diameter may move either way, mm, 0.01 to 5
     * @param watch who waits; asked before every handle that is tried
     * @return a proposal; empty where the watch ended it
     */
    public static Optional<Fairing> of(
            HandleSet set, Materials materials, Wish wish, double bandMm, Watch watch) {
        Checks.withinMm("band of the fairing", bandMm, 0.01, 5);
        Wish narrow =
                new Wish(
                        wish.needs(),
                        java.util.Set.of(),
                        wish.eachAlone(),
                        wish.balance(),
                        wish.grip(),
                        bandMm);
        try {
            Adjust adjust = new Adjust(set, materials, narrow, watch);
            return Optional.of(
                    new Search(adjust.model(), adjust.quantities(), bandMm)
                            .fairing(set.pieces().stream().map(Piece::name).toList()));
        } catch (CancellationException over) {
            return Optional.empty();
        }
    }

    /** Looks for the fairest point and keeps the best that it saw. */
    private static final class Search {
        private SetModel model;
        private final List<Quantity> quantities;
        private final double band;
        private final double[] floors;
        private final double startVariation;
        private double[] best;
        private double least;

        Search(SetModel model, List<Quantity> quantities, double band) {
            this.model = model;
            this.quantities = quantities;
            this.band = band;
            best = new double[model.size()];
            At start = model.at(best);
            floors = new double[model.demands().size()];
            for (int d = 0; d < floors.length; d++) {
                floors[d] = Math.min(0, start.margin(d));
            }
            startVariation = variation(best);
            least = startVariation;
        }

        Fairing fairing(List<String> pieces) {
            // A line without any variation cannot be fairer.
            if (model.size() > 0 && startVariation > 0) {
                search();
            }
            if (least <= startVariation * (1 - NO_GAIN)) {
                tidy();
            }
            if (least > startVariation * (1 - NO_GAIN)) {
                best = new double[model.size()];
                least = startVariation;
            }
            Moves moves = new Moves(model, quantities, pieces, best);
            return new Fairing(
                    band, startVariation, least, moves.told(), moves.handles(), moves.steps());
        }

        /**
         * The fairest point in as few decimals as keep nearly all that was gained; where none does,
         * the point stays as it is.
         */
        private void tidy() {
            SetModel exact = model;
            double[] found = best;
            double most = least + LOST_BY_ROUNDING * (startVariation - least);
            for (double step : Tidy.STEPS_MM) {
                Grid grid = new Grid(exact, step);
                model = grid.model();
                double[] point =
                        grid.best(
                                grid.nearest(found),
                                p -> variation(p) + startVariation * PENALTY * missed(p),
                                p -> true,
                                least);
                if (missed(point) <= Descent.MET_MM / 2 && variation(point) <= most) {
                    best = point;
                    least = variation(point);
                    return;
                }
            }
            model = exact;
        }

        private double variation(double[] point) {
            double sum = 0;
            for (int p = 0; p < model.pieces(); p++) {
                Handle handle = model.handle(p, point);
                if (handle != null) {
                    sum += CurvatureVariation.of(handle).total();
                } else if (model.rows(p) != null) {
                    return Double.POSITIVE_INFINITY;
                }
            }
            return sum;
        }

        private double missed(double[] point) {
            At at = model.at(point);
            if (at == null) {
                return Double.POSITIVE_INFINITY;
            }
            double sum = 0;
            for (int d = 0; d < floors.length; d++) {
                sum += Math.max(0, floors[d] - at.margin(d));
            }
            return sum;
        }

        /** What the search minimises; finite, since the quadratic model wants numbers. */
        private double cost(double[] point) {
            double missed = missed(point);
            double variation = variation(point);
            if (missed <= Descent.MET_MM / 2 && variation < least) {
                least = variation;
                best = point.clone();
            }
            double cost = variation / startVariation + PENALTY * missed;
            return Double.isFinite(cost) ? cost : PENALTY;
        }

        private void search() {
            int n = model.size();
            double[] low = new double[n];
            double[] high = new double[n];
            for (int i = 0; i < n; i++) {
                low[i] = model.low(i);
                high[i] = model.high(i);
            }
            double[] end = n == 1 ? one(low[0], high[0]) : many(low, high, new double[n]);
            backOff(end);
            if (n > 1) {
                // Once more from the best: a first search may stop at a kink of the measure.
                backOff(many(low, high, best.clone()));
            }
        }

        private double[] one(double low, double high) {
            return new double[] {
                new BrentOptimizer(STOP, STOP * band)
                        .optimize(
                                new UnivariateObjectiveFunction(x -> cost(new double[] {x})),
                                GoalType.MINIMIZE,
                                new SearchInterval(low, high, 0),
                                new MaxEval(MOST_TRIALS))
                        .getPoint()
            };
        }

        private double[] many(double[] low, double[] high, double[] from) {
            double[][] last = {from};
            MultivariateFunction cost =
                    point -> {
                        last[0] = point.clone();
                        return cost(point);
                    };
            try {
                return new BOBYQAOptimizer(2 * from.length + 1, FIRST_STEP * band, STOP * band)
                        .optimize(
                                new ObjectiveFunction(cost),
                                GoalType.MINIMIZE,
                                new SimpleBounds(low, high),
                                new InitialGuess(from),
                                new MaxEval(MOST_TRIALS))
                        .getPoint();
            } catch (MathIllegalStateException stuck) {
                // At a kink its quadratic model fails, or its trials are used up: the best seen
                // is kept all the same.
                return last[0];
            }
        }

        /** From a point that breaks a need by a hair back towards the best that breaks none. */
        private void backOff(double[] end) {
            double[] safe = best.clone();
            double share = 1;
            for (int k = 0; k < HALVINGS; k++) {
                double[] between = new double[end.length];
                for (int i = 0; i < between.length; i++) {
                    between[i] = safe[i] + share * (end[i] - safe[i]);
                }
                cost(between);
                share /= 2;
            }
        }
    }

    /**
     * How much of the variation is left.
     *
     * @return after over before; 1 where there was none
     */
    public double left() {
        return variationBefore > 0 ? variationAfter / variationBefore : 1;
    }
}
