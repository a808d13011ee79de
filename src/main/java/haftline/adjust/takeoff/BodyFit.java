package haftline.adjust.takeoff;

import haftline.curve.EndSlope;
import haftline.curve.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Finds the fewest nodes whose batten passes the readings: begins with the turns and the corners,
 * gives an end a slope or adds a node while that moves the line by what matters and is no chance,
 * and takes away what is not missed.
 */
final class BodyFit {
    /** Readings of a window over which what the line misses must average out. */
    private static final int[] WINDOWS = {5, 8, 12, 18, 27, 40};

    /** Standard deviations of a window's mean that chance explains, of several hundred windows. */
    private static final double CHANCE = 3;

    /** A share of the tolerance that is not worth a node. */
    private static final double SHARE = 0.25;

    /** Squares that a node, two figures at the best of many places, must save. */
    private static final double NODE_SAVES = 25;

    /** Squares that a slope, one figure, must save. */
    private static final double SLOPE_SAVES = 12;

    /** Places tried for a new node. */
    private static final int PLACES = 14;

    /** Each end is asked twice, for what suits one depends on the other. */
    private static final int TURNS = 4;

    private static final int MOST_NODES = 24;
    private static final int FEW_ROUNDS = 3;
    private static final int ROUNDS = 30;

    /** Distance of a new node from those that are there, mm. */
    private static final double CLEAR_MM = 2;

    private final Table table;
    private final double[] weights;
    private final double toleranceMm;
    private final Effort effort;
    private final DraftFit fit;

    BodyFit(Fitting fitting, double[] weights) {
        this.table = fitting.table();
        this.weights = weights;
        this.toleranceMm = fitting.toleranceMm();
        this.effort = fitting.effort();
        this.fit = new DraftFit(table, weights, effort);
    }

    DraftFit.Fitted of(Draft start) {
        DraftFit.Fitted now = withSlopes(fit.fit(start, ROUNDS));
        while (now.draft().nodes().size() < MOST_NODES && !effort.isSpent()) {
            DraftFit.Fitted richer = withNode(now);
            double saved = now.sum() - richer.sum();
            boolean worth = saved > NODE_SAVES && moved(now.draft(), richer.draft()) > share();
            boolean needed = saved > SLOPE_SAVES && misses(now.draft()) > share();
            if (!worth && !needed) {
                break;
            }
            now = withSlopes(richer);
        }
        return pruned(now);
    }

    private double share() {
        return SHARE * toleranceMm;
    }

    /**
     * Tries each end level, as a shape may ask, or free again. Another slope is not asked for: on a
     * kit with another ferrule it might lie outside of what keeps the shape, a level one never
     * does.
     */
    private DraftFit.Fitted withSlopes(DraftFit.Fitted now) {
        DraftFit.Fitted best = now;
        for (int turn = 0; turn < TURNS && !effort.isSpent(); turn++) {
            boolean first = turn % 2 == 0;
            Draft draft = best.draft();
            EndSlope slope = first ? draft.first() : draft.last();
            EndSlope other = slope.free() ? EndSlope.LEVEL : EndSlope.FREE;
            Draft changed =
                    first
                            ? draft.withSlopes(other, draft.last())
                            : draft.withSlopes(draft.first(), other);
            DraftFit.Fitted fitted = fit.fit(changed, ROUNDS);
            double saved = best.sum() - fitted.sum();
            best = saved > (slope.free() ? SLOPE_SAVES : -SLOPE_SAVES) ? fitted : best;
        }
        return best;
    }

