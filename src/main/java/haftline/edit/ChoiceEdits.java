package haftline.edit;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.set.Piece;
import haftline.stock.Stock;
import java.util.Optional;
import java.util.function.UnaryOperator;

/**
 * Commands on what is decided over the rules, for one piece or for all that do not decide
 * otherwise.
 *
 * @param piece the piece's name
 * @param scope whose choices are changed
 */
public record ChoiceEdits(String piece, Scope scope) {
    /**
     * Decides something.
     *
     * @param choice what
     * @param set sets it
     * @return the command
     */
    public Command choose(Choice choice, UnaryOperator<ChoicesBuilder> set) {
        return new Command(
                "change " + choice.words(),
                draft -> {
                    if (scope == Scope.THIS_PIECE) {
                        return draft.withChoices(piece, own -> set.apply(own.toBuilder()).build());
                    }
                    Draft freed = draft.withChoices(piece, choice::without);
                    Choices common = set.apply(draft.set().common().toBuilder()).build();
                    return freed.withSet(freed.set().withCommon(common));
                });
    }

    /**
     * Leaves something to the set or, where that says nothing, to the rule.
     *
     * @param choice what
     * @return the command
     */
    public Command byRule(Choice choice) {
        return new Command(
                choice.words() + " by the rule",
                draft -> {
                    Draft freed = draft.withChoices(piece, choice::without);
                    return scope == Scope.THIS_PIECE
                            ? freed
                            : freed.withSet(
                                    freed.set().withCommon(choice.without(freed.set().common())));
                });
    }

    /**
     * Takes a stock.
     *
     * @param stock the wood or plastic
     * @return the command
     */
    public Command stock(Stock stock) {
        return new Command(
                "take " + stock.name(),
                draft -> {
                    if (scope == Scope.THIS_PIECE) {
                        return draft.withPiece(piece, p -> p.withStock(Optional.of(stock.key())));
                    }
                    Draft freed = draft.withPiece(piece, p -> p.withStock(Optional.empty()));
                    return freed.withSet(freed.set().withStock(stock.key()));
                });
    }

    /**
     * Carries out a remedy: what it changes becomes the piece's own choice; what it leaves to the
     * rule is freed, in the set too where the set decided it.
     *
     * @param change what it does, for the name
     * @param before the choices that the handle had, its own over the common ones
     * @param after the choices with the remedy
     * @return the command
     */
    public Command remedy(String change, Choices before, Choices after) {
        return new Command(
                "apply \"" + change + "\"",
                draft -> {
                    Draft changed = draft;
                    for (Choice choice : Choice.values()) {
                        Optional<?> wanted = choice.value(after);
                        if (wanted.equals(choice.value(before))) {
                            continue;
                        }
                        changed = changed.withChoices(piece, own -> choice.taken(own, after));
                        if (wanted.isEmpty()) {
                            changed =
                                    changed.withSet(
                                            changed.set()
                                                    .withCommon(
                                                            choice.without(
                                                                    changed.set().common())));
                        }
                    }
                    return changed.withPiece(piece, p -> nodes(p, before, after));
                });
    }

    private static Piece nodes(Piece piece, Choices before, Choices after) {
        ChoicesBuilder own = piece.choices().toBuilder();
        after.nodeDiametersMm()
                .forEach(
                        (node, mm) -> {
                            if (!mm.equals(before.nodeDiametersMm().get(node))) {
                                own.nodeDiameterMm(node, mm);
                            }
                        });
        after.nodePlaces()
                .forEach(
                        (node, share) -> {
                            if (!share.equals(before.nodePlaces().get(node))) {
                                own.nodePlace(node, share);
                            }
                        });
        return piece.withChoices(own.build());
    }
}
