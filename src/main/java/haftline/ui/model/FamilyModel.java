package haftline.ui.model;

import haftline.edit.ChoiceEdits;
import haftline.edit.Outcome;
import haftline.edit.Scope;
import haftline.findings.Remedy;
import haftline.findings.Words;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.Family;
import haftline.set.LineUp;
import haftline.set.Piece;
import haftline.set.Trait;
import haftline.stock.Stock;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executor;

/**
 * How the pieces of the set match: worked out in the background once the hand rests. The change
 * that brings a piece back is looked for when it is asked for, one at a time.
 */
public final class FamilyModel {
    /**
     * The family with its lines.
     *
     * @param family what the pieces have in common and what not
     * @param lineUp where their swells and butts stand
     * @param strays what falls out, gravest first
     */
    public record Matched(Family family, LineUp lineUp, List<Family.Stray> strays) {
        /** Copies the list. */
        public Matched {
            strays = List.copyOf(strays);
        }

        static final Matched NONE = of(Family.of(List.of()));

        static Matched of(Family family) {
            return new Matched(family, LineUp.of(family), family.strays());
        }
    }

    private final EditorModel editor;
    private final Latest latest;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Matched> matched = new Watched<>(Matched.NONE);
    private final Watched<Map<Family.Stray, Optional<Remedy>>> remedies = new Watched<>(Map.of());
    private final Set<Family.Stray> asked = new HashSet<>();

    /**
     * The family of an editor's set.
     *
     * @param editor the editor
     * @param background where work is done
     * @param drawing where what came of it is told
     */
    public FamilyModel(EditorModel editor, Executor background, Executor drawing) {
        this.editor = editor;
        this.background = background;
        this.drawing = drawing;
        latest = new Latest(background, drawing);
        editor.opened()
                .watch(
                        other -> {
                            matched.set(Matched.NONE);
                            dropRemedies();
                        });
        editor.units().watch(units -> dropRemedies());
    }

    private void dropRemedies() {
        asked.clear();
        remedies.set(Map.of());
    }

    /**
     * The family.
     *
     * @return watched; follows {@link #refresh}
     */
    public Watched<Matched> matched() {
        return matched;
    }

    /**
     * What brings strays back, as far as it was asked for and found or not.
     *
     * @return watched
     */
    public Watched<Map<Family.Stray, Optional<Remedy>>> remedies() {
        return remedies;
    }

    /** Works the family out anew. */
    public void refresh() {
        List<Family.Member> members = new ArrayList<>();
        for (Piece piece : editor.draft().value().set().pieces()) {
            editor.document()
                    .worked(piece.name())
                    .figures()
                    .ifPresent(figures -> members.add(new Family.Member(piece, figures)));
        }
        if (members.equals(matched.value().family().members())) {
            return;
        }
        latest.call(
                () -> Matched.of(Family.of(members)),
                now -> {
                    dropRemedies();
                    matched.set(now);
                },
                editor::refuse);
    }

    /**
     * Looks for what brings a stray back, unless it was looked for.
     *
     * @param stray one of the strays
     */
    public void ask(Family.Stray stray) {
        if (!asked.add(stray)) {
            return;
        }
        Family family = matched.value().family();
        Units units = editor.units().value();
        background.execute(
                () -> {
                    Optional<Remedy> remedy = family.tried(stray, units);
                    drawing.execute(() -> found(family, units, stray, remedy));
                });
    }

    private void found(Family family, Units units, Family.Stray stray, Optional<Remedy> remedy) {
        boolean isOvertaken = family != matched.value().family() || units != editor.units().value();
        if (!isOvertaken) {
            Map<Family.Stray, Optional<Remedy>> now = new HashMap<>(remedies.value());
            now.put(stray, remedy);
            remedies.set(Map.copyOf(now));
        }
    }

    /**
     * Carries the remedy of a stray out, as one step.
     *
     * @param stray one of the strays
     * @return done, or why not
     */
    public Outcome apply(Family.Stray stray) {
        Optional<Remedy> remedy = remedies.value().getOrDefault(stray, Optional.empty());
        if (remedy.isEmpty() || remedy.get().choices().isEmpty()) {
            String why = "No choice brings it back; see what it says";
            editor.refuse(why);
            return new Outcome.Refused(why);
        }
        return editor.run(
                new ChoiceEdits(stray.piece(), Scope.THIS_PIECE)
                        .remedy(
                                remedy.get().change(),
                                editor.document().brief(stray.piece()).choices(),
                                remedy.get().choices().get()));
    }

    /**
     * A stray as a sentence.
     *
     * @param stray one of the strays
     * @return a sentence without a full stop, the piece's name first
     */
    public String message(Family.Stray stray) {
        Stock stock = editor.document().worked(stray.piece()).brief().stock();
        return stray.piece() + ": " + Words.message(stray.finding(), stock, editor.units().value());
    }

    /**
     * The common value of a trait.
     *
     * @param row the trait's row
     * @return number and unit
     */
    public String common(Family.Row row) {
        return (row.common() < 0 ? "−" : "") + amount(row.trait(), Math.abs(row.common()));
    }

    private String amount(Trait trait, double value) {
        Shown shown = new Shown(editor.units().value());
        return switch (trait.unit()) {
            case MM -> shown.length(value);
            case SHARE -> NumberText.fixed(value, 2);
            case DEG -> shown.angle(value);
        };
    }

    /**
     * By how much a piece differs in a trait.
     *
     * @param trait the trait
     * @param entry the piece's entry
     * @return such as {@code +6.0 mm}
     */
    public String difference(Trait trait, Family.Entry entry) {
        return (entry.difference() < 0 ? "−" : "+") + amount(trait, Math.abs(entry.difference()));
    }

    /**
     * The same without its unit, for a table that has it at the head.
     *
     * @param trait the trait
     * @param entry the piece's entry
     * @return such as {@code +6.0}
     */
    public String number(Trait trait, Family.Entry entry) {
        String words = difference(trait, entry);
        return trait.unit() == Trait.Unit.MM ? words.substring(0, words.indexOf(' ')) : words;
    }

    /**
     * The same as a share of the common value.
     *
     * @param entry the piece's entry
     * @return such as {@code +27 %}; empty for shares and degrees
     */
    public String percent(Family.Entry entry) {
        return Double.isNaN(entry.percent())
                ? ""
                : (entry.percent() < 0 ? "−" : "+")
                        + NumberText.fixed(Math.abs(entry.percent()), 0)
                        + " %";
    }

    /**
     * All that a piece differs in, in words.
     *
     * @param piece the piece's name
     * @return a sentence without a full stop
     */
    public String words(String piece) {
        List<String> told = new ArrayList<>();
        for (Family.Row row : matched.value().family().rows()) {
            row.entry(piece)
                    .filter(entry -> entry.likeness() != Family.Likeness.ALIKE)
                    .ifPresent(
                            entry -> {
                                String because = Family.because(row.trait(), entry.cause());
                                told.add(
                                        row.trait().words()
                                                + " "
                                                + difference(row.trait(), entry)
                                                + (because.isEmpty() ? "" : ", " + because));
                            });
        }
        return piece + ": " + (told.isEmpty() ? "alike in all" : String.join("; ", told));
    }
}
