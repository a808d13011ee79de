package haftline.set.cutting;

/** The pattern of greatest worth that one stick holds: a bounded knapsack by length. */
final class Knapsack {
    private final Case of;

    /** Lengths are counted in their greatest common measure, which keeps the table short. */
    private final long unit;

    Knapsack(Case of) {
        this.of = of;
        long gcd = 0;
        for (long each : of.length) {
            gcd = Case.gcd(gcd, each);
        }
        unit = gcd;
    }

    /** The best pattern of a stick, no more of an item than is wanted. */
    int[] best(int stick, double[] worth) {
        int room = (int) (of.stickLength[stick] / unit);
        double[] value = new double[room + 1];
        // Counts in powers of two make every count from 0 to the most: each bundle is taken or not.
        int[] bundleItem = new int[32 * of.items];
        int[] bundleCount = new int[32 * of.items];
        boolean[][] taken = new boolean[32 * of.items][];
        int bundles = 0;
        for (int i = 0; i < of.items; i++) {
            if (!of.holds[stick][i] || worth[i] <= 0) {
                continue;
            }
            int size = (int) (of.length[i] / unit);
            int most = Math.min(of.wanted[i], room / size);
            for (int bundle = 1; most > 0; bundle *= 2) {
                int count = Math.min(bundle, most);
                most -= count;
                bundleItem[bundles] = i;
                bundleCount[bundles] = count;
                taken[bundles++] = take(value, count * size, count * worth[i]);
            }
        }
        int[] counts = new int[of.items];
        int at = room;
        for (int b = bundles - 1; b >= 0; b--) {
            if (taken[b][at]) {
                counts[bundleItem[b]] += bundleCount[b];
                at -= bundleCount[b] * (int) (of.length[bundleItem[b]] / unit);
            }
        }
        return counts;
    }

    private static boolean[] take(double[] value, int size, double worth) {
        boolean[] taken = new boolean[value.length];
        for (int at = value.length - 1; at >= size; at--) {
            double with = value[at - size] + worth;
            if (with > value[at]) {
                value[at] = with;
                taken[at] = true;
            }
        }
        return taken;
    }
}
