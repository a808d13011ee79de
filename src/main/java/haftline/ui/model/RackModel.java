package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.WorkshopEdits;
import haftline.measure.Length;
import haftline.measure.NumberText;
import haftline.measure.OutOfRange;
import haftline.measure.Units;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.stock.Stock;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import java.util.function.UnaryOperator;

/** The sticks that blanks are cut from, every figure of them open to the keyboard. */
public final class RackModel extends TypedLines<RackModel.Column, RackModel.Line> {
    /** What a new stick begins as: a square and a length that are often sold, mm. */
    private static final double USUAL_ACROSS_MM = 32;

    private static final double USUAL_LENGTH_MM = 1000;

    private static final double MM_PER_METRE = 1000;
    private static final double MM_PER_FOOT = 304.8;

    /** A price by the foot, reckoned from one by the metre, is shown no finer. */
    private static final int FOOT_PLACES = 3;

    private static final String EACH = "each";
    private static final String PER_METRE = "/m";
    private static final String PER_FOOT = "/ft";

    /** A column of the table. */
    public enum Column {
        /** Side of a square section or diameter of a rod. */
        ACROSS,
        /** Sound length. */
        LENGTH,
        /** How many there are. */
        COUNT,
        /** Of one, or of a metre or a foot of it. */
        PRICE
    }

    /**
     * Sticks of one kind.
     *
     * @param stock what the wood or plastic is called
     * @param across fit to be typed again
     * @param length fit to be typed again
     * @param count a whole number
     * @param price with what it is of behind it; empty where none was said
     */
    public record Line(String stock, String across, String length, String count, String price)
            implements TypedLines.Line<Column> {
        @Override
        public String title() {
            return stock;
        }

        @Override
        public String text(Column column) {
            return switch (column) {
                case ACROSS -> across;
                case LENGTH -> length;
                case COUNT -> count;
                case PRICE -> price;
            };
        }
    }

    /**
     * The sticks of an editor's set.
     *
     * @param editor the editor
     */
    public RackModel(EditorModel editor) {
        super(editor);
        follow();
    }

    @Override
    public boolean isThere() {
        return rack().isPresent();
    }

    private Optional<StockLengths> rack() {
        return fields().shop().stockLengths();
    }

    private List<StockLength> sticks() {
        return rack().map(StockLengths::sticks).orElse(List.of());
    }

    private Units units() {
        return fields().units();
    }

    @Override
    List<Line> read() {
        return sticks().stream().map(this::line).toList();
    }

    private Line line(StockLength stick) {
        return new Line(
                stockName(stick.stock()),
                text(stick.acrossMm()),
                text(stick.lengthMm()),
                Integer.toString(stick.count()),
                price(stick));
    }

    /** To the tenth of a mm or the thousandth of an inch, as the plan has them. */
    private String text(double mm) {
        return NumberText.upTo(mm / units().millimetres(), units() == Units.MM ? 1 : 3)
                + " "
                + units().symbol();
    }

    private String price(StockLength stick) {
        if (stick.priceEach().isPresent()) {
            return WorkshopFields.plain(stick.priceEach().getAsDouble()) + " " + EACH;
        }
        if (stick.pricePerMetre().isEmpty()) {
            return "";
        }
        double perMetre = stick.pricePerMetre().getAsDouble();
        return units() == Units.MM
                ? WorkshopFields.plain(perMetre) + PER_METRE
                : NumberText.upTo(perMetre * MM_PER_FOOT / MM_PER_METRE, FOOT_PLACES) + PER_FOOT;
    }

    private String stockName(String key) {
        return stocks().stream()
                .filter(stock -> stock.key().equals(key))
                .findFirst()
                .map(Stock::name)
                .orElse(key);
    }

    private List<Stock> stocks() {
        return editor().document().loaded().materials().stock().entries();
    }

    /**
     * The woods and plastics of which sticks can be listed: those of the set's pieces first.
     *
     * @return their names
     */
    public List<String> stockNames() {
        List<String> names = new ArrayList<>();
        var set = editor().draft().value().set();
        set.pieces().forEach(piece -> names.add(stockName(piece.stock().orElse(set.stock()))));
        stocks().forEach(stock -> names.add(stock.name()));
        return names.stream().distinct().toList();
    }

