package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.edit.ShapeEdits;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;

/** The details laid over the body: which is chosen, and what is done to it. */
public final class DetailsModel {
    private final EditorModel editor;
    private final Watched<Optional<Integer>> chosen = new Watched<>(Optional.empty());
    private Optional<Keyed> keyed = Optional.empty();

    /** A detail being changed by keys, and how far it is wanted by now. */
    private record Keyed(HeldDetail held, double x, double widthMm, double proudMm) {
        static Keyed of(HeldDetail held) {
            return new Keyed(held, held.x(), held.detail().widthMm(), held.detail().proudMm());
        }

        /** Further by some; what the detail cannot follow is not saved up. */
        Keyed by(double dx, double dWidth, double dProud) {
            Detail now = held.changed(x + dx, widthMm + dWidth, proudMm + dProud);
            double wood = held.edits().handle().lengths().visibleWoodMm();
            return new Keyed(held, now.place().x(wood), now.widthMm(), now.proudMm());
        }

        Command command() {
            return held.replace(
                    held.changed(
                            Snap.FREE.nearest(x),
                            Snap.FREE.nearest(widthMm),
                            Snap.FREE.nearest(proudMm)));
        }
    }

    DetailsModel(EditorModel editor) {
        this.editor = editor;
    }

    /**
     * The chosen detail's place in the shape's list.
     *
     * @return watched; may be set
     */
    public Watched<Optional<Integer>> chosen() {
        return chosen;
    }

    private Optional<Handle> handle() {
        return editor.drawn().value().flatMap(Worked::figures).map(Figures::handle);
    }

    List<Detail> all() {
        return handle().map(handle -> handle.brief().shape().details()).orElse(List.of());
    }

    /**
     * The chosen detail.
     *
     * @return the detail, or empty
     */
    public Optional<Detail> detail() {
        return chosen.value().filter(i -> i < all().size()).map(i -> all().get(i));
    }

    /**
     * The chosen detail in words, with its figures.
     *
     * @return such as {@code cove, 5 mm wide, 1 mm deep, at 31.5 mm}; empty where none is chosen
     */
    public Optional<String> words() {
        return detail().map(this::words);
    }

    private String words(Detail detail) {
        double x = detail.place().x(handle().orElseThrow().lengths().visibleWoodMm());
        String tall =
                detail.proudMm() == 0
                        ? ""
                        : ", "
                                + length(Math.abs(detail.proudMm()))
                                + (detail.proudMm() > 0 ? " high" : " deep");
        return detail.kind()
                + ", "
                + length(detail.widthMm())
                + " wide"
                + tall
                + ", at "
                + length(x);
    }

    private String length(double mm) {
        return Entry.text(mm, editor.units().value());
    }

    /**
     * Lays a detail over the body and chooses it.
     *
     * @param detail the detail
     * @return done, or why not
     */
    public Outcome add(Detail detail) {
        Outcome outcome = editor.runIfDrawable(edits().add(detail));
        if (outcome.isDone()) {
            chosen.set(Optional.of(all().size() - 1));
        }
        return outcome;
    }

    /**
     * Takes a detail off.
     *
     * @param detail the detail, as it was hit
     * @return done, or why not
     */
    public Outcome remove(Hit.OnDetail detail) {
        Optional<Integer> before = chosen.value();
        Outcome outcome = editor.runIfDrawable(edits().remove(detail.index(), detail.kind()));
        if (outcome.refusal().isEmpty()) {
            // Another one is never chosen in its place: the next press of the key would take it.
            chosen.set(
                    before.filter(i -> i != detail.index())
                            .map(i -> i > detail.index() ? i - 1 : i));
        }
        return outcome;
    }

    /** Takes the chosen detail off. */
    void removeChosen() {
        detail().ifPresent(
                        detail ->
                                remove(
                                        new Hit.OnDetail(
                                                chosen.value().orElseThrow(), detail.kind())));
    }

    private ShapeEdits edits() {
        return new ShapeEdits(editor.piece().value(), editor.scope().value());
    }

    /** The chosen detail as it now is, to be changed. */
    HeldDetail held(int index) {
        return HeldDetail.of(new NodeEdits(handle().orElseThrow(), editor.scope().value()), index);
    }

    /**
     * Changes the chosen detail a little; until {@link #endNudge} all nudges are one step.
     *
     * @param dxMm towards the butt, mm
     * @param dWidthMm wider, about its middle, mm
     * @param dProudMm further out, mm: a groove gets shallower
     */
    public void nudge(double dxMm, double dWidthMm, double dProudMm) {
        if (detail().isEmpty()) {
            return;
        }
        if (keyed.isEmpty()) {
            keyed = Optional.of(Keyed.of(held(chosen.value().orElseThrow())));
            editor.begin("change " + detail().orElseThrow().kind());
        }
        Keyed further = keyed.get().by(dxMm, dWidthMm, dProudMm);
        if (editor.carryOn(further.command()).isDone()) {
            keyed = Optional.of(further);
        }
    }

    /** The key goes up: the nudges are one step. */
    public void endNudge() {
        if (keyed.isPresent()) {
            keyed = Optional.empty();
            editor.end();
        }
    }

    /** What was begun by keys is given up. */
    void abandon() {
        keyed = Optional.empty();
    }

    /** What was begun is given up, and nothing is chosen. */
    void drop() {
        abandon();
        chosen.set(Optional.empty());
    }

    /** A detail that is gone is no longer chosen. */
    void follow() {
        if (chosen.value().filter(i -> i >= all().size()).isPresent()) {
            chosen.set(Optional.empty());
        }
    }
}
