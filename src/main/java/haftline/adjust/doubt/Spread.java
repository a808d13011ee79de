package haftline.adjust.doubt;

import java.util.Arrays;

/**
 * How a figure spreads over many handles.
 *
 * @param mean its mean
 * @param deviation its standard deviation
 * @param low 5 in 100 lie under it
 * @param middle half lie under it
 * @param high 5 in 100 lie over it
 */
public record Spread(double mean, double deviation, double low, double middle, double high) {
    static Spread of(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double mean = sum / values.length;
        double squares = 0;
        for (double value : values) {
            squares += (value - mean) * (value - mean);
        }
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(
                mean,
                Math.sqrt(squares / Math.max(1, values.length - 1)),
                quantile(sorted, 0.05),
                quantile(sorted, 0.5),
                quantile(sorted, 0.95));
    }

    private static double quantile(double[] sorted, double share) {
        double at = share * (sorted.length - 1);
        int below = (int) at;
        int above = Math.min(sorted.length - 1, below + 1);
        return sorted[below] + (at - below) * (sorted[above] - sorted[below]);
    }
}
