package haftline.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Finds the chain of tangent arcs with the fewest arcs over one smooth stretch.
 *
 * <p>Joints lie on the curve; the tangent there is free to lean a little off the curve's, which
 * lets a chain reach about 1.7 times as far with each arc as one that keeps the curve's tangents.
 * Two joints and the lean at the first fix the arc and the lean at the second: lean' = c - lean.
 * The arcs through two places that stay within the tolerance are those with a lean from one
 * interval. So the shortest path over the states (place, lean) is the best chain on the grid.
 */
final class ArcChain {
    /** Leans kept at a place, in steps of half the tolerance over the best arc's length. */
    private static final int LEANS = 129;

    private static final double LEAN_STEP = 0.5;

    /** Places without a feasible arc after which a longer one is not looked for. */
    private static final int PATIENCE = 6;

    /** What one arc costs against the unevenness of the arcs' lengths. */
    private static final double COST_OF_ARC = 1000;

    /** Leans at a fixed end, in steps, that a small shift of the joints can still take out. */
    private static final double NEAR_STEPS = 2;

    /** Tangents this close, rad, meet: a tenth of what a cutter's software is promised. */
    private static final double TANGENTS_MEET = 1e-10;

    /** Rounds in which the joints settle, or do not. */
    private static final int MOST_ROUNDS = 25;

    /** Share of a cell by which a joint is nudged to see how the last tangent follows. */
    private static final double NUDGE = 1e-3;

    /** Longest way that a joint may slide off its grid place to meet the last tangent, in cells. */
    private static final double LONGEST_SLIDE = 2;

    private final FitStretch grid;
    private final double tolerance;

    private final Ends ends;

    /** Whether the search runs from the end to the start: from the fixed end if only one is. */
    private final boolean backward;

    /** The curve's normals, as long as the tolerance at the grid. */
    private final double[] normalX;

    private final double[] normalR;
    private final double[] cost;
    private final double[] lean;
    private final int[] from;
    private final List<List<Segment>> chains = new ArrayList<>();
    private int fewest = Integer.MAX_VALUE;

    /**
     * What is asked at the two ends.
     *
     * @param startFixed whether the tangent at the start is given
     * @param startLean what the given tangent leans off the curve's, rad
     * @param endFixed whether the tangent at the end must be the curve's
     */
    record Ends(boolean startFixed, double startLean, boolean endFixed) {}

    private ArcChain(FitStretch grid, double tolerance, double gridShare, Ends ends) {
        this.grid = grid;
        this.tolerance = tolerance;
        normalX = new double[grid.x.length];
        normalR = new double[grid.x.length];
        for (int i = 0; i < normalX.length; i++) {
            normalX[i] = -gridShare * tolerance * Math.sin(grid.angle[i]);
            normalR[i] = gridShare * tolerance * Math.cos(grid.angle[i]);
        }
        this.ends = ends;
        backward = ends.endFixed && !ends.startFixed;
        int states = grid.x.length * LEANS;
        cost = new double[states];
        lean = new double[states];
        from = new int[states];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
    }

    /**
     * Looks for the chain.
     *
     * @param grid the stretch
     * @param toleranceMm greatest departure, mm
     * @param gridShare share of the tolerance allowed at the grid's places: between them an arc
     *     departs by a little more
     * @param ends what is asked at the two ends
     * @return what was found
     */
    static ArcChain over(FitStretch grid, double toleranceMm, double gridShare, Ends ends) {
        ArcChain chain = new ArcChain(grid, toleranceMm, gridShare, ends);
        chain.search();
        chain.choose();
        return chain;
    }

    /**
     * Chains of arcs and lines, all with the same number, the evenest first; none where the grid is
     * too coarse.
     */
    List<List<Segment>> chains() {
        return chains;
    }

    /** The least number of arcs that looked possible before the ends were made exact. */
    int fewest() {
        return fewest;
    }

