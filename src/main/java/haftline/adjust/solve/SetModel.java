package haftline.adjust.solve;

import haftline.adjust.Watch;
import haftline.adjust.solve.Quantity.Kind;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CancellationException;

/**
 * The pieces of a set as functions of what may move. A point holds the movement of each quantity in
 * mm of diameter, so that half of its square length is the measure of change.
 */
final class SetModel {
    /**
     * Step of the forward differences, mm of diameter: a sliding node settles to 1e-7 mm, which
     * this drowns, while the engine is straight enough over it.
     */
    private static final double NUDGE_MM = 1e-3;

    /** Rounding of a figure over the step of a difference. */
    private static final double ROUNDING = 1e-9;

    private final List<Brief> briefs;
    private final List<Quantity> quantities;
    private final List<Demand> demands;
    private final List<PieceRows> rows;

    /** What each demand's margin is to be at least, mm: 0, or less where that is impossible. */
    private final double[] goals;

    /** Decimals that each quantity is written with, or null for all that a double has. */
    private final int[] decimals;

    private final double[] low;
    private final double[] high;
    private final Watch watch;

    SetModel(
            List<Brief> briefs,
            List<Quantity> quantities,
            List<Demand> demands,
            List<PieceRows> rows,
            Watch watch) {
        this(briefs, quantities, demands, rows, new double[demands.size()], null, watch);
    }

    private SetModel(
            List<Brief> briefs,
            List<Quantity> quantities,
            List<Demand> demands,
            List<PieceRows> rows,
            double[] goals,
            int[] decimals,
            Watch watch) {
        this.watch = watch;
        this.goals = goals;
        this.decimals = decimals;
        this.briefs = briefs;
        this.quantities = quantities;
        this.demands = demands;
        this.rows = rows;
        int n = quantities.size();
        low = new double[n];
        high = new double[n];
        for (int i = 0; i < n; i++) {
            Quantity q = quantities.get(i);
            low[i] = Math.min(0, (q.low() - q.value()) * q.weight());
            high[i] = Math.max(0, (q.high() - q.value()) * q.weight());
        }
    }

    /** The same with margins reckoned from other goals than 0, mm. */
    SetModel withGoals(double[] changed) {
        return new SetModel(briefs, quantities, demands, rows, changed, decimals, watch);
    }

    /** The same with goals that are so much higher, mm. */
    SetModel stricter(double mm) {
        double[] higher = goals.clone();
        for (int d = 0; d < higher.length; d++) {
            higher[d] += mm;
        }
        return withGoals(higher);
    }

    /** The same with quantities in decimals. */
    SetModel withDecimals(int[] changed) {
        return new SetModel(briefs, quantities, demands, rows, goals, changed, watch);
    }

    /** The demands and goals of another model, with the decimals of this one. */
    SetModel all(SetModel other) {
        return other.withDecimals(decimals);
    }

    double weight(int i) {
        return quantities.get(i).weight();
    }

    /** What a quantity is before anything moves, in its document's unit. */
    double start(int i) {
        return quantities.get(i).value();
    }

    /** Who waits for what the model is asked for. */
    Watch watch() {
        return watch;
    }

    /** Ends the work where nobody wants its answer any more. */
    void goOn() {
        if (watch.isOver()) {
            throw new CancellationException("no longer wanted");
        }
    }

    /** The same with some of the demands only. */
    SetModel only(List<Integer> kept) {
        return new SetModel(
                briefs,
                quantities,
                kept.stream().map(demands::get).toList(),
                rows,
                kept.stream().mapToDouble(d -> goals[d]).toArray(),
                decimals,
                watch);
    }

    int size() {
        return quantities.size();
    }

    List<Demand> demands() {
        return demands;
    }

    int pieces() {
        return briefs.size();
    }

    /** The margins of a piece, or null where it cannot be drawn. */
    PieceRows rows(int piece) {
        return rows.get(piece);
    }

    double low(int i) {
        return low[i];
    }

    double high(int i) {
        return high[i];
    }

    /** What a quantity is at a point. */
    double value(int i, double[] point) {
        Quantity q = quantities.get(i);
        // Unmoved is the very value that was there, whatever the rounding.
        if (point[i] == 0) {
            return q.value();
        }
        // Held to the bounds, which a product of a weight may miss by rounding.
        double value =
                Math.max(
                        Math.min(q.low(), q.value()),
                        Math.min(Math.max(q.high(), q.value()), q.value() + point[i] / q.weight()));
        return decimals == null
                ? value
                : BigDecimal.valueOf(value)
                        .setScale(decimals[i], RoundingMode.HALF_UP)
                        .doubleValue();
    }

