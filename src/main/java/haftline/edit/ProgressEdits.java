package haftline.edit;

import haftline.set.production.Progress;
import java.util.function.UnaryOperator;

/** Changes of the progress of a batch. */
public final class ProgressEdits {
    /** Stands for all pieces, unless one is called so. */
    private static final String ALL = "all";

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

    /**
     * Reads an edit as it is typed: {@code shucker: bore 4}; without a number all of the piece;
     * {@code all: saw} for all pieces.
     *
     * @param text the text
     * @param progress what it is said of
     * @return the edit
     * @throws IllegalArgumentException where it is none; the message says what is expected
     */
    public static Edit parse(String text, Progress progress) {
        int colon = text.lastIndexOf(':');
        if (colon < 0) {
            throw new IllegalArgumentException(
                    "\""
                            + text
                            + "\": expected a piece, a colon, a step and a number, such as \""
                            + progress.pieces().get(0).piece()
                            + ": "
                            + progress.steps().get(0)
                            + " 1\"");
        }
        String piece = text.substring(0, colon).strip();
        String rest = text.substring(colon + 1).strip();
        boolean isNamed = progress.pieces().stream().anyMatch(p -> p.piece().equals(piece));
        if (piece.equals(ALL) && !isNamed) {
            return allDone(rest);
        }
        int blank = rest.lastIndexOf(' ');
        String number = rest.substring(blank + 1);
        if (blank > 0 && number.matches("[0-9]{1,6}")) {
            return done(piece, rest.substring(0, blank).strip(), Integer.parseInt(number));
        }
        return new Edit(
                rest + " " + piece, far -> far.withDone(piece, rest, far.quantityOf(piece)));
    }
}
