package haftline.curve;

import java.util.Arrays;

/**
 * Lets the turning nodes of a batten (its swells and waists) slide along x to where the outline
 * shows no flat spot, or the least one.
 *
 * <p>A turning node is level, so the curvature there may jump. The nodes slide within their ranges
 * until the sum of the squares of the jumps is least: a Gauss-Newton method with Levenberg's
 * damping (Nocedal and Wright, Numerical Optimization, 2nd ed., chapter 10), projected on the
 * ranges. The stretches between level nodes bend independently, so a jump depends on three turning
 * nodes only.
 */
public final class BattenSlide {
    /** Steps are found again until none is longer than this, mm: a ten-thousandth of a micron. */
    private static final double SETTLED_MM = 1e-7;

    /** A jump this small, 1/mm, is none: a radius of curvature of a thousand kilometres. */
    private static final double NO_JUMP = 1e-12;

    /** Share of a stretch by which a node is nudged to see how the jumps follow. */
    private static final double NUDGE = 1e-6;

    private static final double FIRST_DAMPING = 1e-6;
    private static final double DAMPING_STEP = 8;
    private static final double GREATEST_DAMPING = 1e9;
    private static final int MOST_ROUNDS = 60;

    private final double[] x;
    private final double[] r;
    private final EndSlope first;
    private final EndSlope last;

    /** Nodes whose slope is level whatever their place: the stretches' ends, list ends included. */
    private final int[] cuts;

    /** Which of the cuts are turning nodes. */
    private final boolean[] turning;

    private final double[] low;
    private final double[] high;

    /** Curvature at the start and the end of each stretch. */
    private final double[] starts;

    private final double[] ends;

    private BattenSlide(
            double[] x,
            double[] r,
            double[] slideBelow,
            double[] slideAbove,
            EndSlope first,
            EndSlope last,
            double minimumGapMm) {
        this.x = x.clone();
        this.r = r;
        this.first = first;
        this.last = last;
        int n = x.length;
        int[] found = new int[n];
        boolean[] turns = new boolean[n];
        int count = 0;
        for (int i = 0; i < n; i++) {
            boolean end = i == 0 || i == n - 1;
            double product = end ? 1 : Math.signum(r[i] - r[i - 1]) * Math.signum(r[i + 1] - r[i]);
            if (end || product <= 0) {
                turns[count] = product < 0;
                found[count++] = i;
            }
        }
        cuts = Arrays.copyOf(found, count);
        turning = turns;
        low = new double[count];
        high = new double[count];
        starts = new double[count - 1];
        ends = new double[count - 1];
        ranges(slideBelow, slideAbove, minimumGapMm);
    }

    /** Ranges that keep the order: two that overlap share the room between their nodes evenly. */
    private void ranges(double[] slideBelow, double[] slideAbove, double gap) {
        double[] from = x.clone();
        double[] to = x.clone();
        for (int c = 0; c < cuts.length; c++) {
            if (turning[c]) {
                Checks.notNegative("slideBelow", slideBelow[cuts[c]]);
                Checks.notNegative("slideAbove", slideAbove[cuts[c]]);
                from[cuts[c]] -= slideBelow[cuts[c]];
                to[cuts[c]] += slideAbove[cuts[c]];
            }
        }
        for (int i = 1; i < x.length; i++) {
            if (to[i - 1] + gap <= from[i]) {
                continue;
            }
            boolean beforePinned = to[i - 1] == x[i - 1];
            boolean thisPinned = from[i] == x[i];
            double least = beforePinned ? x[i - 1] + gap : 0.5 * (x[i - 1] + x[i] + gap);
            double greatest = thisPinned ? x[i] - gap : 0.5 * (x[i - 1] + x[i] - gap);
            from[i] = Math.min(x[i], Math.max(from[i], least));
            to[i - 1] = Math.max(x[i - 1], Math.min(to[i - 1], greatest));
        }
        for (int c = 0; c < cuts.length; c++) {
            low[c] = from[cuts[c]];
            high[c] = to[cuts[c]];
        }
    }

