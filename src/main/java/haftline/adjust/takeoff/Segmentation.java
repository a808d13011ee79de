package haftline.adjust.takeoff;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * Cuts a row of readings into the stretches that simple curves fit, by dynamic programming over
 * every place to cut (Bellman, On the approximation of curves by line segments using dynamic
 * programming, Comm. ACM 4, 1961). A parameter costs the logarithm of the number of readings
 * (Schwarz, Estimating the dimension of a model, Ann. Statist. 6, 1978).
 */
final class Segmentation {
    /** A cut's price, in parameters: its place and the freedom to choose it. */
    private static final double CUT = 2;

    /** Squares over the variance, as for a stray: four and a half deviations. */
    private static final double FAR = 20;

    /** Arcs are looked for in no more readings than this; a bead or cove is short. */
    private static final int LONGEST_ARC = 48;

    private static final double LONGEST_DOME_MM = 60;
    private static final double LONGEST_ROUND_MM = 40;
    private static final double LONGEST_CHAMFER_MM = 20;

    /** Every form of the butt falls off by more than this, mm of diameter a mm. */
    private static final double STEEP = 1;

    /** Places tried between two readings for the start of the butt's form. */
    private static final int STARTS = 8;

    /** A dome ends on the axis; one that still stands this share of its width there is none. */
    private static final double DOME_END = 0.25;

    private final double[] x;
    private final double[] d;
    private final double deviation;
    private final double placeDeviation;
    private final double parameter;

    /**
     * Sets the problem.
     *
     * @param x places, mm, rising; two may be equal
     * @param d diameters, mm
     * @param deviation of the diameters, mm, over 0
     * @param placeDeviation of the places, mm
     * @param parameter price of one
     */
    Segmentation(
            double[] x, double[] d, double deviation, double placeDeviation, double parameter) {
        this.x = x;
        this.d = d;
        this.deviation = deviation;
        this.placeDeviation = placeDeviation;
        this.parameter = parameter;
    }

    /** The cheapest rows to each reading. */
    private record Way(double[] best, Stretch[] last) {}

    private Way way() {
        int n = x.length;
        double[] best = new double[n + 1];
        Arrays.fill(best, 1, n + 1, Double.POSITIVE_INFINITY);
        Stretch[] last = new Stretch[n];
        for (int from = 0; from < n; from++) {
            // Whatever ends before this reading is settled, so all that begins here can be tried.
            double before = best[from] + CUT * parameter;
            GrowingFit fit = new GrowingFit(x[from], d[from]);
            for (int to = from; to < n; to++) {
                fit.add(x[to], d[to]);
                Stretch stretch = cheapest(fit, from, to, best[to + 1] - before);
                if (stretch != null) {
                    best[to + 1] = before + stretch.cost();
                    last[to] = stretch;
                }
            }
        }
        return new Way(best, last);
    }

    /**
     * The cheapest row of stretches; where the wood ends steeply also the cheapest that ends in
     * each form of the butt. One that costs far more than another is not worth following.
     */
    List<List<Stretch>> rows() {
        Way way = way();
        List<Stretch> ends = new ArrayList<>(List.of(way.last()[x.length - 1]));
        ends.addAll(butts(way));
        double least = cost(way, ends);
        return ends.stream()
                .filter(end -> cost(way, List.of(end)) <= least + FAR)
                .map(end -> row(way.last(), end))
                .toList();
    }

    /** Cost of the cheapest row that ends so. */
    private double cost(Way way, List<Stretch> ends) {
        double least = Double.POSITIVE_INFINITY;
        for (Stretch end : ends) {
            double cut = end.kind().isButt() ? 0 : CUT * parameter;
            least = Math.min(least, way.best()[end.from()] + end.cost() + cut);
        }
        return least;
    }

    /**
     * Cost of the cheapest row.
     *
     * @param end whether the last reading is the wood's end, so that a form of the butt may be
     */
    double cost(boolean end) {
        Way way = way();
        List<Stretch> ends = new ArrayList<>(List.of(way.last()[x.length - 1]));
        if (end) {
            ends.addAll(butts(way));
        }
        return cost(way, ends);
    }

    private List<Stretch> butts(Way way) {
        int n = x.length;
        List<Stretch> butts = new ArrayList<>();
        if (n > 2 && (d[n - 2] - d[n - 1]) / (x[n - 1] - x[n - 2]) > STEEP) {
            for (Stretch.Kind kind : Stretch.Kind.values()) {
                Stretch end = kind.isButt() ? butt(kind, way.best()) : null;
                if (end != null) {
                    butts.add(end);
                }
            }
        }
        return butts;
    }

    private static List<Stretch> row(Stretch[] last, Stretch end) {
        Deque<Stretch> row = new ArrayDeque<>(List.of(end));
        while (row.peekFirst().from() > 0) {
            row.addFirst(last[row.peekFirst().from() - 1]);
        }
        return List.copyOf(row);
    }

    /** The cheapest curve through a run; null where none costs less than a limit. */
    private Stretch cheapest(GrowingFit fit, int from, int to, double limit) {
        double square = deviation * deviation;
        int order = fit.cheapest(parameter * square);
        double cost = fit.sum(order) / square + (order + 1) * parameter;
        int count = to - from + 1;
        double least = Math.min(cost, limit);
        if (count > HALF_ROUND_LEAST && count <= LONGEST_ARC && 3 * parameter < least) {
            double price = arc(from, to) + 3 * parameter;
            if (price < least) {
                return new Stretch(from, to, Stretch.Kind.ARC, 0, x[from], price);
            }
        }
        return cost < limit
                ? new Stretch(from, to, Stretch.Kind.POLYNOMIAL, order, x[from], cost)
                : null;
    }

