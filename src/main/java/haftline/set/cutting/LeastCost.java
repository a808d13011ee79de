package haftline.set.cutting;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The steps to the least cost, from the cheapest to the dearest; each is taken only where those
 * before did not end in a proof.
 *
 * @param laid every stick that is begun
 * @param cost what they cost
 * @param bound no plan costs less
 * @param isProven whether none costs less than this one
 */
record LeastCost(List<Laid> laid, long cost, long bound, boolean isProven) {
    /** The search goes one call deeper for every stick; a thread's stack holds many more. */
    private static final int MOST_DEEP = 2000;

    /** The share of the work that rounding the linear program may take. */
    private static final int ROUNDING_SHARE = 10;

    /** The share of the work that each trial of one count of sticks may take. */
    private static final int COUNTS_SHARE = 20;

    static LeastCost of(Case problem, int mostWork) {
        List<Laid> best = FirstFit.best(problem, problem.wanted, problem.stickCount);
        List<Prices> prices = new ArrayList<>(List.of(Prices.byLength(problem)));
        long bound = bound(problem, prices);
        if (cost(problem, best) > bound) {
            Optional<LinearBound.Relaxed> relaxed = LinearBound.of(problem);
            if (relaxed.isPresent()) {
                prices.add(relaxed.get().prices());
                bound = bound(problem, prices);
                List<Laid> rounded =
                        rounded(problem, relaxed.get(), prices, mostWork / ROUNDING_SHARE);
                best = cheaper(problem, best, rounded);
            }
        }
        boolean isProven = cost(problem, best) == bound;
        if (!isProven && problem.sticks > 1 && prices.size() > 1) {
            StickCounts counts = new StickCounts(problem, best, mostWork / COUNTS_SHARE);
            bound = Math.max(bound, counts.search());
            best = counts.best();
            isProven = cost(problem, best) == bound;
        }
        if (!isProven && best.size() <= MOST_DEEP) {
            PatternSearch search = new PatternSearch(problem, prices, mostWork);
            List<Laid> found =
                    search.under(cost(problem, best), bound, problem.wanted, problem.stickCount);
            best = found.isEmpty() ? best : found;
            isProven = search.isComplete() || cost(problem, best) == bound;
        }
        long cost = cost(problem, best);
        return new LeastCost(List.copyOf(best), cost, isProven ? cost : bound, isProven);
    }

    private static long bound(Case problem, List<Prices> prices) {
        long most = 0;
        for (Prices each : prices) {
            double bound = each.bound(problem.wanted, problem.stickCount);
            most = Math.max(most, problem.roundedUp(bound));
        }
        return most;
    }

    /** The whole sticks of the linear program's plan, and the best for the few that remain. */
    static List<Laid> rounded(
            Case problem, LinearBound.Relaxed relaxed, List<Prices> prices, long mostWork) {
        int[] remaining = problem.wanted.clone();
        int[] left = problem.stickCount.clone();
        List<Laid> whole = new ArrayList<>();
        for (int p = 0; p < relaxed.patterns().size(); p++) {
            Laid pattern = relaxed.patterns().get(p);
            // What is whole but for rounding is whole.
            int times = (int) Math.floor(relaxed.sticks()[p] + 1e-6);
            for (int n = 0; n < times && takes(problem, pattern, remaining, left); n++) {
                whole.add(pattern);
            }
        }
        List<Laid> rest = FirstFit.best(problem, remaining, left);
        PatternSearch search = new PatternSearch(problem, prices, mostWork);
        if (rest.size() <= MOST_DEEP) {
            List<Laid> found = search.under(cost(problem, rest), 0, remaining, left);
            rest = found.isEmpty() ? rest : found;
        }
        whole.addAll(rest);
        return whole;
    }

    /** Takes a stick of a pattern where all of it is still wanted and there is one left. */
    private static boolean takes(Case problem, Laid pattern, int[] remaining, int[] left) {
        if (left[pattern.stick()] == 0) {
            return false;
        }
        for (int i = 0; i < problem.items; i++) {
            if (pattern.counts()[i] > remaining[i]) {
                return false;
            }
        }
        for (int i = 0; i < problem.items; i++) {
            remaining[i] -= pattern.counts()[i];
        }
        if (problem.isLimited(pattern.stick())) {
            left[pattern.stick()]--;
        }
        return true;
    }

    private static List<Laid> cheaper(Case problem, List<Laid> one, List<Laid> other) {
        return cost(problem, other) < cost(problem, one) ? other : one;
    }

    static long cost(Case problem, List<Laid> laid) {
        long sum = 0;
        for (Laid each : laid) {
            sum += problem.stickCost[each.stick()];
        }
        return sum;
    }
}
