package haftline.adjust.solve;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Node;
import haftline.shape.Reference;
import haftline.shape.Shape;
import haftline.shape.Size;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Something that an adjustment may move, and where in the documents it is decided.
 *
 * @param kind what it is
 * @param node name of the node, else empty
 * @param owner whose it is
 * @param piece the piece that it belongs to; empty where pieces share it
 * @param times the reference of which a node's diameter is a multiple; empty for one in mm
 * @param pieces places in the set of all pieces that it moves
 * @param value what it is now: mm, or a multiple of the reference, or the length's ratio
 * @param low least that it may become
 * @param high greatest that it may become
 * @param weight how much change one unit is, in mm of diameter
 */
record Quantity(
        Kind kind,
        String node,
        Owner owner,
        Optional<String> piece,
        Optional<Reference> times,
        List<Integer> pieces,
        double value,
        double low,
        double high,
        double weight) {
    Quantity {
        pieces = List.copyOf(pieces);
    }

    /** What may move. */
    enum Kind {
        NODE,
        SWELL,
        LENGTH,
        TANG_DEPTH,
        CAP_DEPTH
    }

    /** Where it is decided. */
    enum Owner {
        /** The shape that the set shares. */
        SET_SHAPE,
        /** A piece's own shape. */
        PIECE_SHAPE,
        /** The choices that the set holds common. */
        SET_CHOICE,
        /** A piece's own choices. */
        PIECE_CHOICE
    }

    boolean moves(int index) {
        return pieces.contains(index);
    }

    /** The set with this decided anew. */
    HandleSet in(HandleSet set, double changed) {
        return switch (owner) {
            case SET_SHAPE -> set.withShape(resized(set.shape(), changed));
            case SET_CHOICE -> set.withCommon(chosen(set.common(), changed));
            case PIECE_SHAPE ->
                    withPiece(set, p -> p.withShape(Optional.of(resized(set.shape(p), changed))));
            case PIECE_CHOICE -> withPiece(set, p -> p.withChoices(chosen(p.choices(), changed)));
        };
    }

    private HandleSet withPiece(HandleSet set, UnaryOperator<Piece> change) {
        String name = piece.orElseThrow();
        Piece before =
                set.piece(name)
                        .orElseThrow(
                                () ->
                                        new IllegalArgumentException(
                                                "no piece \"" + name + "\" in the set"));
        List<Piece> all = new ArrayList<>(set.pieces());
        all.set(all.indexOf(before), change.apply(before));
        return set.withPieces(all);
    }

    private Shape resized(Shape shape, double changed) {
        List<Node> nodes = new ArrayList<>(shape.nodes());
        boolean found = false;
        for (int i = 0; i < nodes.size(); i++) {
            if (nodes.get(i).name().equals(node)) {
                nodes.set(i, nodes.get(i).withSize(size(changed)));
                found = true;
            }
        }
        if (!found) {
            throw new IllegalArgumentException("no node \"" + node + "\" in " + shape.name());
        }
        return shape.withNodes(nodes);
    }

    private Size size(double changed) {
        return times.isPresent() ? new Size.Times(changed, times.get()) : new Size.Plain(changed);
    }

    private Choices chosen(Choices choices, double changed) {
        ChoicesBuilder builder = choices.toBuilder();
        set(builder, changed);
        return builder.build();
    }

    /** Sets it in choices, a node's diameter in mm. */
    void set(ChoicesBuilder choices, double changed) {
        switch (kind) {
            case NODE -> choices.nodeDiameterMm(node, changed);
            case SWELL -> choices.swellMm(changed);
            case LENGTH -> choices.lengthRatio(changed);
            case TANG_DEPTH -> choices.tangDepthMm(changed);
            case CAP_DEPTH -> choices.capDepthMm(changed);
        }
    }
}
