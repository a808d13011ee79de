package haftline.ui.model;

import haftline.handle.Brief;
import haftline.measure.NumberText;
import haftline.set.HandleSet;
import haftline.set.TemplateSettings;
import haftline.store.LoadedSet;
import haftline.ui.model.LaidOut.Asked;
import haftline.ui.model.LaidOut.Remark;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.Executor;

/**
 * The sheets of gauges and templates: laid out by a background executor, one run at a time; what
 * has changed meanwhile breaks a run off and begins the next. What is watched changes on the
 * drawing one, and the last sheets stay until the new ones are there.
 */
public final class TemplatesModel {
    private final EditorModel editor;
    private final Executor background;
    private final Executor drawing;
    private final Watched<Optional<LaidOut>> laidOut = new Watched<>(Optional.empty());
    private final Watched<Boolean> working = new Watched<>(false);
    private final Watched<Integer> sheet = new Watched<>(0);
    private final Watched<Optional<Remark>> chosen = new Watched<>(Optional.empty());
    private final Watched<Optional<String>> trouble = new Watched<>(Optional.empty());
    private Optional<Asked> asked = Optional.empty();
    private boolean isShown;

    /** Tells a run that was overtaken; read by the background too. */
    private volatile int number;

    /**
     * The sheets of an editor's set; nothing is laid out before it is to be seen.
     *
     * @param editor the editor
     * @param background where sheets are laid out, one run after another
     * @param drawing where what is watched changes
     */
    public TemplatesModel(EditorModel editor, Executor background, Executor drawing) {
        this.editor = editor;
        this.background = background;
        this.drawing = drawing;
        editor.draft().watch(draft -> ask());
        editor.units().watch(units -> ask());
    }

    /**
     * The sheets as they last were laid out.
     *
     * @return watched; empty before the first time
     */
    public Watched<Optional<LaidOut>> laidOut() {
        return laidOut;
    }

    /**
     * Whether sheets are being laid out that will take the place of those that are shown.
     *
     * @return watched
     */
    public Watched<Boolean> working() {
        return working;
    }

    /**
     * Why the sheets could not be laid out anew.
     *
     * @return watched; empty where they could
     */
    public Watched<Optional<String>> trouble() {
        return trouble;
    }

    /**
     * The sheet that is shown.
     *
     * @return watched; from 0
     */
    public Watched<Integer> sheet() {
        return sheet;
    }

    /**
     * The finding whose card is shown.
     *
     * @return watched
     */
    public Watched<Optional<Remark>> chosen() {
        return chosen;
    }

    /**
     * Begins or ceases to follow the set.
     *
     * @param shown whether the sheets are to be seen
     */
    public void show(boolean shown) {
        isShown = shown;
        ask();
    }

    /**
     * Shows another sheet.
     *
     * @param by how many further on, negative for back
     */
    public void turn(int by) {
        int last = laidOut.value().map(laid -> laid.sheets().size()).orElse(1) - 1;
        sheet.set(Math.max(0, Math.min(last, sheet.value() + by)));
    }

    /**
     * Shows the card that a finding is about.
     *
     * @param remark the finding, or none
     */
    public void choose(Optional<Remark> remark) {
        remark.filter(r -> r.sheet() >= 0).ifPresent(r -> sheet.set(r.sheet()));
        chosen.set(remark);
    }

    private void ask() {
        if (!isShown || editor.document().isInGesture()) {
            return;
        }
        LoadedSet loaded = editor.document().loaded();
        HandleSet set = loaded.set();
        List<Brief> briefs = loaded.briefs();
        Asked now =
                new Asked(
                        set.name(),
                        set.batch(),
                        briefs,
                        set.workshop().templates(),
                        editor.units().value());
        if (asked.equals(Optional.of(now))) {
            return;
        }
        asked = Optional.of(now);
        int run = ++number;
        working.set(true);
        background.execute(() -> layOut(now, run));
    }

    private void layOut(Asked now, int run) {
        try {
            LaidOut made = LaidOut.of(now, () -> check(run));
            drawing.execute(() -> take(made, run));
        } catch (CancellationException overtaken) {
            // The next run is waiting for this thread.
        } catch (IllegalArgumentException impossible) {
            drawing.execute(() -> fail(String.valueOf(impossible.getMessage()), run));
        }
    }

    private void check(int run) {
        if (run != number) {
            throw new CancellationException("overtaken");
        }
    }

    private void fail(String why, int run) {
        if (run == number) {
            working.set(false);
            trouble.set(Optional.of("Cards cannot be made: " + why));
        }
    }

    private void take(LaidOut made, int run) {
        if (run != number) {
            return;
        }
        trouble.set(Optional.empty());
        chosen.set(Optional.empty());
        laidOut.set(Optional.of(made));
        turn(0);
        working.set(false);
    }

    /**
     * What the tool does about the lines.
     *
     * @return a sentence without a full stop
     */
    public String toolNote() {
        TemplateSettings.Cutting cutting =
                laidOut.value()
                        .map(laid -> laid.asked().settings())
                        .orElse(editor.draft().value().set().workshop().templates())
                        .cutting();
        return switch (cutting.tool()) {
            case HAND_SAW -> "Plain lines: saw on the waste side, file to the line";
            case LASER ->
                    "Laser, kerf "
                            + Entry.fine(cutting.kerfMm(), editor.units().value())
                            + ": edges lie half of it outside the true size, openings inside";
            case ROUTER ->
                    "Router, bit "
                            + Entry.fine(cutting.bitMm(), editor.units().value())
                            + ": lines are the true edge, the machine keeps the bit beside them";
        };
    }

    /**
     * How many sheets there are and how well they are used.
     *
     * @return a few words; why there are none, where there are none
     */
    public String use() {
        if (trouble.value().isPresent()) {
            return trouble.value().get();
        }
        if (laidOut.value().isEmpty()) {
            return "";
        }
        LaidOut laid = laidOut.value().get();
        if (laid.sheets().isEmpty()) {
            if (!laid.undrawn().isEmpty()) {
                return "Nothing to cut: "
                        + String.join(", ", laid.undrawn())
                        + " cannot be drawn, see what is found on the board";
            }
            return laid.layout().findings().isEmpty()
                    ? "Nothing to cut: choose a gauge or the copying template beside"
                    : "No card fits on the sheet";
        }
        return laid.cards()
                + (laid.cards() == 1 ? " card on " : " cards on ")
                + laid.sheets().size()
                + (laid.sheets().size() == 1 ? " sheet" : " sheets")
                + "; "
                + NumberText.fixed(100 * laid.layout().utilisation(), 0)
                + " % of what is used up becomes cards"
                + (laid.undrawn().isEmpty()
                        ? ""
                        : "; none for " + String.join(", ", laid.undrawn()) + ", not drawn");
    }
}
