package haftline.set.cutting;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Branch and bound over whole patterns. At every step the longest item that is still wanted is cut
 * from the next stick, in a pattern to which nothing wanted can be added; every plan can be put in
 * that order, so that no plan is seen twice for the order of its sticks. A branch ends where prices
 * show that it cannot beat the best plan, or where the same rest was reached before at no more
 * cost.
 */
final class PatternSearch {
    private final Case of;
    private final List<Prices> prices;
    private final long mostWork;
    private final Map<Rest, Long> reached = new HashMap<>();
    private final Deque<Laid> laid = new ArrayDeque<>();
    private List<Laid> best = List.of();
    private long bestCost;
    private long enough;
    private long work;

    /** What is still to be cut and from what: equal by content. */
    private record Rest(int[] counts) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Rest rest && Arrays.equals(counts, rest.counts);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(counts);
        }
    }

    private record Candidate(Laid laid, double slack) {}

    PatternSearch(Case of, List<Prices> prices, long mostWork) {
        this.of = of;
        this.prices = prices;
        this.mostWork = mostWork;
    }

    /**
     * Looks for plans under a cost.
     *
     * @param under the cost that a plan must stay under
     * @param from a lower bound: a plan that costs so much ends the search
     * @return the best that was found, or empty where there is none or the work ran out before
     */
    List<Laid> under(long under, long from, int[] wanted, int[] left) {
        bestCost = under;
        enough = from;
        descend(wanted.clone(), left.clone(), 0);
        return best;
    }

    /** Whether the search saw everything, so that there is nothing better than it found. */
    boolean isComplete() {
        return work < mostWork;
    }

    private boolean isOver() {
        return work >= mostWork || bestCost <= enough;
    }

    private void descend(int[] remaining, int[] left, long cost) {
        int first = 0;
        while (first < of.items && remaining[first] == 0) {
            first++;
        }
        if (first == of.items) {
            if (cost < bestCost) {
                bestCost = cost;
                best = new ArrayList<>(laid);
                Collections.reverse(best);
            }
            return;
        }
        if (!isNew(remaining, left, cost)) {
            return;
        }
        for (Candidate candidate : candidates(first, remaining, left, cost)) {
            if (isOver()) {
                return;
            }
            int stick = candidate.laid().stick();
            long then = cost + of.stickCost[stick];
            change(remaining, left, candidate.laid(), -1);
            if (then + least(remaining, left) < bestCost) {
                laid.push(candidate.laid());
                descend(remaining, left, then);
                laid.pop();
            }
            change(remaining, left, candidate.laid(), 1);
        }
    }

    private void change(int[] remaining, int[] left, Laid by, int sign) {
        for (int i = 0; i < of.items; i++) {
            remaining[i] += sign * by.counts()[i];
        }
        if (of.isLimited(by.stick())) {
            left[by.stick()] += sign;
        }
    }

    /** Whether this rest was not reached before at no more cost. */
    private boolean isNew(int[] remaining, int[] left, long cost) {
        int[] both = Arrays.copyOf(remaining, of.items + of.sticks);
        System.arraycopy(left, 0, both, of.items, of.sticks);
        Rest rest = new Rest(both);
        Long before = reached.get(rest);
        if (before != null && before <= cost) {
            return false;
        }
        reached.put(rest, cost);
        return true;
    }

    /** Least cost of a rest, as a multiple of the step. */
    private long least(int[] remaining, int[] left) {
        long most = 0;
        for (Prices each : prices) {
            most = Math.max(most, of.roundedUp(each.bound(remaining, left)));
        }
        return most;
    }

    /** The patterns for the next stick, those first that lose least by the sharpest prices. */
    private List<Candidate> candidates(int first, int[] remaining, int[] left, long cost) {
        List<Candidate> found = new ArrayList<>();
        for (int stick = 0; stick < of.sticks; stick++) {
            if (left[stick] > 0 && of.holds[stick][first]) {
                new Patterns(stick, first, remaining, need(stick, remaining, left, cost), found)
                        .fill(first, of.stickLength[stick], 0);
            }
        }
        found.sort(Comparator.comparingDouble(Candidate::slack));
        return found;
    }

    /** What a pattern's items must be worth, so that the plan can still beat the best. */
    private double need(int stick, int[] remaining, int[] left, long cost) {
        Prices sharp = sharp();
        double after = sharp.bound(remaining, left) + sharp.stick()[stick];
        double most = bestCost - of.step;
        // The same slip as in rounding a bound up.
        return cost + of.stickCost[stick] + after - most - 1e-7 * of.step - 1e-10 * bestCost;
    }

    private Prices sharp() {
        return prices.get(prices.size() - 1);
    }

    /** The full patterns of one stick that hold the first item. */
    private final class Patterns {
        private final int stick;
        private final int first;
        private final int[] remaining;
        private final double need;
        private final List<Candidate> found;
        private final int[] counts = new int[of.items];

        /** Best worth for its length, and the least length, of an item and those after it. */
        private final double[] rate = new double[of.items + 1];

        private final long[] shortest = new long[of.items + 1];

        Patterns(int stick, int first, int[] remaining, double need, List<Candidate> found) {
            this.stick = stick;
            this.first = first;
            this.remaining = remaining;
            this.need = need;
            this.found = found;
            shortest[of.items] = Long.MAX_VALUE;
            for (int i = of.items - 1; i >= first; i--) {
                double own = can(i) ? sharp().item()[i] / of.length[i] : 0;
                rate[i] = Math.max(rate[i + 1], own);
                shortest[i] = can(i) ? Math.min(of.length[i], shortest[i + 1]) : shortest[i + 1];
            }
        }

        private boolean can(int i) {
            return remaining[i] > 0 && of.holds[stick][i];
        }

        void fill(int from, long room, double worth) {
            work++;
            double more = room < shortest[from] ? 0 : room * rate[from];
            if (work >= mostWork || worth + more < need) {
                return;
            }
            int i = from;
            while (i < of.items && (!can(i) || of.length[i] > room)) {
                i++;
            }
            if (i == of.items) {
                if (isFull(room)) {
                    double slack = of.stickCost[stick] + sharp().stick()[stick] - worth;
                    found.add(new Candidate(new Laid(stick, counts.clone()), slack));
                }
                return;
            }
            int least = i == first ? 1 : 0;
            for (int count = (int) Math.min(remaining[i], room / of.length[i]);
                    count >= least;
                    count--) {
                counts[i] = count;
                fill(i + 1, room - count * of.length[i], worth + count * sharp().item()[i]);
            }
            counts[i] = 0;
        }

        private boolean isFull(long room) {
            for (int i = first; i < of.items; i++) {
                if (can(i) && counts[i] < remaining[i] && of.length[i] <= room) {
                    return false;
                }
            }
            return true;
        }
    }
}
