package haftline.set;

import haftline.figures.Figures;
import haftline.findings.Findings;
import haftline.handle.Brief;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.parts.Batch;
import haftline.parts.Kit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What a new batch of parts changes in a set: every piece is worked out with the kit of either
 * batch, everything else being the same.
 *
 * @param before the batch before
 * @param after the new batch
 * @param pieces the pieces whose kits are in both, in the set's order
 * @param missing what cannot be compared, in the set's order
 */
public record BatchChange(
        Batch before, Batch after, List<PieceChange> pieces, List<Missing> missing) {
    /**
     * A piece whose kit is not in a batch.
     *
     * @param piece name of the piece
     * @param kit name of its kit
     * @param batch id of the batch that lacks it
     */
    public record Missing(String piece, String kit, String batch) {}

    /** Copies the lists. */
    public BatchChange {
        pieces = List.copyOf(pieces);
        missing = List.copyOf(missing);
    }

    /**
     * Compares two batches.
     *
     * @param set the set, whose own batch in use does not matter
     * @param before the batch before
     * @param after the new batch
     * @param materials where the keys of stock, metals and adhesive are looked up
     * @return what changes
     * @throws IllegalArgumentException where a key is not in the catalogues
     */
    public static BatchChange of(HandleSet set, Batch before, Batch after, Materials materials) {
        List<PieceChange> pieces = new ArrayList<>();
        List<Missing> missing = new ArrayList<>();
        for (Piece piece : set.pieces()) {
            Optional<Kit> old = before.kit(piece.kit());
            Optional<Kit> now = after.kit(piece.kit());
            if (old.isPresent() && now.isPresent()) {
                pieces.add(
                        PieceChange.of(
                                side(set.brief(piece, old.get(), materials)),
                                side(set.brief(piece, now.get(), materials))));
            } else {
                Batch lacking = now.isEmpty() ? after : before;
                missing.add(new Missing(piece.name(), piece.kit(), lacking.id()));
            }
        }
        return new BatchChange(before, after, pieces, missing);
    }

    private static PieceChange.Side side(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Resolved resolved) {
            Figures figures = Figures.of(resolved.handle());
            return new PieceChange.Side(brief, Optional.of(figures), Findings.of(figures));
        }
        return new PieceChange.Side(
                brief, Optional.empty(), Findings.of((Resolution.Impossible) resolution));
    }
}
