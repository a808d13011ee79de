package haftline.set;

import haftline.measure.Checks;
import haftline.measure.NumberText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What the maker's time and goods cost and what a piece must earn. All amounts are in the maker's
 * own currency, of which nothing is assumed.
 *
 * @param currency symbol or code that stands before an amount, may be empty
 * @param hour what an hour at work costs
 * @param overheadPercent rent, power, tools and the like on top of stock, parts and time, %
 * @param marginPercent what is to be left of the selling price, % of that price
 * @param roundUpTo the selling price is rounded up to a multiple of this; 0 for to the hundredth
 * @param sparePercent blanks cut beyond the quantity, %
 * @param adhesive what adhesive costs, or empty where it was not said
 * @param kits what kits cost
 * @param steps the steps of the work in their order
 * @param consumables what is used up beside stock, kits and adhesive
 */
public record Rates(
        String currency,
        double hour,
        double overheadPercent,
        double marginPercent,
        double roundUpTo,
        double sparePercent,
        Optional<AdhesivePrice> adhesive,
        List<KitPrice> kits,
        List<WorkStep> steps,
        List<Consumable> consumables) {
    /** More would be a slip in any currency. */
    public static final double GREATEST_PRICE = 10_000_000;

    /** A margin of all of the price leaves nothing for the cost. */
    public static final double GREATEST_MARGIN = 95;

    /** Ten times the cost on top is no overhead. */
    public static final double GREATEST_OVERHEAD = 1000;

    /** A week. */
    public static final double MOST_MINUTES = 10_080;

    /** More of one thing for one piece is a slip. */
    public static final double MOST_OF_A_CONSUMABLE = 100_000;

    /** Longer is no symbol. */
    public static final int LONGEST_CURRENCY = 8;

    /** Checks the ranges and copies the lists. */
    public Rates {
        if (currency.length() > LONGEST_CURRENCY) {
            throw new IllegalArgumentException(
                    "currency " + currency + ": expected at most " + LONGEST_CURRENCY + " signs");
        }
        Checks.within("hour", hour, 0, GREATEST_PRICE);
        Checks.within("overhead", overheadPercent, 0, GREATEST_OVERHEAD);
        Checks.within("margin", marginPercent, 0, GREATEST_MARGIN);
        Checks.within("round_up_to", roundUpTo, 0, GREATEST_PRICE);
        Checks.within("spare", sparePercent, 0, 100);
        kits = List.copyOf(kits);
        steps = List.copyOf(steps);
        consumables = List.copyOf(consumables);
        different("kit", kits.stream().map(KitPrice::kit).toList());
        different("step", steps.stream().map(WorkStep::name).toList());
        different("consumable", consumables.stream().map(Consumable::name).toList());
    }

    /**
     * Rates of a maker who has said nothing but what an hour costs.
     *
     * @param hour what an hour at work costs
     * @return no overhead, margin, spares and prices
     */
    public static Rates ofHour(double hour) {
        return new Rates("", hour, 0, 0, 0, 0, Optional.empty(), List.of(), List.of(), List.of());
    }

    /**
     * A builder that starts from these rates.
     *
     * @return the builder
     */
    public RatesBuilder toBuilder() {
        return new RatesBuilder(this);
    }

    private static void different(String what, List<String> names) {
        if (names.stream().distinct().count() != names.size()) {
            throw new IllegalArgumentException(what + ": two have one name");
        }
    }

    static void checkPrice(String field, OptionalDouble price) {
        if (price.isPresent()) {
            Checks.within(field, price.getAsDouble(), 0, GREATEST_PRICE);
        }
    }

    /**
     * What adhesive costs.
     *
     * @param perMl price of a millilitre, mixed
     * @param allowancePercent mixed beyond what the joints hold: what stays in the cup and is wiped
     *     off, %
     */
    public record AdhesivePrice(double perMl, double allowancePercent) {
        /** What is mixed too much before the maker says otherwise (common practice, no source). */
        public static final double USUAL_ALLOWANCE_PERCENT = 30;

        /**
         * What is mixed beyond what the joints hold.
         *
         * @param rates the maker's rates, or empty where there are none
         * @return theirs, else {@link #USUAL_ALLOWANCE_PERCENT}, %
         */
        public static double allowancePercent(Optional<Rates> rates) {
            return rates.flatMap(Rates::adhesive)
                    .map(AdhesivePrice::allowancePercent)
                    .orElse(USUAL_ALLOWANCE_PERCENT);
        }

        /**
         * The allowance in words, the same on every page and sheet.
         *
         * @param percent the allowance, %
         * @return such as {@code 30 % more for waste}
         */
        public static String inWords(double percent) {
            return NumberText.upTo(percent, 1) + " % more for waste";
        }

        /** Checks the ranges. */
        public AdhesivePrice {
            Checks.within("per_ml", perMl, 0, GREATEST_PRICE);
            Checks.within("allowance", allowancePercent, 0, GREATEST_OVERHEAD);
        }
    }

    /**
     * The same rates for a kit that a set calls otherwise now. The old name keeps its price, for
     * other sets may reckon with the same rates.
     *
     * @param kit its name before
     * @param newName its name now; a price that it has already stays
     * @return the changed copy
     */
    public Rates withKitAlso(String kit, String newName) {
        List<KitPrice> more = new ArrayList<>(kits);
        if (kits.stream().noneMatch(price -> price.kit().equals(newName))) {
            kits.stream()
                    .filter(price -> price.kit().equals(kit))
                    .forEach(price -> more.add(new KitPrice(newName, price.each())));
        }
        return toBuilder().kits(more).build();
    }

    /**
     * The same rates for a piece that a set calls otherwise now. The old name keeps its times, for
     * other sets may reckon with the same rates.
     *
     * @param piece its name before
     * @param newName its name now; a time that it has already stays
     * @return the changed copy
     */
    public Rates withPieceAlso(String piece, String newName) {
        return toBuilder()
                .steps(steps.stream().map(step -> step.withPieceAlso(piece, newName)).toList())
                .build();
    }

    /**
     * What a kit costs: blade, ferrule and cap together.
     *
     * @param kit name of the kit
     * @param each price of one
     */
    public record KitPrice(String kit, double each) {
        /** Checks name and range. */
        public KitPrice {
            Checks.named("kit", kit);
            Checks.within("price of kit " + kit, each, 0, GREATEST_PRICE);
        }
    }

    /**
     * A step of the work.
     *
     * @param name what is done, in a word or two
     * @param setupMinutes once for the batch
     * @param eachMinutes for each piece
     * @param isGluing whether adhesive is mixed for it, so that its pace tells how many mixes there
     *     are
     * @param pieces pieces that take another time
     */
    public record WorkStep(
            String name,
            double setupMinutes,
            double eachMinutes,
            boolean isGluing,
            List<PieceMinutes> pieces) {
        /** Checks name and ranges and copies the list. */
        public WorkStep {
            Checks.named("step", name);
            Checks.within("setup of " + name, setupMinutes, 0, MOST_MINUTES);
            Checks.within("minutes of " + name, eachMinutes, 0, MOST_MINUTES);
            pieces = List.copyOf(pieces);
            different("piece of step " + name, pieces.stream().map(PieceMinutes::piece).toList());
        }

        /**
         * The same step under another name.
         *
         * @param other what is done, in a word or two
         * @return the changed copy
         */
        public WorkStep withName(String other) {
            return new WorkStep(other, setupMinutes, eachMinutes, isGluing, pieces);
        }

        /**
         * The same step, set up in another time.
         *
         * @param minutes once for the batch
         * @return the changed copy
         */
        public WorkStep withSetup(double minutes) {
            return new WorkStep(name, minutes, eachMinutes, isGluing, pieces);
        }

        /**
         * The same step at another pace.
         *
         * @param minutes for each piece
         * @return the changed copy
         */
        public WorkStep withEach(double minutes) {
            return new WorkStep(name, setupMinutes, minutes, isGluing, pieces);
        }

        /**
         * The same step, with adhesive or without.
         *
         * @param other whether adhesive is mixed for it
         * @return the changed copy
         */
        public WorkStep withGluing(boolean other) {
            return new WorkStep(name, setupMinutes, eachMinutes, other, pieces);
        }

        /**
         * The same step with other exceptions.
         *
         * @param other pieces that take another time
         * @return the changed copy
         */
        public WorkStep withPieces(List<PieceMinutes> other) {
            return new WorkStep(name, setupMinutes, eachMinutes, isGluing, other);
        }

        private WorkStep withPieceAlso(String piece, String newName) {
            List<PieceMinutes> more = new ArrayList<>(pieces);
            if (pieces.stream().noneMatch(own -> own.piece().equals(newName))) {
                pieces.stream()
                        .filter(own -> own.piece().equals(piece))
                        .forEach(own -> more.add(new PieceMinutes(newName, own.eachMinutes())));
            }
            return withPieces(more);
        }

        /**
         * Time for one piece.
         *
         * @param piece the piece's name
         * @return minutes
         */
        public double minutes(String piece) {
            return pieces.stream()
                    .filter(own -> own.piece().equals(piece))
                    .mapToDouble(PieceMinutes::eachMinutes)
                    .findFirst()
                    .orElse(eachMinutes);
        }
    }

    /**
     * A piece that takes another time than the others.
     *
     * @param piece its name
     * @param eachMinutes minutes for each
     */
    public record PieceMinutes(String piece, double eachMinutes) {
        /** Checks name and range. */
        public PieceMinutes {
            Checks.named("piece", piece);
            Checks.within("minutes of " + piece, eachMinutes, 0, MOST_MINUTES);
        }
    }

    /**
     * Something that is used up.
     *
     * @param name what it is
     * @param unit what it is counted in, may be empty
     * @param each how much one piece takes
     * @param price price of one unit
     */
    public record Consumable(String name, String unit, double each, double price) {
        /** Checks name and ranges. */
        public Consumable {
            Checks.named("consumable", name);
            Checks.within("amount of " + name, each, 0, MOST_OF_A_CONSUMABLE);
            Checks.within("price of " + name, price, 0, GREATEST_PRICE);
        }

        /**
         * The same under another name.
         *
         * @param other what it is
         * @return the changed copy
         */
        public Consumable withName(String other) {
            return new Consumable(other, unit, each, price);
        }

        /**
         * The same, counted otherwise.
         *
         * @param other what it is counted in, may be empty
         * @return the changed copy
         */
        public Consumable withUnit(String other) {
            return new Consumable(name, other, each, price);
        }

        /**
         * More or less of it.
         *
         * @param other how much one piece takes
         * @return the changed copy
         */
        public Consumable withEach(double other) {
            return new Consumable(name, unit, other, price);
        }

        /**
         * The same at another price.
         *
         * @param other price of one unit
         * @return the changed copy
         */
        public Consumable withPrice(double other) {
            return new Consumable(name, unit, each, other);
        }
    }
}
