package haftline.cli;

import haftline.findings.Gravity;
import java.util.List;

/**
 * A set, worked out.
 *
 * @param name name of the set
 * @param batch the measured batch that its parts come from
 * @param pieces its pieces in the set's order
 */
record ExaminedSet(String name, String batch, List<ExaminedPiece> pieces) {
    ExaminedSet {
        pieces = List.copyOf(pieces);
    }

    /** Whether a piece cannot be made so. */
    boolean isStopped() {
        return pieces.stream().anyMatch(ExaminedPiece::isStopped);
    }

    int count(Gravity gravity) {
        return pieces.stream().mapToInt(piece -> piece.count(gravity)).sum();
    }
}
