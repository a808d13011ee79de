package haftline.adjust.takeoff;

import java.util.Arrays;
import java.util.function.BooleanSupplier;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * Least squares within a box: Gauss-Newton with Levenberg and Marquardt's damping, each step by a
 * QR factorisation, projected on the box (Nocedal and Wright, Numerical Optimization, 2nd ed.,
 * chapter 10; Bertsekas, Projected Newton methods, SIAM J. Control Optim. 20, 1982, for the set of
 * parameters that are held at a bound). Derivatives by central differences.
 */
final class LeastSquares {
    /** Cube root of a double's rounding: the best step of a central difference, as a share. */
    private static final double NUDGE = 6e-6;

    private static final double FIRST_DAMPING = 1e-4;
    private static final double LEAST_DAMPING = 1e-14;
    private static final double GREATEST_DAMPING = 1e10;
    private static final double LESS = 0.1;
    private static final double MORE = 4;

    private final Model model;
    private final double[] low;
    private final double[] high;
    private final double[] scale;

    /** What is fitted. */
    interface Model {
        /**
         * Weighted residuals.
         *
         * @param parameters within the box
         * @return one figure a reading; null where there is no such shape
         */
        double[] residuals(double[] parameters);
    }

    /**
     * What came of it.
     *
     * @param parameters where the sum is least
     * @param sum sum of the squares of the weighted residuals there
     */
    record Fit(double[] parameters, double sum) {}

    /**
     * Sets a problem.
     *
     * @param model what is fitted
     * @param low least of each parameter
     * @param high greatest
     * @param scale size of a parameter that matters, for the steps of the differences
     */
    LeastSquares(Model model, double[] low, double[] high, double[] scale) {
        this.model = model;
        this.low = low;
        this.high = high;
        this.scale = scale;
    }

    /**
     * Goes downhill from a start.
     *
     * @param start parameters, pushed into the box
     * @param rounds most steps
     * @param settled relative fall of the sum under which it is settled
     * @return the least that was found
     */
    Fit from(double[] start, int rounds, double settled) {
        return from(start, rounds, settled, () -> false);
    }

    /**
     * The same, broken off where it has gone on for too long.
     *
     * @param start parameters, pushed into the box
     * @param rounds most steps
     * @param settled relative fall of the sum under which it is settled
     * @param enough whether to go no further; asked before each step
     * @return the least that was found
     */
    Fit from(double[] start, int rounds, double settled, BooleanSupplier enough) {
        double[] at = start.clone();
        for (int i = 0; i < at.length; i++) {
            at[i] = clamped(i, at[i]);
        }
        double[] residuals = model.residuals(at);
        if (residuals == null) {
            return new Fit(at, Double.POSITIVE_INFINITY);
        }
        double sum = sum(residuals);
        double damping = FIRST_DAMPING;
        for (int round = 0; round < rounds && at.length > 0 && !enough.getAsBoolean(); round++) {
            double[][] slopes = triangle(slopes(at, residuals), residuals);
            boolean better = false;
            double before = sum;
            while (!better && damping < GREATEST_DAMPING) {
                double[] tried = step(slopes, at, damping);
                double[] now = model.residuals(tried);
                double least = now == null ? Double.POSITIVE_INFINITY : sum(now);
                better = least < sum;
                if (better) {
                    at = tried;
                    residuals = now;
                    sum = least;
                    damping = Math.max(LEAST_DAMPING, damping * LESS);
                } else {
                    damping *= MORE;
                }
            }
            if (!better || before - sum <= settled * before) {
                break;
            }
        }
        return new Fit(at, sum);
    }

    private double clamped(int i, double value) {
        return Math.max(low[i], Math.min(high[i], value));
    }

    private static double sum(double[] residuals) {
        double sum = 0;
        for (double residual : residuals) {
            sum += residual * residual;
        }
        return sum;
    }

