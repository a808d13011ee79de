package haftline.adjust.solve;

import haftline.handle.Handle;
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
 * @param conflicts needs that were not met together; of each list any one could be dropped to meet
 *     its others; empty where all are met
 * @param before the pieces as they are, in the set's order; empty for one that cannot be drawn
 * @param after the pieces as proposed, for a ghost of their outlines
 * @param steps what to do to a set
 */
public record Adjustment(
        List<Move> moves,
        double changeMm,
        List<Answer> answers,
        List<List<Answer>> conflicts,
        List<Optional<Handle>> before,
        List<Optional<Handle>> after,
        List<Step> steps)
        implements Proposal {
    /** Copies the lists. */
    public Adjustment {
        moves = List.copyOf(moves);
        answers = List.copyOf(answers);
        conflicts = conflicts.stream().map(List::copyOf).toList();
        before = List.copyOf(before);
        after = List.copyOf(after);
        steps = List.copyOf(steps);
    }

    /**
     * Whether every need is met.
     *
     * @return true where nothing is missed
     */
    public boolean isMet() {
        return answers.stream().allMatch(answer -> answer.standing() == Standing.MET);
    }

    @Override
    public String name() {
        return "adjust";
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
