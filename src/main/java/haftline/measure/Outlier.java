package haftline.measure;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A reading that stands apart from the others of the same thing: the one furthest from the mean,
 * where Grubbs' two-sided test at 5 % calls it an outlier (NIST/SEMATECH e-Handbook of Statistical
 * Methods, 1.3.5.17.1).
 *
 * <p>Readings come in steps of the tool's resolution, and two of three are often the same step: the
 * test alone would then condemn the third however near it is. So the deviation is taken as no less
 * than that of one step spread evenly (step / root of 12; JCGM 100:2008, F.2.2.1), and a reading is
 * named only where it is more than {@value #STEPS} whole steps from the mean of the others (common
 * practice, no source).
 *
 * @param place which reading it is, in the order taken, from 1
 * @param reading its value, in the readings' unit
 * @param othersMean mean of the other readings
 * @param statistic Grubbs' G, distance from the mean of all over their deviation
 * @param critical what G must exceed at this count of readings
 */
public record Outlier(
        int place, double reading, double othersMean, double statistic, double critical) {
    /** Two readings apart by no more steps may be of the same size. */
    static final int STEPS = 2;

    /** Fewer readings cannot tell which of them is off. */
    public static final int LEAST_COUNT = 3;

    private static final double SIGNIFICANCE = 0.05;

    /** Differences under this share of a step are rounding. */
    private static final double ROUNDING = 1e-9;

    /** Critical values are asked for again and again in a drag; few readings are ever taken. */
    private static final double[] CRITICAL = new double[64];

    /**
     * The reading that stands apart.
     *
     * @param measured the readings
     * @return the furthest reading where it is an outlier; empty where none is, or where there are
     *     fewer than {@value #LEAST_COUNT}
     */
    public static Optional<Outlier> of(Measured measured) {
        int n = measured.count();
        if (n < LEAST_COUNT || measured.spread() == 0) {
            return Optional.empty();
        }
        List<Double> readings = measured.readings();
        double mean = measured.mean();
        int furthest = 0;
        for (int i = 1; i < n; i++) {
            if (Math.abs(readings.get(i) - mean) > Math.abs(readings.get(furthest) - mean)) {
                furthest = i;
            }
        }
        double reading = readings.get(furthest);
        double others = mean - (reading - mean) / (n - 1);
        double apart = STEPS * measured.resolution() * (1 + ROUNDING);
        double deviation = Math.max(measured.deviation(), measured.resolution() / Math.sqrt(12));
        double statistic = Math.abs(reading - mean) / deviation;
        double critical = critical(n);
        return statistic > critical && Math.abs(reading - others) > apart
                ? Optional.of(new Outlier(furthest + 1, reading, others, statistic, critical))
                : Optional.empty();
    }

    /**
     * What Grubbs' G must exceed for an outlier on either side at 5 %: (n - 1)/root n times the
     * root of t2/(n - 2 + t2), t Student's quantile at 5 % / 2n with n - 2 degrees of freedom.
     *
     * @param count readings, 3 or more
     * @return the critical value
     */
    public static double critical(int count) {
        if (count < LEAST_COUNT) {
            throw new IllegalArgumentException(
                    "readings " + count + ": expected " + LEAST_COUNT + " or more");
        }
        if (count >= CRITICAL.length) {
            return reckoned(count);
        }
        // A race only computes the same number twice.
        if (CRITICAL[count] == 0) {
            CRITICAL[count] = reckoned(count);
        }
        return CRITICAL[count];
    }

    private static double reckoned(int n) {
        double t =
                new TDistribution(null, n - 2.0)
                        .inverseCumulativeProbability(1 - SIGNIFICANCE / (2.0 * n));
        return (n - 1) / Math.sqrt(n) * Math.sqrt(t * t / (n - 2 + t * t));
    }
}
