package haftline.edit;

import haftline.adjust.solve.Proposal;

/** Commands that accept what was worked out for the maker. */
public final class AdjustEdits {
    private AdjustEdits() {}

    /**
     * Accepts a proposal: all that it moves, on all pieces and in all documents, as one step. What
     * it decides in a shared shape, a piece's own shape, the set or a piece goes there, so that a
     * save writes the files of just those.
     *
     * @param proposal an adjustment or a fairing
     * @return the command
     */
    public static Command accept(Proposal proposal) {
        return new Command(proposal.name(), draft -> draft.withSet(proposal.in(draft.set())));
    }
}