    /**
     * Slides the turning nodes.
     *
     * @param x places, mm, rising, at least two
     * @param r radii, mm
     * @param slideBelow how far each node may slide towards the ferrule, mm, 0 or more; only
     *     turning nodes move, 0 pins one
     * @param slideAbove how far towards the butt, mm
     * @param first what is asked of the slope at the first node
     * @param last what is asked of the slope at the last node
     * @param minimumGapMm least distance between neighbours that sliding may leave, mm
     * @return the batten through the settled nodes; its {@link BattenSpline#curvatureJump} tells
     *     the jumps left
     * @throws SlopeOutsideRangeException where a given end slope would break the shape
     */
    public static BattenSpline settle(
            double[] x,
            double[] r,
            double[] slideBelow,
            double[] slideAbove,
            EndSlope first,
            EndSlope last,
            double minimumGapMm) {
        Checks.positive("minimumGapMm", minimumGapMm);
        if (slideBelow.length != x.length || slideAbove.length != x.length) {
            throw new IllegalArgumentException(
                    "slideBelow and slideAbove must hold one figure a node, "
                            + x.length
                            + "; got "
                            + slideBelow.length
                            + " and "
                            + slideAbove.length);
        }
        BattenSpline asGiven = BattenSpline.through(x, r, first, last);
        BattenSlide slide =
                new BattenSlide(x, r, slideBelow, slideAbove, first, last, minimumGapMm);
        return slide.descend() ? BattenSpline.through(slide.x, r, first, last) : asGiven;
    }

    private boolean movable(int cut) {
        return high[cut] > low[cut];
    }

    /** True where anything moved. */
    private boolean descend() {
        int n = cuts.length;
        double[] slopes = new double[n * n];
        double[] step = new double[n];
        double[] before = new double[n];
        if (!bend(0, n - 1)) {
            return false;
        }
        double cost = cost();
        double damping = FIRST_DAMPING;
        boolean moved = false;
        for (int round = 0; round < MOST_ROUNDS && cost > NO_JUMP * NO_JUMP; round++) {
            slopes(slopes);
            double longest = 0;
            boolean better = false;
            while (!better && damping < GREATEST_DAMPING) {
                solve(slopes, damping, step);
                longest = 0;
                for (int c = 0; c < n; c++) {
                    before[c] = x[cuts[c]];
                    double wish = Math.max(low[c], Math.min(high[c], before[c] + step[c]));
                    x[cuts[c]] = wish;
                    longest = Math.max(longest, Math.abs(wish - before[c]));
                }
                double now = bend(0, n - 1) ? cost() : Double.POSITIVE_INFINITY;
                better = now < cost;
                if (better) {
                    cost = now;
                    damping = Math.max(damping / DAMPING_STEP, FIRST_DAMPING);
                } else {
                    for (int c = 0; c < n; c++) {
                        x[cuts[c]] = before[c];
                    }
                    if (longest < SETTLED_MM) {
                        return moved;
                    }
                    damping *= DAMPING_STEP;
                }
            }
            if (!better) {
                return moved;
            }
            moved = true;
            if (longest < SETTLED_MM) {
                return true;
            }
        }
        return moved;
    }

    private double jump(int cut) {
        return turning[cut] ? starts[cut] - ends[cut - 1] : 0;
    }

    private double cost() {
        double sum = 0;
        for (int c = 1; c + 1 < cuts.length; c++) {
            sum += jump(c) * jump(c);
        }
        return sum;
    }

    /**
     * How each jump follows each place, in row jump and column place, by a nudge of each movable
     * node. The stretches are bent as the nodes lie.
     */
    private void slopes(double[] slopes) {
        int n = cuts.length;
        for (int c = 1; c + 1 < n; c++) {
            for (int j = Math.max(1, c - 1); j <= Math.min(n - 2, c + 1); j++) {
                slopes[j * n + c] = 0;
            }
            if (!movable(c)) {
                continue;
            }
            double place = x[cuts[c]];
            double nudge = NUDGE * (x[cuts[c + 1]] - x[cuts[c - 1]]);
            double was0 = starts[c - 1];
            double was1 = ends[c - 1];
            double was2 = starts[c];
            double was3 = ends[c];
            x[cuts[c]] = place + nudge;
            if (bend(c - 1, c + 1)) {
                slopes[(c - 1) * n + c] = turning[c - 1] ? (starts[c - 1] - was0) / nudge : 0;
                slopes[c * n + c] =
                        turning[c] ? (starts[c] - was2 - ends[c - 1] + was1) / nudge : 0;
                slopes[(c + 1) * n + c] = turning[c + 1] ? (was3 - ends[c]) / nudge : 0;
            }
            x[cuts[c]] = place;
            starts[c - 1] = was0;
            ends[c - 1] = was1;
            starts[c] = was2;
            ends[c] = was3;
        }
    }

