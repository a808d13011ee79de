package haftline.ui.model;

import haftline.edit.Choice;
import haftline.edit.ChoiceEdits;
import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.ShapeEdits;
import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Handle;
import haftline.handle.Reason;
import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.ui.words.Shown;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;

/** What the rows of the inspector look at: the piece at hand, and how it is changed. */
final class Inspected {
    static final String NOT_DRAWN = "not drawn";
    private static final String A_LENGTH = "Expected a length, such as 12.5 mm or 31/64 in";

    private final EditorModel editor;

    Inspected(EditorModel editor) {
        this.editor = editor;
    }

    EditorModel editor() {
        return editor;
    }

    /** Done, or refused where it was typed: the row says why, so the window need not. */
    Outcome run(Command command) {
        return saidHere(editor.run(command));
    }

    /** The same, unless the piece could then not be drawn. */
    Outcome runIfDrawable(Command command) {
        return saidHere(editor.runIfDrawable(command));
    }

    private Outcome saidHere(Outcome outcome) {
        editor.notice().set(Optional.empty());
        return outcome;
    }

    Brief brief() {
        return editor.worked().value().brief();
    }

    HandleSet set() {
        return editor.document().draft().set();
    }

    Piece piece() {
        return editor.document().draft().piece(editor.piece().value());
    }

    Optional<Figures> figures() {
        return editor.worked().value().figures();
    }

    Optional<Handle> handle() {
        return figures().map(Figures::handle);
    }

    Units units() {
        return editor.units().value();
    }

    Shown shown() {
        return new Shown(units());
    }

    ChoiceEdits edits() {
        return new ChoiceEdits(editor.piece().value(), editor.scope().value());
    }

    ShapeEdits shapeEdits() {
        return new ShapeEdits(editor.piece().value(), editor.scope().value());
    }

    /** Why a number is what it is, as the handle was resolved. */
    String because(String subject) {
        return handle().stream()
                .flatMap(handle -> handle.reasons().stream())
                .filter(reason -> reason.subject().equals(subject))
                .map(Reason::because)
                .findFirst()
                .orElse("");
    }

    Row.Source source(Choice choice) {
        if (choice.value(piece().choices()).isPresent()) {
            return Row.Source.PIECE;
        }
        return choice.value(set().common()).isPresent() ? Row.Source.SET : Row.Source.RULE;
    }

    /** A figure of the handle, which follows. */
    Row figure(String label, Function<Figures, String> text, Function<Figures, String> because) {
        return Row.figure(
                label,
                () ->
                        Row.State.figure(
                                figures().map(text).orElse(NOT_DRAWN),
                                figures().map(because).orElse("")));
    }

    /** A length that follows from a rule unless the maker decides it; nothing typed frees it. */
    Row length(
            String label,
            Choice choice,
            Function<Handle, Double> now,
            Function<Handle, String> because,
            BiFunction<ChoicesBuilder, Double, ChoicesBuilder> set) {
        return length(
                label,
                choice,
                () ->
                        Row.State.of(
                                handle().map(h -> Entry.text(now.apply(h), units()))
                                        .or(() -> typed(choice))
                                        .orElse(NOT_DRAWN),
                                handle().map(because).orElse(""),
                                source(choice)),
                set);
    }

    /** A length to be decided, whatever is shown where it is not; nothing typed frees it. */
    Row length(
            String label,
            Choice choice,
            Supplier<Row.State> state,
            BiFunction<ChoicesBuilder, Double, ChoicesBuilder> set) {
        return Row.field(
                        label,
                        Row.Kind.NUMBER,
                        state,
                        text -> {
                            if (text.isBlank()) {
                                return free(choice);
                            }
                            OptionalDouble mm = Length.parse(text, units());
                            return mm.isEmpty()
                                    ? expectedLength()
                                    : choose(choice, b -> set.apply(b, mm.getAsDouble()));
                        })
                .releasedBy(() -> free(choice));
    }

    /** What is decided, where the handle cannot be drawn to show it. */
    private Optional<String> typed(Choice choice) {
        return choice.value(brief().choices())
                .filter(Double.class::isInstance)
                .map(mm -> Entry.text((Double) mm, units()));
    }

    /** Refused where the handle could then not be drawn: the last good value stays. */
    Outcome choose(Choice choice, java.util.function.UnaryOperator<ChoicesBuilder> set) {
        return runIfDrawable(edits().choose(choice, set));
    }

    Outcome free(Choice choice) {
        return runIfDrawable(edits().byRule(choice));
    }

    Choices choices() {
        return brief().choices();
    }

    /** A plain number with at most two decimals. */
    static String number(double value) {
        return NumberText.upTo(value, 2);
    }

    static Outcome expectedLength() {
        return new Outcome.Refused(A_LENGTH);
    }
}