    /**
     * Lists one more stick, behind those of its stock, as thick and long as the last of them.
     *
     * @param stockName one of {@link #stockNames()}
     * @return done, or why not
     */
    public Outcome add(String stockName) {
        Optional<Stock> stock =
                stocks().stream().filter(each -> each.name().equals(stockName)).findFirst();
        if (stock.isEmpty()) {
            return new Outcome.Refused("No stock is called " + stockName);
        }
        String key = stock.get().key();
        return run(
                "add sticks of " + stockName,
                sticks -> {
                    int behind = sticks.size();
                    StockLength like =
                            new StockLength(
                                    key,
                                    USUAL_ACROSS_MM,
                                    USUAL_LENGTH_MM,
                                    1,
                                    OptionalDouble.empty(),
                                    OptionalDouble.empty());
                    for (int i = 0; i < sticks.size(); i++) {
                        if (sticks.get(i).stock().equals(key)) {
                            like = sticks.get(i).withCount(1);
                            behind = i + 1;
                        }
                    }
                    sticks.add(behind, like);
                    return sticks;
                });
    }

    @Override
    public Outcome remove(int index) {
        return run(
                "strike out sticks of " + lines().value().get(index).stock(),
                sticks -> {
                    sticks.remove(index);
                    return sticks;
                });
    }

    @Override
    Outcome take(int index, Column column, String text) {
        StockLength was = sticks().get(index);
        return switch (column) {
            case ACROSS ->
                    length(index, text, StockLength.GREATEST_ACROSS_MM, was::withAcross, "size");
            case LENGTH ->
                    length(index, text, StockLength.GREATEST_LENGTH_MM, was::withLength, "length");
            case COUNT -> count(index, text, was);
            case PRICE -> priced(index, text, was);
        };
    }

    private Outcome length(
            int index,
            String text,
            double greatestMm,
            DoubleFunction<StockLength> with,
            String what) {
        return fields().taken(
                        text,
                        Length.parse(text, units()),
                        new Limits(1, greatestMm),
                        false,
                        "Expected a length " + OutOfRange.range(1, greatestMm, units()),
                        mm -> replacing(index, with.apply(mm.orElseThrow()), what));
    }

    private Outcome count(int index, String text, StockLength was) {
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) > StockLength.MOST) {
            return new Outcome.Refused(
                    "Expected a whole number from 0 to "
                            + StockLength.MOST
                            + "; 0 for a length that only the merchant has");
        }
        return replace(index, was.withCount(Integer.parseInt(text)), "count");
    }

    /** A bare number is of what the price was of before. */
    private Outcome priced(int index, String text, StockLength was) {
        if (text.isEmpty()) {
            return replace(index, was.unpriced(), "price");
        }
        String behind = text.replaceFirst("^[0-9.,+-]*", "").replaceAll("\\s+", "");
        boolean isEach = behind.equals(EACH) || behind.isEmpty() && was.priceEach().isPresent();
        boolean isPerFoot =
                behind.equals(PER_FOOT) || behind.isEmpty() && units() == Units.INCH && !isEach;
        boolean isKnown = behind.isEmpty() || isEach || isPerFoot || behind.equals(PER_METRE);
        OptionalDouble number = Entry.number(text.replaceFirst("[^0-9.,+-].*$", ""), "");
        if (!isKnown || number.isEmpty() || number.getAsDouble() < 0) {
            return expectedPrice();
        }
        double price =
                isPerFoot
                        ? number.getAsDouble() * MM_PER_METRE / MM_PER_FOOT
                        : number.getAsDouble();
        return price > Rates.GREATEST_PRICE
                ? expectedPrice()
                : replace(index, isEach ? was.priced(price) : was.pricedByMetre(price), "price");
    }

    private static Outcome expectedPrice() {
        return new Outcome.Refused(
                "Expected a price such as 11.5/m, 3.5/ft or 7.2 each, or nothing");
    }

    private Outcome replace(int index, StockLength stick, String what) {
        return fields().run(replacing(index, stick, what));
    }

    private static Command replacing(int index, StockLength stick, String what) {
        return command(
                "change " + what + " of sticks",
                sticks -> {
                    sticks.set(index, stick);
                    return sticks;
                });
    }

    private Outcome run(String name, UnaryOperator<List<StockLength>> change) {
        return fields().run(command(name, change));
    }

    private static Command command(String name, UnaryOperator<List<StockLength>> change) {
        return WorkshopEdits.stockLengths(
                name, rack -> rack.withSticks(change.apply(new ArrayList<>(rack.sticks()))));
    }
}