    /** An arc has three parameters: fewer readings say nothing against it. */
    private static final int HALF_ROUND_LEAST = 4;

    /**
     * Squares over the variance about the circle that fits best by Kasa's linear fit (A circle
     * fitting procedure and its error analysis, IEEE Trans. Instrum. Meas. 25, 1976).
     */
    double arc(int from, int to) {
        double middle = (x[from] + x[to]) / 2;
        double[][] a = new double[3][4];
        for (int j = from; j <= to; j++) {
            double u = x[j] - middle;
            double r = d[j] / 2;
            double[] row = {1, u, r, u * u + r * r};
            for (int i = 0; i < 3; i++) {
                for (int k = 0; k < 4; k++) {
                    a[i][k] += row[i] * row[k];
                }
            }
        }
        if (!solve(a)) {
            return Double.POSITIVE_INFINITY;
        }
        double centre = a[1][3] / 2;
        double height = a[2][3] / 2;
        double square = a[0][3] + centre * centre + height * height;
        boolean round = d[from + (to - from) / 2] / 2 > height;
        double sum = 0;
        for (int j = from; j <= to; j++) {
            double u = x[j] - middle - centre;
            double rise = Math.sqrt(Math.max(square - u * u, 1e-6));
            sum += squares(j, 2 * (round ? height + rise : height - rise), 2 * u / rise);
        }
        return sum;
    }

    /** Square of a residual over its variance; slope is of the diameter. */
    private double squares(int j, double fitted, double slope) {
        double off = d[j] - fitted;
        double shift = slope * placeDeviation;
        return off * off / (deviation * deviation + shift * shift);
    }

    /** Gauss elimination in place; the last column becomes the answer. */
    private static boolean solve(double[][] a) {
        int n = a.length;
        for (int i = 0; i < n; i++) {
            if (!(Math.abs(a[i][i]) > 1e-9)) {
                return false;
            }
            for (int k = 0; k < n; k++) {
                if (k != i) {
                    double f = a[k][i] / a[i][i];
                    for (int j = i; j <= n; j++) {
                        a[k][j] -= f * a[i][j];
                    }
                }
            }
        }
        for (int i = 0; i < n; i++) {
            a[i][n] /= a[i][i];
        }
        return true;
    }

    /** The cheapest end in one form of the butt; null where none is possible. */
    private Stretch butt(Stretch.Kind kind, double[] before) {
        int last = x.length - 1;
        Stretch best = null;
        double least = Double.POSITIVE_INFINITY;
        for (int from = 2; from <= last; from++) {
            for (int k = 0; k < STARTS; k++) {
                double start = x[from] - (x[from] - x[from - 1]) * k / STARTS;
                double length = x[last] - start;
                if (length >= shortest(kind) && length <= longest(kind)) {
                    double own = butt(kind, from, start, length) + parameter;
                    if (before[from] + own < least) {
                        least = before[from] + own;
                        best = new Stretch(from, last, kind, 0, start, own);
                    }
                }
            }
        }
        return best;
    }

    private static double shortest(Stretch.Kind kind) {
        return kind == Stretch.Kind.DOMED ? 0.5 : 0.1;
    }

    private static double longest(Stretch.Kind kind) {
        return kind == Stretch.Kind.DOMED
                ? LONGEST_DOME_MM
                : kind == Stretch.Kind.ROUNDED ? LONGEST_ROUND_MM : LONGEST_CHAMFER_MM;
    }

    /** Squares over the variance with the seat's diameter, the one free figure, at its best. */
    private double butt(Stretch.Kind kind, int from, double start, double length) {
        int last = x.length - 1;
        if (kind == Stretch.Kind.DOMED && d[last] > DOME_END * d[from]) {
            return Double.POSITIVE_INFINITY;
        }
        double up = 0;
        double down = 0;
        for (int pass = 0; ; pass++) {
            double sum = 0;
            double seat = down > 0 ? up / down : 0;
            up = 0;
            down = 0;
            for (int j = from; j <= last; j++) {
                double t = (x[j] - start) / length;
                double shape = Math.sqrt(Math.max(0, 1 - t * t));
                // The diameter is seat * unit + fixed.
                double unit = kind == Stretch.Kind.DOMED ? shape : 1;
                double fixed =
                        kind == Stretch.Kind.DOMED
                                ? 0
                                : kind == Stretch.Kind.ROUNDED
                                        ? 2 * length * (shape - 1)
                                        : -2 * length * t;
                double slope =
                        kind == Stretch.Kind.CHAMFERED
                                ? -2
                                : -(kind == Stretch.Kind.DOMED ? d[from] / length : 2)
                                        * t
                                        / Math.max(shape, 1e-3);
                // The last reading says where the wood ends, so its place is in no doubt.
                double shift = j == last ? 0 : slope * placeDeviation;
                double weight = 1 / (deviation * deviation + shift * shift);
                up += weight * unit * (d[j] - fixed);
                down += weight * unit * unit;
                double off = d[j] - fixed - seat * unit;
                sum += off * off * weight;
            }
            if (pass == 1) {
                return sum;
            }
        }
    }
}
