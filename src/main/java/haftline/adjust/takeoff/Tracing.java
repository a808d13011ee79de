package haftline.adjust.takeoff;

import haftline.curve.Outline;
import haftline.measure.Checks;
import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** The way from readings to a shape, step by step. */
final class Tracing {
    /** A deviation under this share of the tolerance is not worth telling apart from none. */
    private static final double LEAST_SHARE = 0.125;

    /**
     * How much more, in squares over the variance, two stretches may cost joined smoothly before
     * the place between them is taken for crisp: never by chance, then once in 20,000 cuts, in 150,
     * in 12 (chi-square with two parameters between the hypotheses). Each is tried, the cheapest
     * shape that comes of them stands.
     */
    private static final double[] CLEAR = {200, 20, 10, 5};

    private final String name;

    /** Strays no more readings apart than this are neighbours: the width of a small detail. */
    private static final int NEAR = 3;

    /** Readings that are tried as the one stray among neighbours. */
    private static final int MOST_ALONE = 8;

    private final List<Reading> readings;
    private final Table table;
    private final Fitting fitting;

    Tracing(List<Reading> given, double toleranceMm, String name, Ends ends, Effort effort) {
        Checks.withinMm("tolerance", toleranceMm, 0.01, 5);
        if (given.size() < TakeOff.FEWEST) {
            throw new IllegalArgumentException(
                    given.size() + " readings: expected " + TakeOff.FEWEST + " or more");
        }
        if (given.size() > TakeOff.MOST) {
            throw new IllegalArgumentException(
                    "more than "
                            + TakeOff.MOST
                            + " readings: one every millimetre or two is plenty, leave some out");
        }
        this.name = name;
        List<Reading> sorted = new ArrayList<>(given);
        if (given.get(0).x() > given.get(given.size() - 1).x()) {
            // Measured from the butt: the two sides of a step come the other way round.
            Collections.reverse(sorted);
        }
        sorted.sort(Comparator.comparingDouble(Reading::x));
        double start = sorted.get(0).x();
        Checks.withinMm(
                "length that the readings span",
                sorted.get(sorted.size() - 1).x() - start,
                10,
                Reading.LONGEST_MM);
        double[] x = new double[sorted.size()];
        double[] d = new double[x.length];
        for (int j = 0; j < x.length; j++) {
            x[j] = sorted.get(j).x() - start;
            d[j] = sorted.get(j).diameterMm();
        }
        table = new Table(x, d, ends);
        readings = List.copyOf(sorted);
        double deviation = Math.max(LEAST_SHARE * toleranceMm, Noise.deviation(x, d));
        fitting = new Fitting(table, deviation, toleranceMm, effort);
    }

    Optional<TakeOff> takeOff() {
        boolean[] counts = new Strays(table, fitting.deviation()).counts();
        Traced best = best(counts);
        if (best.draft() != null
                && !Arrays.equals(counts, best.counts())
                && !fitting.effort().isSpent()) {
            // A reading that came back, or went, may have a say in where the cuts are.
            best = best.or(best(best.counts()));
        }
        if (best.draft() != null) {
            List<boolean[]> others = alone(best.counts());
            others.addAll(lonely(best.draft(), best.counts()));
            for (boolean[] other : others) {
                best = fitting.effort().isSpent() ? best : best.or(best(other));
            }
            best = withOutermost(best);
        }
        return best.draft() == null ? Optional.empty() : result(best.draft(), best.counts());
    }

    /**
     * Where neighbours are named strays together, one of them, or one between them, may have hidden
     * the shape of the rest: each in turn left out, the others counted again.
     */
    private static List<boolean[]> alone(boolean[] counts) {
        boolean[] together = new boolean[counts.length];
        for (int a = 0; a < counts.length; a++) {
            for (int b = a + 1; b <= Math.min(counts.length - 1, a + NEAR); b++) {
                if (!counts[a] && !counts[b]) {
                    Arrays.fill(together, a, b + 1, true);
                }
            }
        }
        List<boolean[]> others = new ArrayList<>();
        for (int j = 0; j < counts.length && others.size() < MOST_ALONE; j++) {
            if (together[j]) {
                boolean[] other = new boolean[counts.length];
                for (int k = 0; k < counts.length; k++) {
                    other[k] = k != j && (counts[k] || together[k]);
                }
                others.add(other);
            }
        }
        return others;
    }

    /**
     * Where a turn between two crisp places stands on a reading or two, it may be a slip that was
     * taken for shape: each left out.
     */
    private List<boolean[]> lonely(Draft draft, boolean[] counts) {
        List<boolean[]> others = new ArrayList<>();
        for (int i = 1; i + 1 < draft.nodes().size(); i++) {
            DraftNode before = draft.nodes().get(i - 1);
            DraftNode after = draft.nodes().get(i + 1);
            if (draft.nodes().get(i).crisp() || !before.crisp() || !after.crisp()) {
                continue;
            }
            int[] within =
                    IntStream.range(0, counts.length)
                            .filter(j -> table.x(j) > before.x() && table.x(j) < after.x())
                            .filter(j -> counts[j] && !table.isStep(table.x(j)))
                            .toArray();
            for (int j : within.length <= NEAR ? within : new int[0]) {
                boolean[] other = counts.clone();
                other[j] = false;
                others.add(other);
            }
        }
        return others;
    }

