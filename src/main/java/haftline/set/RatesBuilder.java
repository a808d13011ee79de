package haftline.set;

import java.util.List;
import java.util.Optional;

/**
 * Changes some of the maker's rates; each method sets the component of its name and returns this
 * builder.
 */
public final class RatesBuilder {
    private String currency;
    private double hour;
    private double overheadPercent;
    private double marginPercent;
    private double roundUpTo;
    private double sparePercent;
    private Optional<Rates.AdhesivePrice> adhesive;
    private List<Rates.KitPrice> kits;
    private List<Rates.WorkStep> steps;
    private List<Rates.Consumable> consumables;

    RatesBuilder(Rates from) {
        currency = from.currency();
        hour = from.hour();
        overheadPercent = from.overheadPercent();
        marginPercent = from.marginPercent();
        roundUpTo = from.roundUpTo();
        sparePercent = from.sparePercent();
        adhesive = from.adhesive();
        kits = from.kits();
        steps = from.steps();
        consumables = from.consumables();
    }

    public RatesBuilder currency(String other) {
        currency = other;
        return this;
    }

    public RatesBuilder hour(double other) {
        hour = other;
        return this;
    }

    public RatesBuilder overheadPercent(double other) {
        overheadPercent = other;
        return this;
    }

    public RatesBuilder marginPercent(double other) {
        marginPercent = other;
        return this;
    }

    public RatesBuilder roundUpTo(double other) {
        roundUpTo = other;
        return this;
    }

    public RatesBuilder sparePercent(double other) {
        sparePercent = other;
        return this;
    }

    public RatesBuilder adhesive(Optional<Rates.AdhesivePrice> other) {
        adhesive = other;
        return this;
    }

    public RatesBuilder kits(List<Rates.KitPrice> other) {
        kits = other;
        return this;
    }

    public RatesBuilder steps(List<Rates.WorkStep> other) {
        steps = other;
        return this;
    }

    public RatesBuilder consumables(List<Rates.Consumable> other) {
        consumables = other;
        return this;
    }

    /**
     * The rates as they were set.
     *
     * @return the changed copy
     * @throws IllegalArgumentException where a value is out of range
     */
    public Rates build() {
        return new Rates(
                currency,
                hour,
                overheadPercent,
                marginPercent,
                roundUpTo,
                sparePercent,
                adhesive,
                kits,
                steps,
                consumables);
    }
}
