package haftline.ui.model;

import haftline.edit.Command;
import haftline.edit.Outcome;
import haftline.edit.WorkshopEdits;
import haftline.set.Piece;
import haftline.set.Rates;
import haftline.set.Rates.AdhesivePrice;
import haftline.set.Rates.KitPrice;
import haftline.set.RatesBuilder;
import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.ui.model.WorkshopFields.Limits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.ToDoubleFunction;

/** The saw that cuts blanks, and what time and goods cost. */
final class CostSettings {
    private static final Limits KERF = new Limits(0, StockLengths.GREATEST_KERF_MM);
    private static final Limits KEPT = new Limits(1, StockLength.GREATEST_LENGTH_MM);
    private static final Limits PRICE = new Limits(0, Rates.GREATEST_PRICE);
    private static final Limits SHARE = new Limits(0, Rates.GREATEST_OVERHEAD);
    private static final Limits MARGIN = new Limits(0, Rates.GREATEST_MARGIN);
    private static final Limits SPARE = new Limits(0, 100);
    private static final String PERCENT = " %";

    private final WorkshopFields fields;

    CostSettings(WorkshopFields fields) {
        this.fields = fields;
    }

    private Optional<StockLengths> rack() {
        return fields.shop().stockLengths();
    }

    private Optional<Rates> rates() {
        return fields.shop().rates();
    }

    boolean hasRack() {
        return rack().isPresent();
    }

    boolean hasRates() {
        return rates().isPresent();
    }

    List<Setting> saw() {
        return List.of(
                Setting.of(
                        length(
                                "saw's kerf",
                                () ->
                                        hasRack()
                                                ? "width of the cut between two blanks"
                                                : "say it, and blanks are cut from your sticks",
                                KERF,
                                false,
                                rack -> OptionalDouble.of(rack.kerfMm()),
                                (rack, mm) -> rack.withKerf(mm.orElseThrow()))),
                Setting.of(
                                length(
                                        "offcut kept from",
                                        () ->
                                                rack().flatMap(r -> boxed(r.keptMm())).isPresent()
                                                        ? "so long or longer, it goes back on the"
                                                                + " rack and is not charged"
                                                        : "empty: a stick that is begun is"
                                                                + " charged whole",
                                        KEPT,
                                        true,
                                        StockLengths::keptMm,
                                        StockLengths::withKept))
                        .where(this::hasRack));
    }

    List<Setting> all() {
        return List.of(
                Setting.of(
                        fields.number(
                                "an hour at work",
                                () ->
                                        hasRates()
                                                ? ""
                                                : "say it, and the batch gets costs and prices",
                                "",
                                PRICE,
                                false,
                                () -> of(Rates::hour),
                                price ->
                                        change(
                                                "an hour at work",
                                                r -> r.hour(price.orElseThrow())))),
                rate(currency()),
                rate(
                        share(
                                "overhead",
                                "on stock, kits, time and all else",
                                SHARE,
                                Rates::overheadPercent,
                                RatesBuilder::overheadPercent)),
                rate(
                        share(
                                "margin",
                                "of the selling price, no mark-up on the cost",
                                MARGIN,
                                Rates::marginPercent,
                                RatesBuilder::marginPercent)),
                rate(
                        fields.number(
                                "price rounded up to",
                                () -> "a multiple of it; 0 for the hundredth",
                                "",
                                PRICE,
                                false,
                                () -> of(Rates::roundUpTo),
                                to ->
                                        change(
                                                "price rounded up to",
                                                r -> r.roundUpTo(to.orElseThrow())))),
                rate(
                        share(
                                "spare blanks",
                                "cut beyond the quantity",
                                SPARE,
                                Rates::sparePercent,
                                RatesBuilder::sparePercent)));
    }

