package haftline.ui.model;

import haftline.edit.ChoiceEdits;
import haftline.edit.Outcome;
import haftline.edit.Scope;
import haftline.edit.Worked;
import haftline.findings.Finding;
import haftline.findings.Gravity;
import haftline.findings.Remedies;
import haftline.findings.Remedy;
import haftline.findings.WhoseRule;
import haftline.findings.Words;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The findings of the piece at hand. Words and remedies are made when they are asked for and kept
 * until the piece changes: in the middle of a drag nobody reads them.
 */
public final class FindingsModel {
    private final EditorModel editor;
    private final Watched<List<Finding>> findings;
    private final Watched<Optional<Finding>> chosen = new Watched<>(Optional.empty());
    private final Map<Finding, Optional<Remedy>> remedies = new HashMap<>();

    /**
     * The findings of an editor's piece.
     *
     * @param editor the editor
     */
    public FindingsModel(EditorModel editor) {
        this.editor = editor;
        findings = new Watched<>(editor.worked().value().findings());
        editor.worked().watch(this::follow);
        editor.units().watch(units -> remedies.clear());
    }

    /** What was chosen stays so while the piece still has it, whatever its figures are by now. */
    private void follow(Worked worked) {
        remedies.clear();
        findings.set(worked.findings());
        chosen.set(
                chosen.value()
                        .flatMap(
                                before ->
                                        worked.findings().stream()
                                                .filter(before::isAbout)
                                                .findFirst()));
    }

    /**
     * The findings.
     *
     * @return watched; gravest first
     */
    public Watched<List<Finding>> findings() {
        return findings;
    }

    /**
     * The finding whose place is shown on the board.
     *
     * @return watched; may be set to one of the findings, or to nothing
     */
    public Watched<Optional<Finding>> chosen() {
        return chosen;
    }

    /**
     * How many findings are of a gravity.
     *
     * @param gravity the gravity
     * @return the count
     */
    public long count(Gravity gravity) {
        return findings.value().stream().filter(f -> f.gravity() == gravity).count();
    }

    /**
     * A finding as a sentence, lengths in the units on the screen.
     *
     * @param finding one of the findings
     * @return a sentence without a full stop
     */
    public String message(Finding finding) {
        return Words.message(finding, worked().brief().stock(), editor.units().value());
    }

    /**
     * Whose rule a finding goes by.
     *
     * @param finding one of the findings
     * @return a published source, or common practice
     */
    public String rule(Finding finding) {
        return WhoseRule.of(finding, worked().brief().stock());
    }

    /**
     * Whose rule a finding goes by, and where it is written.
     *
     * @param finding one of the findings
     * @return key, value and file of a maker's rule, citations in full of published ones
     */
    public RuleSource source(Finding finding) {
        return RuleSource.of(finding, worked().brief().stock(), editor.document().loaded());
    }

    /**
     * What mends a finding, tried on the handle; under two milliseconds the first time.
     *
     * @param finding one of the findings
     * @return the remedy, or empty where no single change mends it, and in the middle of a gesture
     */
    public Optional<Remedy> remedy(Finding finding) {
        if (editor.document().isInGesture() || worked().figures().isEmpty()) {
            return Optional.empty();
        }
        return remedies.computeIfAbsent(
                finding,
                each -> Remedies.of(each, worked().figures().get(), editor.units().value()));
    }

    /**
     * Carries the remedy of a finding out, as one step.
     *
     * @param finding one of the findings
     * @return done, or why not
     */
    public Outcome apply(Finding finding) {
        Optional<Remedy> remedy = remedy(finding);
        if (remedy.isEmpty()) {
            return refused("No single change mends this; see what it says");
        }
        if (remedy.get().choices().isEmpty()) {
            return refused("This is yours to do: " + remedy.get().change());
        }
        return editor.run(
                new ChoiceEdits(editor.piece().value(), Scope.THIS_PIECE)
                        .remedy(
                                remedy.get().change(),
                                worked().brief().choices(),
                                remedy.get().choices().get()));
    }

    private Outcome refused(String why) {
        editor.refuse(why);
        return new Outcome.Refused(why);
    }

    private Worked worked() {
        return editor.worked().value();
    }
}
