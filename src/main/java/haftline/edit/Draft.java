package haftline.edit;

import haftline.handle.Choices;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Shape;
import haftline.store.References;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * The content of an open document at one moment. Immutable: a change makes a new draft that shares
 * all that it does not touch, so that a history may keep every one of them.
 *
 * @param set the set
 * @param references the files that it names, relative to the folder that it was opened from
 */
public record Draft(HandleSet set, References references) {
    /**
     * A piece by its name.
     *
     * @param name the piece's name
     * @return the piece
     * @throws IllegalArgumentException where the set has none of that name
     */
    public Piece piece(String name) {
        return set.piece(name)
                .orElseThrow(
                        () -> new IllegalArgumentException("no piece \"" + name + "\" in the set"));
    }

    /**
     * The same with another set.
     *
     * @param changed the set
     * @return the changed copy
     */
    public Draft withSet(HandleSet changed) {
        return new Draft(changed, references);
    }

    /**
     * The same with other references.
     *
     * @param changed the references
     * @return the changed copy
     */
    public Draft withReferences(References changed) {
        return new Draft(set, changed);
    }

    /**
     * The same with one piece changed in its place.
     *
     * @param name the piece's name before the change
     * @param change what to make of it
     * @return the changed copy
     */
    public Draft withPiece(String name, UnaryOperator<Piece> change) {
        Piece before = piece(name);
        List<Piece> pieces = new ArrayList<>(set.pieces());
        pieces.set(pieces.indexOf(before), change.apply(before));
        return withSet(set.withPieces(pieces));
    }

    /**
     * The same with what is decided for one piece changed.
     *
     * @param name the piece's name
     * @param change what to make of its own choices
     * @return the changed copy
     */
    public Draft withChoices(String name, UnaryOperator<Choices> change) {
        return withPiece(name, piece -> piece.withChoices(change.apply(piece.choices())));
    }

    /**
     * The shape that an edit of one piece's shape in a scope begins with.
     *
     * @param name the piece's name
     * @return its shape
     */
    public Shape shape(String name) {
        return set.shape(piece(name));
    }

    /**
     * The same with the shape of a piece changed. In the scope of one piece the piece gets the
     * changed shape as its own, to be saved in a file of its own; in the scope of all pieces the
     * shape that it shares is changed, or its own where it has one.
     *
     * @param name the piece's name
     * @param scope whose shape is changed
     * @param change what to make of the shape
     * @return the changed copy
     */
    public Draft withShape(String name, Scope scope, UnaryOperator<Shape> change) {
        Piece piece = piece(name);
        Shape changed = change.apply(set.shape(piece));
        if (scope == Scope.ALL_PIECES && piece.shape().isEmpty()) {
            return withSet(set.withShape(changed));
        }
        if (changed.equals(set.shape(piece))) {
            return this;
        }
        return withPiece(name, p -> p.withShape(Optional.of(changed)));
    }
}
