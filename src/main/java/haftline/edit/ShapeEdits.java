package haftline.edit;

import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.store.References;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.UnaryOperator;

/**
 * Commands on the shape of one piece apart from its nodes: details, the butt, the step at the
 * ferrule, the shape as a whole.
 *
 * @param piece the piece's name
 * @param scope which pieces are changed
 */
public record ShapeEdits(String piece, Scope scope) {
    /**
     * Lays a detail over the body.
     *
     * @param detail the detail
     * @return the command
     */
    public Command add(Detail detail) {
        return details("add " + detail.kind(), details -> details.add(detail));
    }

    /**
     * Moves a detail.
     *
     * @param index its place in the shape's list
     * @param kind its kind, for the name
     * @param place where to
     * @return the command
     */
    public Command move(int index, String kind, Place place) {
        return details(
                "move " + kind,
                details -> {
                    check(index, details);
                    details.set(index, details.get(index).at(place));
                });
    }

    /**
     * Puts another detail in the place of one: another size of it.
     *
     * @param index its place in the shape's list
     * @param detail the detail
     * @return the command
     */
    public Command replace(int index, Detail detail) {
        return details(
                "change " + detail.kind(),
                details -> {
                    check(index, details);
                    details.set(index, detail);
                });
    }

    /**
     * Takes a detail off.
     *
     * @param index its place in the shape's list
     * @param kind its kind, for the name
     * @return the command
     */
    public Command remove(int index, String kind) {
        return details(
                "remove " + kind,
                details -> {
                    check(index, details);
                    details.remove(index);
                });
    }

    private static void check(int index, List<Detail> details) {
        if (index < 0 || index >= details.size()) {
            throw new IllegalArgumentException("the detail is no longer there");
        }
    }

    private Command details(String name, java.util.function.Consumer<List<Detail>> change) {
        return shape(
                name,
                shape -> {
                    List<Detail> details = new ArrayList<>(shape.details());
                    change.accept(details);
                    return shape.withDetails(details);
                });
    }

    /**
     * Sets the form of the butt.
     *
     * @param butt the form
     * @return the command
     */
    public Command butt(Butt butt) {
        return shape("change butt", shape -> shape.withButt(butt));
    }

    /**
     * Sets the step at the ferrule.
     *
     * @param mm on the radius; 0 is flush
     * @return the command
     */
    public Command shadowLine(double mm) {
        return shape("change shadow line", shape -> shape.withShadowLineMm(mm));
    }

    /**
     * Takes another shape; what was decided for nodes that it does not have is dropped.
     *
     * @param other the shape
     * @param reference its file, absolute or seen from where the set was opened; empty for a shape
     *     that has none, which gets one beside the set's
     * @return the command
     */
    public Command take(Shape other, String reference) {
        return new Command(
                "take shape " + other.name(),
                draft -> {
                    if (scope == Scope.THIS_PIECE) {
                        Draft own = draft.withPiece(piece, p -> p.withShape(Optional.of(other)));
                        return Differences.known(named(own, own.references().shape(), reference));
                    }
                    Draft freed = draft.withPiece(piece, p -> p.withShape(Optional.empty()));
                    Draft taken = freed.withSet(freed.set().withShape(other));
                    return Differences.known(named(taken, reference, ""));
                });
    }

    /**
     * Makes a piece's own shape that of all pieces: the set takes it, and no piece differs in it
     * any more but those that had another shape of their own. It is saved in a file of the set's
     * own, for other sets may share the piece's.
     *
     * @return the command
     */
    public Command makeCommon() {
        return new Command(
                "give all pieces the shape of " + piece,
                draft -> {
                    Optional<Shape> own = draft.piece(piece).shape();
                    if (own.isEmpty()) {
                        throw new IllegalArgumentException(
                                "\"" + piece + "\" has no shape of its own");
                    }
                    Draft freed = draft.withPiece(piece, p -> p.withShape(Optional.empty()));
                    Draft taken = freed.withSet(freed.set().withShape(own.get()));
                    return Differences.known(named(taken, "", ""));
                });
    }

    /** The draft with other names of the files of the shared shape and of this piece's own. */
    private Draft named(Draft draft, String shared, String own) {
        References now = draft.references();
        Map<String, String> shapes = new TreeMap<>(now.pieceShapes());
        if (own.isEmpty()) {
            shapes.remove(piece);
        } else {
            shapes.put(piece, own);
        }
        return draft.withReferences(
                new References(
                        shared,
                        now.parts(),
                        now.batch(),
                        now.rules(),
                        now.workshop(),
                        now.catalogues(),
                        now.rack(),
                        shapes));
    }

    private Command shape(String name, UnaryOperator<Shape> change) {
        return new Command(name, draft -> draft.withShape(piece, scope, change));
    }
}
