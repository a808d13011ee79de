package haftline.adjust.solve;

import haftline.adjust.solve.SetModel.At;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The least change of a set that meets the chosen needs, or the nearest that can be found. How
 * change is measured and found is told in docs/decisions/0007-adjust.md.
 */
public final class Adjust {
    /**
     * A mm missed costs as much as moving everything by some mm: low at first, so that the search
     * follows curved limits with long steps, then far over any pull that a limit exerts.
     */
    private static final double FIRST_PENALTY = 50;

    private static final double LAST_PENALTY = 1e5;

    /**
     * Where the search begins again beside the start, mm of diameter for the first node, the second
     * and on in turn: all thicker, all thinner, every second one thicker. With these no random
     * search found a lesser change in docs/decisions/0007-adjust.md.
     */
    private static final double[][] OTHER_STARTS = {{1.5, 1.5}, {-1.5, -1.5}, {0, 2.5}, {2.5, 0}};

    private final HandleSet set;
    private final List<Brief> briefs;
    private final List<Quantity> quantities;
    private final List<Optional<Handle>> before;
    private final SetModel model;

    Adjust(HandleSet set, Materials materials, Wish wish) {
        this.set = set;
        briefs = Quantities.briefs(set, materials);
        before = briefs.stream().map(Adjust::handle).toList();
        quantities = Quantities.of(set, briefs, wish);
        List<Demand> demands = new ArrayList<>();
        List<PieceRows> rows = new ArrayList<>();
        long sharing = set.pieces().stream().filter(Adjust::goesByTheSwell).count();
        for (int p = 0; p < briefs.size(); p++) {
            boolean common = sharing > 1 && goesByTheSwell(set.pieces().get(p));
            rows.add(before.get(p).map(h -> PieceRows.of(wish, h, common)).orElse(null));
            for (Need need : Need.values()) {
                boolean asked = wish.needs().contains(need) && before.get(p).isPresent();
                if (asked && applies(need, before.get(p).get(), common)) {
                    demands.add(new Demand(need, p));
                }
            }
        }
        model = new SetModel(briefs, quantities, demands, rows);
    }

    private static boolean goesByTheSwell(Piece piece) {
        return piece.choices().swellMm().isEmpty();
    }

    private static boolean applies(Need need, Handle handle, boolean common) {
        return switch (need) {
            case CAP_WALL -> handle.capBore().isPresent();
            case COMMON_SWELL -> common;
            default -> true;
        };
    }

    private static Optional<Handle> handle(Brief brief) {
        return Resolve.of(brief) instanceof Resolution.Resolved resolved
                ? Optional.of(resolved.handle())
                : Optional.empty();
    }

    /**
     * Adjusts a set.
     *
     * @param set the set; it is not changed
     * @param materials where keys of stock and metals are looked up
     * @param wish what is asked
     * @return a proposal
     */
    public static Adjustment of(HandleSet set, Materials materials, Wish wish) {
        return new Adjust(set, materials, wish).solve();
    }

    /** The pieces as functions of what may move. */
    SetModel model() {
        return model;
    }

    List<Quantity> quantities() {
        return quantities;
    }

    private Adjustment solve() {
        At start = model.at(new double[model.size()]);
        List<Certificate> proofs = proofs(start);
        double[] goals = new double[proofs.size()];
        for (int d = 0; d < goals.length; d++) {
            goals[d] = proofs.get(d) == null ? 0 : proofs.get(d).bestMm();
        }
        SetModel asked = model.withGoals(goals);
        At asStarted = asked.at(start.point());
        if (asStarted.leastMargin() >= -Descent.MET_MM / 2) {
            return adjustment(start, start, proofs, List.of());
        }
        Optional<At> met = least(asked);
        if (met.isPresent()) {
            return adjustment(start, model.at(met.get().point()), proofs, List.of());
        }
        At nearest = nearest(asked);
        List<Integer> conflict = conflict(asked, nearest.point());
        return adjustment(start, model.at(nearest.point()), proofs, conflict);
    }

    private List<Certificate> proofs(At start) {
        Certificates certificates = new Certificates(model, quantities);
        List<Certificate> proofs = new ArrayList<>();
        for (int d = 0; d < model.demands().size(); d++) {
            Demand demand = model.demands().get(d);
            double margin = start.margin(d);
            boolean isMissed = margin < -Descent.MET_MM;
            proofs.add(
                    isMissed
                            ? certificates
                                    .against(
                                            demand,
                                            before.get(demand.piece()).orElseThrow(),
                                            margin)
                                    .orElse(null)
                            : null);
        }
        return proofs;
    }

