package haftline.cli;

import haftline.findings.Gravity;
import haftline.measure.LengthText;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.Family;
import haftline.set.Trait;
import java.util.ArrayList;
import java.util.List;

/** How the pieces of a set match, on the page of the set: a short section. */
final class FamilyPage {
    private static final String MARGIN = "Family";

    private final Paper paper;
    private final LengthText lengths;
    private final Units units;

    private FamilyPage(Paper paper, LengthText lengths) {
        this.paper = paper;
        this.lengths = lengths;
        this.units = lengths.units();
    }

    /** Writes the section; nothing where there is no family. */
    static void write(Paper paper, LengthText lengths, ExaminedFamily family) {
        if (!family.family().rows().isEmpty()) {
            new FamilyPage(paper, lengths).write(family);
        }
    }

    private void write(ExaminedFamily family) {
        paper.blank();
        for (Family.Row row : family.family().rows()) {
            Trait trait = row.trait();
            paper.row(
                    MARGIN,
                    trait.words(),
                    number(trait, row.common()),
                    unit(trait, row.common()),
                    differences(row));
        }
        paper.words(
                MARGIN,
                "The figure is the middle one of all pieces; named is what the eye sees beside it.");
        for (ExaminedFamily.Stray stray : family.strays()) {
            Gravity gravity = stray.told().finding().gravity();
            String head = "  " + Paper.pad(Verdict.mark(gravity) + " " + Verdict.word(gravity), 8);
            paper.marked(
                    head,
                    paper.ink().grave(gravity, head),
                    stray.stray().piece()
                            + ": "
                            + stray.told().message()
                            + " ("
                            + stray.told().rule()
                            + ")");
            stray.told()
                    .remedy()
                    .ifPresent(remedy -> paper.marked("          → ", "          → ", remedy));
        }
    }

    private String differences(Family.Row row) {
        List<String> told = new ArrayList<>();
        for (Family.Entry entry : row.entries()) {
            if (entry.likeness() != Family.Likeness.ALIKE) {
                String because = Family.because(row.trait(), entry.cause());
                told.add(
                        entry.piece()
                                + " "
                                + signed(row.trait(), entry)
                                + (because.isEmpty() ? "" : ", " + because));
            }
        }
        return told.isEmpty() ? "alike" : String.join("; ", told);
    }

    /** Such as {@code +6.0 mm (+27 %)}. */
    private String signed(Trait trait, Family.Entry entry) {
        double difference = entry.difference();
        String sign = difference < 0 ? "−" : "+";
        String size = number(trait, Math.abs(difference));
        String unit = trait.unit() == Trait.Unit.MM ? " " + lengths.unit() : unit(trait, 0);
        String percent =
                Double.isNaN(entry.percent())
                        ? ""
                        : " ("
                                + sign
                                + NumberText.fixed(Math.abs(entry.percent()), 0)
                                + Paper.JOINED
                                + "%)";
        return sign + size + unit + percent;
    }

    private String number(Trait trait, double value) {
        return switch (trait.unit()) {
            case MM -> lengths.contour(value);
            case SHARE -> NumberText.fixed(value, 2);
            case DEG -> NumberText.said(NumberText.fixed(value, 1));
        };
    }

    private String unit(Trait trait, double value) {
        return switch (trait.unit()) {
            case MM -> {
                String fraction = units == Units.MM ? "" : lengths.fraction(value);
                yield lengths.unit() + (fraction.isEmpty() ? "" : " " + fraction);
            }
            case SHARE -> "";
            case DEG -> "°";
        };
    }
}
