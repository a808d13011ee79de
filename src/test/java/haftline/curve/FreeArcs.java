package haftline.curve;

/**
 * Counts the least number of free circular arcs, tangent to nothing, that follow a list of points
 * within a tolerance; independent of the fit under test. One arc serves a stretch of points when
 * the best circle through it departs no more than the tolerance: the best circle is found by
 * Remez's exchange on four alternating points, and the levelled error on four points is a lower
 * bound (de la Vallee-Poussin), so the answer of each test is certain. A shorter stretch is never
 * harder than a longer one, so taking the longest stretch each time gives the least number.
 */
final class FreeArcs {
    private final double[] x;
    private final double[] r;
    private final double tolerance;

    FreeArcs(double[] x, double[] r, double tolerance) {
        this.x = x;
        this.r = r;
        this.tolerance = tolerance;
    }

    int count() {
        int count = 0;
        int at = 0;
        while (at < x.length - 1) {
            at = reach(at);
            count++;
        }
        return count;
    }

    private int reach(int from) {
        int good = Math.min(x.length - 1, from + 3);
        int step = 16;
        int bad = -1;
        while (bad < 0) {
            int next = Math.min(x.length - 1, good + step);
            if (next == good) {
                return good;
            }
            if (fits(from, next)) {
                good = next;
                step *= 2;
            } else {
                bad = next;
            }
        }
        while (bad - good > 1) {
            int mid = (good + bad) >>> 1;
            if (fits(from, mid)) {
                good = mid;
            } else {
                bad = mid;
            }
        }
        return good;
    }

    /**
     * The circle A (u^2 + v^2) + B u + C v + D = 0 with B^2 + C^2 - 4 A D = 1 is at the signed
     * distance 2 F / (1 + sqrt(1 + 4 A F)); a straight line is A = 0.
     */
    private boolean fits(int from, int to) {
        double midX = 0.5 * (x[from] + x[to]);
        double midR = 0.5 * (r[from] + r[to]);
        double chord = Math.hypot(x[to] - x[from], r[to] - r[from]);
        double cos = (x[to] - x[from]) / chord;
        double sin = (r[to] - r[from]) / chord;
        int n = to - from + 1;
        double[] u = new double[n];
        double[] v = new double[n];
        for (int i = 0; i < n; i++) {
            double dx = x[from + i] - midX;
            double dr = r[from + i] - midR;
            u[i] = cos * dx + sin * dr;
            v[i] = cos * dr - sin * dx;
        }
        // The extremes of the third Chebyshev polynomial, which a curve of steady change has.
        int[] reference = {0, n / 4, n - 1 - n / 4, n - 1};
        double[] distance = new double[n];
        for (int round = 0; round < 60; round++) {
            double[] f = levelled(u, v, reference);
            double worst = 0;
            for (int i = 0; i < n; i++) {
                double w = f[0] * (u[i] * u[i] + v[i] * v[i]) + f[1] * u[i] + f[2] * v[i] + f[3];
                distance[i] = 2 * w / (1 + Math.sqrt(1 + 4 * f[0] * w));
                worst = Math.max(worst, Math.abs(distance[i]));
            }
            if (worst <= tolerance) {
                return true;
            }
            if (Math.abs(f[4]) > tolerance) {
                return false;
            }
            if (!exchange(distance, reference)) {
                throw new IllegalStateException("exchange lost its alternation");
            }
        }
        // Between the two bounds to rounding: count it as fitting, which only lowers the count.
        return true;
    }

    /** A, B, C, D and the levelled error E with distance (-1)^k E at the reference points. */
    private static double[] levelled(double[] u, double[] v, int[] reference) {
        double a = 0;
        double c = 1;
        double error = 0;
        double[] solved = new double[4];
        for (int round = 0; round < 200; round++) {
            double[][] m = new double[4][5];
            for (int k = 0; k < 4; k++) {
                int i = reference[k];
                double sign = k % 2 == 0 ? 1 : -1;
                m[k][0] = u[i] * u[i] + v[i] * v[i] - error * error;
                m[k][1] = u[i];
                m[k][2] = 1;
                m[k][3] = -sign;
                m[k][4] = -c * v[i];
            }
            solved = gauss(m);
            double square = 1 - solved[1] * solved[1] + 4 * solved[0] * solved[2];
            double next = 0.5 * (c + Math.sqrt(Math.max(1e-6, square)));
            boolean settled =
                    Math.abs(next - c) < 1e-14
                            && Math.abs(solved[3] - error) < 1e-14
                            && Math.abs(solved[0] - a) < 1e-14;
            a = solved[0];
            c = next;
            error = solved[3];
            if (settled) {
                break;
            }
        }
        return new double[] {solved[0], solved[1], c, solved[2], solved[3]};
    }

    private static double[] gauss(double[][] m) {
        int n = m.length;
        for (int i = 0; i < n; i++) {
            int pivot = i;
            for (int k = i + 1; k < n; k++) {
                if (Math.abs(m[k][i]) > Math.abs(m[pivot][i])) {
                    pivot = k;
                }
            }
            double[] swap = m[i];
            m[i] = m[pivot];
            m[pivot] = swap;
            for (int k = i + 1; k < n; k++) {
                double f = m[k][i] / m[i][i];
                for (int j = i; j <= n; j++) {
                    m[k][j] -= f * m[i][j];
                }
            }
        }
        double[] y = new double[n];
        for (int i = n - 1; i >= 0; i--) {
            double sum = m[i][n];
            for (int j = i + 1; j < n; j++) {
                sum -= m[i][j] * y[j];
            }
            y[i] = sum / m[i][i];
        }
        return y;
    }

    /**
     * The largest departure of each run of one sign; of more than four the four about the worst.
     */
    private static boolean exchange(double[] distance, int[] reference) {
        int n = distance.length;
        int[] peaks = new int[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            boolean same = count > 0 && distance[i] * distance[peaks[count - 1]] > 0;
            if (!same && distance[i] != 0) {
                peaks[count++] = i;
            } else if (same && Math.abs(distance[i]) > Math.abs(distance[peaks[count - 1]])) {
                peaks[count - 1] = i;
            }
        }
        int start = 0;
        while (count - start > 4) {
            if (Math.abs(distance[peaks[start]]) < Math.abs(distance[peaks[count - 1]])) {
                start++;
            } else {
                count--;
            }
        }
        if (count - start < 4) {
            return false;
        }
        System.arraycopy(peaks, start, reference, 0, 4);
        return true;
    }

    /** Counts over the smooth runs of an outline, each sampled at the given number of points. */
    static int count(Outline outline, double tolerance, int points) {
        double[] x = new double[points + 1];
        double[] r = new double[points + 1];
        double length = outline.endX() - outline.startX();
        for (int i = 0; i <= points; i++) {
            x[i] = i == points ? outline.endX() : outline.startX() + length * i / points;
            r[i] = outline.r(x[i]);
        }
        return new FreeArcs(x, r, tolerance).count();
    }
}