    /**
     * Beyond the first and the last reading there is none that would hold the line: left out, one
     * of them may lie far off a line that was free to leave it. Each is counted again, and stays
     * where the shape needs nothing more for its sake.
     */
    private Traced withOutermost(Traced without) {
        Traced best = without;
        for (int j : new int[] {0, table.count() - 1}) {
            if (!best.counts()[j] && !fitting.effort().isSpent()) {
                boolean[] other = best.counts().clone();
                other[j] = true;
                Traced with = best(other);
                boolean isSimple =
                        with.draft() != null
                                && Fitting.figures(with.draft()) <= Fitting.figures(best.draft());
                best = isSimple ? best.or(with) : best;
            }
        }
        return best;
    }

    /** The best shape where the cuts are looked for in some of the readings. */
    private Traced best(boolean[] counts) {
        Kept kept = Kept.of(table, counts);
        Traced best = Traced.NONE;
        for (List<Stretch> row : kept.segmentation(fitting.deviation()).rows()) {
            for (Sight sight : sights(row, kept)) {
                if (best.draft() == null || !fitting.effort().isSpent()) {
                    best = best.or(traced(sight));
                }
            }
        }
        if (best.draft() == null || fitting.effort().isSpent()) {
            return best;
        }
        SecondLook look = new SecondLook(fitting);
        Traced first = best;
        for (Sight sight : look.at(first)) {
            Traced other = traced(sight);
            best = other.score() + look.price() < first.score() ? best.or(other) : best;
        }
        return best;
    }

    /** One row of stretches, as it looks with more and more of its cuts taken for crisp. */
    private List<Sight> sights(List<Stretch> row, Kept kept) {
        Butt butt = new Butt.Square();
        Stretch end = row.get(row.size() - 1);
        List<Stretch> stretches = row;
        int bodyReadings = kept.count();
        if (end.kind().isButt()) {
            butt = butt(end, kept.x());
            bodyReadings = end.from();
            stretches = row.subList(0, row.size() - 1);
        }
        Kept body = kept.first(bodyReadings);
        List<Sight> sights = new ArrayList<>();
        List<Run> before = List.of();
        for (double clear : CLEAR) {
            List<Run> runs = Run.of(stretches, body.x(), body.d(), fitting.deviation(), clear);
            if (!runs.equals(before)) {
                DetailSearch.Reading seen =
                        new DetailSearch(runs, body.x(), body.d(), fitting.deviation()).cheapest();
                sights.add(new Sight(kept, bodyReadings, butt, seen.body(), seen.details()));
            }
            before = runs;
        }
        return sights;
    }

    private static Butt butt(Stretch end, double[] x) {
        double length = x[end.to()] - end.start();
        Butt form =
                switch (end.kind()) {
                    case CHAMFERED -> new Butt.Chamfered(1);
                    case ROUNDED -> new Butt.Rounded(1);
                    default -> new Butt.Domed(1);
                };
        return DraftFit.butt(form, length);
    }

    /** The best draft of what was seen. */
    private Traced traced(Sight sight) {
        Draft draft = new FirstDraft(fitting).of(sight);
        if (draft.outline().isEmpty()) {
            return Traced.NONE;
        }
        boolean[] counts = new boolean[table.count()];
        for (int row : sight.kept().rows()) {
            counts[row] = true;
        }
        draft = fitting.fitWithoutStrays(draft, counts);
        draft = new Marks(fitting).of(withoutFaint(draft, counts), counts);
        return new Traced(draft, counts, fitting.score(draft, counts), sight);
    }

    /**
     * What came of a sight.
     *
     * @param draft the fitted shape; null where there is none
     * @param counts readings that count for it
     * @param score what both cost
     * @param sight what it came of
     */
    record Traced(Draft draft, boolean[] counts, double score, Sight sight) {
        static final Traced NONE = new Traced(null, null, Double.POSITIVE_INFINITY, null);

        Traced or(Traced other) {
            return other.score < score ? other : this;
        }
    }

    /** Details that the fit has left with next to no height were none. */
    private Draft withoutFaint(Draft draft, boolean[] counts) {
        List<LaidDetail> kept =
                draft.details().stream()
                        .filter(
                                one ->
                                        one.kind() == LaidDetail.Kind.FLAT
                                                || Math.abs(one.heightMm())
                                                        >= DetailSearch.LEAST_MM)
                        .toList();
        return kept.size() == draft.details().size()
                ? draft
                : fitting.fit(draft.withDetails(kept), counts).draft();
    }

    private Optional<TakeOff> result(Draft fitted, boolean[] counts) {
        Draft draft = Rounded.of(fitted);
        Optional<Outline> outline = draft.outline();
        if (outline.isEmpty()) {
            draft = fitted;
            outline = fitted.outline();
        }
        List<Residual> residuals = new ArrayList<>();
        double[] off = new double[table.count()];
        int n = 0;
        for (int j = 0; j < table.count(); j++) {
            double line = table.fitted(outline.orElseThrow(), j);
            residuals.add(new Residual(readings.get(j), table.x(j), line, !counts[j]));
            if (counts[j]) {
                off[n++] = Math.abs(table.d(j) - line);
            }
        }
        return Optional.of(
                new TakeOff(
                        ShapeOf.draft(draft, name),
                        draft.shoulderMm(),
                        draft.seatMm(),
                        draft.woodMm(),
                        outline.orElseThrow(),
                        residuals,
                        Noise.deviation(Arrays.copyOf(off, n)),
                        fitting.effort().isSpent()));
    }
}
