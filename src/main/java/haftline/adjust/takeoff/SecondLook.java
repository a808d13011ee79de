package haftline.adjust.takeoff;

import haftline.curve.Outline;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks once more at the body of the best shape: where a bead or cove would do instead of nodes, or
 * pass the readings so much better that it pays for its figures. The scatter may have drawn the
 * first cuts to places from which no such detail could be seen.
 */
final class SecondLook {
    /** Widest detail that is looked for, mm. */
    private static final double WIDEST_MM = 20;

    /** Narrowest: an arc's three figures say nothing of fewer readings. */
    private static final int FEWEST = 5;

    /** Most that are tried by a fit of all figures. */
    private static final int MOST = 2;

    /** Figures of a detail, as they are paid for. */
    private static final double FIGURES = 4;

    /** Figures more that a fit of all may save where a node stands in the detail's place. */
    private static final double HOPE = 1;

    /**
     * Figures more that a detail is asked for here: it is the best of some hundred places and
     * widths, so chance alone now and then saves what a first look would take for a detail.
     */
    private static final double SEARCH = 2;

    private final Fitting fitting;

    SecondLook(Fitting fitting) {
        this.fitting = fitting;
    }

    /** A detail that might be: readings from, to, both included. */
    private record Chance(int run, int from, int to, double gain) {}

    /** What a shape with a detail more must save. */
    double price() {
        return SEARCH * Math.log(fitting.table().count());
    }

    /** Other ways to see the readings, the most promising first. */
    List<Sight> at(Tracing.Traced best) {
        Sight sight = best.sight();
        double[] squares = squares(best);
        List<Chance> chances = new ArrayList<>();
        for (int run = 0; run < sight.body().size(); run++) {
            collect(chances, best, run, squares);
        }
        chances.sort(Comparator.comparingDouble(Chance::gain).reversed());
        List<Sight> sights = new ArrayList<>();
        for (int k = 0; k < Math.min(MOST, chances.size()); k++) {
            sights.add(with(sight, chances.get(k)));
        }
        return sights;
    }

    /** Running sum of the squares over the variance. */
    private double[] squares(Tracing.Traced best) {
        Outline outline = best.draft().outline().orElseThrow();
        double[] residuals =
                fitting.table().residuals(outline, fitting.weights(best.draft(), best.counts()));
        int[] rows = best.sight().kept().rows();
        double[] sums = new double[rows.length + 1];
        for (int k = 0; k < rows.length; k++) {
            sums[k + 1] = sums[k] + residuals[rows[k]] * residuals[rows[k]];
        }
        return sums;
    }

    private void collect(List<Chance> chances, Tracing.Traced best, int index, double[] squares) {
        Sight sight = best.sight();
        Kept kept = sight.kept();
        Run run = sight.body().get(index);
        Segmentation arcs = kept.segmentation(fitting.deviation());
        double parameter = Math.log(kept.count());
        for (int from = run.from() + 1; from < run.to(); from++) {
            Chance most = null;
            for (int to = from + FEWEST - 1; to < run.to(); to++) {
                double left = kept.x()[from];
                double right = kept.x()[to];
                if (right - left > WIDEST_MM) {
                    break;
                }
                double reach = fitting.table().spacingMm();
                long nodes =
                        best.draft().nodes().stream()
                                .filter(n -> n.x() > left - reach && n.x() < right + reach)
                                .count();
                double gain =
                        squares[to + 1]
                                - squares[from]
                                - arcs.arc(from, to)
                                + (2 * nodes - FIGURES + (nodes > 0 ? HOPE : -SEARCH)) * parameter;
                if (gain > 0 && (most == null || gain > most.gain())) {
                    most = new Chance(index, from, to, gain);
                }
            }
            if (most != null) {
                chances.add(most);
            }
        }
    }

    private static Sight with(Sight sight, Chance chance) {
        Run run = sight.body().get(chance.run());
        double[] x = sight.kept().x();
        double[] d = sight.kept().d();
        Cut left = new Cut(Cut.Kind.CORNER, x[chance.from()]);
        Cut right = new Cut(Cut.Kind.CORNER, x[chance.to()]);
        double middle = d[(chance.from() + chance.to()) / 2];
        double height = (middle - (d[chance.from()] + d[chance.to()]) / 2) / 2;
        LaidDetail detail =
                new LaidDetail(
                        height > 0 ? LaidDetail.Kind.BEAD : LaidDetail.Kind.COVE,
                        left.x(),
                        right.x(),
                        Math.max(DetailSearch.LEAST_MM, Math.abs(height)),
                        left,
                        right);
        List<Run> body = new ArrayList<>(sight.body());
        body.set(chance.run(), part(run, run.from(), chance.from(), run.left(), left));
        body.add(chance.run() + 1, part(run, chance.to(), run.to(), right, run.right()));
        List<DetailSearch.Seen> details = new ArrayList<>(sight.details());
        details.add(new DetailSearch.Seen(detail, 0, 0));
        details.sort(Comparator.comparingDouble(one -> one.detail().from()));
        return new Sight(sight.kept(), sight.bodyReadings(), sight.butt(), body, details);
    }

    private static Run part(Run run, int from, int to, Cut left, Cut right) {
        List<Stretch> stretches = new ArrayList<>();
        for (Stretch one : run.stretches()) {
            int first = Math.max(from, one.from());
            int last = Math.min(to, one.to());
            if (first <= last) {
                stretches.add(
                        new Stretch(first, last, one.kind(), one.order(), one.start(), one.cost()));
            }
        }
        return new Run(from, to, left, right, stretches);
    }
}
