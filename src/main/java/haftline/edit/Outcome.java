package haftline.edit;

import java.util.Optional;

/** What came of an attempt to change a document. */
public sealed interface Outcome {
    /** It was done. */
    record Done() implements Outcome {}

    /**
     * Nothing was changed.
     *
     * @param why what is wrong and what is expected, a sentence without a full stop
     */
    record Refused(String why) implements Outcome {}

    /** It was done. */
    Outcome DONE = new Done();

    /**
     * Whether it was done.
     *
     * @return true where the document follows the command
     */
    default boolean isDone() {
        return this instanceof Done;
    }

    /**
     * Why it was not done.
     *
     * @return the reason, or empty where it was
     */
    default Optional<String> refusal() {
        return this instanceof Refused refused ? Optional.of(refused.why()) : Optional.empty();
    }
}