    /** Derivatives, one row a reading; one-sided where one side has no shape. */
    private double[][] slopes(double[] at, double[] here) {
        int n = at.length;
        double[][] slopes = new double[here.length][n];
        double[] p = at.clone();
        for (int i = 0; i < n; i++) {
            double nudge = NUDGE * Math.max(Math.abs(at[i]), scale[i]);
            p[i] = clamped(i, at[i] + nudge);
            double up = p[i] - at[i];
            double[] above = up > 0 ? model.residuals(p) : here;
            p[i] = clamped(i, at[i] - nudge);
            double down = at[i] - p[i];
            double[] below = down > 0 ? model.residuals(p) : here;
            p[i] = at[i];
            double span = (above == null ? 0 : up) + (below == null ? 0 : down);
            double[] high = above == null ? here : above;
            double[] low = below == null ? here : below;
            for (int k = 0; k < here.length && span > 0; k++) {
                slopes[k][i] = (high[k] - low[k]) / span;
            }
        }
        return slopes;
    }

    /**
     * The slopes turned into a triangle by Householder's reflections, the residuals turned along in
     * a last column: for every step and damping the same problem in as many rows as there are
     * parameters, however many readings there are.
     */
    private static double[][] triangle(double[][] slopes, double[] residuals) {
        int n = slopes.length == 0 ? 0 : slopes[0].length;
        double[][] rows = new double[slopes.length][];
        for (int k = 0; k < rows.length; k++) {
            rows[k] = Arrays.copyOf(slopes[k], n + 1);
            rows[k][n] = residuals[k];
        }
        int kept = Math.min(n, rows.length);
        double[] dots = new double[n + 1];
        for (int i = 0; i < kept; i++) {
            double square = 0;
            for (int k = i; k < rows.length; k++) {
                square += rows[k][i] * rows[k][i];
            }
            if (square == 0) {
                continue;
            }
            double length = Math.copySign(Math.sqrt(square), rows[i][i]);
            double head = rows[i][i] + length;
            Arrays.fill(dots, 0);
            for (int k = i; k < rows.length; k++) {
                double v = k == i ? head : rows[k][i];
                for (int j = i + 1; j <= n; j++) {
                    dots[j] += v * rows[k][j];
                }
            }
            for (int k = i; k < rows.length; k++) {
                double v = (k == i ? head : rows[k][i]) / (length * head);
                for (int j = i + 1; j <= n; j++) {
                    rows[k][j] -= v * dots[j];
                }
                rows[k][i] = 0;
            }
            rows[i][i] = -length;
        }
        return Arrays.copyOf(rows, kept);
    }

    /** A step from the triangle of slopes and residuals. */
    private double[] step(double[][] triangle, double[] at, double damping) {
        int n = at.length;
        int[] free = new int[n];
        int count = 0;
        double[] size = new double[n];
        for (int i = 0; i < n; i++) {
            double pull = 0;
            for (double[] row : triangle) {
                pull -= row[i] * row[n];
                size[i] += row[i] * row[i];
            }
            boolean pressed = pull > 0 ? at[i] >= high[i] : at[i] <= low[i];
            if (size[i] > 0 && !pressed) {
                free[count++] = i;
            }
        }
        double[] tried = at.clone();
        if (count == 0) {
            return tried;
        }
        double[][] rows = new double[triangle.length + count][count];
        double[] right = new double[rows.length];
        for (int k = 0; k < triangle.length; k++) {
            right[k] = -triangle[k][n];
            for (int i = 0; i < count; i++) {
                rows[k][i] = triangle[k][free[i]];
            }
        }
        for (int i = 0; i < count; i++) {
            rows[triangle.length + i][i] = Math.sqrt(damping * size[free[i]]);
        }
        RealVector step;
        try {
            step =
                    new QRDecomposition(new Array2DRowRealMatrix(rows, false))
                            .getSolver()
                            .solve(new ArrayRealVector(right, false));
        } catch (SingularMatrixException flat) {
            return tried;
        }
        for (int i = 0; i < count; i++) {
            tried[free[i]] = clamped(free[i], at[free[i]] + step.getEntry(i));
        }
        return tried;
    }

    /**
     * A box without walls.
     *
     * @param n parameters
     * @return bounds that never hold; negate for the least
     */
    static double[] open(int n) {
        double[] bounds = new double[n];
        Arrays.fill(bounds, Double.MAX_VALUE);
        return bounds;
    }
}
