package haftline.ui.model;

import haftline.edit.Worked;
import haftline.figures.Figures;
import haftline.handle.Handle;
import java.util.Optional;

/** Where the piece at hand stands on the screen, and how it is zoomed, moved and fitted. */
public final class Viewpoint {
    /** The blade is broken off this far in front of the ferrule, mm. */
    public static final double BLADE_SHOWN_MM = 30;

    /** A fitted view stands on whole pixels: that far over the area it still fits, px. */
    private static final double ROUNDING_PX = 1;

    private final EditorModel editor;
    private final Watched<View> view = new Watched<>(new View(4, 200, 200));
    private View.Area area = new View.Area(0, 0, 800, 400);
    private boolean isFitted = true;

    Viewpoint(EditorModel editor) {
        this.editor = editor;
        editor.opened().watch(document -> isFitted = true);
        editor.piece().watch(piece -> isFitted = true);
        editor.draft().watch(draft -> follow());
        editor.drawn().watch(drawn -> follow());
        editor.inHand().watch(inHand -> letGo());
    }

    /** What is dragged must not move under the pointer: a piece is fitted anew after a gesture. */
    private void follow() {
        if (isFitted && !editor.document().isInGesture()) {
            fit(area);
        }
    }

    /** A piece that stayed within its room stays where it is under the hand. */
    private void letGo() {
        boolean isOutside = handle().filter(handle -> !fits(handle)).isPresent();
        if (isFitted && !editor.document().isInGesture() && isOutside) {
            fit(area);
        }
    }

    private Optional<Handle> handle() {
        return editor.drawn().value().flatMap(Worked::figures).map(Figures::handle);
    }

    private boolean fits(Handle handle) {
        View now = view.value();
        return now.px(from(handle)) >= area.left() - ROUNDING_PX
                && now.px(to(handle)) <= area.left() + area.width() + ROUNDING_PX
                && radius(handle) * now.scale() <= area.height() / 2 + ROUNDING_PX;
    }

    /**
     * Where the piece stands.
     *
     * @return watched
     */
    public Watched<View> view() {
        return view;
    }

    /**
     * Fits the whole handle and a piece of the blade into an area, and keeps it fitted until it is
     * zoomed or moved.
     *
     * @param where the area, without the room for dimensions
     */
    public void fit(View.Area where) {
        area = where;
        isFitted = true;
        handle().ifPresent(handle -> view.set(fitting(handle, where)));
    }

    private static View fitting(Handle handle, View.Area where) {
        return View.fitting(from(handle), to(handle), radius(handle), where);
    }

    private static double from(Handle handle) {
        return handle.ferruleFaceX() - BLADE_SHOWN_MM;
    }

    private static double to(Handle handle) {
        return handle.buttX() + handle.lengths().capMm();
    }

    private static double radius(Handle handle) {
        double ferrule = handle.brief().kit().ferrule().outside().greatest() / 2;
        return Math.max(handle.outline().greatest().r(), ferrule);
    }

    /** Fits the piece into the area that was last given. */
    public void fit() {
        fit(area);
    }

    /**
     * The area changed its size: a fitted piece is fitted anew.
     *
     * @param where the area, without the room for dimensions
     */
    public void resize(View.Area where) {
        area = where;
        if (isFitted) {
            fit(where);
        }
    }

    /**
     * Enlarges or reduces, the place under the pointer staying where it is.
     *
     * @param factor over 1 to enlarge
     * @param px pointer, px from the left
     * @param py pointer, px from the top
     */
    public void zoom(double factor, double px, double py) {
        isFitted = false;
        view.set(view.value().zoomed(factor, px, py));
    }

    /**
     * Moves the piece over the screen.
     *
     * @param dx px to the right
     * @param dy px down
     */
    public void pan(double dx, double dy) {
        isFitted = false;
        view.set(view.value().moved(dx, dy));
    }
}
