package haftline.adjust.takeoff;

import haftline.curve.Outline;
import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Fits the figures of a draft to readings, its structure as it stands. */
final class DraftFit {
    /** How far a butt's form may be drawn out of what was seen first, as a share. */
    private static final double BUTT_SHARE = 0.5;

    /** A pole's endless slope, made finite: a reading there says nothing of the diameter. */
    private static final double STEEP = 1e3;

    /** Two nodes nearer than this make a corner of what is smooth, mm. */
    private static final double SMOOTH_APART_MM = 2;

    /** Rounding of a place. */
    private static final double SAME_MM = 1e-9;

    private static final int MOST_AGAIN = 4;

    /** Relative fall of the sum under which it is settled. */
    private static final double SETTLED = 1e-5;

    /** What matters of a diameter or place, mm. */
    private static final double MATTERS_MM = 1;

    private final Table table;
    private final double[] weights;
    private final Effort effort;

    /**
     * Sets a problem.
     *
     * @param table the readings
     * @param weights 1 over the deviation of each, 0 for one that does not count
     * @param effort what may still be spent
     */
    DraftFit(Table table, double[] weights, Effort effort) {
        this.table = table;
        this.weights = weights;
        this.effort = effort;
    }

    /**
     * A fitted draft.
     *
     * @param draft its figures
     * @param sum squares over the variance; infinite where there is no such shape
     */
    record Fitted(Draft draft, double sum) {}

    Fitted fit(Draft start, int rounds) {
        Fitted now = fitOnce(start, rounds);
        for (int again = 0; again < MOST_AGAIN && !effort.isSpent(); again++) {
            Fitted next = fitOnce(now.draft(), rounds);
            if (!(next.sum() < now.sum() - SETTLED * now.sum())) {
                break;
            }
            now = next;
        }
        return now;
    }

    /**
     * Each node keeps to its own half of the way to its neighbours, which is why it is repeated.
     */
    private Fitted fitOnce(Draft start, int rounds) {
        double[] at = parameters(start);
        double[] low = new double[at.length];
        double[] high = new double[at.length];
        double[] scale = new double[at.length];
        bounds(start, low, high, scale);
        LeastSquares.Fit fit =
                new LeastSquares(p -> residuals(draft(start, p), p.length), low, high, scale)
                        .from(at, rounds, SETTLED, effort::isSpent);
        return new Fitted(draft(start, fit.parameters()), fit.sum());
    }

    private double[] residuals(Draft draft, int figures) {
        effort.spend(weights.length, figures);
        Optional<Outline> outline = draft.outline();
        return outline.isEmpty() ? null : table.residuals(outline.get(), weights);
    }

