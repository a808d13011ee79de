package haftline.set.production;

import haftline.measure.NumberText;
import haftline.set.Rates;
import haftline.set.StockLength;
import haftline.set.StockLengths;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;

/**
 * What a batch costs and what a piece must sell for, by the maker's own rates.
 *
 * <p>Every amount is rounded to the hundredth where it stands, and sums are sums of what stands
 * there, so that whoever adds a column up comes to the same. The selling price is cost / (1 -
 * margin): a margin is a share of the price, not a mark-up on the cost.
 *
 * @param rates the maker's rates
 * @param pieces cost and price by piece
 * @param unpriced what has no price, so that the cost is at least this; empty where all has one
 */
public record Costing(Rates rates, List<PieceCost> pieces, List<String> unpriced) {
    private static final int HUNDREDTHS = 2;
    private static final double MINUTES_PER_HOUR = 60;
    private static final BigDecimal PERCENT = BigDecimal.valueOf(100);
    private static final BigDecimal LEAST_STEP = new BigDecimal("0.01");

    /**
     * Cost of all of one piece.
     *
     * @param piece the piece's name
     * @param quantity how many are made
     * @param stock sticks, by the length that is used up
     * @param kits blades, ferrules and caps
     * @param adhesive adhesive, what stays in the cup included
     * @param consumables what is used up beside
     * @param minutes time, its share of the setting up included
     * @param labour that time at the hour's rate
     * @param overhead on all of these
     * @param priceEach what one should sell for
     */
    public record PieceCost(
            String piece,
            int quantity,
            BigDecimal stock,
            BigDecimal kits,
            BigDecimal adhesive,
            BigDecimal consumables,
            double minutes,
            BigDecimal labour,
            BigDecimal overhead,
            BigDecimal priceEach) {
        /**
         * Cost of all of them.
         *
         * @return the sum
         */
        public BigDecimal cost() {
            return direct().add(overhead);
        }

        private BigDecimal direct() {
            return stock.add(kits).add(adhesive).add(consumables).add(labour);
        }

        /**
         * Cost of one of them.
         *
         * @return the cost over the quantity, to the hundredth
         */
        public BigDecimal costEach() {
            return cost().divide(BigDecimal.valueOf(quantity), HUNDREDTHS, RoundingMode.HALF_UP);
        }

        /**
         * What is left of the price of one.
         *
         * @return price less cost
         */
        public BigDecimal marginEach() {
            return priceEach.subtract(costEach());
        }
    }

    /** Copies the lists. */
    public Costing {
        pieces = List.copyOf(pieces);
        unpriced = List.copyOf(unpriced);
    }

    static Costing of(
            List<Order> orders,
            List<CutPlan> plans,
            Optional<StockLengths> rack,
            Labour labour,
            Rates rates) {
        Set<String> unpriced = new LinkedHashSet<>();
        if (rack.isEmpty()) {
            unpriced.add("stock: the workshop states no stock lengths");
        }
        List<PieceCost> pieces = new ArrayList<>();
        for (Order order : orders) {
            pieces.add(of(order, plans, rack, labour, rates, unpriced));
        }
        return new Costing(rates, pieces, List.copyOf(unpriced));
    }

    private static PieceCost of(
            Order order,
            List<CutPlan> plans,
            Optional<StockLengths> rack,
            Labour labour,
            Rates rates,
            Set<String> unpriced) {
        int quantity = order.quantity();
        BigDecimal stock =
                rack.map(r -> money(stock(order.piece(), plans, r, unpriced)))
                        .orElse(BigDecimal.ZERO.setScale(HUNDREDTHS));
        BigDecimal kits = money(quantity * kit(order.kit(), rates, unpriced));
        BigDecimal adhesive = money(quantity * adhesive(order, rates, unpriced));
        double used = rates.consumables().stream().mapToDouble(c -> c.each() * c.price()).sum();
        BigDecimal consumables = money(quantity * used);
        double minutes = labour.minutes(order.piece());
        BigDecimal work = money(minutes / MINUTES_PER_HOUR * rates.hour());
        BigDecimal direct = stock.add(kits).add(adhesive).add(consumables).add(work);
        BigDecimal overhead =
                direct.multiply(BigDecimal.valueOf(rates.overheadPercent()))
                        .divide(PERCENT, HUNDREDTHS, RoundingMode.HALF_UP);
        return new PieceCost(
                order.piece(),
                quantity,
                stock,
                kits,
                adhesive,
                consumables,
                minutes,
                work,
                overhead,
                price(direct.add(overhead), quantity, rates));
    }

