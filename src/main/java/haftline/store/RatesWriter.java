package haftline.store;

import static haftline.store.RatesKeys.*;

import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;

/** The sticks on the rack and the maker's rates as parts of a workshop document. */
final class RatesWriter {
    private RatesWriter() {}

    static Tree.Fields stockLengths(StockLengths own) {
        Tree.Fields tree = Tree.Fields.tall().number(StockLengthsKeys.KERF, own.kerfMm());
        own.keptMm().ifPresent(mm -> tree.number(StockLengthsKeys.KEPT, mm));
        return tree.some(
                StockLengthsKeys.STICKS,
                Tree.Rows.tall(own.sticks().stream().map(RatesWriter::stick).toList()));
    }

    private static Tree.Fields stick(StockLength stick) {
        Tree.Fields tree =
                Tree.Fields.flat()
                        .text(StockLengthsKeys.STOCK, stick.stock())
                        .number(StockLengthsKeys.ACROSS, stick.acrossMm())
                        .number(StockLengthsKeys.LENGTH, stick.lengthMm())
                        .number(StockLengthsKeys.COUNT, stick.count());
        stick.priceEach().ifPresent(price -> tree.number(StockLengthsKeys.PRICE_EACH, price));
        stick.pricePerMetre()
                .ifPresent(price -> tree.number(StockLengthsKeys.PRICE_PER_METRE, price));
        return tree;
    }

    static Tree.Fields rates(Rates own) {
        Tree.Fields tree = Tree.Fields.tall();
        if (!own.currency().isEmpty()) {
            tree.text(CURRENCY, own.currency());
        }
        tree.number(HOUR, own.hour())
                .number(OVERHEAD, own.overheadPercent(), 0)
                .number(MARGIN, own.marginPercent(), 0)
                .number(ROUND_UP_TO, own.roundUpTo(), 0)
                .number(SPARE, own.sparePercent(), 0);
        own.adhesive().ifPresent(price -> tree.put(ADHESIVE, adhesive(price)));
        return tree.some(KITS, Tree.Rows.tall(own.kits().stream().map(RatesWriter::kit).toList()))
                .some(STEPS, Tree.Rows.tall(own.steps().stream().map(RatesWriter::step).toList()))
                .some(
                        CONSUMABLES,
                        Tree.Rows.tall(
                                own.consumables().stream().map(RatesWriter::consumable).toList()));
    }

    private static Tree.Fields adhesive(Rates.AdhesivePrice price) {
        return Tree.Fields.flat()
                .number(PER_ML, price.perMl())
                .number(
                        ALLOWANCE,
                        price.allowancePercent(),
                        Rates.AdhesivePrice.USUAL_ALLOWANCE_PERCENT);
    }

    private static Tree.Fields kit(Rates.KitPrice kit) {
        return Tree.Fields.flat().text(KIT, kit.kit()).number(KIT_EACH, kit.each());
    }

    private static Tree.Fields step(Rates.WorkStep step) {
        return Tree.Fields.flat()
                .text(STEP, step.name())
                .number(SETUP, step.setupMinutes(), 0)
                .number(STEP_EACH, step.eachMinutes(), 0)
                .yesNo(GLUING, step.isGluing(), false)
                .some(
                        PIECES,
                        Tree.Rows.flat(step.pieces().stream().map(RatesWriter::piece).toList()));
    }

    private static Tree.Fields piece(Rates.PieceMinutes piece) {
        return Tree.Fields.flat()
                .text(PIECE, piece.piece())
                .number(PIECE_EACH, piece.eachMinutes());
    }

    private static Tree.Fields consumable(Rates.Consumable consumable) {
        Tree.Fields tree = Tree.Fields.flat().text(NAME, consumable.name());
        if (!consumable.unit().isEmpty()) {
            tree.text(UNIT, consumable.unit());
        }
        return tree.number(AMOUNT, consumable.each()).number(PRICE, consumable.price());
    }
}
