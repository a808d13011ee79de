package haftline.adjust.takeoff;

import haftline.curve.CircularArc;
import java.util.ArrayList;
import java.util.List;

/**
 * Tells which runs between crisp places are the body and which are details laid over it, by the
 * cheapest way through them: squares over the variance, and the logarithm of the number of readings
 * for every figure that is needed to say it.
 */
final class DetailSearch {
    /** Widest detail that is looked for, as a share of the wood, and mm. */
    private static final double WIDEST_SHARE = 0.35;

    private static final double WIDEST_MM = 40;

    /** Widest detail at an end, where no body on the far side bears it out, mm. */
    private static final double WIDEST_AT_END_MM = 12;

    /** Most runs in one detail: a vee has two sides and perhaps a reading at its bottom. */
    private static final int MOST_RUNS = 3;

    /** Readings and mm on either side of a detail over which the body must go on. */
    private static final int SIDE = 10;

    private static final double SIDE_MM = 8;

    /** Squares that chance adds where a body goes on under a detail. */
    private static final double CHANCE = 10;

    /** A round or a groove flatter than this is none, mm. */
    static final double LEAST_MM = 0.08;

    private static final int FIGURES = 3;
    private static final int ROUNDS = 20;

    private final List<Run> runs;
    private final double[] x;
    private final double[] d;
    private final double deviation;
    private final double parameter;
    private final double widest;

    private Way[][][] ways;

    DetailSearch(List<Run> runs, double[] x, double[] d, double deviation) {
        this.runs = runs;
        this.x = x;
        this.d = d;
        this.deviation = deviation;
        this.parameter = Math.log(x.length);
        this.widest = Math.min(WIDEST_MM, WIDEST_SHARE * (x[x.length - 1] - x[0]));
    }

    /** A detail in the readings, with the level of a fillet in place of its height. */
    record Seen(LaidDetail detail, double level, double cost) {
        boolean isOnChord() {
            return detail.isOnChord();
        }
    }

    /**
     * What the runs are.
     *
     * @param body runs of the body
     * @param details over it
     */
    record Reading(List<Run> body, List<Seen> details) {}

    /** The cheapest way from a run to the end. */
    private record Way(double cost, Seen detail, int next) {}

    Reading cheapest() {
        ways = new Way[runs.size() + 1][runs.size() + 1][2];
        List<Run> body = new ArrayList<>();
        List<Seen> details = new ArrayList<>();
        int lastBody = -1;
        boolean onChord = false;
        for (int k = 0; k < runs.size(); ) {
            Way way = way(k, lastBody, onChord);
            if (way.detail() == null) {
                body.add(runs.get(k));
                lastBody = k;
                onChord = false;
            } else {
                details.add(way.detail());
                onChord = way.detail().isOnChord();
            }
            k = way.next();
        }
        return new Reading(body, details);
    }

    /**
     * The cheapest way on.
     *
     * @param k the run that comes next
     * @param lastBody the last run of the body before it, -1 for none
     * @param onChord whether the run before it is a detail whose edges lie on the body
     */
    private Way way(int k, int lastBody, boolean onChord) {
        if (k == runs.size()) {
            double cost = lastBody < 0 ? Double.POSITIVE_INFINITY : 0;
            return new Way(cost, null, k);
        }
        Way known = ways[k][lastBody + 1][onChord ? 1 : 0];
        if (known != null) {
            return known;
        }
        // A step between the body and a detail that begins on the body is none of either.
        boolean step = runs.get(k).left().kind() == Cut.Kind.STEP;
        double own =
                step && onChord
                        ? Double.POSITIVE_INFINITY
                        : body(runs.get(k)) + joining(k, lastBody);
        Way best = new Way(own + way(k + 1, k, false).cost(), null, k + 1);
        for (int end = k; end < Math.min(runs.size(), k + MOST_RUNS); end++) {
            for (Seen seen : details(k, end)) {
                if (step && seen.isOnChord() && lastBody == k - 1) {
                    continue;
                }
                double cost = seen.cost() + way(end + 1, lastBody, seen.isOnChord()).cost();
                if (cost < best.cost()) {
                    best = new Way(cost, seen, end + 1);
                }
            }
        }
        ways[k][lastBody + 1][onChord ? 1 : 0] = best;
        return best;
    }

