package haftline.edit;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Node;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/** In what a piece goes its own way, and the way back. */
public final class Differences {
    private Differences() {}

    /**
     * Everything in which a piece differs from its set.
     *
     * @param piece the piece
     * @return stock, shape, choices, nodes, in this order; empty where it follows its set
     */
    public static List<Difference> of(Piece piece) {
        List<Difference> all = new ArrayList<>();
        if (piece.stock().isPresent()) {
            all.add(Difference.STOCK);
        }
        if (piece.shape().isPresent()) {
            all.add(Difference.SHAPE);
        }
        Choices own = piece.choices();
        for (Choice choice : Choice.values()) {
            if (choice.value(own).isPresent()) {
                all.add(Difference.of(choice));
            }
        }
        Set<String> nodes = new TreeSet<>(own.nodeDiametersMm().keySet());
        nodes.addAll(own.nodePlaces().keySet());
        for (String node : nodes) {
            if (own.nodeDiametersMm().containsKey(node)) {
                all.add(Difference.diameterOf(node));
            }
            if (own.nodePlaces().containsKey(node)) {
                all.add(Difference.placeOf(node));
            }
        }
        return all;
    }

    /**
     * Gives up one difference: from then on the piece follows its set in it.
     *
     * @param piece the piece's name
     * @param difference what to give up
     * @return the command
     */
    public static Command release(String piece, Difference difference) {
        return new Command(
                "release " + difference.words(),
                draft -> {
                    switch (difference.kind()) {
                        case STOCK -> {
                            return draft.withPiece(piece, p -> p.withStock(Optional.empty()));
                        }
                        case SHAPE -> {
                            return known(
                                    draft.withPiece(piece, p -> p.withShape(Optional.empty())));
                        }
                        default -> {
                            return draft.withChoices(piece, own -> without(own, difference));
                        }
                    }
                });
    }

    /**
     * Gives up all differences of a piece.
     *
     * @param piece the piece's name
     * @return the command
     */
    public static Command releaseAll(String piece) {
        return new Command(
                "release all of " + piece,
                draft ->
                        draft.withPiece(
                                piece,
                                p ->
                                        p.withStock(Optional.empty())
                                                .withShape(Optional.empty())
                                                .withChoices(Choices.NONE)));
    }

    private static Choices without(Choices own, Difference difference) {
        ChoicesBuilder builder = own.toBuilder();
        return switch (difference.kind()) {
            case DIAMETER -> builder.nodeDiameterByShape(difference.node()).build();
            case PLACE -> builder.nodePlaceByShape(difference.node()).build();
            default -> difference.choice().orElseThrow().without(own);
        };
    }

    /** Choices without those for nodes that a shape does not have. */
    static Choices known(Choices choices, Shape shape) {
        return known(choices, names(shape));
    }

    /**
     * A draft without choices for nodes that no shape has any more, which could be neither seen nor
     * read back.
     */
    static Draft known(Draft draft) {
        HandleSet set = draft.set();
        List<Piece> pieces =
                set.pieces().stream()
                        .map(p -> p.withChoices(known(p.choices(), set.shape(p))))
                        .toList();
        Set<String> anywhere = names(set.shape());
        pieces.forEach(p -> anywhere.addAll(names(set.shape(p))));
        return draft.withSet(set.withPieces(pieces).withCommon(known(set.common(), anywhere)));
    }

    private static Set<String> names(Shape shape) {
        return shape.nodes().stream()
                .map(Node::name)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Choices known(Choices choices, Set<String> names) {
        ChoicesBuilder kept = choices.toBuilder();
        for (String node : choices.nodeDiametersMm().keySet()) {
            if (!names.contains(node)) {
                kept.nodeDiameterByShape(node);
            }
        }
        for (String node : choices.nodePlaces().keySet()) {
            if (!names.contains(node)) {
                kept.nodePlaceByShape(node);
            }
        }
        return kept.build();
    }
}
