package haftline.store;

import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;

/** Keys of the sticks on the rack. */
final class StockLengthsKeys {
    static final Key KERF =
            Key.length("kerf", 0, StockLengths.GREATEST_KERF_MM, "width of the saw's cut, mm")
                    .must();
    static final Key KEPT =
            Key.length(
                    "kept",
                    1,
                    StockLength.GREATEST_LENGTH_MM,
                    "an offcut so long goes back on the rack and is not charged, mm");
    static final Key STOCK = Key.text("stock", "key of the wood or plastic").must();
    static final Key ACROSS =
            Key.length(
                            "across",
                            1,
                            StockLength.GREATEST_ACROSS_MM,
                            "side of a square section or diameter of a rod, mm")
                    .must();
    static final Key LENGTH =
            Key.length("length", 1, StockLength.GREATEST_LENGTH_MM, "sound length, mm").must();
    static final Key COUNT =
            Key.whole(
                            "count",
                            0,
                            StockLength.MOST,
                            "how many there are; 0 for a length that the merchant has")
                    .must();
    static final Key PRICE_EACH =
            Key.number("price_each", 0, Rates.GREATEST_PRICE, "", "price of one stick");
    static final Key PRICE_PER_METRE =
            Key.number("price_per_metre", 0, Rates.GREATEST_PRICE, "", "price of a metre of it");
    static final Key STICKS =
            Key.maps(
                    "sticks",
                    Keys.of("stick", STOCK, ACROSS, LENGTH, COUNT, PRICE_EACH, PRICE_PER_METRE),
                    "the sticks, kind by kind");
    static final Key STOCK_LENGTHS =
            Key.map(
                    "stock_lengths",
                    Keys.of("rack of sticks", KERF, KEPT, STICKS),
                    "the sticks that blanks are cut from");

    private StockLengthsKeys() {}
}