    /** Each stick is shared by its blanks in proportion to their length. */
    private static double stock(
            String piece, List<CutPlan> plans, StockLengths rack, Set<String> unpriced) {
        double sum = 0;
        for (CutPlan plan : plans) {
            for (CutPlan.Cut cut : plan.cuts()) {
                double all = cut.blanks().stream().mapToDouble(Costing::length).sum();
                double own =
                        cut.blanks().stream()
                                .filter(taken -> taken.blank().piece().equals(piece))
                                .mapToDouble(Costing::length)
                                .sum();
                OptionalDouble price = cut.stick().price();
                if (own > 0 && price.isEmpty()) {
                    unpriced.add("stock: no price for " + words(plan.stockName(), cut.stick()));
                }
                sum += cut.times() * price.orElse(0) * charged(cut, rack) * own / all;
            }
            for (BlankNeed blank : plan.unfit()) {
                if (blank.piece().equals(piece)) {
                    unpriced.add("stock: no stick for the blanks of " + piece);
                }
            }
        }
        return sum;
    }

    private static String words(String stockName, StockLength stick) {
        return stockName
                + ", "
                + NumberText.upTo(stick.acrossMm(), 1)
                + " mm across, "
                + NumberText.upTo(stick.lengthMm(), 1)
                + " mm long";
    }

    private static double length(CutPlan.Taken taken) {
        return taken.count() * taken.blank().lengthMm();
    }

    /** The share of a stick that is paid for. */
    private static double charged(CutPlan.Cut cut, StockLengths rack) {
        OptionalDouble kept = rack.keptMm();
        boolean isKept = kept.isPresent() && cut.offcutMm() >= kept.getAsDouble();
        return isKept ? 1 - cut.offcutMm() / cut.stick().lengthMm() : 1;
    }

    private static double kit(String kit, Rates rates, Set<String> unpriced) {
        Optional<Rates.KitPrice> price =
                rates.kits().stream().filter(each -> each.kit().equals(kit)).findFirst();
        if (price.isEmpty()) {
            unpriced.add("parts: no price for kit " + kit);
        }
        return price.map(Rates.KitPrice::each).orElse(0.0);
    }

    private static double adhesive(Order order, Rates rates, Set<String> unpriced) {
        double ml = AdhesiveUse.mlEach(order);
        if (ml > 0 && rates.adhesive().isEmpty()) {
            unpriced.add("adhesive: no price");
        }
        return rates.adhesive()
                .map(price -> ml * (1 + price.allowancePercent() / 100) * price.perMl())
                .orElse(0.0);
    }

    static BigDecimal money(double amount) {
        return BigDecimal.valueOf(amount).setScale(HUNDREDTHS, RoundingMode.HALF_UP);
    }

    /** Cost of one over what the margin leaves of its price, up to the next multiple. */
    static BigDecimal price(BigDecimal cost, int quantity, Rates rates) {
        BigDecimal share =
                BigDecimal.ONE.subtract(
                        BigDecimal.valueOf(rates.marginPercent())
                                .divide(PERCENT, MathContext.DECIMAL64));
        BigDecimal exact =
                cost.divide(share.multiply(BigDecimal.valueOf(quantity)), MathContext.DECIMAL64);
        BigDecimal step =
                rates.roundUpTo() > 0 ? BigDecimal.valueOf(rates.roundUpTo()) : LEAST_STEP;
        // A price that is a multiple but for the last of sixteen digits is that multiple.
        BigDecimal multiples =
                exact.divide(step, MathContext.DECIMAL64)
                        .round(new MathContext(12, RoundingMode.HALF_UP))
                        .setScale(0, RoundingMode.CEILING);
        return multiples
                .multiply(step)
                .setScale(
                        Math.max(HUNDREDTHS, step.stripTrailingZeros().scale()),
                        RoundingMode.UNNECESSARY);
    }

    /**
     * Cost of the whole batch.
     *
     * @return the sum over the pieces
     */
    public BigDecimal cost() {
        return sum(PieceCost::cost);
    }

    BigDecimal sum(Function<PieceCost, BigDecimal> amount) {
        return pieces.stream().map(amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * What the whole batch sells for.
     *
     * @return the sum of the prices
     */
    public BigDecimal sales() {
        return pieces.stream()
                .map(p -> p.priceEach().multiply(BigDecimal.valueOf(p.quantity())))
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /**
     * The mark-up on the cost that leaves the same as the margin.
     *
     * @return % of the cost
     */
    public double markUpPercent() {
        return 100 * rates.marginPercent() / (100 - rates.marginPercent());
    }
}
