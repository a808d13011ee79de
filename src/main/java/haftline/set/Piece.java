package haftline.set;

import haftline.handle.Choices;
import haftline.measure.Checks;
import haftline.shape.Shape;
import java.util.Optional;

/**
 * One piece of a set.
 *
 * @param name what the maker calls it, unique in its set
 * @param kit name of its kit in the set's batch of parts
 * @param stock key of its wood or plastic in the catalogue, or empty for the set's
 * @param shape a shape of its own, or empty for the set's
 * @param choices what is decided for this piece alone
 */
public record Piece(
        String name, String kit, Optional<String> stock, Optional<Shape> shape, Choices choices) {
    /** Checks the names. */
    public Piece {
        Checks.named("piece name", name);
        Checks.named("piece kit", kit);
    }

    /**
     * The same piece under another name.
     *
     * @param newName unique in its set
     * @return the changed copy
     */
    public Piece withName(String newName) {
        return new Piece(newName, kit, stock, shape, choices);
    }

    /**
     * The same piece for another kit.
     *
     * @param newKit name of a kit in the set's batch of parts
     * @return the changed copy
     */
    public Piece withKit(String newKit) {
        return new Piece(name, newKit, stock, shape, choices);
    }

    /**
     * The same piece in another stock.
     *
     * @param newStock key of its wood or plastic, or empty for the set's
     * @return the changed copy
     */
    public Piece withStock(Optional<String> newStock) {
        return new Piece(name, kit, newStock, shape, choices);
    }

    /**
     * The same piece in another shape.
     *
     * @param newShape a shape of its own, or empty for the set's
     * @return the changed copy
     */
    public Piece withShape(Optional<Shape> newShape) {
        return new Piece(name, kit, stock, newShape, choices);
    }

    /**
     * The same piece with other choices.
     *
     * @param newChoices what is decided for this piece alone
     * @return the changed copy
     */
    public Piece withChoices(Choices newChoices) {
        return new Piece(name, kit, stock, shape, newChoices);
    }
}
