package haftline.set.cutting;

import java.util.ArrayList;
import java.util.List;

/** A problem in arrays for the search: items by falling length. */
final class Case {
    final int items;
    final int sticks;
    final long[] length;
    final int[] wanted;
    final long[] stickLength;
    final int[] stickCount;
    final long[] stickCost;

    /** Whether a stick holds an item: by stick, then item. */
    final boolean[][] holds;

    /** Every cost is a multiple of this. */
    final long step;

    Case(List<CuttingStock.Item> wantedItems, List<CuttingStock.Stick> given) {
        items = wantedItems.size();
        sticks = given.size();
        length = wantedItems.stream().mapToLong(CuttingStock.Item::length).toArray();
        wanted = wantedItems.stream().mapToInt(CuttingStock.Item::count).toArray();
        stickLength = given.stream().mapToLong(CuttingStock.Stick::length).toArray();
        stickCount = given.stream().mapToInt(CuttingStock.Stick::count).toArray();
        stickCost = given.stream().mapToLong(CuttingStock.Stick::cost).toArray();
        holds = new boolean[sticks][items];
        long gcd = 0;
        for (int j = 0; j < sticks; j++) {
            gcd = gcd(gcd, stickCost[j]);
            for (int i = 0; i < items; i++) {
                holds[j][i] = given.get(j).holds(wantedItems.get(i));
            }
        }
        step = gcd;
    }

    /**
     * The same with sticks of other counts and costs.
     *
     * @param kinds for each stick, the stick of this case that it is like
     */
    private Case(Case like, int[] kinds, int[] counts, long[] costs) {
        items = like.items;
        sticks = kinds.length;
        length = like.length;
        wanted = like.wanted;
        stickLength = new long[sticks];
        stickCount = counts;
        stickCost = costs;
        holds = new boolean[sticks][];
        long gcd = 0;
        for (int j = 0; j < sticks; j++) {
            stickLength[j] = like.stickLength[kinds[j]];
            holds[j] = like.holds[kinds[j]];
            gcd = gcd(gcd, costs[j]);
        }
        step = gcd;
    }

    /**
     * This case with so many sticks paid for, so many more to be had, and beyond them only such as
     * are too dear: first the paid, then the others, each in the order of this case, then the dear.
     */
    Case within(int[] paid, long paidShare, int[] more, long dear) {
        List<Integer> endless = new ArrayList<>();
        for (int j = 0; j < sticks; j++) {
            if (!isLimited(j)) {
                endless.add(j);
            }
        }
        int all = 2 * sticks + endless.size();
        int[] kinds = new int[all];
        int[] counts = new int[all];
        long[] costs = new long[all];
        for (int j = 0; j < sticks; j++) {
            kinds[j] = j;
            counts[j] = paid[j];
            costs[j] = paidShare * stickCost[j];
            kinds[sticks + j] = j;
            counts[sticks + j] = more[j];
            costs[sticks + j] = stickCost[j];
        }
        for (int n = 0; n < endless.size(); n++) {
            kinds[2 * sticks + n] = endless.get(n);
            counts[2 * sticks + n] = CuttingStock.UNLIMITED;
            costs[2 * sticks + n] = dear;
        }
        return new Case(this, kinds, counts, costs);
    }

    boolean isLimited(int stick) {
        return stickCount[stick] != CuttingStock.UNLIMITED;
    }

    /** The least cost that is possible and not under a bound that rounding may have raised. */
    long roundedUp(double bound) {
        // A few units in the last place of the sums behind a bound, and far under one step.
        double slip = 1e-7 * step + 1e-10 * Math.abs(bound);
        return (long) Math.ceil((bound - slip) / step) * step;
    }

    static long gcd(long a, long b) {
        return b == 0 ? a : gcd(b, a % b);
    }
}