    private static double[] parameters(Draft draft) {
        List<Double> p = new ArrayList<>();
        p.add(draft.shoulderMm());
        p.add(draft.seatMm());
        for (DraftNode node : draft.nodes()) {
            p.add(node.x());
            p.add(node.diameterMm());
        }
        if (draft.butt().lengthMm() > 0) {
            p.add(draft.butt().lengthMm());
        }
        for (LaidDetail detail : draft.details()) {
            p.add(detail.from());
            p.add(detail.to());
            p.add(detail.heightMm());
        }
        return p.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Edges at a step stay at the step; a flat has no height. */
    private void bounds(Draft start, double[] low, double[] high, double[] scale) {
        int i = 0;
        for (OptionalDouble known : List.of(table.ends().shoulderMm(), table.ends().seatMm())) {
            double least = known.orElse(1);
            double most = known.orElse(Reading.WIDEST_MM);
            set(low, high, scale, i++, least, most, MATTERS_MM);
        }
        for (int k = 0; k < start.nodes().size(); k++) {
            DraftNode node = start.nodes().get(k);
            double reach =
                    !node.crisp()
                            ? start.woodMm()
                            : isMarked(node.x()) || isStep(start.nodes(), k)
                                    ? 0
                                    : table.spacingMm();
            double left = Math.min(reach, room(start, k - 1, k));
            double right = Math.min(reach, room(start, k, k + 1));
            set(low, high, scale, i++, node.x() - left, node.x() + right, MATTERS_MM);
            set(low, high, scale, i++, 1, Reading.WIDEST_MM, MATTERS_MM);
        }
        double butt = start.butt().lengthMm();
        if (butt > 0) {
            boolean stays = isMarked(start.seatX());
            set(
                    low,
                    high,
                    scale,
                    i++,
                    stays ? butt : butt * BUTT_SHARE,
                    stays ? butt : Math.min(butt / BUTT_SHARE, start.woodMm() / 2),
                    MATTERS_MM);
        }
        for (LaidDetail detail : start.details()) {
            // The bounds stand about where the edges were seen, not about where they are now.
            double from = detail.left().x();
            double to = detail.right().x();
            double space = table.spacingMm();
            set(
                    low,
                    high,
                    scale,
                    i++,
                    from - detail.leftOut() * space,
                    from + detail.leftIn() * space,
                    MATTERS_MM);
            set(
                    low,
                    high,
                    scale,
                    i++,
                    to - detail.rightIn() * space,
                    to + detail.rightOut() * space,
                    MATTERS_MM);
            boolean flat = detail.kind() == LaidDetail.Kind.FLAT;
            double height = detail.heightMm();
            double reach = flat ? 0 : Math.abs(height);
            set(low, high, scale, i++, height - reach, height + reach, MATTERS_MM);
        }
    }

    /**
     * Whether a crisp node is one of the two that stand for a step both sides of which were read.
     */
    boolean isStep(List<DraftNode> nodes, int k) {
        boolean before = k > 0 && isStep(nodes.get(k - 1), nodes.get(k));
        return before || k + 1 < nodes.size() && isStep(nodes.get(k), nodes.get(k + 1));
    }

    private boolean isStep(DraftNode before, DraftNode after) {
        return before.crisp()
                && after.crisp()
                && Math.abs(after.x() - before.x() - FirstDraft.STEP_MM) < SAME_MM
                && table.isStep((before.x() + after.x()) / 2);
    }

    /** A crisp place that was put where a reading marks it stays there. */
    private boolean isMarked(double x) {
        return Math.abs(table.markNear(x) - x) < SAME_MM;
    }

    /** How far two neighbours may come towards each other, each; -1 is the shoulder. */
    private static double room(Draft draft, int a, int b) {
        List<DraftNode> nodes = draft.nodes();
        boolean ends = a < 0 || b == nodes.size();
        double from = a < 0 ? 0 : nodes.get(a).x();
        double to = b == nodes.size() ? draft.seatX() : nodes.get(b).x();
        boolean crisp = !ends && nodes.get(a).crisp() && nodes.get(b).crisp();
        double apart = crisp ? Draft.SPACING_MM : SMOOTH_APART_MM;
        // An end stands still, so the whole room is the node's.
        return Math.max(0, (to - from - apart) / (ends ? 1 : 2));
    }

    private static void set(
            double[] low,
            double[] high,
            double[] scale,
            int i,
            double least,
            double most,
            double matters) {
        low[i] = least;
        high[i] = most;
        scale[i] = matters;
    }

    private static Draft draft(Draft start, double[] p) {
        int i = 2;
        List<DraftNode> nodes = new ArrayList<>();
        for (DraftNode node : start.nodes()) {
            nodes.add(new DraftNode(p[i], p[i + 1], node.crisp()));
            i += 2;
        }
        Butt butt = start.butt();
        if (butt.lengthMm() > 0) {
            butt = butt(butt, p[i++]);
        }
        List<LaidDetail> details = new ArrayList<>();
        for (LaidDetail detail : start.details()) {
            details.add(detail.with(p[i], p[i + 1], p[i + 2]));
            i += 3;
        }
        return new Draft(
                start.woodMm(), p[0], p[1], nodes, start.first(), start.last(), details, butt);
    }

    /** The same form of another length, within what a shape may hold. */
    static Butt butt(Butt form, double length) {
        if (form instanceof Butt.Chamfered) {
            return new Butt.Chamfered(Math.max(0.1, Math.min(20, length)));
        }
        return form instanceof Butt.Rounded
                ? new Butt.Rounded(Math.max(0.1, Math.min(40, length)))
                : new Butt.Domed(Math.max(0.5, Math.min(60, length)));
    }

    /** Deviation of each reading, the doubt of its place on the slope included. */
    static double[] weights(
            Table table, Draft draft, double deviation, double placeDeviation, boolean[] counts) {
        double[] weights = new double[table.count()];
        Optional<Outline> outline = draft.outline();
        for (int j = 0; j < weights.length; j++) {
            if (counts[j]) {
                double slope = 0;
                // The last reading says where the wood ends, so its place is in no doubt.
                if (outline.isPresent() && j + 1 < weights.length) {
                    slope = Math.min(STEEP, Math.abs(table.slope(outline.get(), j)));
                }
                weights[j] = 1 / Math.hypot(deviation, slope * placeDeviation);
            }
        }
        return weights;
    }
}
