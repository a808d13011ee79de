package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.WorkshopEdits;
import haftline.set.Rates;
import haftline.set.Rates.Consumable;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/** What is used up beside stock, kits and adhesive, every figure of it open to the keyboard. */
public final class ConsumablesModel
        extends TypedLines<ConsumablesModel.Column, ConsumablesModel.Line> {
    private static final Limits AMOUNT = new Limits(0, Rates.MOST_OF_A_CONSUMABLE);
    private static final Limits PRICE = new Limits(0, Rates.GREATEST_PRICE);

    /** A column of the table. */
    public enum Column {
        /** What it is. */
        NAME,
        /** What it is counted in. */
        UNIT,
        /** How much one piece takes. */
        EACH,
        /** Price of one unit. */
        PRICE
    }

    /**
     * Something that is used up.
     *
     * @param name what it is
     * @param unit what it is counted in; may be empty
     * @param each how much one piece takes
     * @param price price of one unit
     */
    public record Line(String name, String unit, String each, String price)
            implements TypedLines.Line<Column> {
        @Override
        public String title() {
            return name;
        }

        @Override
        public String text(Column column) {
            return switch (column) {
                case NAME -> name;
                case UNIT -> unit;
                case EACH -> each;
                case PRICE -> price;
            };
        }
    }

    /**
     * What an editor's set uses up.
     *
     * @param editor the editor
     */
    public ConsumablesModel(EditorModel editor) {
        super(editor);
        follow();
    }

    @Override
    public boolean isThere() {
        return fields().shop().rates().isPresent();
    }

    private List<Consumable> consumables() {
        return fields().shop().rates().map(Rates::consumables).orElse(List.of());
    }

    @Override
    List<Line> read() {
        return consumables().stream()
                .map(
                        used ->
                                new Line(
                                        used.name(),
                                        used.unit(),
                                        WorkshopFields.plain(used.each()),
                                        WorkshopFields.plain(used.price())))
                .toList();
    }

    /**
     * Adds something behind the others, of which a piece takes one and which costs nothing yet.
     *
     * @param name what it is
     * @return done, or what was expected
     */
    public Outcome add(String name) {
        Outcome outcome = named(name, -1);
        return outcome.refusal().isPresent()
                ? outcome
                : run(
                        "add " + name.strip(),
                        all -> all.add(new Consumable(name.strip(), "", 1, 0)));
    }

    private Outcome named(String name, int but) {
        List<String> others =
                new ArrayList<>(consumables().stream().map(Consumable::name).toList());
        if (but >= 0) {
            others.remove(but);
        }
        return named(name, "line for", "abrasive", others.stream());
    }

    @Override
    public Outcome remove(int index) {
        return run("strike out " + lines().value().get(index).name(), all -> all.remove(index));
    }

    @Override
    Outcome take(int index, Column column, String entry) {
        Consumable was = consumables().get(index);
        return switch (column) {
            case NAME -> {
                Outcome outcome = named(entry, index);
                yield outcome.refusal().isPresent()
                        ? outcome
                        : run("rename " + was.name(), all -> all.set(index, was.withName(entry)));
            }
            case UNIT ->
                    run("change unit of " + was.name(), all -> all.set(index, was.withUnit(entry)));
            case EACH -> number(entry, AMOUNT, "amount", index, was::withEach);
            case PRICE -> number(entry, PRICE, "price", index, was::withPrice);
        };
    }

    private Outcome number(
            String entry,
            Limits range,
            String what,
            int index,
            DoubleFunction<Consumable> changed) {
        return fields().taken(
                        entry,
                        Entry.number(entry, ""),
                        range,
                        false,
                        "Expected "
                                + (range == AMOUNT ? "an " : "a ")
                                + what
                                + " from 0 to "
                                + WorkshopFields.plain(range.greatest()),
                        number ->
                                command(
                                        "change " + what + " of " + consumables().get(index).name(),
                                        all ->
                                                all.set(
                                                        index,
                                                        changed.apply(number.orElseThrow()))));
    }

    private Outcome run(String name, Consumer<List<Consumable>> change) {
        return fields().run(command(name, change));
    }

    private static Command command(String name, Consumer<List<Consumable>> change) {
        return WorkshopEdits.rates(
                name,
                rates -> {
                    List<Consumable> consumables = new ArrayList<>(rates.consumables());
                    change.accept(consumables);
                    return rates.toBuilder().consumables(consumables).build();
                });
    }
}
