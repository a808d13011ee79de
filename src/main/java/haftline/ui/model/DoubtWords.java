package haftline.ui.model;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.doubt.EndDoubt;
import haftline.adjust.doubt.Spread;
import haftline.adjust.doubt.TwoWays;
import haftline.adjust.doubt.Weight;
import haftline.adjust.doubt.ZoneDoubt;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;

/** What chance makes of a piece, in plain words. */
public final class DoubtWords {
    /** An input that explains less of the variance is not worth a word. */
    private static final double LEAST_WEIGHT = 0.02;

    /** More inputs than these are not read. */
    private static final int MOST_INPUTS = 3;

    private final LengthText lengths;

    /**
     * Words with lengths in a unit.
     *
     * @param units the unit
     */
    public DoubtWords(Units units) {
        lengths = new LengthText(units);
    }

    /**
     * How many would be too thin, and what another way to drill makes of that.
     *
     * @param ways what both ways say
     * @return one sentence
     */
    public String thin(TwoWays ways) {
        Doubt stated = ways.stated();
        String share = stated.under().inWords();
        return Character.toUpperCase(share.charAt(0))
                + share.substring(1)
                + " would break "
                + rule(stated)
                + (stated.stopped().count() > 0
                        ? ", "
                                + stated.stopped().inWords()
                                + " would have less wall than is made at all"
                        : "")
                + "; "
                + ways.otherInWords()
                + ".";
    }

    private String rule(Doubt stated) {
        ZoneDoubt worst = stated.worst();
        if (stated.under().count() == 0) {
            return "a wall's rule";
        }
        return worst.under().count() == stated.under().count()
                ? "the "
                        + lengths.contour(worst.limitMm())
                        + " "
                        + lengths.unit()
                        + " rule "
                        + worst.where()
                : "a wall's rule, mostly " + worst.where();
    }

    /**
     * What matters most, and how balance and mass spread.
     *
     * @param ways what both ways say
     * @return sentences
     */
    public String rest(TwoWays ways) {
        Doubt stated = ways.stated();
        return end(stated.end())
                + matters("Most of the wall's spread comes from ", stated, Weight::ofWall)
                + matters("Balance: ", stated, Weight::ofBalance)
                + "9 in 10 balance "
                + between(stated.balance())
                + " "
                + lengths.unit()
                + " behind the ferrule's face and weigh "
                + NumberText.fixed(stated.mass().low(), 1)
                + " to "
                + NumberText.fixed(stated.mass().high(), 1)
                + " g.";
    }

    private String end(EndDoubt end) {
        String share = end.under().inWords();
        return Character.toUpperCase(share.charAt(0))
                + share.substring(1)
                + " would leave less than "
                + lengths.contour(end.limitMm())
                + " "
                + lengths.unit()
                + " "
                + end.where()
                + ". ";
    }

    /**
     * How it was reckoned.
     *
     * @param ways what both ways say
     * @return words for a tip
     */
    public String how(TwoWays ways) {
        Doubt stated = ways.stated();
        return String.format(Locale.ROOT, "%,d", stated.handles())
                + " handles made in figures, seed "
                + stated.seed()
                + "; parts, turning, drilling and stock as chance has them. Too thin: 95 %"
                + " interval "
                + percent(stated.under().low())
                + " to "
                + percent(stated.under().high())
                + " %; bore's end "
                + percent(stated.end().under().low())
                + " to "
                + percent(stated.end().under().high())
                + " %. Shares of the spread add up to 100 %. How far a handle is from the drawn"
                + " one is yours to say: spreads, in the rules.";
    }

    private String between(Spread spread) {
        return lengths.difference(spread.low()) + " to " + lengths.difference(spread.high());
    }

    private static String matters(String lead, Doubt stated, ToDoubleFunction<Weight> of) {
        List<Weight> sorted = new ArrayList<>(stated.weights());
        sorted.sort(Comparator.comparingDouble(of).reversed());
        List<String> words = new ArrayList<>();
        for (Weight weight : sorted) {
            double share = of.applyAsDouble(weight);
            if (share >= LEAST_WEIGHT && words.size() < MOST_INPUTS) {
                words.add(weight.input().text() + " (" + Math.round(100 * share) + "\u00a0%)");
            }
        }
        return words.isEmpty() ? "" : lead + String.join(", ", words) + ". ";
    }

    private static String percent(double share) {
        return NumberText.upTo(100 * share, Math.min(share, 1 - share) < 0.1 ? 2 : 1);
    }
}
