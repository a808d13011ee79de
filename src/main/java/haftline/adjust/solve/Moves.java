package haftline.adjust.solve;

import haftline.adjust.solve.Quantity.Kind;
import haftline.handle.Brief;
import haftline.handle.Handle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Tells what a point of a model means for the documents and for each piece. */
record Moves(SetModel model, List<Quantity> quantities, List<String> pieces, double[] point) {
    List<Move> told() {
        List<Move> moves = new ArrayList<>();
        for (int i = 0; i < point.length; i++) {
            if (point[i] != 0) {
                moves.add(move(i));
            }
        }
        return moves;
    }

    List<Proposal.Step> steps() {
        List<Proposal.Step> steps = new ArrayList<>();
        for (int i = 0; i < point.length; i++) {
            if (point[i] != 0) {
                steps.add(new Proposal.Step(quantities.get(i), model.value(i, point)));
            }
        }
        return steps;
    }

    List<Optional<Handle>> handles() {
        List<Optional<Handle>> handles = new ArrayList<>();
        for (int p = 0; p < pieces.size(); p++) {
            handles.add(Optional.ofNullable(model.handle(p, point)));
        }
        return handles;
    }

    private Move move(int i) {
        Quantity q = quantities.get(i);
        double[] still = new double[point.length];
        List<Move.Size> sizes = new ArrayList<>();
        for (int p : q.pieces()) {
            sizes.add(new Move.Size(pieces.get(p), sizeMm(p, still, i), sizeMm(p, point, i)));
        }
        return new Move(
                q.node().isEmpty() ? words(q.kind()) : q.node(),
                switch (q.owner()) {
                    case SET_SHAPE -> Move.Document.SHARED_SHAPE;
                    case PIECE_SHAPE -> Move.Document.OWN_SHAPE;
                    case SET_CHOICE -> Move.Document.SET;
                    case PIECE_CHOICE -> Move.Document.PIECE;
                },
                q.piece(),
                q.kind() == Kind.LENGTH
                        ? "x blade"
                        : q.times().map(r -> "x " + r.name().toLowerCase(Locale.ROOT)).orElse("mm"),
                q.value(),
                model.value(i, point),
                sizes);
    }

    private static String words(Kind kind) {
        return switch (kind) {
            case NODE -> throw new IllegalArgumentException("a node has a name of its own");
            case SWELL -> "swell";
            case LENGTH -> "length";
            case TANG_DEPTH -> "tang bore's depth";
            case CAP_DEPTH -> "cap bore's depth";
        };
    }

    private double sizeMm(int piece, double[] at, int i) {
        Brief brief = model.brief(piece, at);
        double value = model.value(i, at);
        Quantity q = quantities.get(i);
        return switch (q.kind()) {
            case NODE -> q.times().map(r -> value * brief.referenceMm(r)).orElse(value);
            case LENGTH -> value * brief.kit().blade().length().mean();
            default -> value;
        };
    }
}
