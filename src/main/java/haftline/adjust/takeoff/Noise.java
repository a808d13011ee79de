package haftline.adjust.takeoff;

import java.util.Arrays;

/** How far readings scatter, told from the readings alone. */
final class Noise {
    /** Median of the absolute value to standard deviation of a normal distribution. */
    static final double OF_MEDIAN = 1.4826;

    private static final double WITHIN = 3;

    /** Mean square of a normal distribution cut off at three deviations, as a share of all. */
    private static final double OF_WITHIN = 0.9733;

    private Noise() {}

    /**
     * Standard deviation of the readings about a smooth line: each is held against the cubic
     * through the two on either side, and the median of what is left, which crisp places and stray
     * readings hardly move, is scaled (Hampel, The influence curve and its role in robust
     * estimation, J. Amer. Statist. Assoc. 69, 1974).
     *
     * @param x places, mm, rising; two may be equal
     * @param d diameters, mm
     * @return mm, 0 where there are too few readings to tell
     */
    static double deviation(double[] x, double[] d) {
        double[] off = new double[x.length];
        int count = 0;
        for (int j = 0; j < x.length; j++) {
            double one = off(x, d, j);
            if (!Double.isNaN(one)) {
                off[count++] = one;
            }
        }
        return deviation(Arrays.copyOf(off, count));
    }

    /**
     * How far a reading stands off the cubic through the two on either side, on the scale of one
     * reading's scatter.
     *
     * @return mm, 0 or more; NaN where there are no two on either side at places of their own
     */
    static double off(double[] x, double[] d, int j) {
        if (j < 2
                || j + 2 >= x.length
                || x[j - 2] == x[j - 1]
                || x[j - 1] == x[j]
                || x[j] == x[j + 1]
                || x[j + 1] == x[j + 2]) {
            return Double.NaN;
        }
        int[] near = {j - 2, j - 1, j + 1, j + 2};
        double predicted = 0;
        double squares = 1;
        for (int a : near) {
            double weight = 1;
            for (int b : near) {
                if (b != a) {
                    weight *= (x[j] - x[b]) / (x[a] - x[b]);
                }
            }
            predicted += weight * d[a];
            squares += weight * weight;
        }
        return Math.abs(d[j] - predicted) / Math.sqrt(squares);
    }

    /**
     * Standard deviation from absolute values: the scaled median, then the root mean square of
     * those within three of it, which is steadier, scaled for those left out.
     *
     * @param off absolute values, left in another order
     * @return 0 of none
     */
    static double deviation(double[] off) {
        double rough = OF_MEDIAN * median(off);
        double sum = 0;
        int count = 0;
        for (double one : off) {
            if (one <= WITHIN * rough) {
                sum += one * one;
                count++;
            }
        }
        return count == 0 ? 0 : Math.sqrt(sum / count / OF_WITHIN);
    }

    /**
     * The middle value.
     *
     * @param values any number of them, left in another order
     * @return 0 of none
     */
    static double median(double[] values) {
        if (values.length == 0) {
            return 0;
        }
        Arrays.sort(values);
        int half = values.length / 2;
        return values.length % 2 == 1 ? values[half] : (values[half - 1] + values[half]) / 2;
    }
}