    private DraftFit.Fitted withNode(DraftFit.Fitted now) {
        Draft draft = now.draft();
        Optional<Outline> outline = draft.outline();
        if (outline.isEmpty()) {
            return now;
        }
        List<DraftFit.Fitted> tried = new ArrayList<>();
        for (int k = 0; k < PLACES; k++) {
            double x = draft.seatX() * (k + 0.5) / PLACES;
            boolean clear =
                    draft.nodes().stream().allMatch(node -> Math.abs(node.x() - x) > CLEAR_MM);
            if (clear && x > CLEAR_MM && draft.seatX() - x > CLEAR_MM) {
                List<DraftNode> nodes = new ArrayList<>(draft.nodes());
                nodes.add(new DraftNode(x, 2 * outline.get().r(x), false));
                nodes.sort(Comparator.comparingDouble(DraftNode::x));
                tried.add(fit.fit(draft.withNodes(nodes), FEW_ROUNDS));
            }
        }
        return tried.stream()
                .sorted(Comparator.comparingDouble(DraftFit.Fitted::sum))
                .limit(2)
                .map(one -> fit.fit(one.draft(), ROUNDS))
                .min(Comparator.comparingDouble(DraftFit.Fitted::sum))
                .filter(one -> one.sum() < now.sum())
                .orElse(now);
    }

    private DraftFit.Fitted pruned(DraftFit.Fitted all) {
        DraftFit.Fitted now = all;
        DraftFit.Fitted before;
        do {
            before = now;
            now = prunedOnce(now);
        } while (now != before);
        return now;
    }

    private DraftFit.Fitted prunedOnce(DraftFit.Fitted all) {
        DraftFit.Fitted now = all;
        for (int i = 0; i < now.draft().nodes().size() && !effort.isSpent(); ) {
            if (fit.isStep(now.draft().nodes(), i)) {
                // Readings either side of a step bear both of its nodes out.
                i++;
                continue;
            }
            List<DraftNode> nodes = new ArrayList<>(now.draft().nodes());
            DraftNode node = nodes.remove(i);
            DraftFit.Fitted without = fit.fit(now.draft().withNodes(nodes), ROUNDS);
            if (isAsGood(without, now)) {
                now = without;
                continue;
            }
            if (node.crisp()) {
                nodes.add(i, new DraftNode(node.x(), node.diameterMm(), false));
                DraftFit.Fitted smooth = fit.fit(now.draft().withNodes(nodes), ROUNDS);
                now = isAsGood(smooth, now) ? smooth : now;
            }
            i++;
        }
        return now;
    }

    private boolean isAsGood(DraftFit.Fitted simpler, DraftFit.Fitted than) {
        boolean chance = simpler.sum() - than.sum() < SLOPE_SAVES;
        boolean small = moved(simpler.draft(), than.draft()) < share();
        return simpler.sum() < Double.POSITIVE_INFINITY
                && (chance || small)
                && misses(simpler.draft()) <= Math.max(share(), misses(than.draft()));
    }

    /** How far two lines lie apart at the readings, mm on the diameter. */
    private double moved(Draft a, Draft b) {
        Outline one = a.outline().orElse(null);
        Outline other = b.outline().orElse(null);
        if (one == null || other == null) {
            return Double.POSITIVE_INFINITY;
        }
        double most = 0;
        for (int j = 0; j < table.count(); j++) {
            if (weights[j] > 0) {
                most = Math.max(most, Math.abs(table.fitted(one, j) - table.fitted(other, j)));
            }
        }
        return most;
    }

    /**
     * How far the line runs beside the readings over some window, less what chance explains, mm on
     * the diameter.
     */
    double misses(Draft draft) {
        Outline outline = draft.outline().orElse(null);
        if (outline == null) {
            return Double.POSITIVE_INFINITY;
        }
        double[] residuals = table.residuals(outline, weights);
        double[] sums = new double[residuals.length + 1];
        double[] deviations = new double[residuals.length + 1];
        int count = 0;
        for (int j = 0; j < residuals.length; j++) {
            if (weights[j] > 0) {
                sums[count + 1] = sums[count] + residuals[j];
                deviations[count + 1] = deviations[count] + 1 / weights[j];
                count++;
            }
        }
        double worst = 0;
        for (int window : WINDOWS) {
            for (int j = window; j <= count; j++) {
                double mean = Math.abs(sums[j] - sums[j - window]) / window;
                double deviation = (deviations[j] - deviations[j - window]) / window;
                double over = (mean - CHANCE / Math.sqrt(window)) * deviation;
                worst = Math.max(worst, over);
            }
        }
        return worst;
    }
}
