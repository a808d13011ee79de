package haftline.set.cutting;

/**
 * What an item is worth and what a stick of limited count is worth over its cost, such that no
 * pattern's items are worth more than its stick's cost and worth. By the weak duality of linear
 * programs the worth of all items, less that of the limited sticks, is then a lower bound on the
 * cost of any plan, and the same holds for what is still to be cut at any point of a search.
 *
 * @param item worth of each item
 * @param stick worth of each stick, 0 where its count is not limited
 */
record Prices(double[] item, double[] stick) {
    /** By the length alone, each item at the best rate that there is: the material bound. */
    static Prices byLength(Case of) {
        double[] item = new double[of.items];
        for (int i = 0; i < of.items; i++) {
            double rate = Double.POSITIVE_INFINITY;
            for (int j = 0; j < of.sticks; j++) {
                if (of.holds[j][i]) {
                    rate = Math.min(rate, of.stickCost[j] / (double) of.stickLength[j]);
                }
            }
            item[i] = rate * of.length[i];
        }
        return new Prices(item, new double[of.sticks]);
    }

    /** Least cost of what remains with the sticks that are left. */
    double bound(int[] remaining, int[] left) {
        double sum = 0;
        for (int i = 0; i < item.length; i++) {
            sum += remaining[i] * item[i];
        }
        for (int j = 0; j < stick.length; j++) {
            if (stick[j] > 0) {
                sum -= left[j] * stick[j];
            }
        }
        return sum;
    }

    /** What a pattern's items are worth. */
    double of(int[] counts) {
        double sum = 0;
        for (int i = 0; i < item.length; i++) {
            sum += counts[i] * item[i];
        }
        return sum;
    }
}
