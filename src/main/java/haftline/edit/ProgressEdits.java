package haftline.edit;

import haftline.set.production.Progress;
import java.util.function.UnaryOperator;

/** Changes of the progress of a batch. */
public final class ProgressEdits {
    private ProgressEdits() {}

    /**
     * One change.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change; throws {@link IllegalArgumentException}, its message saying what is
     *     expected, where the progress does not allow it
     */
    public record Edit(String name, UnaryOperator<Progress> change) {}

    /**
     * Says how many of a piece have gone through a step.
     *
     * @param piece the piece's name
     * @param step the step
     * @param count from 0 to the piece's quantity
     * @return the edit
     */
    public static Edit done(String piece, String step, int count) {
        return new Edit(step + " " + piece, progress -> progress.withDone(piece, step, count));
    }

    /**
     * Ticks one more, or takes one tick back.
     *
     * @param piece the piece's name
     * @param step the step
     * @param by how many more, negative for fewer; the count stays within the quantity by being
     *     refused beyond it
     * @return the edit
     */
    public static Edit tick(String piece, String step, int by) {
        return new Edit(
                step + " " + piece,
                progress -> progress.withDone(piece, step, progress.done(piece, step) + by));
    }

    /**
     * Ticks a step off for all of all pieces.
     *
     * @param step the step
     * @return the edit
     */
    public static Edit allDone(String step) {
        return new Edit(step + " all", progress -> progress.withAllDone(step));
    }
}
