package haftline.adjust.solve;

import haftline.adjust.solve.SetModel.At;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;

/**
 * What is left to do where not all can be met: which demands cannot be met together, and the point
 * that comes nearest.
 *
 * @param tidy the point
 * @param conflicts demands that were not met together, none dispensable in its list
 */
record Compromise(Tidy tidy, List<List<Integer>> conflicts) {
    /** Beginnings of a search that only asks whether something can be met at all. */
    private static final int FEW_STARTS = 4;

    /** What was given up still pulls, but far less than what was not. */
    private static final double GIVEN_UP = 1e-3;

    static Compromise of(SetModel asked) {
        List<Integer> rest = new ArrayList<>();
        for (int d = 0; d < asked.demands().size(); d++) {
            rest.add(d);
        }
        List<List<Integer>> conflicts = new ArrayList<>();
        TreeSet<Integer> given = new TreeSet<>();
        Optional<At> met = Optional.empty();
        while (met.isEmpty()) {
            List<Integer> conflict = conflict(asked, rest);
            conflicts.add(conflict);
            Integer least = conflict.get(0);
            for (Integer d : conflict) {
                if (rank(asked, d) < rank(asked, least)) {
                    least = d;
                }
            }
            given.add(least);
            rest.remove(least);
            met = any(asked.only(rest), new double[asked.size()]);
        }
        Descent all = weighing(asked, given);
        double[] nearest = nearest(asked, rest, all, met.get().point());
        Tidy tidy =
                Tidy.of(
                        asked.only(rest),
                        nearest,
                        (model, point) -> {
                            At at = model.all(asked).at(point);
                            return at == null ? Double.MAX_VALUE : all.merit(at);
                        });
        return new Compromise(tidy, conflicts);
    }

    /**
     * Which of two goes first where both cannot be: wishes before habits, habits before walls. Our
     * own order, no source.
     */
    private static int rank(SetModel asked, int demand) {
        return switch (asked.demands().get(demand).need()) {
            case BALANCE -> 0;
            case COVES -> 1;
            case GRIP -> 2;
            case COMMON_SWELL -> 3;
            case CHARACTER -> 4;
            case TENON_WALL, BODY_WALL, CAP_WALL, BORE_ENDS -> 5;
        };
    }

    /**
     * Needs that cannot be met together, none of them dispensable: the deletion filter (Chinneck,
     * Feasibility and Infeasibility in Optimization, 2008; from memory).
     */
    private static List<Integer> conflict(SetModel asked, List<Integer> among) {
        SetModel all = asked.only(among);
        At nearest = new Descent(all, Adjust.LAST_PENALTY).from(new double[asked.size()]);
        List<Integer> kept = new ArrayList<>(among);
        // Walls are tried for dropping last, so that one is named only where it must be.
        for (int k = among.size() - 1; k >= 0 && kept.size() > 1; k--) {
            List<Integer> without = new ArrayList<>(kept);
            without.remove(among.get(k));
            if (any(asked.only(without), nearest.point()).isEmpty()) {
                kept = without;
            }
        }
        return kept;
    }

    /** Some point that meets all, from one beginning or a few others. */
    private static Optional<At> any(SetModel model, double[] from) {
        Optional<At> met = Adjust.met(model, from, Double.MAX_VALUE);
        List<double[]> others = Adjust.starts(model);
        for (int k = 0; met.isEmpty() && k < FEW_STARTS; k++) {
            met = Adjust.met(model, others.get(k), Double.MAX_VALUE);
        }
        return met;
    }

    /** A search in which what was given up still pulls a little. */
    private static Descent weighing(SetModel asked, TreeSet<Integer> given) {
        double[] share = new double[asked.demands().size()];
        for (int d = 0; d < share.length; d++) {
            share[d] = given.contains(d) ? GIVEN_UP : 1;
        }
        return new Descent(asked, Adjust.LAST_PENALTY, share);
    }

    /** The rest is met; what was given up is missed by as little as that allows. */
    private static double[] nearest(SetModel asked, List<Integer> rest, Descent all, double[] met) {
        SetModel kept = asked.only(rest);
        Descent polish = new Descent(kept, Adjust.LAST_PENALTY);
        double[] best = met;
        double least = all.merit(asked.at(met));
        for (double[] start : List.of(met, new double[met.length])) {
            Optional<At> found = polish.polished(kept.at(all.from(start).point()));
            if (found.isPresent()) {
                double merit = all.merit(asked.at(found.get().point()));
                if (merit < least) {
                    least = merit;
                    best = found.get().point();
                }
            }
        }
        return best;
    }
}