    private void search() {
        int last = grid.last();
        int origin = backward ? last : 0;
        if (ends.startFixed || ends.endFixed) {
            put(origin, backward ? 0 : ends.startLean, 0, -1);
        } else {
            for (int bin = 0; bin < LEANS; bin++) {
                put(origin, (bin - LEANS / 2) * leanStep(origin), 0, -1);
            }
        }
        double[] interval = new double[2];
        int way = backward ? -1 : 1;
        for (int i = origin; i >= 0 && i <= last; i += way) {
            if (isDead(i)) {
                continue;
            }
            int missed = 0;
            for (int j = i + way; j >= 0 && j <= last && missed < PATIENCE; j += way) {
                int low = Math.min(i, j);
                int high = Math.max(i, j);
                missed = leans(low, high, interval) ? 0 : missed + 1;
                if (missed == 0) {
                    double chord =
                            Math.atan2(grid.r[high] - grid.r[low], grid.x[high] - grid.x[low]);
                    double least = chord + interval[0] - grid.angle[low];
                    double most = chord + interval[1] - grid.angle[low];
                    double sum = 2 * chord - grid.angle[i] - grid.angle[j];
                    // An arc's leans at its two ends add up to a constant.
                    reach(i, j, backward ? sum - most : least, backward ? sum - least : most, sum);
                }
            }
        }
    }

    private double leanStep(int place) {
        return LEAN_STEP * tolerance / grid.best[place];
    }

    private boolean isDead(int place) {
        for (int bin = 0; bin < LEANS; bin++) {
            if (cost[place * LEANS + bin] < Double.POSITIVE_INFINITY) {
                return false;
            }
        }
        return true;
    }

    /** Extends every state of place i by the arc to place j. */
    private void reach(int i, int j, double low, double high, double sum) {
        double length = Math.abs(grid.share[j] - grid.share[i]);
        double arc = COST_OF_ARC + 1 / length;
        for (int s = i * LEANS; s < (i + 1) * LEANS; s++) {
            if (!(lean[s] >= low && lean[s] <= high) || cost[s] == Double.POSITIVE_INFINITY) {
                continue;
            }
            put(j, sum - lean[s], cost[s] + arc, s);
        }
    }

    /** Keeps a state unless a cheaper one leans alike, or the tangent would lean back. */
    private void put(int place, double newLean, double newCost, int source) {
        int bin = (int) Math.round(newLean / leanStep(place)) + LEANS / 2;
        boolean back = Math.abs(grid.angle[place] + newLean) > Math.PI / 2;
        if (bin < 0 || bin >= LEANS || back) {
            return;
        }
        int s = place * LEANS + bin;
        if (newCost < cost[s]) {
            cost[s] = newCost;
            lean[s] = newLean;
            from[s] = source;
        }
    }

    /**
     * The angles between chord and start tangent for which the arc from i to j stays within the
     * tolerance at every place between. By the angle in the arc's segment, an arc through a point
     * at (u, v) off the chord's middle leaves it at tan = 2 a v / (a^2 - u^2 - v^2), a half the
     * chord.
     */
    private boolean leans(int i, int j, double[] interval) {
        double dx = grid.x[j] - grid.x[i];
        double dr = grid.r[j] - grid.r[i];
        double chord = Math.sqrt(dx * dx + dr * dr);
        double cos = dx / chord;
        double sin = dr / chord;
        double a = 0.5 * chord;
        double midX = grid.x[i] + 0.5 * dx;
        double midR = grid.r[i] + 0.5 * dr;
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (int k = i + 1; k < j; k++) {
            double u = cos * (grid.x[k] - midX) + sin * (grid.r[k] - midR);
            double v = cos * (grid.r[k] - midR) - sin * (grid.x[k] - midX);
            // Along the curve's normal, whose slant against the chord the shift takes in.
            double shiftU = cos * normalX[k] + sin * normalR[k];
            double shiftV = cos * normalR[k] - sin * normalX[k];
            double over = tangent(a, u + shiftU, v + shiftV);
            double under = tangent(a, u - shiftU, v - shiftV);
            high = over < high ? over : high;
            low = under > low ? under : low;
            if (!(low <= high)) {
                return false;
            }
        }
        interval[0] = Math.atan(low);
        interval[1] = Math.atan(high);
        return true;
    }

    /** Tangent of the arc's angle with its chord; infinite where any arc will do. */
    private static double tangent(double a, double u, double v) {
        double rest = a * a - u * u - v * v;
        return rest > 0 ? 2 * a * v / rest : Math.copySign(Double.POSITIVE_INFINITY, v);
    }

