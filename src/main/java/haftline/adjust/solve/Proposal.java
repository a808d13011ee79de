package haftline.adjust.solve;

import haftline.handle.Handle;
import haftline.set.HandleSet;
import java.util.List;
import java.util.Optional;

/** A change of a set that was worked out and waits to be accepted. */
public sealed interface Proposal permits Adjustment, Fairing {
    /**
     * What moves.
     *
     * @return the moves, empty where nothing does
     */
    List<Move> moves();

    /**
     * The pieces as proposed, for a ghost of their outlines.
     *
     * @return in the set's order; empty for one that cannot be drawn
     */
    List<Optional<Handle>> after();

    /**
     * What to do to a set.
     *
     * @return one step for each move
     */
    List<Step> steps();

    /**
     * What it does, fit to stand behind "Undo".
     *
     * @return in the trade's words
     */
    String name();

    /**
     * Carries the proposal out.
     *
     * @param set the set that it was made for, or one that has since changed elsewhere
     * @return the changed copy
     * @throws IllegalArgumentException where the set no longer has a piece or node that moves
     */
    default HandleSet in(HandleSet set) {
        HandleSet changed = set;
        for (Step step : steps()) {
            changed = step.in(changed);
        }
        return changed;
    }

    /** One thing to decide anew in a set. */
    final class Step {
        private final Quantity quantity;
        private final double value;

        Step(Quantity quantity, double value) {
            this.quantity = quantity;
            this.value = value;
        }

        private HandleSet in(HandleSet set) {
            return quantity.in(set, value);
        }
    }
}