    /** The brief of a piece at a point. */
    Brief brief(int piece, double[] point) {
        Brief base = briefs.get(piece);
        ChoicesBuilder choices = base.choices().toBuilder();
        boolean moved = false;
        for (int i = 0; i < quantities.size(); i++) {
            Quantity q = quantities.get(i);
            if (q.kind() != Kind.NODE && q.moves(piece) && point[i] != 0) {
                q.set(choices, value(i, point));
                moved = true;
            }
        }
        Brief sized = moved ? base.withChoices(choices.build()) : base;
        moved = false;
        ChoicesBuilder nodes = sized.choices().toBuilder();
        for (int i = 0; i < quantities.size(); i++) {
            Quantity q = quantities.get(i);
            if (q.kind() == Kind.NODE && q.moves(piece) && point[i] != 0) {
                double v = value(i, point);
                q.set(nodes, q.times().map(r -> v * sized.referenceMm(r)).orElse(v));
                moved = true;
            }
        }
        Choices all = nodes.build();
        return moved ? sized.withChoices(all) : sized;
    }

    /**
     * The handle of a piece at a point, or null where none can be drawn.
     *
     * @throws CancellationException where nobody waits for it any more; no search takes longer than
     *     from one handle to the next to notice
     */
    Handle handle(int piece, double[] point) {
        goOn();
        try {
            return Resolve.of(brief(piece, point)) instanceof Resolution.Resolved resolved
                    ? resolved.handle()
                    : null;
        } catch (IllegalArgumentException outOfRange) {
            // A bound of a choice, or a butt's form on a butt too thin: no handle there.
            return null;
        }
    }

    /** All demands at a point, or null where a piece cannot be drawn. */
    At at(double[] point) {
        Handle[] handles = new Handle[briefs.size()];
        for (int p = 0; p < handles.length; p++) {
            handles[p] = handle(p, point);
            // A piece that could not be drawn to begin with asks for nothing and hinders nothing.
            if (handles[p] == null && rows.get(p) != null) {
                return null;
            }
        }
        List<Rows> all = new ArrayList<>(demands.size());
        for (int d = 0; d < demands.size(); d++) {
            all.add(rowsOf(d, handles[demands.get(d).piece()], new Rows()));
        }
        return new At(point.clone(), all);
    }

    private Rows rowsOf(int d, Handle handle, Rows into) {
        Demand demand = demands.get(d);
        return rows.get(demand.piece()).add(handle, demand.need(), into).from(goals[d]);
    }

    /** The engine at a point. */
    record At(double[] point, List<Rows> rows) {
        double margin(int demand) {
            return rows.get(demand).least();
        }

        double leastMargin() {
            double least = Double.POSITIVE_INFINITY;
            for (Rows each : rows) {
                least = Math.min(least, each.least());
            }
            return least;
        }
    }

    /** One smooth piece of a demand's margin, made straight at a point. */
    record Cut(int demand, int key, int index, double value, double[] slope) {
        double at(double[] from, double[] point) {
            double sum = value;
            for (int i = 0; i < slope.length; i++) {
                sum += slope[i] * (point[i] - from[i]);
            }
            return sum;
        }

        Cut moved(double newValue) {
            return new Cut(demand, key, index, newValue, slope);
        }
    }

    /**
     * Makes all smooth pieces straight that may matter within a window: several of one wall at
     * once, not only the least.
     */
    List<Cut> cuts(At at, double windowMm) {
        List<Cut> cuts = new ArrayList<>();
        for (int d = 0; d < demands.size(); d++) {
            Rows each = at.rows().get(d);
            for (int k = 0; k < each.size(); k++) {
                if (each.value(k) < windowMm) {
                    cuts.add(new Cut(d, each.key(k), k, each.value(k), new double[size()]));
                }
            }
        }
        if (cuts.isEmpty()) {
            return cuts;
        }
        int[][] keys = new int[demands.size()][];
        for (int d = 0; d < keys.length; d++) {
            int demand = d;
            keys[d] =
                    cuts.stream()
                            .filter(cut -> cut.demand() == demand)
                            .mapToInt(Cut::key)
                            .sorted()
                            .toArray();
        }
        for (int i = 0; i < size(); i++) {
            for (int piece : quantities.get(i).pieces()) {
                slopes(at, i, piece, cuts, keys);
            }
        }
        return cuts;
    }

    private void slopes(At at, int i, int piece, List<Cut> cuts, int[][] keys) {
        boolean concerned = false;
        for (Cut cut : cuts) {
            concerned |= demands.get(cut.demand()).piece() == piece;
        }
        if (!concerned) {
            return;
        }
        double step = at.point()[i] + NUDGE_MM <= high[i] ? NUDGE_MM : -NUDGE_MM;
        double[] nudged = at.point().clone();
        nudged[i] += step;
        Handle handle = handle(piece, nudged);
        if (handle == null) {
            return;
        }
        Rows[] there = new Rows[demands.size()];
        for (Cut cut : cuts) {
            int d = cut.demand();
            if (demands.get(d).piece() == piece) {
                if (there[d] == null) {
                    there[d] = rowsOf(d, handle, Rows.of(keys[d]));
                }
                double value = there[d].valueOf(cut.key(), cut.index());
                double slope = (value - cut.value()) / step;
                // What is fixed has no slope, not one of rounding; NaN where the piece is gone.
                cut.slope()[i] = Math.abs(slope) > ROUNDING ? slope : 0;
            }
        }
    }
}
