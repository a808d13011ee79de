package haftline.store;

import static haftline.store.RatesKeys.*;

import haftline.set.Rates;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the maker's rates. */
final class RatesReader {
    private RatesReader() {}

    static Optional<Rates> read(MapReader map) {
        String currency = map.text(CURRENCY);
        map.require(
                currency.length() <= Rates.LONGEST_CURRENCY,
                CURRENCY,
                "at most " + Rates.LONGEST_CURRENCY + " signs");
        double hour = map.number(HOUR, 0);
        double overhead = map.number(OVERHEAD, 0);
        double margin = map.number(MARGIN, 0);
        double roundUpTo = map.number(ROUND_UP_TO, 0);
        double spare = map.number(SPARE, 0);
        var adhesive = map.map(ADHESIVE).flatMap(RatesReader::adhesive);
        List<Rates.KitPrice> kits = new ArrayList<>();
        map.maps(KITS).forEach(each -> kit(each).ifPresent(kits::add));
        List<Rates.WorkStep> steps = new ArrayList<>();
        map.maps(STEPS).forEach(each -> step(each).ifPresent(steps::add));
        List<Rates.Consumable> consumables = new ArrayList<>();
        map.maps(CONSUMABLES).forEach(each -> consumable(each).ifPresent(consumables::add));
        return map.build(
                () ->
                        new Rates(
                                currency,
                                hour,
                                overhead,
                                margin,
                                roundUpTo,
                                spare,
                                adhesive,
                                kits,
                                steps,
                                consumables));
    }

    private static Optional<Rates.AdhesivePrice> adhesive(MapReader map) {
        double perMl = map.number(PER_ML, 0);
        double allowance = map.number(ALLOWANCE, Rates.AdhesivePrice.USUAL_ALLOWANCE_PERCENT);
        return map.build(() -> new Rates.AdhesivePrice(perMl, allowance));
    }

    private static Optional<Rates.KitPrice> kit(MapReader map) {
        String kit = map.text(KIT);
        double each = map.number(KIT_EACH, 0);
        return map.build(() -> new Rates.KitPrice(kit, each));
    }

    private static Optional<Rates.WorkStep> step(MapReader map) {
        String name = map.text(STEP);
        double setup = map.number(SETUP, 0);
        double each = map.number(STEP_EACH, 0);
        boolean gluing = map.yesNo(GLUING, false);
        List<Rates.PieceMinutes> pieces = new ArrayList<>();
        map.maps(PIECES).forEach(own -> piece(own).ifPresent(pieces::add));
        return map.build(() -> new Rates.WorkStep(name, setup, each, gluing, pieces));
    }

    private static Optional<Rates.PieceMinutes> piece(MapReader map) {
        String piece = map.text(PIECE);
        double each = map.number(PIECE_EACH, 0);
        return map.build(() -> new Rates.PieceMinutes(piece, each));
    }

    private static Optional<Rates.Consumable> consumable(MapReader map) {
        String name = map.text(NAME);
        String unit = map.text(UNIT);
        double amount = map.number(AMOUNT, 0);
        double price = map.number(PRICE, 0);
        return map.build(() -> new Rates.Consumable(name, unit, amount, price));
    }
}
