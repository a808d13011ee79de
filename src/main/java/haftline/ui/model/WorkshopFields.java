package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.RulesEdits;
import haftline.edit.WorkshopEdits;
import haftline.handle.Rules;
import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.OutOfRange;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.set.Piece;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.DoubleFunction;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;
import java.util.function.UnaryOperator;

/** How a setting of the workshop becomes a row; a change is one step that can be undone. */
final class WorkshopFields {
    /** Prices of small things have more places than a coin. */
    private static final int PLACES = 4;

    private final EditorModel editor;

    WorkshopFields(EditorModel editor) {
        this.editor = editor;
    }

    Workshop shop() {
        return editor.document().draft().set().workshop();
    }

    TemplateSettings templates() {
        return shop().templates();
    }

    private Rules.Copying copyingRules() {
        return editor.document().draft().set().rules().copying();
    }

    /** A length of the rules, which stand in a file of their own. */
    Row ruleLength(
            String label,
            Limits range,
            ToDoubleFunction<Rules.Copying> now,
            BiFunction<Rules.Copying, Double, Rules.Copying> set) {
        return length(
                label,
                () -> "radius, a rule: " + rulesSavedIn(),
                range,
                false,
                () -> OptionalDouble.of(now.applyAsDouble(copyingRules())),
                mm -> RulesEdits.copying("change " + label, c -> set.apply(c, mm.orElseThrow())));
    }

    private String rulesSavedIn() {
        return editor.document()
                .loaded()
                .references()
                .rules()
                .map(
                        file ->
                                "saved in "
                                        + Path.of(file).getFileName()
                                        + ", which other sets may name too")
                .orElse("saved in a rules file of its own beside the set");
    }

    List<Piece> pieces() {
        return editor.document().draft().set().pieces();
    }

    Units units() {
        return editor.units().value();
    }

    /** A length as it would be typed. */
    String text(double mm) {
        return Entry.fine(mm, editor.units().value());
    }

    /** A length of the templates' settings. */
    Row length(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<TemplateSettings> now,
            BiFunction<TemplateSettings, Double, TemplateSettings> set) {
        return length(
                label,
                () -> because,
                range,
                false,
                () -> OptionalDouble.of(now.applyAsDouble(templates())),
                mm -> changed(label, t -> set.apply(t, mm.orElseThrow())));
    }

    /** A length of the settings for files. */
    Row fileLength(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<FileSettings> now,
            BiFunction<FileSettings, Double, FileSettings> set) {
        return length(
                label,
                () -> because,
                range,
                false,
                () -> OptionalDouble.of(now.applyAsDouble(shop().files())),
                mm -> WorkshopEdits.files("change " + label, f -> set.apply(f, mm.orElseThrow())));
    }

    /** A length that may be left empty or not. */
    Row length(
            String label,
            Supplier<String> because,
            Limits range,
            boolean mayBeEmpty,
            Supplier<OptionalDouble> now,
            Function<OptionalDouble, Command> command) {
        return Row.field(
                label,
                Row.Kind.NUMBER,
                () -> state(now.get(), this::text, because),
                entry ->
                        taken(
                                entry,
                                Length.parse(entry, units()),
                                range,
                                mayBeEmpty,
                                "Expected a length "
                                        + OutOfRange.range(
                                                range.least(), range.greatest(), units()),
                                command));
    }

    /** A plain number of the templates' settings, with a sign behind it or none. */
    Row number(
            String label,
            String because,
            String sign,
            Limits range,
            ToDoubleFunction<TemplateSettings> now,
            BiFunction<TemplateSettings, Double, TemplateSettings> set) {
        return number(
                label,
                () -> because,
                sign,
                range,
                false,
                () -> OptionalDouble.of(now.applyAsDouble(templates())),
                number -> changed(label, t -> set.apply(t, number.orElseThrow())));
    }

    /** A plain number that may be left empty or not, with a sign behind it or none. */
    Row number(
            String label,
            Supplier<String> because,
            String sign,
            Limits range,
            boolean mayBeEmpty,
            Supplier<OptionalDouble> now,
            Function<OptionalDouble, Command> command) {
        return Row.field(
                label,
                Row.Kind.PLAIN,
                () -> state(now.get(), value -> plain(value) + sign, because),
                entry ->
                        taken(
                                entry,
                                Entry.number(entry, sign.strip()),
                                range,
                                mayBeEmpty,
                                "Expected a number from "
                                        + plain(range.least())
                                        + " to "
                                        + plain(range.greatest())
                                        + sign,
                                command));
    }

    private static Row.State state(
            OptionalDouble now, DoubleFunction<String> shown, Supplier<String> because) {
        String text = now.isPresent() ? shown.apply(now.getAsDouble()) : "";
        return Row.State.of(text, because.get(), Row.Source.SET);
    }

    /** Takes an entry that is read already, where it is within its bounds. */
    Outcome taken(
            String entry,
            OptionalDouble value,
            Limits range,
            boolean mayBeEmpty,
            String expected,
            Function<OptionalDouble, Command> command) {
        boolean isGood = value.isPresent() && range.holds(value.getAsDouble());
        return isGood || mayBeEmpty && entry.isBlank()
                ? run(command.apply(value))
                : new Outcome.Refused(expected + (mayBeEmpty ? ", or nothing" : ""));
    }

    /** A number as it would be typed. */
    static String plain(double value) {
        return NumberText.upTo(value, PLACES);
    }

    /** One of several, each in a few words. */
    <T> Row choice(
            String label,
            String because,
            T[] all,
            Function<T, String> words,
            Supplier<T> now,
            Function<T, Command> command) {
        List<String> options = Arrays.stream(all).map(words).toList();
        return Row.choice(
                label,
                () -> options,
                () -> Row.State.of(words.apply(now.get()), because, Row.Source.SET),
                word ->
                        Arrays.stream(all)
                                .filter(one -> words.apply(one).equals(word))
                                .findFirst()
                                .map(one -> run(command.apply(one)))
                                .orElse(Outcome.DONE));
    }

    /** Yes or no. */
    Row tick(
            String label,
            Predicate<TemplateSettings> now,
            BiFunction<TemplateSettings, Boolean, TemplateSettings> set) {
        return Row.tick(
                label,
                () -> now.test(templates()),
                yes -> run(changed(label, t -> set.apply(t, yes))));
    }

    Command changed(String label, UnaryOperator<TemplateSettings> change) {
        return WorkshopEdits.templates("change " + label, change);
    }

    /** Done, or refused where it was typed: the row says why, so the window need not. */
    Outcome run(Command command) {
        Outcome outcome = editor.run(command);
        editor.notice().set(Optional.empty());
        return outcome;
    }

    /**
     * Bounds of an entry, as the settings themselves have them.
     *
     * @param least mm, degrees or a plain number
     * @param greatest the same
     */
    record Limits(double least, double greatest) {
        boolean holds(double value) {
            return value >= least && value <= greatest;
        }
    }
}