    /** A run of the body costs its curves, and a node for each turn inside it. */
    private double body(Run run) {
        double cost = 0;
        for (Stretch stretch : run.stretches()) {
            cost += stretch.cost();
        }
        int inner = Turns.of(run, x, d, 2 * deviation).size();
        return cost + 2 * parameter * Math.max(inner, run.stretches().size() - 1);
    }

    /** What it costs that a run of the body follows another. */
    private double joining(int k, int lastBody) {
        if (lastBody < 0) {
            return 0;
        }
        if (lastBody == k - 1) {
            return (runs.get(k).left().kind() == Cut.Kind.STEP ? 5 : 2) * parameter;
        }
        Run before = runs.get(lastBody);
        Run after = runs.get(k);
        int from = before.to();
        while (from > before.from()
                && before.to() - from < SIDE - 1
                && x[before.to()] - x[from - 1] < SIDE_MM) {
            from--;
        }
        int to = after.from();
        while (to < after.to()
                && to - after.from() < SIDE - 1
                && x[to + 1] - x[after.from()] < SIDE_MM) {
            to++;
        }
        int left = before.to() - from + 1;
        int right = to - after.from() + 1;
        double[] places = new double[left + right];
        double[] sizes = new double[places.length];
        System.arraycopy(x, from, places, 0, left);
        System.arraycopy(d, from, sizes, 0, left);
        System.arraycopy(x, after.from(), places, left, right);
        System.arraycopy(d, after.from(), sizes, left, right);
        Polynomial joint = new Polynomial(places, sizes, 0, places.length - 1);
        double over = joint.sum(joint.orders()) / (deviation * deviation) - places.length;
        return over < CHANCE ? 0 : Math.min(over, 6 * parameter);
    }

    private List<Seen> details(int first, int last) {
        Run left = runs.get(first);
        Run right = runs.get(last);
        Cut from = left.left();
        Cut to = right.right();
        double width = to.x() - from.x();
        if (width > widest || width < 0.2 || first == 0 && last == runs.size() - 1) {
            return List.of();
        }
        List<Seen> seen = new ArrayList<>();
        boolean onBody = from.kind() != Cut.Kind.STEP && to.kind() != Cut.Kind.STEP;
        boolean between = first > 0 && last < runs.size() - 1;
        if (!between && width > WIDEST_AT_END_MM) {
            return List.of();
        }
        if (first == last
                && between
                && from.kind() == Cut.Kind.STEP
                && to.kind() == Cut.Kind.STEP) {
            fillet(left, seen);
        }
        if (first == last && between && onBody) {
            flat(left, seen);
        }
        if (last - first < 2) {
            round(left, right, seen);
        }
        if (last > first) {
            vee(left, right, seen);
        }
        return seen;
    }

    private void fillet(Run run, List<Seen> seen) {
        Polynomial fit = new Polynomial(x, d, run.from(), run.to());
        double level = fit.at(0, 0);
        add(seen, LaidDetail.Kind.FILLET, run, run, 1, level, fit.sum(0) / (deviation * deviation));
    }

    private void flat(Run run, List<Seen> seen) {
        Polynomial fit = new Polynomial(x, d, run.from(), run.to());
        if (fit.orders() > 0) {
            add(seen, LaidDetail.Kind.FLAT, run, run, 0, 0, fit.sum(1) / (deviation * deviation));
        }
    }

