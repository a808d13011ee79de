package haftline.curve;

/**
 * Minimises 1/2 d' A d - b' d over a box, A symmetric, tridiagonal and diagonally dominant, by a
 * primal active-set method (Nocedal and Wright, Numerical Optimization, 2nd ed., section 16.5). The
 * problem is strictly convex, so every accepted working set has a lower minimum than the one before
 * and the method ends after finitely many; each is solved directly, so the answer is exact to
 * rounding.
 */
final class BoundedTridiagonal {
    /** A multiplier of the wrong sign counts only over this many roundings of the row's terms. */
    private static final double ROUNDINGS = 64;

    /**
     * Working sets tried for each unknown before the last one is accepted; a guard against a cycle
     * among ties at rounding level, never reached otherwise.
     */
    private static final int SETS_EACH = 20;

    private BoundedTridiagonal() {}

    /** State of an unknown: free, held at its least, held at its greatest, or fixed for good. */
    static final byte FREE = 0;

    static final byte AT_LEAST = 1;
    static final byte AT_GREATEST = 2;
    static final byte FIXED = 3;

    /**
     * Solves in place.
     *
     * @param diagonal A[i][i]
     * @param off A[i][i+1]
     * @param b right-hand side
     * @param least least value of each unknown
     * @param greatest greatest value of each unknown; equal to least where it is fixed
     * @param d receives the answer
     * @param state receives what holds each unknown
     */
    static void solve(
            double[] diagonal,
            double[] off,
            double[] b,
            double[] least,
            double[] greatest,
            double[] d,
            byte[] state) {
        int n = d.length;
        double[] target = new double[n];
        double[] work = new double[n];
        for (int i = 0; i < n; i++) {
            state[i] = least[i] == greatest[i] ? FIXED : FREE;
            d[i] = least[i];
        }
        // The first feasible point is the free minimum pushed into the box; mostly it is inside.
        minimum(diagonal, off, b, d, state, target, work);
        boolean inside = true;
        for (int i = 0; i < n; i++) {
            if (state[i] == FREE) {
                if (target[i] < least[i]) {
                    state[i] = AT_LEAST;
                    target[i] = least[i];
                    inside = false;
                } else if (target[i] > greatest[i]) {
                    state[i] = AT_GREATEST;
                    target[i] = greatest[i];
                    inside = false;
                }
            }
            d[i] = target[i];
        }
        if (inside) {
            return;
        }
        for (int pass = 0; pass < SETS_EACH * n; pass++) {
            minimum(diagonal, off, b, d, state, target, work);
            if (stepTo(target, least, greatest, d, state) && !release(diagonal, off, b, d, state)) {
                return;
            }
        }
    }

    /** Minimum over the free unknowns with the others held: one pass of Gauss elimination. */
    private static void minimum(
            double[] diagonal,
            double[] off,
            double[] b,
            double[] d,
            byte[] state,
            double[] target,
            double[] pivot) {
        int n = d.length;
        for (int i = 0; i < n; i++) {
            if (state[i] != FREE) {
                target[i] = d[i];
                continue;
            }
            double p = diagonal[i];
            double q = b[i];
            if (i > 0) {
                if (state[i - 1] == FREE) {
                    double f = off[i - 1] / pivot[i - 1];
                    p -= f * off[i - 1];
                    q -= f * target[i - 1];
                } else {
                    q -= off[i - 1] * d[i - 1];
                }
            }
            pivot[i] = p;
            target[i] = q;
        }
        for (int i = n - 1; i >= 0; i--) {
            if (state[i] == FREE) {
                double q = target[i];
                if (i + 1 < n) {
                    q -= off[i] * target[i + 1];
                }
                target[i] = q / pivot[i];
            }
        }
    }

    /** Goes towards the target until the first bound; true where the target was reached. */
    private static boolean stepTo(
            double[] target, double[] least, double[] greatest, double[] d, byte[] state) {
        int n = d.length;
        double reach = 1;
        int blocked = -1;
        for (int i = 0; i < n; i++) {
            if (state[i] != FREE) {
                continue;
            }
            double bound =
                    target[i] < least[i]
                            ? least[i]
                            : target[i] > greatest[i] ? greatest[i] : Double.NaN;
            if (bound == bound) {
                double share = (bound - d[i]) / (target[i] - d[i]);
                if (share < reach || blocked < 0) {
                    reach = share;
                    blocked = i;
                }
            }
        }
        if (blocked < 0) {
            System.arraycopy(target, 0, d, 0, n);
            return true;
        }
        for (int i = 0; i < n; i++) {
            if (state[i] == FREE) {
                double moved = d[i] + reach * (target[i] - d[i]);
                d[i] = Math.max(least[i], Math.min(greatest[i], moved));
            }
        }
        boolean low = target[blocked] < least[blocked];
        state[blocked] = low ? AT_LEAST : AT_GREATEST;
        d[blocked] = low ? least[blocked] : greatest[blocked];
        return false;
    }

    /** Lets go of the held unknown that pulls hardest into the box; false where none does. */
    private static boolean release(
            double[] diagonal, double[] off, double[] b, double[] d, byte[] state) {
        int n = d.length;
        double worst = 0;
        int which = -1;
        for (int i = 0; i < n; i++) {
            if (state[i] != AT_LEAST && state[i] != AT_GREATEST) {
                continue;
            }
            double before = i > 0 ? off[i - 1] * d[i - 1] : 0;
            double after = i + 1 < n ? off[i] * d[i + 1] : 0;
            double own = diagonal[i] * d[i];
            double gradient = own + before + after - b[i];
            double size = Math.abs(own) + Math.abs(before) + Math.abs(after) + Math.abs(b[i]);
            double pull = state[i] == AT_LEAST ? -gradient : gradient;
            if (pull > ROUNDINGS * Math.ulp(size) && pull / diagonal[i] > worst) {
                worst = pull / diagonal[i];
                which = i;
            }
        }
        if (which < 0) {
            return false;
        }
        state[which] = FREE;
        return true;
    }
}
