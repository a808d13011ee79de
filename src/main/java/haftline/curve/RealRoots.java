package haftline.curve;

/**
 * Real roots of a polynomial of low degree on an interval, found from its shape and not by
 * sampling: the roots of the derivative cut the interval into monotone stretches, and each stretch
 * whose ends differ in sign holds exactly one root, which Newton's method kept inside a shrinking
 * bracket finds to rounding.
 */
final class RealRoots {
    /** Steps after which bisection alone has used up every bit of a double. */
    private static final int MOST_STEPS = 120;

    /** A value under this many roundings of its largest term counts as a touched zero. */
    private static final double ROUNDINGS = 16;

    private RealRoots() {}

    /**
     * Finds the roots in [lo, hi] in rising order; a root that is touched without crossing counts
     * once.
     *
     * @param a coefficients, a[0] the constant
     * @param degree at most a.length - 1
     * @param lo start of the interval
     * @param hi end of the interval
     * @param roots room for degree roots
     * @return how many were found
     */
    static int within(double[] a, int degree, double lo, double hi, double[] roots) {
        int n = degree;
        while (n > 0 && a[n] == 0) {
            n--;
        }
        if (n == 0) {
            return 0;
        }
        if (n == 1) {
            double t = -a[0] / a[1];
            if (t >= lo && t <= hi) {
                roots[0] = t;
                return 1;
            }
            return 0;
        }
        double[] derivative = new double[n];
        for (int i = 1; i <= n; i++) {
            derivative[i - 1] = i * a[i];
        }
        double[] turns = new double[n - 1];
        int count = within(derivative, n - 1, lo, hi, turns);
        int found = 0;
        double left = lo;
        double atLeft = snapped(a, n, lo);
        if (atLeft == 0) {
            roots[found++] = lo;
        }
        for (int i = 0; i <= count; i++) {
            double right = i < count ? turns[i] : hi;
            double atRight = snapped(a, n, right);
            if (atRight == 0) {
                if (found == 0 || roots[found - 1] < right) {
                    roots[found++] = right;
                }
            } else if (atLeft * atRight < 0) {
                roots[found++] = refine(a, n, left, right, atLeft);
            }
            if (found == roots.length) {
                return found;
            }
            left = right;
            atLeft = atRight;
        }
        return found;
    }

    static double value(double[] a, int degree, double t) {
        double sum = a[degree];
        for (int i = degree - 1; i >= 0; i--) {
            sum = sum * t + a[i];
        }
        return sum;
    }

    /** The value, or 0 where it is not distinguishable from rounding. */
    private static double snapped(double[] a, int degree, double t) {
        double sum = a[degree];
        double size = Math.abs(sum);
        double at = Math.abs(t);
        for (int i = degree - 1; i >= 0; i--) {
            sum = sum * t + a[i];
            size = size * at + Math.abs(a[i]);
        }
        return Math.abs(sum) <= ROUNDINGS * Math.ulp(size) ? 0 : sum;
    }

    private static double refine(double[] a, int degree, double lo, double hi, double atLo) {
        double left = lo;
        double right = hi;
        double t = 0.5 * (left + right);
        for (int step = 0; step < MOST_STEPS; step++) {
            double f = a[degree];
            double slope = 0;
            for (int i = degree - 1; i >= 0; i--) {
                slope = slope * t + f;
                f = f * t + a[i];
            }
            if (f == 0) {
                return t;
            }
            if ((f < 0) == (atLo < 0)) {
                left = t;
            } else {
                right = t;
            }
            double next = t - f / slope;
            if (!(next > left && next < right)) {
                next = 0.5 * (left + right);
            }
            if (next == t || Math.abs(next - t) <= Math.ulp(t)) {
                return next;
            }
            t = next;
        }
        return t;
    }
}
