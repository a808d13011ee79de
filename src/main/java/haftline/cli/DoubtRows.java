package haftline.cli;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.EndDoubt;
import haftline.adjust.doubt.Proportion;
import haftline.adjust.doubt.Spread;
import haftline.adjust.doubt.TwoWays;
import haftline.adjust.doubt.Weight;
import haftline.adjust.doubt.ZoneDoubt;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** The rows of a piece's page that say what chance makes of it. */
final class DoubtRows {
    private static final String MARGIN = "Doubt";

    /** An input that explains less is not worth a word. */
    private static final double LEAST_WEIGHT = 0.02;

    private final Paper paper;
    private final LengthText lengths;

    private DoubtRows(Paper paper, LengthText lengths) {
        this.paper = paper;
        this.lengths = lengths;
    }

    static void write(Paper paper, LengthText lengths, TwoWays doubt) {
        DoubtRows rows = new DoubtRows(paper, lengths);
        Doubt stated = doubt.stated();
        paper.row(
                MARGIN,
                "made",
                String.format(Locale.ROOT, "%,d", stated.handles())
                        + " handles in figures, seed "
                        + stated.seed()
                        + "; parts, turning, drilling and stock as chance has them");
        rows.thin(doubt);
        rows.end(stated.end());
        rows.spread("over the limit", stated.leastWall(), lengths.unit(), true);
        rows.spread("balance", stated.balance(), lengths.unit() + " behind the front", true);
        rows.spread("mass", stated.mass(), "g", false);
        rows.matters("for the wall", stated.weights(), true);
        rows.matters("for balance", stated.weights(), false);
        paper.blank();
    }

    private void thin(TwoWays doubt) {
        Doubt stated = doubt.stated();
        ZoneDoubt worst = stated.worst();
        boolean one = worst.under().count() == stated.under().count();
        String rule =
                stated.under().count() == 0
                        ? "a wall's rule"
                        : one
                                ? "the "
                                        + lengths.contour(worst.limitMm())
                                        + " "
                                        + lengths.unit()
                                        + " rule "
                                        + worst.where()
                                : "a wall's rule, mostly " + worst.where();
        paper.row(
                MARGIN,
                "too thin",
                stated.under().inWords()
                        + " would break "
                        + rule
                        + interval(stated.under())
                        + "; "
                        + doubt.otherInWords());
        if (stated.stopped().count() > 0) {
            paper.row(
                    MARGIN,
                    "not to be made",
                    stated.stopped().inWords() + " under the least wall that is made at all");
        }
    }

    private void end(EndDoubt end) {
        paper.row(
                MARGIN,
                "bore's end",
                end.under().inWords()
                        + " would leave less than "
                        + lengths.contour(end.limitMm())
                        + " "
                        + lengths.unit()
                        + " "
                        + end.where()
                        + interval(end.under())
                        + (end.stopped().count() > 0
                                ? ", " + end.stopped().inWords() + " less than is made at all"
                                : ""));
        spread("wood left", end.left(), lengths.unit(), true);
    }

    private static String interval(Proportion share) {
        return " (95"
                + Paper.JOINED
                + "% interval after Wilson: "
                + percent(share.low())
                + " to "
                + percent(share.high())
                + Paper.JOINED
                + "%)";
    }

    private static String percent(double share) {
        double rest = Math.min(share, 1 - share);
        return NumberText.upTo(100 * share, rest < 0.001 ? 3 : rest < 0.1 ? 2 : 1);
    }

    private void spread(String label, Spread spread, String unit, boolean length) {
        paper.row(
                MARGIN,
                label,
                text(spread.low(), length)
                        + " to "
                        + text(spread.high(), length)
                        + " "
                        + unit
                        + " for 9 in 10, "
                        + text(spread.middle(), length)
                        + " in the middle");
    }

    private String text(double value, boolean length) {
        return length ? lengths.difference(value) : NumberText.said(NumberText.fixed(value, 1));
    }

    private void matters(String label, List<Weight> weights, boolean wall) {
        List<Weight> sorted = new ArrayList<>(weights);
        sorted.sort(Comparator.comparingDouble((Weight w) -> of(w, wall)).reversed());
        List<String> words = new ArrayList<>();
        for (Weight weight : sorted) {
            double share = of(weight, wall);
            if (share >= LEAST_WEIGHT) {
                words.add(
                        weight.input().text() + " " + Math.round(100 * share) + Paper.JOINED + "%");
            }
        }
        if (!words.isEmpty()) {
            paper.row(MARGIN, label, String.join(", ", words) + " of the variance");
        }
    }

    private static double of(Weight weight, boolean wall) {
        return wall ? weight.ofWall() : weight.ofBalance();
    }
}