    List<Setting> adhesive() {
        return List.of(
                rate(
                        fields.number(
                                "a ml of adhesive",
                                () -> "mixed; empty: it has no price",
                                "",
                                PRICE,
                                true,
                                () -> adhesive(AdhesivePrice::perMl),
                                price ->
                                        change(
                                                "a ml of adhesive",
                                                r -> r.adhesive(boxed(price).map(this::priced))))),
                Setting.of(
                                fields.number(
                                        "adhesive for waste",
                                        () -> "mixed beyond what the joints hold",
                                        PERCENT,
                                        SHARE,
                                        false,
                                        () -> adhesive(AdhesivePrice::allowancePercent),
                                        share ->
                                                change(
                                                        "adhesive for waste",
                                                        r -> r.adhesive(wasting(share)))))
                        .where(() -> rates().flatMap(Rates::adhesive).isPresent()));
    }

    private AdhesivePrice priced(double perMl) {
        return new AdhesivePrice(perMl, AdhesivePrice.allowancePercent(rates()));
    }

    private Optional<AdhesivePrice> wasting(OptionalDouble share) {
        return rates().flatMap(Rates::adhesive)
                .map(price -> new AdhesivePrice(price.perMl(), share.orElseThrow()));
    }

    /** The kits of the pieces, each once. */
    List<String> kits() {
        return fields.pieces().stream().map(Piece::kit).distinct().toList();
    }

    Row kit(String kit) {
        String label = "kit " + kit;
        return fields.number(
                label,
                () -> price(kit).isPresent() ? "" : "has no price",
                "",
                PRICE,
                true,
                () -> price(kit),
                price -> change(label, r -> r.kits(with(kit, price))));
    }

    private OptionalDouble price(String kit) {
        return rates().stream()
                .flatMap(rates -> rates.kits().stream())
                .filter(each -> each.kit().equals(kit))
                .mapToDouble(KitPrice::each)
                .findFirst();
    }

    private List<KitPrice> with(String kit, OptionalDouble price) {
        List<KitPrice> kits = new ArrayList<>(rates().map(Rates::kits).orElse(List.of()));
        int at = kits.stream().map(KitPrice::kit).toList().indexOf(kit);
        if (at >= 0) {
            kits.remove(at);
        }
        boxed(price)
                .ifPresent(each -> kits.add(at < 0 ? kits.size() : at, new KitPrice(kit, each)));
        return kits;
    }

    private Setting rate(Row row) {
        return Setting.of(row).where(this::hasRates);
    }

    private Row currency() {
        return Row.field(
                "currency",
                Row.Kind.PLAIN,
                () ->
                        Row.State.of(
                                rates().map(Rates::currency).orElse(""),
                                "put before amounts as it is",
                                Row.Source.SET),
                entry ->
                        entry.length() > Rates.LONGEST_CURRENCY
                                ? new Outcome.Refused(
                                        "Expected a symbol or code of at most "
                                                + Rates.LONGEST_CURRENCY
                                                + " signs")
                                : fields.run(change("currency", r -> r.currency(entry))));
    }

    private OptionalDouble of(ToDoubleFunction<Rates> value) {
        return rates().stream().mapToDouble(value).findFirst();
    }

    private OptionalDouble adhesive(ToDoubleFunction<AdhesivePrice> value) {
        return rates().flatMap(Rates::adhesive).stream().mapToDouble(value).findFirst();
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static Command change(String label, Function<RatesBuilder, RatesBuilder> how) {
        return WorkshopEdits.rates(
                "change " + label, rates -> how.apply(rates.toBuilder()).build());
    }

    private Row share(
            String label,
            String because,
            Limits range,
            ToDoubleFunction<Rates> now,
            BiFunction<RatesBuilder, Double, RatesBuilder> set) {
        return fields.number(
                label,
                () -> because,
                PERCENT,
                range,
                false,
                () -> of(now),
                share -> change(label, r -> set.apply(r, share.orElseThrow())));
    }

    private Row length(
            String label,
            Supplier<String> because,
            Limits range,
            boolean mayBeEmpty,
            Function<StockLengths, OptionalDouble> now,
            BiFunction<StockLengths, OptionalDouble, StockLengths> set) {
        return fields.length(
                label,
                because,
                range,
                mayBeEmpty,
                () -> rack().map(now).orElse(OptionalDouble.empty()),
                mm -> WorkshopEdits.stockLengths("change " + label, r -> set.apply(r, mm)));
    }
}
