package haftline.adjust.takeoff;

/**
 * Least-squares polynomials of order 0 to 3 through a run of readings, by Forsythe's orthogonal
 * polynomials (Generation and use of orthogonal polynomials for data-fitting, J. SIAM 5, 1957):
 * every order up to the highest costs no more than that one.
 */
final class Polynomial {
    /** A cubic, which is what a batten is between its nodes. */
    static final int HIGHEST = 3;

    /** A norm that is a smaller share of the one before comes of places that are all one. */
    static final double NO_NORM = 1e-12;

    private final double[] alpha = new double[HIGHEST + 1];
    private final double[] beta = new double[HIGHEST + 1];
    private final double[] coefficient = new double[HIGHEST + 1];
    private final double[] sums = new double[HIGHEST + 1];
    private final int orders;

    /** Fits readings from one to another, both included. */
    Polynomial(double[] x, double[] d, int from, int to) {
        int m = to - from + 1;
        double[] now = new double[m];
        double[] before = new double[m];
        double[] left = new double[m];
        double norm = m;
        double firstNorm = 1;
        for (int j = 0; j < m; j++) {
            now[j] = 1;
            left[j] = d[from + j];
        }
        double normBefore = 1;
        int order = 0;
        while (true) {
            double dot = 0;
            double moment = 0;
            for (int j = 0; j < m; j++) {
                dot += now[j] * left[j];
                moment += x[from + j] * now[j] * now[j];
            }
            coefficient[order] = dot / norm;
            double sum = 0;
            for (int j = 0; j < m; j++) {
                left[j] -= coefficient[order] * now[j];
                sum += left[j] * left[j];
            }
            sums[order] = sum;
            if (order == HIGHEST || order == m - 1) {
                break;
            }
            alpha[order] = moment / norm;
            beta[order] = order == 0 ? 0 : norm / normBefore;
            normBefore = norm;
            norm = 0;
            for (int j = 0; j < m; j++) {
                double next = (x[from + j] - alpha[order]) * now[j] - beta[order] * before[j];
                before[j] = now[j];
                now[j] = next;
                norm += next * next;
            }
            if (order == 0) {
                firstNorm = norm;
            }
            if (!(norm > NO_NORM * firstNorm)) {
                break;
            }
            order++;
        }
        orders = order;
    }

    /** The highest order that there are places enough for. */
    int orders() {
        return orders;
    }

    /** The order at which squares and the price of the parameters are least. */
    int cheapest(double parameter) {
        int order = 0;
        for (int k = 1; k <= orders; k++) {
            if (sums[k] + k * parameter < sums[order] + order * parameter) {
                order = k;
            }
        }
        return order;
    }

    /** Sum of the squares that an order leaves. */
    double sum(int order) {
        return sums[order];
    }

    /** The polynomial of an order at a place. */
    double at(double place, int order) {
        double now = 1;
        double before = 0;
        double value = coefficient[0];
        for (int k = 0; k < order; k++) {
            double next = (place - alpha[k]) * now - beta[k] * before;
            before = now;
            now = next;
            value += coefficient[k + 1] * now;
        }
        return value;
    }

    /** Slope of the polynomial of an order at a place. */
    double slope(double place, int order) {
        double now = 1;
        double before = 0;
        double rise = 0;
        double riseBefore = 0;
        double slope = 0;
        for (int k = 0; k < order; k++) {
            double next = (place - alpha[k]) * now - beta[k] * before;
            double nextRise = now + (place - alpha[k]) * rise - beta[k] * riseBefore;
            before = now;
            now = next;
            riseBefore = rise;
            rise = nextRise;
            slope += coefficient[k + 1] * rise;
        }
        return slope;
    }
}
