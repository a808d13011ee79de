package haftline.ui.model;

import haftline.adjust.fair.CurvatureComb;
import haftline.edit.Worked;
import java.util.Optional;

/** The curvature comb of the piece at hand: made while it is shown and no hand moves anything. */
public final class CombModel {
    /** Teeth this far apart show a bead and leave the paper visible, mm. */
    private static final double SPACING_MM = 1;

    private final EditorModel editor;
    private final Watched<Boolean> isShown = new Watched<>(false);
    private final Watched<Optional<CurvatureComb>> comb = new Watched<>(Optional.empty());

    /**
     * The comb of an editor's piece, not shown yet.
     *
     * @param editor the editor
     */
    public CombModel(EditorModel editor) {
        this.editor = editor;
        isShown.watch(shown -> follow());
        editor.drawn().watch(drawn -> follow());
        editor.inHand().watch(inHand -> follow());
    }

    /**
     * Whether it is shown.
     *
     * @return watched; may be set
     */
    public Watched<Boolean> isShown() {
        return isShown;
    }

    /**
     * The comb.
     *
     * @return watched; empty where it is not shown
     */
    public Watched<Optional<CurvatureComb>> comb() {
        return comb;
    }

    private void follow() {
        if (!isShown.value()) {
            comb.set(Optional.empty());
        } else if (!editor.document().isInGesture()) {
            comb.set(
                    editor.drawn()
                            .value()
                            .flatMap(Worked::figures)
                            .map(figures -> CurvatureComb.of(figures.handle(), SPACING_MM)));
        }
    }
}
