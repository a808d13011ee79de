package haftline.sheet;

import haftline.measure.LengthText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Sizes and rules under one run of letters, in the order of reading. */
final class Lettered {
    /** Without I and O, which are read as figures. */
    private static final String LETTERS = "ABCDEFGHJKLMNPQRSTUVWXYZ";

    private final LengthText lengths;
    private final List<Measure> measures = new ArrayList<>();
    private final List<Rule> rules = new ArrayList<>();

    Lettered(LengthText lengths) {
        this.lengths = lengths;
    }

    LengthText lengths() {
        return lengths;
    }

    List<Measure> measures() {
        return measures;
    }

    List<Rule> rules() {
        return rules;
    }

    /** A size to measure; tells its letter. */
    String measure(String what, double mm, Spot spot) {
        return measure(what, mm, Optional.of(spot));
    }

    /** A size that the drawing does not show; tells its letter. */
    String unseen(String what, double mm) {
        return measure(what, mm, Optional.empty());
    }

    private String measure(String what, double mm, Optional<Spot> spot) {
        String letter = letter();
        measures.add(new Measure(letter, what, lengths.metal(mm), spot));
        return letter;
    }

    /** A size to make, without a choice of drills; tells its letter. */
    String rule(String what, String how, String figure, Optional<Spot> spot) {
        return rule(what, how, OptionalDouble.empty(), figure, spot);
    }

    /** A size to make; tells its letter. */
    String rule(
            String what, String how, OptionalDouble wishMm, String figure, Optional<Spot> spot) {
        String letter = letter();
        rules.add(new Rule(letter, what, joined(how), wishMm, figure, spot));
        return letter;
    }

    /** Signs keep the terms at their sides on one line. */
    private static String joined(String how) {
        return how.replaceAll(" ([−+×÷]) ", "\u00A0$1\u00A0");
    }

    private String letter() {
        int next = measures.size() + rules.size();
        String letter = Character.toString(LETTERS.charAt(next % LETTERS.length()));
        return next < LETTERS.length() ? letter : LETTERS.charAt(0) + letter;
    }

    /** Such as {@code + 0.10}; nothing where nothing is added. */
    String with(double mm) {
        if (mm == 0) {
            return "";
        }
        return (mm < 0 ? " − " : " + ") + lengths.difference(Math.abs(mm));
    }

    /** What stands behind a rule that the maker did not follow. */
    static String chosen(boolean chosen) {
        return chosen ? " (chosen otherwise here)" : "";
    }
}