    private void round(Run left, Run right, List<Seen> seen) {
        double from = left.left().x();
        double to = right.right().x();
        int count = right.to() - left.from() + 1;
        if (count < FIGURES) {
            return;
        }
        double a = d[left.from()] / 2;
        double b = d[right.to()] / 2;
        double middle = d[(left.from() + right.to()) / 2] / 2 - (a + b) / 2;
        double most = (to - from) / 2;
        LeastSquares.Fit fit =
                new LeastSquares(
                                p -> arc(left.from(), right.to(), from, to, p),
                                new double[] {0.5, 0.5, -most},
                                new double[] {100, 100, most},
                                new double[] {1, 1, 1})
                        .from(new double[] {a, b, middle}, ROUNDS, 1e-4);
        double height = fit.parameters()[2];
        if (Math.abs(height) > LEAST_MM) {
            add(
                    seen,
                    height > 0 ? LaidDetail.Kind.BEAD : LaidDetail.Kind.COVE,
                    left,
                    right,
                    Math.abs(height),
                    0,
                    fit.sum());
        }
    }

    /** Residuals about an arc over a chord, as a shape lays it. */
    private double[] arc(int first, int last, double from, double to, double[] p) {
        double chord = Math.hypot(to - from, p[1] - p[0]);
        double bulge = -2 * p[2] / chord;
        if (bulge == 0 || Math.abs(bulge) > 1) {
            return null;
        }
        double[] residuals = new double[last - first + 1];
        try {
            CircularArc arc = new CircularArc(from, p[0], to, p[1], bulge);
            for (int j = first; j <= last; j++) {
                double at = Math.max(from, Math.min(to, x[j]));
                double slope = 2 * arc.slope(at);
                double weight =
                        1 / Math.hypot(deviation, Math.min(1e3, Math.abs(slope)) * deviation);
                residuals[j - first] = (d[j] - 2 * arc.r(at)) * weight;
            }
        } catch (IllegalArgumentException leansBack) {
            return null;
        }
        return residuals;
    }

    private void vee(Run left, Run right, List<Seen> seen) {
        double from = left.left().x();
        double to = right.right().x();
        int first = left.from();
        int last = right.to();
        if (last - first + 1 < FIGURES) {
            return;
        }
        double centre = (from + to) / 2;
        double half = (to - from) / 2;
        double bottom = d[first];
        for (int j = first; j <= last; j++) {
            bottom = Math.min(bottom, d[j]);
        }
        LeastSquares.Fit fit =
                new LeastSquares(
                                p -> {
                                    double[] residuals = new double[last - first + 1];
                                    for (int j = first; j <= last; j++) {
                                        double t =
                                                Math.max(-1, Math.min(1, (x[j] - centre) / half));
                                        double deep = (p[0] + p[1]) / 2 - p[2];
                                        double edge = t < 0 ? p[0] : p[1];
                                        double fitted = deep + (edge - deep) * Math.abs(t);
                                        residuals[j - first] = (d[j] - 2 * fitted) / deviation;
                                    }
                                    return residuals;
                                },
                                new double[] {0.5, 0.5, 0},
                                new double[] {100, 100, 2 * (to - from)},
                                new double[] {1, 1, 1})
                        .from(
                                new double[] {d[first] / 2, d[last] / 2, (d[first] - bottom) / 2},
                                ROUNDS,
                                1e-4);
        if (fit.parameters()[2] > LEAST_MM) {
            add(seen, LaidDetail.Kind.VEE, left, right, fit.parameters()[2], 0, fit.sum());
        }
    }

    private void add(
            List<Seen> seen,
            LaidDetail.Kind kind,
            Run left,
            Run right,
            double height,
            double level,
            double squares) {
        LaidDetail detail =
                new LaidDetail(
                        kind,
                        left.left().x(),
                        right.right().x(),
                        height,
                        left.left(),
                        right.right());
        seen.add(new Seen(detail, level, squares + (FIGURES + 2) * parameter));
    }
}
