package haftline.edit;

import haftline.measure.OutOfRange;
import haftline.measure.Units;
import java.util.Optional;

/** What came of an attempt to change a document. */
public sealed interface Outcome {
    /** It was done. */
    record Done() implements Outcome {}

    /**
     * Nothing was changed.
     *
     * @param why what is wrong and what is expected, a sentence without a full stop
     * @param range the value that is out of its range, where that is the reason: it tells itself in
     *     either unit
     */
    record Refused(String why, Optional<OutOfRange> range) implements Outcome {
        /**
         * A refusal in words alone.
         *
         * @param why what is wrong and what is expected, a sentence without a full stop
         */
        public Refused(String why) {
            this(why, Optional.empty());
        }

        /**
         * What a check at construction said.
         *
         * @param check what it threw
         * @return the refusal
         */
        public static Refused by(IllegalArgumentException check) {
            return new Refused(
                    check.getMessage(),
                    check instanceof OutOfRange range ? Optional.of(range) : Optional.empty());
        }

        /**
         * The same in the unit in use.
         *
         * @param units the unit of lengths
         * @return the refusal
         */
        public Refused in(Units units) {
            return range.map(told -> new Refused(told.words(units), range)).orElse(this);
        }
    }

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
