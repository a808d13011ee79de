package haftline.set.production;

import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.set.cutting.CuttingPlan;
import haftline.set.cutting.CuttingStock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How the blanks of one stock are cut from the sticks on the rack and from those that are still to
 * be bought: as little bought as can be, and then as little wood begun as can be.
 *
 * @param stock key of the wood or plastic
 * @param stockName what that is called
 * @param cuts the sticks that are begun
 * @param unfit blanks that no stick of the list is thick and long enough for
 * @param isProven whether no plan buys and begins less
 * @param leastShare of what this plan begins, the share that any plan must begin, 0 to 1; 1 where
 *     this is the least
 */
public record CutPlan(
        String stock,
        String stockName,
        List<Cut> cuts,
        List<BlankNeed> unfit,
        boolean isProven,
        double leastShare) {
    /** Lengths are counted in tenths of a millimetre, finer than any saw. */
    private static final double UNITS_PER_MM = 10;

    /** Wood is counted in hundredths of a millilitre, which no plan turns on. */
    private static final double MM3_PER_COST = 10;

    /** A stick to buy is shunned as far as whole numbers carry. */
    private static final long MOST_SHUNNED = 1L << 40;

    /** What is a whole number but for rounding is one. */
    private static final double ROUNDING = 1e-6;

    /**
     * Sticks that are cut alike.
     *
     * @param stick the stick
     * @param isBought whether it is not on the rack and must be bought
     * @param times how many sticks are cut so
     * @param blanks what comes out of one stick
     * @param offcutMm what is left of one stick, mm
     */
    public record Cut(
            StockLength stick, boolean isBought, int times, List<Taken> blanks, double offcutMm) {
        /** Copies the list. */
        public Cut {
            blanks = List.copyOf(blanks);
        }
    }

    /**
     * Blanks of one piece out of one stick.
     *
     * @param blank the blank
     * @param count how many
     */
    public record Taken(BlankNeed blank, int count) {}

    /** Copies the lists. */
    public CutPlan {
        cuts = List.copyOf(cuts);
        unfit = List.copyOf(unfit);
    }

    /** One plan for every stock that is needed, in the order in which the pieces first need it. */
    static List<CutPlan> of(List<BlankNeed> blanks, StockLengths rack) {
        Map<String, List<BlankNeed>> byStock = new LinkedHashMap<>();
        blanks.forEach(b -> byStock.computeIfAbsent(b.stock(), k -> new ArrayList<>()).add(b));
        return byStock.values().stream().map(needs -> ofOne(needs, rack)).toList();
    }

    private static CutPlan ofOne(List<BlankNeed> blanks, StockLengths rack) {
        BlankNeed first = blanks.get(0);
        List<StockLength> sticks =
                rack.sticks().stream().filter(s -> s.stock().equals(first.stock())).toList();
        List<BlankNeed> fit = new ArrayList<>();
        List<BlankNeed> unfit = new ArrayList<>();
        for (BlankNeed blank : blanks) {
            boolean holds = sticks.stream().anyMatch(stick -> holds(stick, blank));
            (holds ? fit : unfit).add(blank);
        }
        if (fit.isEmpty()) {
            return new CutPlan(first.stock(), first.stockName(), List.of(), unfit, true, 1);
        }
        CuttingPlan plan = problem(fit, sticks, rack.kerfMm()).solve(CuttingStock.USUAL_WORK);
        List<Cut> cuts =
                plan.cuts().stream().map(cut -> cut(cut, fit, sticks, rack.kerfMm())).toList();
        return new CutPlan(
                first.stock(),
                first.stockName(),
                cuts,
                unfit,
                plan.isProven(),
                plan.bound() / (double) plan.cost());
    }

    private static boolean holds(StockLength stick, BlankNeed blank) {
        return stick.lengthMm() >= blank.lengthMm()
                && stick.acrossMm() >= blank.acrossMm() - ROUNDING;
    }

    /** Sticks on the rack first, then the same again without limit, at a price that shuns them. */
    private static CuttingStock problem(
            List<BlankNeed> blanks, List<StockLength> sticks, double kerfMm) {
        List<CuttingStock.Item> items = new ArrayList<>();
        int all = 0;
        for (BlankNeed blank : blanks) {
            items.add(
                    new CuttingStock.Item(
                            up(blank.lengthMm()) + up(kerfMm),
                            up(blank.acrossMm()),
                            blank.count()));
            all += blank.count();
        }
        List<CuttingStock.Stick> kinds = new ArrayList<>();
        long onRack = 1;
        for (StockLength stick : sticks) {
            int count = Math.min(stick.count(), all);
            onRack += count * cost(stick);
            kinds.add(stick(stick, kerfMm, count, cost(stick)));
        }
        // One that is bought costs more than all that are on the rack, as far as numbers carry.
        long dearest = sticks.stream().mapToLong(CutPlan::cost).max().orElseThrow();
        long times = Math.min(1 + ceilOf(onRack, least(sticks)), MOST_SHUNNED / dearest);
        for (StockLength stick : sticks) {
            kinds.add(stick(stick, kerfMm, CuttingStock.UNLIMITED, cost(stick) * times));
        }
        return new CuttingStock(items, kinds);
    }

    private static CuttingStock.Stick stick(
            StockLength stick, double kerfMm, int count, long cost) {
        return new CuttingStock.Stick(
                down(stick.lengthMm()) + up(kerfMm),
                // A blank that wants just so much fits, whatever the rounding of both.
                up(stick.acrossMm()),
                count,
                cost);
    }

    private static long least(List<StockLength> sticks) {
        return sticks.stream().mapToLong(CutPlan::cost).min().orElseThrow();
    }

    private static long ceilOf(long dividend, long divisor) {
        return (dividend + divisor - 1) / divisor;
    }

    /** Wood in a stick: between sticks of one thickness the same as its length. */
    private static long cost(StockLength stick) {
        double mm3 = stick.acrossMm() * stick.acrossMm() * stick.lengthMm();
        return Math.max(1, Math.round(mm3 / MM3_PER_COST));
    }

    private static long up(double mm) {
        return (long) Math.ceil(mm * UNITS_PER_MM - ROUNDING);
    }

    private static long down(double mm) {
        return (long) Math.floor(mm * UNITS_PER_MM + ROUNDING);
    }

    private static Cut cut(
            CuttingPlan.Cut cut, List<BlankNeed> blanks, List<StockLength> sticks, double kerfMm) {
        StockLength stick = sticks.get(cut.stick() % sticks.size());
        List<Taken> taken = new ArrayList<>();
        double left = stick.lengthMm();
        for (int i = 0; i < blanks.size(); i++) {
            int count = cut.counts().get(i);
            if (count > 0) {
                taken.add(new Taken(blanks.get(i), count));
                left -= count * (blanks.get(i).lengthMm() + kerfMm);
            }
        }
        // The last cut takes what is left where that is less than a kerf.
        return new Cut(stick, cut.stick() >= sticks.size(), cut.times(), taken, Math.max(0, left));
    }

    /**
     * Length of all sticks that are begun.
     *
     * @return mm
     */
    public double begunMm() {
        return cuts.stream().mapToDouble(c -> c.times() * c.stick().lengthMm()).sum();
    }

    /**
     * Length of all blanks that are cut.
     *
     * @return mm
     */
    public double blanksMm() {
        double sum = 0;
        for (Cut cut : cuts) {
            for (Taken taken : cut.blanks()) {
                sum += cut.times() * taken.count() * taken.blank().lengthMm();
            }
        }
        return sum;
    }

    /**
     * Length of all offcuts.
     *
     * @return mm
     */
    public double offcutsMm() {
        return cuts.stream().mapToDouble(c -> c.times() * c.offcutMm()).sum();
    }

    /**
     * Length that the saw makes into dust.
     *
     * @return mm
     */
    public double sawnMm() {
        return begunMm() - blanksMm() - offcutsMm();
    }

    /**
     * Sticks that must be bought, each kind once.
     *
     * @return how many by kind
     */
    public Map<StockLength, Integer> toBuy() {
        Map<StockLength, Integer> buy = new LinkedHashMap<>();
        for (Cut cut : cuts) {
            if (cut.isBought()) {
                buy.merge(cut.stick(), cut.times(), Integer::sum);
            }
        }
        return buy;
    }
}
