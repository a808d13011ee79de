package haftline.findings;

import haftline.handle.Choices;
import java.util.Optional;

/**
 * A change that was tried on the handle and mends a finding.
 *
 * @param choices the piece's choices with the change made; empty where it is the parts that must
 *     change
 * @param change what changes, as a sentence of the imperative with its numbers, without a full stop
 * @param aside what the change costs, or another that would do, in lower case; empty where there is
 *     neither
 * @param outcome the finding's figure after the change, or the value that was changed
 */
public record Remedy(Optional<Choices> choices, String change, String aside, double outcome) {
    /** A remedy of which nothing more is to be said. */
    Remedy(Optional<Choices> choices, String change, double outcome) {
        this(choices, change, "", outcome);
    }

    /** The same remedy with something more to be said of it. */
    Remedy with(String more) {
        return new Remedy(choices, change, aside.isEmpty() ? more : aside + "; " + more, outcome);
    }

    /**
     * The change and what is to be said of it.
     *
     * @return one sentence without a full stop
     */
    public String text() {
        return aside.isEmpty() ? change : change + "; " + aside;
    }
}
