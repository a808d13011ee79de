package haftline.set.cutting;

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
