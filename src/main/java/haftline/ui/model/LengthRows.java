package haftline.ui.model;

import haftline.edit.Choice;
import haftline.edit.Outcome;
import haftline.figures.Balance;
import haftline.figures.Figures;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Rules;
import haftline.handle.Use;
import haftline.measure.Length;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.BiFunction;

/** Length and balance. */
final class LengthRows {
    private static final String TIMES = "× blade";

    private final Inspected at;

    LengthRows(Inspected at) {
        this.at = at;
    }

    List<Row> rows() {
        return List.of(
                use(),
                ratio(),
                overall(),
                at.figure(
                        "visible wood",
                        f -> at.shown().length(f.handle().lengths().visibleWoodMm()),
                        f -> ""),
                at.figure(
                        "mass, blade and all",
                        f -> at.shown().mass(f.balance().totalG()),
                        this::estimated),
                at.figure("balance", this::balance, this::target),
                blank("blank's side", Choice.BLANK_SIDE, ChoicesBuilder::blankSideMm),
                blank("blank's length", Choice.BLANK_LENGTH, ChoicesBuilder::blankLengthMm));
    }

    private Row use() {
        return Row.choice(
                        "held",
                        () -> Arrays.stream(Use.values()).map(LengthRows::word).toList(),
                        () -> Row.State.of(word(at.brief().use()), "", at.source(Choice.USE)),
                        word ->
                                Arrays.stream(Use.values())
                                        .filter(use -> word(use).equals(word))
                                        .findFirst()
                                        .map(use -> at.choose(Choice.USE, b -> b.use(use)))
                                        .orElse(Outcome.DONE))
                .releasedBy(() -> at.free(Choice.USE));
    }

    private static String word(Use use) {
        return switch (use) {
            case POWER -> "in the whole hand";
            case THREE_FINGERS -> "by three fingers";
            case FINGERTIPS -> "by the finger tips";
        };
    }

    private double ratioNow() {
        return at.choices().lengthRatio().orElse(at.brief().rules().lengths().ratio());
    }

    private Row ratio() {
        return Row.field(
                        "length to blade",
                        Row.Kind.NUMBER,
                        () ->
                                Row.State.of(
                                        Inspected.number(ratioNow()) + " " + TIMES,
                                        at.because("length"),
                                        at.source(Choice.LENGTH_RATIO)),
                        text -> {
                            OptionalDouble ratio = Entry.number(text, TIMES);
                            if (text.isBlank()) {
                                return at.free(Choice.LENGTH_RATIO);
                            }
                            return ratio.isEmpty()
                                    ? new Outcome.Refused("Expected a number, such as 1.25")
                                    : choose(ratio.getAsDouble());
                        })
                .releasedBy(() -> at.free(Choice.LENGTH_RATIO));
    }

    private Outcome choose(double ratio) {
        return at.choose(Choice.LENGTH_RATIO, b -> b.lengthRatio(ratio));
    }

    /** The same choice by its outcome: a length typed becomes a ratio to the blade. */
    private Row overall() {
        return Row.field(
                "overall length",
                Row.Kind.NUMBER,
                () ->
                        Row.State.of(
                                at.handle()
                                        .map(h -> Entry.text(h.lengths().overallMm(), at.units()))
                                        .orElse(Inspected.NOT_DRAWN),
                                "ferrule's front face to butt, cap included",
                                at.source(Choice.LENGTH_RATIO)),
                text -> {
                    OptionalDouble mm = Length.parse(text, at.units());
                    double blade = at.brief().kit().blade().length().mean();
                    return mm.isEmpty()
                            ? Inspected.expectedLength()
                            : choose(mm.getAsDouble() / blade);
                });
    }

    private String estimated(Figures figures) {
        return figures.balance().shares().stream().anyMatch(share -> share.estimated())
                ? "part of it reckoned from sizes"
                : "";
    }

    private String balance(Figures figures) {
        Balance balance = figures.balance();
        double mm = balance.fromFerruleFaceMm();
        return at.shown().length(Math.abs(mm))
                + (mm < 0 ? " in front of" : " behind")
                + " the ferrule's face";
    }

    private String target(Figures figures) {
        Rules.Balance band = figures.handle().brief().rules().balance();
        return "wanted from "
                + at.shown().length(band.lowMm())
                + " to "
                + at.shown().length(band.highMm());
    }

    private Row blank(
            String label, Choice choice, BiFunction<ChoicesBuilder, Double, ChoicesBuilder> set) {
        return at.length(
                label,
                choice,
                () ->
                        Row.State.of(
                                choice.value(at.choices())
                                        .map(mm -> Entry.text((Double) mm, at.units()))
                                        .orElse(""),
                                "",
                                at.source(choice)),
                set);
    }
}
