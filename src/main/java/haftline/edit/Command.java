package haftline.edit;

import java.util.function.UnaryOperator;

/**
 * One change of a document.
 *
 * @param name what it does, in the trade's words, fit to stand behind "Undo": {@code move waist}
 * @param change the change; throws {@link IllegalArgumentException}, its message saying what is
 *     expected, where the draft does not allow it
 */
public record Command(String name, UnaryOperator<Draft> change) {
    /**
     * A command that changes nothing: where a gesture comes back to its beginning.
     *
     * @param name what the gesture does
     * @return the command
     */
    public static Command nothing(String name) {
        return new Command(name, UnaryOperator.identity());
    }

    /**
     * Carries the change out.
     *
     * @param draft the content before
     * @return the content after
     * @throws IllegalArgumentException where the draft does not allow it
     */
    public Draft on(Draft draft) {
        return change.apply(draft);
    }

    /**
     * This command and then another, as one step under this one's name.
     *
     * @param next what follows
     * @return both
     */
    public Command then(Command next) {
        return new Command(name, draft -> next.on(on(draft)));
    }
}