    /** Takes the cheapest end states whose chains can be made exact and hold the tolerance. */
    private void choose() {
        int last = backward ? 0 : grid.last();
        int end = last * LEANS;
        boolean bothFixed = ends.startFixed && ends.endFixed;
        double step = leanStep(last);
        List<Integer> states = new ArrayList<>();
        double[] price = new double[LEANS];
        for (int s = end; s < end + LEANS; s++) {
            if (cost[s] < Double.POSITIVE_INFINITY) {
                states.add(s);
                double off = bothFixed ? Math.abs(lean[s]) / step : 0;
                price[s - end] = cost[s] + off;
                if (off <= NEAR_STEPS) {
                    fewest = Math.min(fewest, (int) (cost[s] / COST_OF_ARC));
                }
            }
        }
        states.sort((p, q) -> Double.compare(price[p - end], price[q - end]));
        for (int s : states) {
            int count = (int) (cost[s] / COST_OF_ARC);
            if (!chains.isEmpty() && count > chains.get(0).size()) {
                return;
            }
            List<Segment> found = trace(s);
            if (found != null) {
                chains.add(found);
            }
        }
    }

    private List<Segment> trace(int end) {
        int count = 0;
        for (int s = end; from[s] >= 0; s = from[s]) {
            count++;
        }
        double[] places = new double[count + 1];
        int s = end;
        for (int k = count; k >= 0; k--) {
            places[backward ? count - k : k] = s / LEANS;
            if (k > 0) {
                s = from[s];
            }
        }
        double start = grid.angle[0] + lean[backward ? end : s];
        boolean bothFixed = ends.startFixed && ends.endFixed;
        return bothFixed && !slide(places, start) ? null : arcs(places, start);
    }

    /** Slides the inner joints along the curve, the least way, until the last tangent is met. */
    private boolean slide(double[] places, double start) {
        double[] origin = places.clone();
        double[] slope = new double[places.length];
        double left = leftOver(places, start);
        double before = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            // Newton's last steps only stir the rounding: it stops where they no longer gain.
            if (left == 0 || Math.abs(left) <= TANGENTS_MEET && Math.abs(left) > before / 2) {
                return true;
            }
            before = Math.abs(left);
            double sum = 0;
            double sign = places.length % 2 == 0 ? -2 : 2;
            for (int k = 1; k + 1 < places.length; k++) {
                double above = places[k] + NUDGE;
                double below = places[k] - NUDGE;
                double chordBefore =
                        grid.chordAngle(places[k - 1], above)
                                - grid.chordAngle(places[k - 1], below);
                double chordAfter =
                        grid.chordAngle(above, places[k + 1])
                                - grid.chordAngle(below, places[k + 1]);
                // The tangents alternate about the chords, so the chords count with turning signs.
                slope[k] = sign * (chordAfter - chordBefore) / (2 * NUDGE);
                sum += slope[k] * slope[k];
                sign = -sign;
            }
            for (int k = 1; k + 1 < places.length; k++) {
                places[k] -= left * slope[k] / sum;
                if (!(Math.abs(places[k] - origin[k]) <= LONGEST_SLIDE)) {
                    return false;
                }
            }
            left = leftOver(places, start);
        }
        return Math.abs(left) <= TANGENTS_MEET;
    }

    /** What the last tangent misses the curve's by. */
    private double leftOver(double[] places, double start) {
        double tangent = start;
        for (int k = 1; k < places.length; k++) {
            tangent = 2 * grid.chordAngle(places[k - 1], places[k]) - tangent;
        }
        return tangent - grid.angle[grid.last()];
    }

    /** The arcs, or null where one leaves the tolerance or leans back over itself. */
    private List<Segment> arcs(double[] places, double start) {
        List<Segment> chain = new ArrayList<>(places.length - 1);
        double tangent = start;
        for (int k = 1; k < places.length; k++) {
            Segment arc = grid.arc(places[k - 1], places[k], tangent);
            if (arc == null || grid.departure(arc) > tolerance) {
                return null;
            }
            chain.add(arc);
            tangent = 2 * grid.chordAngle(places[k - 1], places[k]) - tangent;
        }
        return chain;
    }
}
