package haftline.adjust.solve;

import haftline.adjust.Watch;
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
import java.util.SplittableRandom;
import java.util.concurrent.CancellationException;

/**
 * The least change of a set that meets the chosen needs, or the nearest that can be found. How
 * change is measured and found is told in docs/decisions/0007-adjust.md.
 */
public final class Adjust {
    /**
     * A mm missed costs as much as moving everything by some mm: low at first, so that the search
     * follows curved limits with long steps, then far over any pull that a limit exerts.
     */
    static final double FIRST_PENALTY = 50;

    static final double LAST_PENALTY = 1e5;

    /**
     * Where the search begins again beside the start: so far away, mm of diameter, in directions
     * that are drawn once for all. Walls, balance and sliding nodes make several valleys; from
     * these beginnings a search from 200 finds no lesser change that matters, see
     * docs/decisions/0007-adjust.md.
     */
    private static final double[] OTHER_STARTS_MM = {2, 2, 0.4, 2, 5, 0.4, 2, 5, 0.4, 2, 5, 8};

    /** Hops from the best that was found to look for a lesser one beside it, mm of diameter. */
    private static final double[] HOPS_MM = {1, 3, 1, 3};

    private static final long DIRECTIONS_SEED = 20261125;

    private final HandleSet set;
    private final List<Brief> briefs;
    private final List<Quantity> quantities;
    private final List<Optional<Handle>> before;
    private final SetModel model;

    Adjust(HandleSet set, Materials materials, Wish wish, Watch watch) {
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
        model = new SetModel(briefs, quantities, demands, rows, watch);
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
        return of(set, materials, wish, Watch.NOBODY).orElseThrow();
    }

    /**
     * Adjusts a set for somebody who may stop waiting.
     *
     * @param set the set; it is not changed
     * @param materials where keys of stock and metals are looked up
     * @param wish what is asked
     * @param watch who waits; asked before every handle that is tried
     * @return a proposal; empty where the watch ended it
     */
    public static Optional<Adjustment> of(
            HandleSet set, Materials materials, Wish wish, Watch watch) {
        try {
            return Optional.of(new Adjust(set, materials, wish, watch).solve());
        } catch (CancellationException over) {
            return Optional.empty();
        }
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
            // Under the best by more than the search keeps to spare, or that would miss it.
            goals[d] = proofs.get(d) == null ? 0 : proofs.get(d).bestMm() - 2 * Descent.SPARE_MM;
        }
        SetModel asked = model.withGoals(goals);
        At asStarted = asked.at(start.point());
        if (asStarted.leastMargin() >= -Descent.MET_MM / 2) {
            return adjustment(new Tidy(model, start.point()), start, proofs, List.of());
        }
        Optional<At> met = least(asked);
        if (met.isPresent()) {
            return adjustment(Tidy.of(asked, met.get().point()), start, proofs, List.of());
        }
        Compromise compromise = Compromise.of(asked);
        return adjustment(compromise.tidy(), start, proofs, compromise.conflicts());
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
            best = lesser(asked, start, best);
        }
        SplittableRandom directions = new SplittableRandom(DIRECTIONS_SEED + 1);
        for (int k = 0; best.isPresent() && k < HOPS_MM.length; k++) {
            double[] start = best.get().point().clone();
            for (int i = 0; i < start.length; i++) {
                start[i] = bounded(asked, i, start[i] + HOPS_MM[k] * directions.nextDouble(-1, 1));
            }
            best = lesser(asked, start, best);
        }
        return best;
    }

    private static Optional<At> lesser(SetModel asked, double[] start, Optional<At> best) {
        double bar = best.map(at -> Descent.change(at.point())).orElse(Double.MAX_VALUE);
        Optional<At> found = met(asked, start, bar, best);
        return found.filter(at -> Descent.change(at.point()) < bar).or(() -> best);
    }

    private static double bounded(SetModel asked, int i, double mm) {
        return Math.max(asked.low(i), Math.min(asked.high(i), mm));
    }

    static List<double[]> starts(SetModel asked) {
        List<double[]> starts = new ArrayList<>();
        starts.add(new double[asked.size()]);
        SplittableRandom directions = new SplittableRandom(DIRECTIONS_SEED);
        for (int k = 0; k < OTHER_STARTS_MM.length; k++) {
            double[] start = new double[asked.size()];
            for (int i = 0; i < start.length; i++) {
                // The first two ways are the plainest: all thicker, all thinner.
                double way = k == 0 ? 1 : k == 1 ? -1 : directions.nextDouble(-1, 1);
                double mm = way * OTHER_STARTS_MM[k];
                start[i] = bounded(asked, i, mm);
            }
            starts.add(start);
        }
        return starts;
    }

    /** From one beginning, given up where not even the first search stays under a bar. */
    static Optional<At> met(SetModel asked, double[] start, double bar) {
        return met(asked, start, bar, Optional.empty());
    }

    private static Optional<At> met(
            SetModel asked, double[] start, double bar, Optional<At> known) {
        Descent first = new Descent(asked, FIRST_PENALTY);
        At at = first.from(start, known);
        if (at == null || first.merit(at) >= bar) {
            return Optional.empty();
        }
        Descent last = new Descent(asked, LAST_PENALTY);
        if (at.leastMargin() < -Descent.MET_MM / 2) {
            at = last.from(at.point());
        }
        return last.polished(at);
    }

    private Adjustment adjustment(
            Tidy tidy, At start, List<Certificate> proofs, List<List<Integer>> conflicts) {
        double[] point = tidy.point();
        // Margins from the demands themselves, not from the goals of a search.
        SetModel told = tidy.model().all(model);
        At end = told.at(point);
        Moves moves =
                new Moves(told, quantities, set.pieces().stream().map(Piece::name).toList(), point);
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
                conflicts.stream().map(each -> each.stream().map(answers::get).toList()).toList(),
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
        double before = rows.figure(was, demand.need(), marginBefore);
        double after = rows.figure(is, demand.need(), marginAfter);
        // The search reckons hollows by curvature and widths by nodes; people by the figure.
        boolean byFigure =
                demand.need() == Need.COVES
                        || demand.need() == Need.GRIP
                        || demand.need() == Need.COMMON_SWELL;
        Standing standing =
                marginAfter >= -Descent.MET_MM
                        ? Standing.MET
                        : proof.isPresent() ? Standing.IMPOSSIBLE : Standing.NOT_WITHIN_REACH;
        return new Answer(
                set.pieces().get(demand.piece()).name(),
                demand.need(),
                before,
                after,
                band.lowMm(),
                band.highMm(),
                byFigure ? band.marginMm(before) : marginBefore,
                byFigure ? band.marginMm(after) : marginAfter,
                standing,
                standing == Standing.IMPOSSIBLE ? proof.orElseThrow().because() : "");
    }
}
