package haftline.set.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.exception.MathIllegalStateException;
import org.apache.commons.math3.optim.MaxIter;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;

/**
 * The linear program over cutting patterns (Gilmore and Gomory 1961, 1963), solved from its dual:
 * prices of items and limited sticks, and a constraint for every pattern that would be worth more
 * than its stick, found by a knapsack and added until there is none. Simplex by Commons Math.
 */
final class LinearBound {
    /** Constraints are dense rows: with more items the simplex is slower than the search. */
    static final int MOST_ITEMS = 40;

    /** A bound that has not settled after so many rounds is still a bound, only a weaker one. */
    private static final int MOST_ROUNDS = 150;

    private static final int MOST_PIVOTS = 5000;

    /** A pattern must beat its stick by this share of its cost to be worth a further round. */
    private static final double GAIN = 1e-7;

    private final Case of;
    private final Knapsack knapsack;
    private final List<Laid> patterns = new ArrayList<>();

    /** Costs are brought near 1, where the simplex's own tolerances are meant to work. */
    private final double scale;

    private double[] solution;

    private LinearBound(Case of) {
        this.of = of;
        knapsack = new Knapsack(of);
        scale = Arrays.stream(of.stickCost).filter(cost -> cost > 0).min().orElseThrow();
    }

    /**
     * Prices and plan of the linear program.
     *
     * @param prices prices that bound the cost; valid whatever the simplex's rounding
     * @param sticks how many sticks of each pattern, fractions allowed
     */
    record Relaxed(Prices prices, List<Laid> patterns, double[] sticks) {}

    /** The relaxation, or nothing where the simplex gives up. */
    static Optional<Relaxed> of(Case problem) {
        if (problem.items > MOST_ITEMS) {
            return Optional.empty();
        }
        try {
            LinearBound bound = new LinearBound(problem);
            bound.price();
            return Optional.of(
                    new Relaxed(bound.safePrices(), List.copyOf(bound.patterns), bound.sticks()));
        } catch (MathIllegalStateException unsettled) {
            return Optional.empty();
        }
    }

    private void price() {
        for (int j = 0; j < of.sticks; j++) {
            for (int i = 0; i < of.items; i++) {
                if (of.holds[j][i]) {
                    int[] alone = new int[of.items];
                    alone[i] = (int) Math.min(of.wanted[i], of.stickLength[j] / of.length[i]);
                    patterns.add(new Laid(j, alone));
                }
            }
        }
        boolean isImproved = true;
        for (int round = 0; isImproved && round < MOST_ROUNDS; round++) {
            solution = dual();
            isImproved = false;
            double[] worth = Arrays.copyOf(solution, of.items);
            for (int j = 0; j < of.sticks; j++) {
                int[] best = knapsack.best(j, worth);
                double cost = of.stickCost[j] / scale;
                if (value(worth, best) > (cost + solution[of.items + j]) * (1 + GAIN)) {
                    patterns.add(new Laid(j, best));
                    isImproved = true;
                }
            }
        }
    }

    private static double value(double[] worth, int[] counts) {
        double sum = 0;
        for (int i = 0; i < counts.length; i++) {
            sum += worth[i] * counts[i];
        }
        return sum;
    }

    private double[] dual() {
        double[] objective = new double[of.items + of.sticks];
        for (int i = 0; i < of.items; i++) {
            objective[i] = of.wanted[i];
        }
        for (int j = 0; j < of.sticks; j++) {
            // An unlimited stick's price is held at nothing below.
            objective[of.items + j] = of.isLimited(j) ? -of.stickCount[j] : -1;
        }
        List<LinearConstraint> rows = new ArrayList<>();
        for (Laid pattern : patterns) {
            double[] row = new double[objective.length];
            for (int i = 0; i < of.items; i++) {
                row[i] = pattern.counts()[i];
            }
            if (of.isLimited(pattern.stick())) {
                row[of.items + pattern.stick()] = -1;
            }
            rows.add(
                    new LinearConstraint(
                            row, Relationship.LEQ, of.stickCost[pattern.stick()] / scale));
        }
        return solve(objective, rows, GoalType.MAXIMIZE);
    }

    /** How many sticks of each known pattern the linear program cuts. */
    private double[] sticks() {
        double[] objective = new double[patterns.size()];
        List<LinearConstraint> rows = new ArrayList<>();
        for (int p = 0; p < objective.length; p++) {
            objective[p] = of.stickCost[patterns.get(p).stick()] / scale;
        }
        for (int i = 0; i < of.items; i++) {
            double[] row = new double[objective.length];
            for (int p = 0; p < row.length; p++) {
                row[p] = patterns.get(p).counts()[i];
            }
            rows.add(new LinearConstraint(row, Relationship.GEQ, of.wanted[i]));
        }
        for (int j = 0; j < of.sticks; j++) {
            if (of.isLimited(j)) {
                double[] row = new double[objective.length];
                for (int p = 0; p < row.length; p++) {
                    row[p] = patterns.get(p).stick() == j ? 1 : 0;
                }
                rows.add(new LinearConstraint(row, Relationship.LEQ, of.stickCount[j]));
            }
        }
        return solve(objective, rows, GoalType.MINIMIZE);
    }

    private static double[] solve(double[] objective, List<LinearConstraint> rows, GoalType goal) {
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(rows),
                        goal,
                        new NonNegativeConstraint(true),
                        new MaxIter(MOST_PIVOTS))
                .getPoint();
    }

    /**
     * Prices that hold whatever rounding there was: scaled down until no pattern of an unlimited
     * stick is worth more than it, and those of limited sticks raised to what their best pattern is
     * worth over them.
     */
    private Prices safePrices() {
        double[] item = new double[of.items];
        for (int i = 0; i < of.items; i++) {
            item[i] = Math.max(0, solution[i]) * scale;
        }
        double[] best = new double[of.sticks];
        double over = 1;
        for (int j = 0; j < of.sticks; j++) {
            best[j] = value(item, knapsack.best(j, item));
            if (!of.isLimited(j)) {
                over = Math.max(over, best[j] / of.stickCost[j]);
            }
        }
        double[] stick = new double[of.sticks];
        for (int i = 0; i < of.items; i++) {
            item[i] /= over;
        }
        for (int j = 0; j < of.sticks; j++) {
            stick[j] = of.isLimited(j) ? Math.max(0, best[j] / over - of.stickCost[j]) : 0;
        }
        return new Prices(item, stick);
    }
}
