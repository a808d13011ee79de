package haftline.store;

import haftline.set.Rates;

/** Keys of the maker's rates. */
final class RatesKeys {
    static final Key CURRENCY =
            Key.text("currency", "symbol or code before an amount, at most 8 signs");
    static final Key HOUR =
            Key.number("hour", 0, Rates.GREATEST_PRICE, "", "what an hour at work costs").must();
    static final Key OVERHEAD =
            Key.number(
                    "overhead",
                    0,
                    Rates.GREATEST_OVERHEAD,
                    "%",
                    "on stock, parts, adhesive, consumables and time, %");
    static final Key MARGIN =
            Key.number(
                    "margin",
                    0,
                    Rates.GREATEST_MARGIN,
                    "%",
                    "what is to be left of the selling price, % of that price");
    static final Key ROUND_UP_TO =
            Key.number(
                    "round_up_to",
                    0,
                    Rates.GREATEST_PRICE,
                    "",
                    "the selling price is rounded up to a multiple of this");
    static final Key SPARE = Key.number("spare", 0, 100, "%", "blanks cut beyond the quantity, %");

    static final Key PER_ML =
            Key.number("per_ml", 0, Rates.GREATEST_PRICE, "", "price of a millilitre, mixed")
                    .must();
    static final Key ALLOWANCE =
            Key.number(
                    "allowance",
                    0,
                    Rates.GREATEST_OVERHEAD,
                    "%",
                    "mixed beyond what the joints hold, %");
    static final Key ADHESIVE =
            Key.map(
                    "adhesive",
                    Keys.of("price of adhesive", PER_ML, ALLOWANCE),
                    "what adhesive costs");

    static final Key KIT = Key.text("kit", "name of the kit").must();
    static final Key KIT_EACH =
            Key.number("each", 0, Rates.GREATEST_PRICE, "", "price of one kit").must();
    static final Key KITS =
            Key.maps("kits", Keys.of("price of a kit", KIT, KIT_EACH), "what kits cost");

    static final Key STEP = Key.text("step", "what is done, in a word or two").must();
    static final Key SETUP =
            Key.number("setup", 0, Rates.MOST_MINUTES, "", "minutes, once for the batch");
    static final Key STEP_EACH =
            Key.number("each", 0, Rates.MOST_MINUTES, "", "minutes for each piece");
    static final Key GLUING = Key.yesNo("gluing", "whether adhesive is mixed for it");
    static final Key PIECE = Key.text("piece", "name of the piece").must();
    static final Key PIECE_EACH =
            Key.number("each", 0, Rates.MOST_MINUTES, "", "minutes for each of them").must();
    static final Key PIECES =
            Key.maps(
                    "pieces",
                    Keys.of("piece of a step", PIECE, PIECE_EACH),
                    "pieces that take another time");
    static final Key STEPS =
            Key.maps(
                    "steps",
                    Keys.of("step", STEP, SETUP, STEP_EACH, GLUING, PIECES),
                    "the steps of the work in their order");

    static final Key NAME = Key.text("name", "what it is").must();
    static final Key UNIT = Key.text("unit", "what it is counted in");
    static final Key AMOUNT =
            Key.number("each", 0, Rates.MOST_OF_A_CONSUMABLE, "", "how much one piece takes")
                    .must();
    static final Key PRICE =
            Key.number("price", 0, Rates.GREATEST_PRICE, "", "price of one unit").must();
    static final Key CONSUMABLES =
            Key.maps(
                    "consumables",
                    Keys.of("consumable", NAME, UNIT, AMOUNT, PRICE),
                    "what is used up beside stock, kits and adhesive");

    static final Key RATES =
            Key.map(
                    "rates",
                    Keys.of(
                            "set of rates",
                            CURRENCY,
                            HOUR,
                            OVERHEAD,
                            MARGIN,
                            ROUND_UP_TO,
                            SPARE,
                            ADHESIVE,
                            KITS,
                            STEPS,
                            CONSUMABLES),
                    "what time and goods cost, in the maker's own currency");

    private RatesKeys() {}
}
