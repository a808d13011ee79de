package haftline.cli;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.Share;
import haftline.adjust.doubt.Spread;
import haftline.adjust.doubt.Weight;
import haftline.adjust.doubt.ZoneDoubt;
import haftline.figures.Zone;
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

    static void write(Paper paper, LengthText lengths, PieceDoubt doubt) {
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
        rows.spread("over the limit", stated.leastWall(), lengths.unit(), true);
        rows.spread("balance", stated.balance(), lengths.unit() + " behind the front", true);
        rows.spread("mass", stated.mass(), "g", false);
        rows.matters("for the wall", stated.weights(), true);
        rows.matters("for balance", stated.weights(), false);
        paper.blank();
    }

    private void thin(PieceDoubt doubt) {
        Doubt stated = doubt.stated();
        ZoneDoubt worst = worst(stated);
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
                                        + zone(worst.zone())
                                : "a wall's rule, mostly " + zone(worst.zone());
        String otherwise =
                doubt.otherWay().equals(PieceDoubt.CENTRED)
                        ? "drilling on the lathe with a centre drill first makes it "
                        : "drilling on the lathe without a centre drill makes it ";
        paper.row(
                MARGIN,
                "too thin",
                inWords(stated.under())
                        + " would break "
                        + rule
                        + " (95"
                        + Paper.JOINED
                        + "% interval after Wilson: "
                        + percent(stated.under().low())
                        + " to "
                        + percent(stated.under().high())
                        + Paper.JOINED
                        + "%); "
                        + otherwise
                        + inWords(doubt.other().under()).replace("about ", ""));
        if (stated.stopped().count() > 0) {
            paper.row(
                    MARGIN,
                    "not to be made",
                    inWords(stated.stopped()) + " under the least wall that is made at all");
        }
    }

    private static ZoneDoubt worst(Doubt doubt) {
        return doubt.zones().stream()
                .max(Comparator.comparingInt(zone -> zone.under().count()))
                .orElseThrow();
    }

    private static String zone(Zone zone) {
        return switch (zone) {
            case TENON -> "on the tenon";
            case BODY -> "on the body";
            case CAP -> "over the cap's bore";
        };
    }

    /** Such as {@code about 3 in 100}, no finer than chance lets it be told. */
    static String inWords(Share share) {
        if (share.count() == 0) {
            return String.format(Locale.ROOT, "none of %,d", share.of());
        }
        if (share.count() == share.of()) {
            return String.format(Locale.ROOT, "all of %,d", share.of());
        }
        double p = share.value();
        for (int of = 100; of < share.of(); of *= 10) {
            long count = Math.round(p * of);
            if (count > 0 && count < of) {
                return String.format(Locale.ROOT, "about %,d in %,d", count, of);
            }
        }
        return String.format(Locale.ROOT, "about %,d in %,d", share.count(), share.of());
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
        return length ? lengths.difference(value) : NumberText.fixed(value, 1);
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
