package haftline.set;

import haftline.measure.Checks;
import java.util.OptionalDouble;

/**
 * Sticks of one stock, thickness and length on the maker's rack.
 *
 * @param stock key of the wood or plastic
 * @param acrossMm side of a square section or diameter of a rod, mm
 * @param lengthMm sound length, mm
 * @param count how many there are; 0 for a length that the merchant has and the rack has not
 * @param priceEach price of one stick, where it is bought by the piece
 * @param pricePerMetre price of a metre, where it is bought by length
 */
public record StockLength(
        String stock,
        double acrossMm,
        double lengthMm,
        int count,
        OptionalDouble priceEach,
        OptionalDouble pricePerMetre) {
    /** Thicker is a log. */
    public static final double GREATEST_ACROSS_MM = 300;

    /** Longer sticks are cross-cut before they reach a workshop of this kind. */
    public static final double GREATEST_LENGTH_MM = 10_000;

    /** More sticks than anybody counts. */
    public static final int MOST = 10_000;

    private static final double MM_PER_METRE = 1000;

    /** Checks the ranges. */
    public StockLength {
        Checks.named("stock", stock);
        Checks.withinMm("across", acrossMm, 1, GREATEST_ACROSS_MM);
        Checks.withinMm("length", lengthMm, 1, GREATEST_LENGTH_MM);
        Checks.within("count", count, 0, MOST);
        Rates.checkPrice("price_each", priceEach);
        Rates.checkPrice("price_per_metre", pricePerMetre);
        if (priceEach.isPresent() && pricePerMetre.isPresent()) {
            throw new IllegalArgumentException(
                    "price_per_metre: expected it or price_each, not both");
        }
    }

    /**
     * What one stick costs.
     *
     * @return the price in the maker's currency, or empty where none was said
     */
    public OptionalDouble price() {
        return pricePerMetre.isPresent()
                ? OptionalDouble.of(pricePerMetre.getAsDouble() * lengthMm / MM_PER_METRE)
                : priceEach;
    }

    /**
     * As many other sticks.
     *
     * @param mm another side or diameter, mm
     * @return the changed copy
     */
    public StockLength withAcross(double mm) {
        return new StockLength(stock, mm, lengthMm, count, priceEach, pricePerMetre);
    }

    /**
     * As many other sticks.
     *
     * @param mm another length, mm
     * @return the changed copy
     */
    public StockLength withLength(double mm) {
        return new StockLength(stock, acrossMm, mm, count, priceEach, pricePerMetre);
    }

    /**
     * More or fewer of them.
     *
     * @param number how many
     * @return the changed copy
     */
    public StockLength withCount(int number) {
        return new StockLength(stock, acrossMm, lengthMm, number, priceEach, pricePerMetre);
    }

    /**
     * The same, of which no price is known.
     *
     * @return the changed copy
     */
    public StockLength unpriced() {
        return new StockLength(
                stock, acrossMm, lengthMm, count, OptionalDouble.empty(), OptionalDouble.empty());
    }

    /**
     * The same, bought by the piece.
     *
     * @param each price of one
     * @return the changed copy
     */
    public StockLength priced(double each) {
        return new StockLength(
                stock, acrossMm, lengthMm, count, OptionalDouble.of(each), OptionalDouble.empty());
    }

    /**
     * The same, bought by length.
     *
     * @param perMetre price of a metre
     * @return the changed copy
     */
    public StockLength pricedByMetre(double perMetre) {
        return new StockLength(
                stock,
                acrossMm,
                lengthMm,
                count,
                OptionalDouble.empty(),
                OptionalDouble.of(perMetre));
    }
}
