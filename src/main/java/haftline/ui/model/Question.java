package haftline.ui.model;

import java.util.List;

/**
 * A question that is open; the views put it to the maker and hand back the answer.
 *
 * @param kind what it is about
 * @param text the question in words
 * @param answers the answers that there are, the safe one first
 */
public record Question(Kind kind, String text, List<Answer> answers) {
    /** What a question is about. */
    public enum Kind {
        /** There are unsaved changes and something is about to replace them. */
        UNSAVED,
        /** The set needs a name before it can be saved. */
        NAME,
        /** Another program has changed a file. */
        CHANGED_ON_DISK,
        /** Unsaved work was left behind. */
        RECOVERY
    }

    /** An answer. */
    public enum Answer {
        /** Save, then go on. */
        SAVE("Save"),
        /** Go on without the changes. */
        DROP("Do not save"),
        /** Leave everything as it is. */
        STAY("Cancel"),
        /** Read the files again; changes here are lost. */
        RELOAD("Read again"),
        /** Go on with what is here; a save writes over the other's change. */
        KEEP_MINE("Keep mine"),
        /** Open what was left behind. */
        RECOVER("Recover"),
        /** Delete what was left behind. */
        DISCARD("Discard"),
        /** Ask again at the next start. */
        LATER("Later");

        private final String words;

        Answer(String words) {
            this.words = words;
        }

        /**
         * What the button says.
         *
         * @return one or two words
         */
        public String words() {
            return words;
        }
    }

    /** Copies the list. */
    public Question {
        answers = List.copyOf(answers);
    }
}
