package haftline.adjust.solve;

import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.MultivariateFunction;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.NelderMeadSimplex;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.SimplexOptimizer;

/**
 * A search from many random beginnings for the least change that meets all demands: each by the
 * solver's own descent, and every eighth also by Commons Math's simplex search on a penalty, which
 * knows nothing of walls or gradients.
 */
final class GlobalSearch {
    /** A mm missed costs so much; far over any pull of a limit. */
    private static final double PENALTY = 1e4;

    private static final int TRIALS = 1500;
    private static final int EVERY = 8;

    private GlobalSearch() {}

    /** Least change found, mm; infinite where no point meets all. */
    static double leastChangeMm(SetModel model, int starts, long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        double best = Double.POSITIVE_INFINITY;
        for (int s = 0; s < starts; s++) {
            double[] point = new double[model.size()];
            // Half of the beginnings near the start, where the least change is likeliest.
            double reach = s % 2 == 0 ? 1 : 0.25;
            for (int i = 0; i < point.length; i++) {
                point[i] =
                        reach
                                * (model.low(i)
                                        + random.nextDouble() * (model.high(i) - model.low(i)));
            }
            var met = Adjust.met(model, point, best * best / 2);
            if (met.isPresent()) {
                best = Math.min(best, Math.sqrt(2 * Descent.change(met.get().point())));
            }
            if (s % EVERY == 0) {
                best = Math.min(best, bySimplex(model, point));
            }
        }
        return best;
    }

    private static double bySimplex(SetModel model, double[] start) {
        double[] best = {Double.POSITIVE_INFINITY};
        MultivariateFunction cost =
                point -> {
                    double outside = 0;
                    for (int i = 0; i < point.length; i++) {
                        outside += Math.max(0, model.low(i) - point[i]);
                        outside += Math.max(0, point[i] - model.high(i));
                    }
                    var at = outside > 0 ? null : model.at(point);
                    if (at == null) {
                        return PENALTY * (1 + outside);
                    }
                    double missed = Math.max(0, -at.leastMargin());
                    double change = Math.sqrt(2 * Descent.change(point));
                    if (missed <= Descent.MET_MM) {
                        best[0] = Math.min(best[0], change);
                    }
                    return change + PENALTY * missed;
                };
        try {
            new SimplexOptimizer(1e-9, 1e-9)
                    .optimize(
                            new ObjectiveFunction(cost),
                            GoalType.MINIMIZE,
                            new InitialGuess(start),
                            new NelderMeadSimplex(start.length, 1.0),
                            new MaxEval(TRIALS));
        } catch (TooManyEvaluationsException enough) {
            return best[0];
        }
        return best[0];
    }
}
