package haftline.adjust.takeoff;

import haftline.curve.EndSlope;
import haftline.curve.Outline;
import haftline.measure.Checks;
import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The way from readings to a shape, step by step. */
final class Tracing {
    /**
     * Whoever sets a calliper by a rule's marks misses the place by this, mm (common practice, no
     * source). It takes weight from readings on steep places.
     */
    private static final double PLACE_MM = 0.05;

    /** A deviation under this share of the tolerance is not worth telling apart from none. */
    private static final double LEAST_SHARE = 0.125;

    /**
     * A reading further off than this many deviations is a stray: chance does so once in 150,000
     * readings of a normal distribution.
     */
    private static final double STRAY = 4.5;

    /** A reading whose neighbours stand this near was taken there on purpose: a narrow groove. */
    private static final double ON_PURPOSE = 0.6;

    /**
     * How much more, in squares over the variance, two stretches may cost joined smoothly before
     * the place between them is taken for crisp: never by chance, then once in 20,000 cuts, in 150,
     * in 12 (chi-square with two parameters between the hypotheses). Each is tried, the cheapest
     * shape that comes of them stands.
     */
    private static final double[] CLEAR = {200, 20, 10, 5};

    /** Squares over the variance that a marked edge may cost: four standard deviations. */
    private static final double MARK_COSTS = 16;

    private static final int MOST_STRAY_ROUNDS = 4;
    private static final int ROUNDS = 40;

    /** A corner and a turn nearer than this are one, mm; so are an end and a turn. */
    private static final double SAME_PLACE_MM = 1.5;

    /** A turn stands out by this many deviations; a weaker one is found where it is missed. */
    private static final double TURN = 3;

    /** A step of the body becomes two crisp nodes this far apart, mm. */
    private static final double STEP_MM = 0.55;

    private final double toleranceMm;
    private final String name;
    private final List<Reading> readings;
    private final Table table;
    private final double start;
    private final double deviation;

