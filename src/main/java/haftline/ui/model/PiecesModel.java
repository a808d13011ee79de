package haftline.ui.model;

import haftline.edit.Difference;
import haftline.edit.Differences;
import haftline.edit.Draft;
import haftline.edit.Outcome;
import haftline.edit.PieceEdits;
import haftline.edit.Scope;
import haftline.edit.ShapeEdits;
import haftline.edit.Worked;
import haftline.findings.Gravity;
import haftline.parts.Kit;
import haftline.set.Piece;
import java.util.List;
import java.util.Optional;

/**
 * The pieces of the set. A piece is worked out when it is first looked at, and again only when what
 * it follows from has changed, so that a set of hundreds scrolls without a hitch.
 */
public final class PiecesModel {
    private final EditorModel editor;
    private final Watched<List<String>> names;

    /**
     * The pieces of an editor's set.
     *
     * @param editor the editor
     */
    public PiecesModel(EditorModel editor) {
        this.editor = editor;
        names = new Watched<>(names(editor.draft().value()));
        editor.draft().watch(draft -> names.set(names(draft)));
    }

    private static List<String> names(Draft draft) {
        return draft.set().pieces().stream().map(Piece::name).toList();
    }

    /**
     * Names of the pieces in the set's order.
     *
     * @return watched
     */
    public Watched<List<String>> names() {
        return names;
    }

    /**
     * A piece, worked out: what its thumbnail shows.
     *
     * @param name the piece's name
     * @return the piece, worked out
     */
    public Worked worked(String name) {
        return editor.document().worked(name);
    }

    /**
     * What stands beside a thumbnail.
     *
     * @param name the piece's name
     * @return name, stock and what was found, in words
     */
    public Summary summary(String name) {
        Worked worked = worked(name);
        List<Difference> differences = Differences.of(editor.draft().value().piece(name));
        return new Summary(
                name,
                worked.brief().kit().name(),
                worked.brief().stock().name(),
                worked.gravest().filter(gravity -> gravity != Gravity.NOTE),
                worked.findings().stream().filter(f -> f.gravity() != Gravity.NOTE).count(),
                differences);
    }

    /**
     * A piece in a few words.
     *
     * @param name its name
     * @param kit name of its kit
     * @param stock name of its stock
     * @param gravest gravest finding that is more than a note, or empty
     * @param count how many findings are more than a note
     * @param differences in what it goes its own way
     */
    public record Summary(
            String name,
            String kit,
            String stock,
            Optional<Gravity> gravest,
            long count,
            List<Difference> differences) {
        /** Copies the list. */
        public Summary {
            differences = List.copyOf(differences);
        }

        /**
         * What was found.
         *
         * @return {@code as drawn}, {@code cannot be made} or a count of warnings
         */
        public String verdict() {
            if (gravest.isEmpty()) {
                return "as drawn";
            }
            if (gravest.get() == Gravity.STOP) {
                return "cannot be made";
            }
            return count == 1 ? "1 warning" : count + " warnings";
        }
    }

    /**
     * Kits of the batch in use, of which a piece may be added.
     *
     * @return their names
     */
    public List<String> kits() {
        return editor.draft().value().set().batchInUse().kits().stream().map(Kit::name).toList();
    }

    /**
     * Adds a piece behind the others and takes it in hand.
     *
     * @param kit name of its kit
     * @return done, or why not
     */
    public Outcome add(String kit) {
        Outcome outcome = editor.run(PieceEdits.add(kit));
        if (outcome.isDone()) {
            List<String> now = names.value();
            editor.choose(now.get(now.size() - 1));
        }
        return outcome;
    }

    /**
     * Copies a piece behind itself and takes the copy in hand.
     *
     * @param name the piece's name
     * @return done, or why not
     */
    public Outcome copy(String name) {
        Outcome outcome = editor.run(PieceEdits.copy(name));
        if (outcome.isDone()) {
            editor.choose(names.value().get(names.value().indexOf(name) + 1));
        }
        return outcome;
    }

    /**
     * Takes a piece out of the set.
     *
     * @param name the piece's name
     * @return done, or why not
     */
    public Outcome remove(String name) {
        return editor.run(PieceEdits.remove(name));
    }

    /**
     * Moves a piece up or down the row; at an end it stays.
     *
     * @param name the piece's name
     * @param by places towards the end, negative towards the beginning
     * @return done, or why not
     */
    public Outcome move(String name, int by) {
        int to = names.value().indexOf(name) + by;
        int last = names.value().size() - 1;
        return editor.run(PieceEdits.reorder(name, Math.max(0, Math.min(last, to))));
    }

    /**
     * Gives a piece another name; the piece in hand stays in hand.
     *
     * @param name its name now
     * @param newName unique in the set
     * @return done, or why not
     */
    public Outcome rename(String name, String newName) {
        return editor.run(PieceEdits.rename(name, newName));
    }

    /**
     * Gives up one thing in which a piece goes its own way.
     *
     * @param name the piece's name
     * @param difference what to give up
     * @return done, or why not
     */
    public Outcome release(String name, Difference difference) {
        return editor.run(Differences.release(name, difference));
    }

    /**
     * Gives up all in which a piece goes its own way.
     *
     * @param name the piece's name
     * @return done, or why not
     */
    public Outcome releaseAll(String name) {
        return editor.run(Differences.releaseAll(name));
    }

    /**
     * Gives all pieces the shape that one has of its own.
     *
     * @param name the piece's name
     * @return done, or why not
     */
    public Outcome shareShape(String name) {
        return editor.run(new ShapeEdits(name, Scope.ALL_PIECES).makeCommon());
    }
}
