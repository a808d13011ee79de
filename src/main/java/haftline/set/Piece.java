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
}
