package haftline.set.cutting;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;

/**
 * Branch and bound over how many sticks of each kind are begun, where there are several kinds: the
 * cost follows from those counts alone, and the linear program of a box of counts bounds it. The
 * cheapest box is opened first; where its program begins whole counts, a plan of just those sticks
 * is looked for, and the first that is found costs the least.
 */
final class StickCounts {
    /** Boxes that are opened before the search over patterns has its turn. */
    private static final int MOST_BOXES = 400;

    /** What is whole but for the simplex's rounding is whole. */
    private static final double WHOLE = 1e-5;

    private final Case problem;
    private final int trialWork;
    private List<Laid> best;
    private long bestCost;

    /** Counts from low to high, each within; no plan of the box costs less than the bound. */
    private record Box(int[] low, int[] high, long bound, double[] counts) {}

    StickCounts(Case problem, List<Laid> best, int trialWork) {
        this.problem = problem;
        this.best = best;
        this.trialWork = trialWork;
        bestCost = LeastCost.cost(problem, best);
    }

    /** The best plan that is known. */
    List<Laid> best() {
        return best;
    }

    /** A bound on the cost of any plan; the best plan's cost where that is proven. */
    long search() {
        PriorityQueue<Box> open = new PriorityQueue<>(Comparator.comparingLong(Box::bound));
        Optional<Box> all = box(new int[problem.sticks], problem.stickCount.clone());
        if (all.isEmpty()) {
            return 0;
        }
        open.add(all.get());
        for (int opened = 0; opened < MOST_BOXES; opened++) {
            if (open.isEmpty() || open.peek().bound() >= bestCost) {
                return bestCost;
            }
            Box box = open.poll();
            int split = fraction(box);
            if (split < 0 && !isSettled(box)) {
                return box.bound();
            }
            if (bestCost <= box.bound()) {
                return bestCost;
            }
            for (Optional<Box> part : split < 0 ? around(box) : halves(box, split)) {
                if (part.isEmpty()) {
                    return box.bound();
                }
                open.add(part.get());
            }
        }
        return Math.min(bestCost, open.isEmpty() ? bestCost : open.peek().bound());
    }

    /** The box with its bound, or empty where the simplex gives up. */
    private Optional<Box> box(int[] low, int[] high) {
        int[] more = new int[problem.sticks];
        long paid = 0;
        for (int j = 0; j < more.length; j++) {
            more[j] = high[j] == CuttingStock.UNLIMITED ? high[j] : high[j] - low[j];
            paid += low[j] * problem.stickCost[j];
        }
        Case within = problem.within(low, 0, more, bestCost);
        long before = paid;
        return LinearBound.of(within)
                .map(
                        relaxed -> {
                            double bound =
                                    before
                                            + relaxed.prices()
                                                    .bound(within.wanted, within.stickCount);
                            return new Box(
                                    low, high, problem.roundedUp(bound), counts(low, relaxed));
                        });
    }

    private double[] counts(int[] low, LinearBound.Relaxed relaxed) {
        double[] counts = Arrays.stream(low).asDoubleStream().toArray();
        for (int p = 0; p < relaxed.sticks().length; p++) {
            int stick = relaxed.patterns().get(p).stick() - problem.sticks;
            if (stick >= 0 && stick < problem.sticks) {
                counts[stick] += relaxed.sticks()[p];
            }
        }
        return counts;
    }

    /** The kind whose count is farthest from whole, or -1 where all are whole. */
    private static int fraction(Box box) {
        int farthest = -1;
        double most = WHOLE;
        for (int j = 0; j < box.counts().length; j++) {
            double off = Math.abs(box.counts()[j] - Math.rint(box.counts()[j]));
            if (off > most) {
                most = off;
                farthest = j;
            }
        }
        return farthest;
    }

    private List<Optional<Box>> halves(Box box, int j) {
        int below = (int) Math.floor(box.counts()[j]);
        int[] high = box.high().clone();
        high[j] = below;
        int[] low = box.low().clone();
        low[j] = below + 1;
        return List.of(box(box.low(), high), box(low, box.high()));
    }

    /** The box without its whole counts, in parts that do not overlap. */
    private List<Optional<Box>> around(Box box) {
        List<Optional<Box>> parts = new ArrayList<>();
        int[] low = box.low().clone();
        int[] high = box.high().clone();
        for (int j = 0; j < low.length; j++) {
            int count = (int) Math.rint(box.counts()[j]);
            if (count > low[j]) {
                int[] under = high.clone();
                under[j] = count - 1;
                parts.add(box(low.clone(), under));
            }
            if (count < high[j]) {
                int[] over = low.clone();
                over[j] = count + 1;
                parts.add(box(over, high.clone()));
            }
            low[j] = count;
            high[j] = count;
        }
        return parts;
    }

    /** Looks for a plan of just these sticks; whether there is none, or one was found. */
    private boolean isSettled(Box box) {
        int[] counts = Arrays.stream(box.counts()).mapToInt(c -> (int) Math.rint(c)).toArray();
        Case just = problem.within(counts, 1, new int[problem.sticks], bestCost);
        Optional<LinearBound.Relaxed> relaxed = LinearBound.of(just);
        if (relaxed.isEmpty()) {
            return false;
        }
        List<Prices> prices = List.of(Prices.byLength(just), relaxed.get().prices());
        if (keep(just, LeastCost.rounded(just, relaxed.get(), prices, trialWork))) {
            return true;
        }
        PatternSearch search = new PatternSearch(just, prices, trialWork);
        List<Laid> found = search.under(bestCost, box.bound(), just.wanted, just.stickCount);
        return keep(just, found) || search.isComplete();
    }

    /** Keeps a plan that is better than the best. */
    private boolean keep(Case just, List<Laid> plan) {
        long cost = LeastCost.cost(just, plan);
        if (plan.isEmpty() || cost >= bestCost) {
            return false;
        }
        best = plan;
        bestCost = cost;
        return true;
    }
}
