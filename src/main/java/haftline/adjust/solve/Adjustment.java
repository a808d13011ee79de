package haftline.adjust.solve;

import haftline.handle.Handle;
import haftline.set.HandleSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What an adjustment comes to: a proposal that changes nothing by itself.
 *
 * @param moves what moves, empty where nothing has to or can
 * @param changeMm the measure of change: root of the sum of the squares of all movements, mm of
 *     diameter
 * @param answers how each need of each piece is answered
 * @param conflict needs that cannot be met together, each of which could be dropped to meet the
 *     rest; empty where all are met
 * @param before the pieces as they are, in the set's order; empty for one that cannot be drawn
 * @param after the pieces as proposed, for a ghost of their outlines
 * @param steps what to do to a set
 */
public record Adjustment(
        List<Move> moves,
        double changeMm,
        List<Answer> answers,
        List<Answer> conflict,
        List<Optional<Handle>> before,
        List<Optional<Handle>> after,
        List<Step> steps) {
    /** Copies the lists. */
    public Adjustment {
        moves = List.copyOf(moves);
        answers = List.copyOf(answers);
        conflict = List.copyOf(conflict);
        before = List.copyOf(before);
        after = List.copyOf(after);
        steps = List.copyOf(steps);
    }

    /** One thing to decide anew in a set. */
    public static final class Step {
        private final Quantity quantity;
        private final double value;

        Step(Quantity quantity, double value) {
            this.quantity = quantity;
            this.value = value;
        }

        HandleSet in(HandleSet set) {
            return quantity.in(set, value);
        }
    }

    /**
     * Whether every need is met.
     *
     * @return true where nothing is missed
     */
    public boolean isMet() {
        return answers.stream().allMatch(answer -> answer.standing() == Standing.MET);
    }

    /**
     * Carries the proposal out.
     *
     * @param set the set that it was made for, or one that has since changed elsewhere
     * @return the changed copy
     * @throws IllegalArgumentException where the set no longer has a piece or node that moves
     */
    public HandleSet in(HandleSet set) {
        HandleSet changed = set;
        for (Step step : steps) {
            changed = step.in(changed);
        }
        return changed;
    }

    /**
     * The answers that are not met.
     *
     * @return those that are missed or impossible
     */
    public List<Answer> missed() {
        List<Answer> missed = new ArrayList<>();
        for (Answer answer : answers) {
            if (answer.standing() != Standing.MET) {
                missed.add(answer);
            }
        }
        return missed;
    }
}
