package haftline.adjust.takeoff;

import haftline.curve.Outline;
import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Fits the figures of a draft to readings, its structure as it stands. */
final class DraftFit {
    /** How far a butt's form may be drawn out of what was seen first, as a share. */
    private static final double BUTT_SHARE = 0.5;

    /** A pole's endless slope, made finite: a reading there says nothing of the diameter. */
    private static final double STEEP = 1e3;

    /** What matters of a diameter or place, mm. */
    private static final double MATTERS_MM = 1;

    private final Table table;
    private final double[] weights;

    /**
     * Sets a problem.
     *
     * @param table the readings
     * @param weights 1 over the deviation of each, 0 for one that does not count
     */
    DraftFit(Table table, double[] weights) {
        this.table = table;
        this.weights = weights;
    }

    /**
     * A fitted draft.
     *
     * @param draft its figures
     * @param sum squares over the variance; infinite where there is no such shape
     */
    record Fitted(Draft draft, double sum) {}

    Fitted fit(Draft start, int rounds) {
        double[] at = parameters(start);
        double[] low = new double[at.length];
        double[] high = new double[at.length];
        double[] scale = new double[at.length];
        bounds(start, low, high, scale);
        LeastSquares.Fit fit =
                new LeastSquares(p -> residuals(draft(start, p)), low, high, scale)
                        .from(at, rounds, 1e-5);
        return new Fitted(draft(start, fit.parameters()), fit.sum());
    }

    private double[] residuals(Draft draft) {
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
        for (; i < 2; i++) {
            set(low, high, scale, i, 1, Reading.WIDEST_MM, MATTERS_MM);
        }
        for (DraftNode node : start.nodes()) {
            double reach = node.crisp() ? table.spacingMm() : start.woodMm();
            set(low, high, scale, i++, node.x() - reach, node.x() + reach, MATTERS_MM);
            set(low, high, scale, i++, 1, Reading.WIDEST_MM, MATTERS_MM);
        }
        double butt = start.butt().lengthMm();
        if (butt > 0) {
            set(
                    low,
                    high,
                    scale,
                    i++,
                    butt * BUTT_SHARE,
                    Math.min(butt / BUTT_SHARE, start.woodMm() / 2),
                    MATTERS_MM);
        }
        for (LaidDetail detail : start.details()) {
            double left = detail.leftFree() ? table.spacingMm() : 0;
            double right = detail.rightFree() ? table.spacingMm() : 0;
            set(low, high, scale, i++, detail.from() - left, detail.from() + left, MATTERS_MM);
            set(low, high, scale, i++, detail.to() - right, detail.to() + right, MATTERS_MM);
            boolean flat = detail.kind() == LaidDetail.Kind.FLAT;
            double height = detail.heightMm();
            double reach = flat ? 0 : Math.abs(height);
            set(low, high, scale, i++, height - reach, height + reach, MATTERS_MM);
        }
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
        return new Draft(start.woodMm(), p[0], p[1], nodes, start.first(), start.last(), details, butt);
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