    /** The least change that meets everything, the best from a few beginnings. */
    private static Optional<At> least(SetModel asked) {
        Optional<At> best = Optional.empty();
        for (double[] start : starts(asked)) {
            double bar = best.map(at -> Descent.change(at.point())).orElse(Double.MAX_VALUE);
            Optional<At> found = met(asked, start, bar);
            if (found.isPresent() && Descent.change(found.get().point()) < bar) {
                best = found;
            }
        }
        return best;
    }

    private static List<double[]> starts(SetModel asked) {
        List<double[]> starts = new ArrayList<>();
        starts.add(new double[asked.size()]);
        for (double[] offset : OTHER_STARTS) {
            double[] start = new double[asked.size()];
            for (int i = 0; i < start.length; i++) {
                start[i] = Math.max(asked.low(i), Math.min(asked.high(i), offset[i % 2]));
            }
            starts.add(start);
        }
        return starts;
    }

    /** From one beginning, given up where not even the first search stays under a bar. */
    static Optional<At> met(SetModel asked, double[] start, double bar) {
        Descent first = new Descent(asked, FIRST_PENALTY);
        At at = first.from(start);
        if (at == null || first.merit(at) >= bar) {
            return Optional.empty();
        }
        Descent last = new Descent(asked, LAST_PENALTY);
        if (at.leastMargin() < -Descent.MET_MM / 2) {
            at = last.from(at.point());
        }
        return last.polished(at);
    }

    /** What misses least, in order of rank; of that the least change. */
    private static At nearest(SetModel asked) {
        Descent strict = new Descent(asked, LAST_PENALTY);
        At best = null;
        double least = Double.POSITIVE_INFINITY;
        for (double[] start : starts(asked)) {
            At at = strict.from(start);
            if (at != null && strict.missed(at) + Descent.change(at.point()) < least) {
                least = strict.missed(at) + Descent.change(at.point());
                best = at;
            }
        }
        return best;
    }

    /**
     * Needs that cannot be met together, none of them dispensable: the deletion filter (Chinneck,
     * Feasibility and Infeasibility in Optimization, 2008, section 6.3).
     */
    private static List<Integer> conflict(SetModel asked, double[] nearest) {
        List<Integer> kept = new ArrayList<>();
        for (int d = 0; d < asked.demands().size(); d++) {
            kept.add(d);
        }
        // Looks are tried for dropping first, so that a wall is named only where it must be.
        for (int d = asked.demands().size() - 1; d >= 0; d--) {
            List<Integer> without = new ArrayList<>(kept);
            without.remove(Integer.valueOf(d));
            if (met(asked.only(without), nearest, Double.MAX_VALUE).isEmpty()) {
                kept = without;
            }
        }
        return kept;
    }

    private Adjustment adjustment(
            At start, At end, List<Certificate> proofs, List<Integer> conflict) {
        double[] point = end.point();
        Moves moves =
                new Moves(
                        model,
                        quantities,
                        set.pieces().stream().map(Piece::name).toList(),
                        point);
        List<Optional<Handle>> after = moves.handles();
        List<Answer> answers = new ArrayList<>();
        for (int d = 0; d < model.demands().size(); d++) {
            Demand demand = model.demands().get(d);
            answers.add(
                    answer(
                            demand,
                            start.margin(d),
                            end.margin(d),
                            Optional.ofNullable(proofs.get(d)),
                            before.get(demand.piece()).orElseThrow(),
                            after.get(demand.piece()).orElseThrow()));
        }
        return new Adjustment(
                moves.told(),
                Math.sqrt(2 * Descent.change(point)),
                answers,
                conflict.stream().map(answers::get).toList(),
                before,
                after,
                moves.steps());
    }

    private Answer answer(
            Demand demand,
            double marginBefore,
            double marginAfter,
            Optional<Certificate> proof,
            Handle was,
            Handle is) {
        PieceRows rows = model.rows(demand.piece());
        Band band = rows.wanted(is, demand.need());
        Standing standing =
                marginAfter >= -Descent.MET_MM
                        ? Standing.MET
                        : proof.isPresent() ? Standing.IMPOSSIBLE : Standing.NOT_WITHIN_REACH;
        return new Answer(
                set.pieces().get(demand.piece()).name(),
                demand.need(),
                rows.figure(was, demand.need(), marginBefore),
                rows.figure(is, demand.need(), marginAfter),
                band.lowMm(),
                band.highMm(),
                marginBefore,
                marginAfter,
                standing,
                standing == Standing.IMPOSSIBLE ? proof.orElseThrow().because() : "");
    }
}