    Tracing(List<Reading> given, double toleranceMm, String name, Ends ends) {
        Checks.within("tolerance", toleranceMm, 0.01, 5);
        if (given.size() < TakeOff.FEWEST) {
            throw new IllegalArgumentException(
                    given.size() + " readings: expected " + TakeOff.FEWEST + " or more");
        }
        this.toleranceMm = toleranceMm;
        this.name = name;
        List<Reading> sorted = new ArrayList<>(given);
        if (given.get(0).x() > given.get(given.size() - 1).x()) {
            // Measured from the butt: the two sides of a step come the other way round.
            Collections.reverse(sorted);
        }
        sorted.sort(Comparator.comparingDouble(Reading::x));
        start = sorted.get(0).x();
        Checks.within(
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
        deviation = Math.max(LEAST_SHARE * toleranceMm, Noise.deviation(x, d));
    }

    Optional<TakeOff> takeOff() {
        boolean[] counts = new boolean[table.count()];
        Arrays.fill(counts, true);
        int[] kept = indices(counts);
        List<List<Stretch>> rows = rows(kept);
        for (int round = 0;
                round < MOST_STRAY_ROUNDS && dropLone(rows.get(0), kept, counts);
                round++) {
            kept = indices(counts);
            rows = rows(kept);
        }
        double[] x = pick(table.places(), kept);
        double[] d = pick(table.diameters(), kept);
        Best best = new Best(null, counts, Double.POSITIVE_INFINITY);
        for (List<Stretch> row : rows) {
            Best one = best(row, x, d, kept, counts);
            best = one.score() < best.score() ? one : best;
        }
        return best.draft() == null ? Optional.empty() : result(best.draft(), best.counts());
    }

    /** The best draft of one row of stretches. */
    private Best best(List<Stretch> row, double[] x, double[] d, int[] kept, boolean[] counts) {
        Butt butt = new Butt.Square();
        Stretch end = row.get(row.size() - 1);
        List<Stretch> body = row;
        int bodyReadings = kept.length;
        if (end.kind().isButt()) {
            butt = butt(end, x);
            bodyReadings = end.from();
            body = row.subList(0, row.size() - 1);
        }
        double[] bodyX = Arrays.copyOf(x, bodyReadings);
        double[] bodyD = Arrays.copyOf(d, bodyReadings);
        Best best = new Best(null, counts, Double.POSITIVE_INFINITY);
        List<Run> before = List.of();
        for (double clear : CLEAR) {
            List<Run> runs = Run.of(body, bodyX, bodyD, deviation, clear);
            if (!runs.equals(before)) {
                Best one = best(runs, bodyX, bodyD, butt, kept, counts);
                best = one.score() < best.score() ? one : best;
            }
            before = runs;
        }
        return best;
    }

    /** A draft, the readings that count for it, and what both cost. */
    private record Best(Draft draft, boolean[] counts, double score) {}

    /** The best draft where these places are crisp. */
    private Best best(
            List<Run> runs, double[] x, double[] d, Butt butt, int[] kept, boolean[] all) {
        DetailSearch.Reading seen = new DetailSearch(runs, x, d, deviation).cheapest();
        Draft draft = draft(seen.body(), x, d, butt);
        draft = fitBody(draft, bodyOnly(seen.body(), kept, x.length));
        draft = dress(draft, seen.details());
        boolean[] counts = all.clone();
        if (draft.outline().isEmpty()) {
            return new Best(null, counts, Double.POSITIVE_INFINITY);
        }
        draft = fitAll(draft, counts);
        for (int round = 0; round < MOST_STRAY_ROUNDS && dropStrays(draft, counts); round++) {
            draft = fitAll(draft, counts);
        }
        draft = marked(withoutFaint(draft, counts), counts);
        return new Best(draft, counts, score(draft, counts));
    }

    /** Squares over the variance, a stray at its limit, and the price of the figures. */
    private double score(Draft draft, boolean[] counts) {
        Outline outline = draft.outline().orElseThrow();
        double[] weights = DraftFit.weights(table, draft, deviation, PLACE_MM, counts);
        double sum = 0;
        for (double residual : table.residuals(outline, weights)) {
            sum += residual * residual;
        }
        for (boolean one : counts) {
            sum += one ? 0 : STRAY * STRAY;
        }
        long crisp = draft.nodes().stream().filter(DraftNode::crisp).count();
        double butt = draft.butt().lengthMm() > 0 ? 2 : 0;
        double figures = 2.0 * draft.nodes().size() + crisp + 4.0 * draft.details().size() + butt;
        return sum + figures * Math.log(counts.length);
    }

    private List<List<Stretch>> rows(int[] kept) {
        return new Segmentation(
                        pick(table.places(), kept),
                        pick(table.diameters(), kept),
                        deviation,
                        PLACE_MM)
                .rows();
    }

    private static int[] indices(boolean[] counts) {
        int[] kept = new int[counts.length];
        int n = 0;
        for (int j = 0; j < counts.length; j++) {
            if (counts[j]) {
                kept[n++] = j;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    private static double[] pick(double[] all, int[] kept) {
        double[] picked = new double[kept.length];
        for (int k = 0; k < kept.length; k++) {
            picked[k] = all[kept[k]];
        }
        return picked;
    }

    /**
     * Leaves out each reading that stands alone between two stretches; true where there was one.
     */
    private boolean dropLone(List<Stretch> stretches, int[] kept, boolean[] counts) {
        boolean dropped = false;
        for (int k = 1; k + 1 < stretches.size(); k++) {
            Stretch stretch = stretches.get(k);
            int j = stretch.from();
            if (stretch.count() == 1) {
                double near =
                        Math.min(
                                table.x(kept[j]) - table.x(kept[j - 1]),
                                table.x(kept[j + 1]) - table.x(kept[j]));
                if (near >= ON_PURPOSE * table.spacingMm()) {
                    counts[kept[j]] = false;
                    dropped = true;
                }
            }
        }
        return dropped;
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

    /** The body as it was seen: corners, steps and turns. */
    private Draft draft(List<Run> body, double[] x, double[] d, Butt butt) {
        List<DraftNode> nodes = new ArrayList<>();
        for (int k = 1; k < body.size(); k++) {
            Run before = body.get(k - 1);
            Run after = body.get(k);
            if (before.to() + 1 != after.from()) {
                continue;
            }
            double place = after.left().x();
            if (after.left().kind() == Cut.Kind.STEP) {
                nodes.add(new DraftNode(place - STEP_MM / 2, d[before.to()], true));
                nodes.add(new DraftNode(place + STEP_MM / 2, d[after.from()], true));
            } else {
                nodes.add(new DraftNode(place, (d[before.to()] + d[after.from()]) / 2, true));
            }
        }
        double wood = table.x(table.count() - 1);
        double seat = wood - butt.lengthMm();
        List<DraftNode> corners = List.copyOf(nodes);
        for (Run run : body) {
            for (DraftNode turn : Turns.of(run, x, d, Math.max(TURN * deviation, toleranceMm))) {
                boolean apart =
                        turn.x() > SAME_PLACE_MM
                                && seat - turn.x() > SAME_PLACE_MM
                                && corners.stream()
                                        .noneMatch(
                                                node ->
                                                        Math.abs(node.x() - turn.x())
                                                                < SAME_PLACE_MM);
                if (apart) {
                    nodes.add(turn);
                }
            }
        }
        nodes.sort(Comparator.comparingDouble(DraftNode::x));
        Draft draft =
                new Draft(
                        wood,
                        table.ends().shoulderMm().orElse(Math.max(1, d[0])),
                        table.ends().seatMm().orElse(Math.max(1, d[d.length - 1])),
                        nodes,
                        EndSlope.FREE,
                        EndSlope.FREE,
                        List.of(),
                        butt);
        return draft;
    }

    private boolean[] bodyOnly(List<Run> body, int[] kept, int bodyReadings) {
        boolean[] counts = new boolean[table.count()];
        for (Run run : body) {
            for (int k = run.from(); k <= run.to(); k++) {
                counts[kept[k]] = true;
            }
        }
        for (int k = bodyReadings; k < kept.length; k++) {
            counts[kept[k]] = true;
        }
        return counts;
    }

    private Draft fitBody(Draft draft, boolean[] counts) {
        DraftFit.Fitted best = fitOnce(fitOnce(draft, counts).draft(), counts);
        double length = best.draft().butt().lengthMm();
        if (draft.butt() instanceof Butt.Chamfered || draft.butt() instanceof Butt.Rounded) {
            // Two or three readings on a small form tell one from the other only together with the
            // body.
            for (Butt other : List.of(new Butt.Chamfered(1), new Butt.Rounded(1))) {
                Draft changed = best.draft().withButt(DraftFit.butt(other, length));
                DraftFit.Fitted fitted = fitOnce(changed, counts);
                best = fitted.sum() < best.sum() ? fitted : best;
            }
        }
        double[] weights = DraftFit.weights(table, best.draft(), deviation, PLACE_MM, counts);
        return new BodyFit(table, weights, toleranceMm).of(best.draft()).draft();
    }

    private DraftFit.Fitted fitOnce(Draft draft, boolean[] counts) {
        double[] weights = DraftFit.weights(table, draft, deviation, PLACE_MM, counts);
        return new DraftFit(table, weights).fit(draft, ROUNDS);
    }

    private Draft dress(Draft draft, List<DetailSearch.Seen> seen) {
        Optional<Outline> body = draft.outline();
        List<LaidDetail> details = new ArrayList<>();
        for (DetailSearch.Seen one : seen) {
            LaidDetail detail = one.detail();
            if (detail.kind() == LaidDetail.Kind.FILLET && body.isPresent()) {
                double level = body.get().r((detail.from() + detail.to()) / 2);
                details.add(detail.with(detail.from(), detail.to(), one.level() / 2 - level));
            } else {
                details.add(detail);
            }
        }
        return draft.withDetails(details);
    }

    private Draft fitAll(Draft draft, boolean[] counts) {
        return fitOnce(draft, counts).draft();
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
                : fitAll(draft.withDetails(kept), counts);
    }

    /**
     * Puts each edge of a detail where a reading marks it, unless the readings speak against it.
     */
    private Draft marked(Draft fitted, boolean[] counts) {
        Draft now = fitted;
        double sum = fitOnce(now, counts).sum();
        List<Draft> tried = new ArrayList<>();
        double seat = table.markNear(now.seatX());
        if (now.butt().lengthMm() > 0 && !Double.isNaN(seat)) {
            tried.add(now.withButt(DraftFit.butt(now.butt(), now.woodMm() - seat)));
        }
        for (int i = 0; i < now.nodes().size(); i++) {
            DraftNode node = now.nodes().get(i);
            double mark = table.markNear(node.x());
            if (node.crisp() && !Double.isNaN(mark)) {
                List<DraftNode> nodes = new ArrayList<>(now.nodes());
                nodes.set(i, new DraftNode(mark, node.diameterMm(), true));
                tried.add(now.withNodes(nodes));
            }
        }
        for (Draft one : tried) {
            DraftFit.Fitted moved = fitOnce(one, counts);
            if (moved.sum() < sum + MARK_COSTS) {
                now = moved.draft();
                sum = moved.sum();
            }
        }
        for (int i = 0; i < fitted.details().size(); i++) {
            for (boolean left : new boolean[] {true, false}) {
                LaidDetail detail = now.details().get(i);
                Cut edge = left ? detail.left() : detail.right();
                double near = table.markNear(left ? detail.from() : detail.to());
                for (double mark : new double[] {edge.x(), near}) {
                    boolean step = edge.kind() == Cut.Kind.STEP || mark == near;
                    if (!detail.isOnChord() || Double.isNaN(mark) || !step) {
                        continue;
                    }
                    List<LaidDetail> details = new ArrayList<>(now.details());
                    details.set(i, detail.markedAt(left, mark));
                    DraftFit.Fitted moved = fitOnce(now.withDetails(details), counts);
                    if (moved.sum() < sum + MARK_COSTS) {
                        now = moved.draft();
                        sum = moved.sum();
                        break;
                    }
                }
            }
        }
        return now;
    }

    private boolean dropStrays(Draft draft, boolean[] counts) {
        Outline outline = draft.outline().orElseThrow();
        double[] weights = DraftFit.weights(table, draft, deviation, PLACE_MM, counts);
        boolean dropped = false;
        for (int j = 0; j < weights.length; j++) {
            double off = Math.abs(table.d(j) - table.fitted(outline, j));
            if (counts[j] && off * weights[j] > STRAY && off > toleranceMm) {
                counts[j] = false;
                dropped = true;
            }
        }
        return dropped;
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
                        Noise.deviation(Arrays.copyOf(off, n))));
    }
}
