package haftline.edit;

import haftline.set.FileSettings;
import haftline.set.Rates;
import haftline.set.StockLengths;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import java.util.function.UnaryOperator;

/**
 * Commands on what the maker's place has. They change no handle, so that no piece is worked out
 * anew; a save writes them to the workshop's own file.
 */
public final class WorkshopEdits {
    private WorkshopEdits() {}

    /**
     * Makes gauges and copying templates otherwise.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change; throws {@link IllegalArgumentException} where a value is out of
     *     range
     * @return the command
     */
    public static Command templates(String name, UnaryOperator<TemplateSettings> change) {
        return workshop(name, shop -> shop.withTemplates(change.apply(shop.templates())));
    }

    /**
     * Writes files otherwise.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change; throws {@link IllegalArgumentException} where a value is out of
     *     range
     * @return the command
     */
    public static Command files(String name, UnaryOperator<FileSettings> change) {
        return workshop(name, shop -> shop.withFiles(change.apply(shop.files())));
    }

    /**
     * Has other sticks, or cuts them otherwise.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change, of no sticks and no kerf where the workshop says nothing of them;
     *     throws {@link IllegalArgumentException} where a value is out of range
     * @return the command
     */
    public static Command stockLengths(String name, UnaryOperator<StockLengths> change) {
        return workshop(
                name,
                shop ->
                        shop.withStockLengths(
                                change.apply(shop.stockLengths().orElse(StockLengths.NONE))));
    }

    /**
     * Reckons with other rates.
     *
     * @param name what it does, fit to stand behind "Undo"
     * @param change the change, of an hour that costs nothing where the workshop says nothing of
     *     rates; throws {@link IllegalArgumentException} where a value is out of range
     * @return the command
     */
    public static Command rates(String name, UnaryOperator<Rates> change) {
        return workshop(
                name,
                shop ->
                        shop.withRates(
                                change.apply(shop.rates().orElseGet(() -> Rates.ofHour(0)))));
    }

    /** The workshop after something that its rates name was renamed. */
    static Workshop renamed(Workshop workshop, UnaryOperator<Rates> change) {
        return workshop.rates()
                .map(rates -> workshop.withRates(change.apply(rates)))
                .orElse(workshop);
    }

    private static Command workshop(String name, UnaryOperator<Workshop> change) {
        return new Command(
                name,
                draft ->
                        draft.withSet(
                                draft.set().withWorkshop(change.apply(draft.set().workshop()))));
    }
}
