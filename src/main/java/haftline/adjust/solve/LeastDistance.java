package haftline.adjust.solve;

import haftline.adjust.Watch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.QRDecomposition;
import org.apache.commons.math3.linear.SingularMatrixException;

/**
 * The point of a polyhedron that is nearest to a given point: a strictly convex quadratic program
 * whose matrix is the identity. The dual active-set method of Goldfarb and Idnani (A numerically
 * stable dual method for solving strictly convex quadratic programs, Mathematical Programming 27,
 * 1983), the small least-squares systems in it by Commons Math's QR decomposition.
 */
final class LeastDistance {
    /** A row that is missed by less, in units of the point, is met. */
    private static final double MET = 1e-11;

    /** A row whose part square to the active rows is shorter than this share depends on them. */
    private static final double DEPENDENT = 1e-9;

    /** Each step adds or drops one row; many times the rows there are means that it cycles. */
    private static final int MOST_STEPS = 500;

    private final List<double[]> normals = new ArrayList<>();
    private final List<Integer> axes = new ArrayList<>();
    private final List<Double> limits = new ArrayList<>();
    private final List<Integer> active = new ArrayList<>();
    private final List<Double> pulls = new ArrayList<>();
    private final double[] z;
    private final Watch watch;

    /**
     * Starts at the point.
     *
     * @param point where the search begins: the point itself, or with rows held from the beginning
     *     the nearest point on them
     * @param watch who waits; a program of hundreds of rows takes seconds
     */
    LeastDistance(double[] point, Watch watch) {
        z = point.clone();
        this.watch = watch;
    }

    /**
     * Adds the row normal . z >= limit; a row of length 1 is judged in the units of the point, and
     * its array is kept.
     */
    void row(double[] normal, double limit) {
        double length = Math.sqrt(dot(normal, normal));
        if (length == 1) {
            keep(normal, limit);
        } else if (length > 0) {
            double[] unit = new double[normal.length];
            for (int i = 0; i < unit.length; i++) {
                unit[i] = normal[i] / length;
            }
            keep(unit, limit / length);
        }
    }

    private void keep(double[] unit, double limit) {
        normals.add(unit);
        axes.add(axis(unit));
        limits.add(limit);
    }

    /** Adds a row that holds with equality at the start, with the pull that holds it there. */
    void held(double[] unitNormal, double limit, double pull) {
        active.add(normals.size());
        pulls.add(pull);
        keep(unitNormal, limit);
    }

    /** The nearest point, or empty where no point meets all rows. */
    Optional<double[]> solve() {
        for (int step = 0; step < MOST_STEPS; step++) {
            if (watch.isOver()) {
                throw new CancellationException("no longer wanted");
            }
            int worst = mostMissed();
            if (worst < 0) {
                return Optional.of(z);
            }
            if (!add(worst)) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    private int mostMissed() {
        int worst = -1;
        double most = -MET;
        for (int i = 0; i < normals.size(); i++) {
            double slack = slack(i);
            if (slack < most && !active.contains(i)) {
                most = slack;
                worst = i;
            }
        }
        return worst;
    }

    private double slack(int i) {
        return dot(normals.get(i), z) - limits.get(i);
    }

    private boolean add(int row) {
        double[] n = normals.get(row);
        double pull = 0;
        for (int step = 0; step < MOST_STEPS; step++) {
            double[] onActive = coefficients(n);
            double[] direction = n.clone();
            for (int k = 0; k < active.size(); k++) {
                axpy(-onActive[k], normals.get(active.get(k)), direction);
            }
            double square = dot(direction, direction);
            int blocking = -1;
            double dual = Double.POSITIVE_INFINITY;
            for (int k = 0; k < active.size(); k++) {
                if (onActive[k] > 0 && pulls.get(k) / onActive[k] < dual) {
                    dual = pulls.get(k) / onActive[k];
                    blocking = k;
                }
            }
            boolean dependent = square < DEPENDENT * DEPENDENT;
            double primal = dependent ? Double.POSITIVE_INFINITY : -slack(row) / dot(direction, n);
            double t = Math.min(primal, dual);
            if (Double.isInfinite(t)) {
                return false;
            }
            for (int k = 0; k < active.size(); k++) {
                pulls.set(k, pulls.get(k) - t * onActive[k]);
            }
            pull += t;
            if (!dependent) {
                axpy(t, direction, z);
            }
            if (primal <= dual) {
                active.add(row);
                pulls.add(pull);
                return true;
            }
            active.remove(blocking);
            pulls.remove(blocking);
        }
        return false;
    }

    /**
     * How a normal is best put together from the active ones. Rows along an axis, which bounds and
     * held rows are, take their coordinate whole, so that only the others and the coordinates that
     * are left go into a decomposition: a small one however many rows are held.
     */
    private double[] coefficients(double[] n) {
        double[] all = new double[active.size()];
        int[] along = new int[n.length];
        Arrays.fill(along, -1);
        List<Integer> others = new ArrayList<>();
        for (int k = 0; k < all.length; k++) {
            int axis = axes.get(active.get(k));
            if (axis >= 0 && along[axis] < 0) {
                along[axis] = k;
            } else {
                others.add(k);
            }
        }
        int[] left = new int[n.length];
        int count = 0;
        for (int i = 0; i < n.length; i++) {
            if (along[i] < 0) {
                left[count++] = i;
            }
        }
        left = Arrays.copyOf(left, count);
        double[] best = leastSquares(n, left, others);
        double[] rest = n.clone();
        for (int k = 0; k < best.length; k++) {
            all[others.get(k)] = best[k];
            axpy(-best[k], normals.get(active.get(others.get(k))), rest);
        }
        for (int i = 0; i < n.length; i++) {
            if (along[i] >= 0) {
                // The row is 1 or -1 along its axis.
                all[along[i]] = rest[i] * normals.get(active.get(along[i]))[i];
            }
        }
        return all;
    }

    private double[] leastSquares(double[] n, int[] left, List<Integer> others) {
        double[] none = new double[others.size()];
        if (others.isEmpty() || left.length < others.size()) {
            return none;
        }
        double[][] columns = new double[left.length][others.size()];
        double[] right = new double[left.length];
        for (int i = 0; i < left.length; i++) {
            right[i] = n[left[i]];
            for (int k = 0; k < others.size(); k++) {
                columns[i][k] = normals.get(active.get(others.get(k)))[left[i]];
            }
        }
        try {
            return new QRDecomposition(new Array2DRowRealMatrix(columns, false))
                    .getSolver()
                    .solve(new ArrayRealVector(right, false))
                    .toArray();
        } catch (SingularMatrixException parallel) {
            return none;
        }
    }

    /** The one coordinate of a row along an axis, else -1. */
    private static int axis(double[] normal) {
        int axis = -1;
        for (int i = 0; i < normal.length; i++) {
            if (normal[i] != 0) {
                if (axis >= 0) {
                    return -1;
                }
                axis = i;
            }
        }
        return axis;
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static void axpy(double t, double[] a, double[] into) {
        for (int i = 0; i < a.length; i++) {
            into[i] += t * a[i];
        }
    }
}
