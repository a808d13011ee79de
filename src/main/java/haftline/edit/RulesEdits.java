package haftline.edit;

import haftline.handle.Rules;
import java.util.function.UnaryOperator;

/** Commands on the maker's rules; a save writes them to the rules' own file. */
public final class RulesEdits {
    private RulesEdits() {}

    /**
     * Copies with another cutter or follower.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change; throws {@link IllegalArgumentException} where a value is out of
     *     range
     * @return the command
     */
    public static Command copying(String name, UnaryOperator<Rules.Copying> change) {
        return new Command(
                name,
                draft -> {
                    Rules rules = draft.set().rules();
                    return draft.withSet(
                            draft.set()
                                    .withRules(rules.withCopying(change.apply(rules.copying()))));
                });
    }
}