    /**
     * Solves the damped normal equations for the nodes that are not pressed against the end of
     * their range, by Gauss elimination; the matrix is positive definite.
     */
    private void solve(double[] slopes, double damping, double[] step) {
        int n = cuts.length;
        int[] free = new int[n];
        int count = 0;
        double[] pull = new double[n];
        for (int c = 1; c + 1 < n; c++) {
            for (int j = Math.max(1, c - 1); j <= Math.min(n - 2, c + 1); j++) {
                pull[c] -= slopes[j * n + c] * jump(j);
            }
            step[c] = 0;
            double place = x[cuts[c]];
            boolean pressed = pull[c] > 0 ? place >= high[c] : place <= low[c];
            if (movable(c) && pull[c] != 0 && !pressed) {
                free[count++] = c;
            }
        }
        int wide = count + 1;
        double[] a = new double[count * wide];
        for (int i = 0; i < count; i++) {
            for (int k = 0; k < count; k++) {
                for (int j = 1; j + 1 < n; j++) {
                    a[i * wide + k] += slopes[j * n + free[i]] * slopes[j * n + free[k]];
                }
            }
            a[i * wide + i] *= 1 + damping;
            a[i * wide + count] = pull[free[i]];
        }
        for (int i = 0; i < count; i++) {
            for (int k = i + 1; k < count; k++) {
                double f = a[k * wide + i] / a[i * wide + i];
                for (int j = i; j <= count; j++) {
                    a[k * wide + j] -= f * a[i * wide + j];
                }
            }
        }
        for (int i = count - 1; i >= 0; i--) {
            double sum = a[i * wide + count];
            for (int k = i + 1; k < count; k++) {
                sum -= a[i * wide + k] * step[free[k]];
            }
            step[free[i]] = sum / a[i * wide + i];
        }
    }

    /** Bends the stretches between two cuts; false where a given end slope would not be allowed. */
    private boolean bend(int fromCut, int toCut) {
        for (int c = fromCut; c < toCut; c++) {
            int from = cuts[c];
            int to = cuts[c + 1];
            EndSlope left = c == 0 ? first : EndSlope.LEVEL;
            EndSlope right = c + 2 == cuts.length ? last : EndSlope.LEVEL;
            double chordLeft = (r[from + 1] - r[from]) / (x[from + 1] - x[from]);
            double chordRight = (r[to] - r[to - 1]) / (x[to] - x[to - 1]);
            // Level is allowed everywhere, so only the run's own ends can be refused.
            if (c == 0 && !holds(left, chordLeft)
                    || c + 2 == cuts.length && !holds(right, chordRight)) {
                return false;
            }
            int n = to - from + 1;
            double[] d = new double[n];
            boolean bothLevel = c > 0 && c + 2 < cuts.length;
            if (n > 2 || !bothLevel) {
                double[] xs = Arrays.copyOfRange(x, from, to + 1);
                double[] rs = Arrays.copyOfRange(r, from, to + 1);
                BattenSpline.slopes(xs, rs, left, right, d, new byte[n]);
            }
            starts[c] = 2 * (3 * chordLeft - 2 * d[0] - d[1]) / (x[from + 1] - x[from]);
            ends[c] = 2 * (2 * d[n - 1] + d[n - 2] - 3 * chordRight) / (x[to] - x[to - 1]);
        }
        return true;
    }

    private static boolean holds(EndSlope end, double chord) {
        return end.free() || SlopeRange.beside(chord).holds(end.slope());
    }
}
