package haftline.ui.model;

import haftline.edit.NodeEdits;
import haftline.edit.Outcome;
import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import java.util.Optional;
import java.util.OptionalDouble;

/** The slope at the chosen node: what it is, what it may be, and how it is set. */
public final class SlopeModel {
    private final EditorModel editor;
    private final Watched<Optional<String>> selected;

    SlopeModel(EditorModel editor, Watched<Optional<String>> selected) {
        this.editor = editor;
        this.selected = selected;
    }

    private Optional<Handle> handle() {
        return editor.drawn().value().flatMap(Worked::figures).map(Figures::handle);
    }

    /**
     * The slope at the chosen node.
     *
     * @return what it is and what it may be; empty at a crisp node and where none is chosen
     */
    public Optional<NodeSlope> now() {
        return handle().flatMap(handle -> selected.value().flatMap(n -> NodeSlope.of(handle, n)));
    }

    /**
     * Sets the slope at the chosen node.
     *
     * @param slopeDeg degrees from the axis, or empty to leave it to the batten
     * @return done, or why not
     */
    public Outcome set(OptionalDouble slopeDeg) {
        Optional<NodeSlope> now = now();
        if (now.isEmpty()) {
            return refused("A slope is set at a smooth node: choose one");
        }
        boolean fits =
                slopeDeg.isEmpty()
                        || now.get().held(slopeDeg.getAsDouble()) == slopeDeg.getAsDouble();
        return fits
                ? editor.runIfDrawable(
                        new NodeEdits(handle().orElseThrow(), editor.scope().value())
                                .slope(now.get().node(), slopeDeg))
                : refused(
                        "The slope at "
                                + now.get().node()
                                + " would make the outline leave the range of its neighbours; "
                                + now.get().range()
                                + " is possible");
    }

    /**
     * Sets the slope at the chosen node as it was typed.
     *
     * @param text degrees from the axis, or {@code free} or nothing to leave it to the batten
     * @return done, or what was expected, the allowed range with it
     */
    public Outcome set(String text) {
        boolean isFree = text.isBlank() || text.strip().equalsIgnoreCase("free");
        OptionalDouble degrees = isFree ? OptionalDouble.empty() : Entry.number(text, "°");
        return isFree || degrees.isPresent()
                ? set(degrees)
                : refused(
                        "Expected degrees from the axis, "
                                + now().map(NodeSlope::range).orElse("such as 4.5")
                                + ", or free");
    }

    private Outcome refused(String why) {
        editor.refuse(why);
        return new Outcome.Refused(why);
    }
}
