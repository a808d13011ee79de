package haftline.cli;

import haftline.findings.Gravity;
import java.util.List;
import java.util.Optional;

/**
 * A set, worked out.
 *
 * @param name name of the set
 * @param batch the measured batch that its parts come from
 * @param pieces its pieces in the set's order
 * @param family how they match; empty where they were not taken together
 */
record ExaminedSet(
        String name, String batch, List<ExaminedPiece> pieces, Optional<ExaminedFamily> family) {
    ExaminedSet {
        pieces = List.copyOf(pieces);
    }

    /** Pieces that are not taken together. */
    ExaminedSet(String name, String batch, List<ExaminedPiece> pieces) {
        this(name, batch, pieces, Optional.empty());
    }

    /** Whether a piece cannot be made so. */
    boolean isStopped() {
        return pieces.stream().anyMatch(ExaminedPiece::isStopped);
    }

    int count(Gravity gravity) {
        return pieces.stream().mapToInt(piece -> piece.count(gravity)).sum();
    }
}
