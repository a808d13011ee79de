package haftline.adjust.takeoff;

import haftline.curve.EndSlope;
import haftline.curve.Outline;
import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Turns what was seen into a draft: the body fitted by itself, the details laid over it. */
final class FirstDraft {
    /** A corner and a turn nearer than this are one, mm; so are an end and a turn. */
    private static final double SAME_PLACE_MM = 1.5;

    /** A turn stands out by this many deviations; a weaker one is found where it is missed. */
    private static final double TURN = 3;

    /** A step of the body becomes two crisp nodes this far apart, mm. */
    static final double STEP_MM = 0.55;

    private final Fitting fitting;

    FirstDraft(Fitting fitting) {
        this.fitting = fitting;
    }

    Draft of(Sight sight) {
        return dressed(fitted(corners(sight), bodyOnly(sight)), sight.details());
    }

    /** The body as it was seen: corners, steps and turns. */
    private Draft corners(Sight sight) {
        List<Run> body = sight.body();
        double[] x = sight.kept().first(sight.bodyReadings()).x();
        double[] d = sight.kept().first(sight.bodyReadings()).d();
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
        double wood = fitting.table().x(fitting.table().count() - 1);
        double seat = wood - sight.butt().lengthMm();
        List<DraftNode> corners = List.copyOf(nodes);
        double least = Math.max(TURN * fitting.deviation(), fitting.toleranceMm());
        for (Run run : body) {
            for (DraftNode turn : Turns.of(run, x, d, least)) {
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
        return new Draft(
                wood,
                fitting.table().ends().shoulderMm().orElse(Math.max(1, d[0])),
                fitting.table().ends().seatMm().orElse(Math.max(1, d[d.length - 1])),
                nodes,
                EndSlope.FREE,
                EndSlope.FREE,
                List.of(),
                sight.butt());
    }

    private boolean[] bodyOnly(Sight sight) {
        int[] rows = sight.kept().rows();
        boolean[] counts = new boolean[fitting.table().count()];
        for (Run run : sight.body()) {
            for (int k = run.from(); k <= run.to(); k++) {
                counts[rows[k]] = true;
            }
        }
        for (int k = sight.bodyReadings(); k < rows.length; k++) {
            counts[rows[k]] = true;
        }
        return counts;
    }

    private Draft fitted(Draft draft, boolean[] counts) {
        DraftFit.Fitted best = fitting.fit(fitting.fit(draft, counts).draft(), counts);
        double length = best.draft().butt().lengthMm();
        if (draft.butt() instanceof Butt.Chamfered || draft.butt() instanceof Butt.Rounded) {
            // Two or three readings on a small form tell one from the other only together with the
            // body.
            for (Butt other : List.of(new Butt.Chamfered(1), new Butt.Rounded(1))) {
                Draft changed = best.draft().withButt(DraftFit.butt(other, length));
                DraftFit.Fitted fitted = fitting.fit(changed, counts);
                best = fitted.sum() < best.sum() ? fitted : best;
            }
        }
        return new BodyFit(fitting, fitting.weights(best.draft(), counts)).of(best.draft()).draft();
    }

    private static Draft dressed(Draft draft, List<DetailSearch.Seen> seen) {
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
}
