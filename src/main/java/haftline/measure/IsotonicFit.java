package haftline.measure;

/** The row that never falls and lies nearest to given values in the sense of least squares. */
public final class IsotonicFit {
    private IsotonicFit() {}

    /**
     * Fits by pooling neighbours that are out of order at their mean until none are (Ayer and
     * others 1955; the least sum of squares, in linear time).
     *
     * @param values finite, any number, not changed
     * @return as many values in the same unit, none less than the one before
     */
    public static double[] of(double[] values) {
        double[] mean = new double[values.length];
        int[] count = new int[values.length];
        int pools = 0;
        for (double value : values) {
            mean[pools] = value;
            count[pools++] = 1;
            while (pools > 1 && mean[pools - 2] > mean[pools - 1]) {
                int both = count[pools - 2] + count[pools - 1];
                mean[pools - 2] =
                        (mean[pools - 2] * count[pools - 2] + mean[pools - 1] * count[pools - 1])
                                / both;
                count[--pools - 1] = both;
            }
        }
        double[] result = new double[values.length];
        int at = 0;
        for (int pool = 0; pool < pools; pool++) {
            for (int i = 0; i < count[pool]; i++) {
                result[at++] = mean[pool];
            }
        }
        return result;
    }
}
