package haftline.measure;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * A length or mass that was measured: one number or several readings of the same thing, with the
 * doubt that follows.
 *
 * <p>Immutable. All readings are in one unit (mm or g), finite and not negative.
 */
public final class Measured {
    /** Two-sided level of every doubt that is stated: 95 %. */
    private static final double UPPER_TAIL = 0.975;

    /** Quantiles are asked for again and again in a drag; few readings are ever taken. */
    private static final double[] T_QUANTILE = new double[64];

    private final double[] readings;
    private final double resolution;
    private final double mean;
    private final double least;
    private final double greatest;
    private final double deviation;

    private Measured(double[] readings, double resolution) {
        if (readings.length == 0) {
            throw new IllegalArgumentException("readings: none given, at least 1 expected");
        }
        for (double reading : readings) {
            if (!(reading >= 0) || Double.isInfinite(reading)) {
                throw new IllegalArgumentException(
                        "reading " + reading + ": expected a finite number, 0 or more");
            }
        }
        if (!(resolution >= 0) || Double.isInfinite(resolution)) {
            throw new IllegalArgumentException(
                    "resolution " + resolution + ": expected a finite number, 0 or more");
        }
        this.readings = readings;
        this.resolution = resolution;
        double sum = 0;
        double low = readings[0];
        double high = readings[0];
        for (double reading : readings) {
            sum += reading;
            low = Math.min(low, reading);
            high = Math.max(high, reading);
        }
        // The mean of equal readings is that reading, whatever the rounding of the sum.
        mean = low == high ? low : sum / readings.length;
        least = low;
        greatest = high;
        double squares = 0;
        for (double reading : readings) {
            squares += (reading - mean) * (reading - mean);
        }
        deviation = readings.length < 2 ? 0 : Math.sqrt(squares / (readings.length - 1));
    }

    /**
     * One number, taken as exact.
     *
     * @param value the value, 0 or more
     * @return the value without doubt
     */
    public static Measured exactly(double value) {
        return new Measured(new double[] {value}, 0);
    }

    /**
     * Readings of one thing.
     *
     * @param readings at least one, each 0 or more
     * @param resolution the least step that the tool and hand can tell apart, same unit, 0 or more
     * @return the readings with their doubt
     * @throws IllegalArgumentException where a reading or the resolution is out of range
     */
    public static Measured of(List<Double> readings, double resolution) {
        return new Measured(
                readings.stream().mapToDouble(Double::doubleValue).toArray(), resolution);
    }

    /**
     * All readings changed alike.
     *
     * @param by what is added to each
     * @return the changed copy
     * @throws IllegalArgumentException where a reading would fall under 0
     */
    public Measured plus(double by) {
        return new Measured(
                Arrays.stream(readings).map(reading -> reading + by).toArray(), resolution);
    }

    /**
     * The readings in the order taken.
     *
     * @return an unmodifiable list, never empty
     */
    public List<Double> readings() {
        return Arrays.stream(readings).boxed().toList();
    }

    /**
     * How many readings there are.
     *
     * @return 1 or more
     */
    public int count() {
        return readings.length;
    }

    /**
     * The least step that the tool and hand can tell apart.
     *
     * @return the resolution, 0 where the value is taken as exact
     */
    public double resolution() {
        return resolution;
    }

    /**
     * Arithmetic mean of the readings.
     *
     * @return the mean
     */
    public double mean() {
        return mean;
    }

    /**
     * The smallest reading.
     *
     * @return the least
     */
    public double least() {
        return least;
    }

    /**
     * The largest reading.
     *
     * @return the greatest
     */
    public double greatest() {
        return greatest;
    }

    /**
     * Greatest less least.
     *
     * @return the spread, 0 for one reading
     */
    public double spread() {
        return greatest - least;
    }

    /**
     * Sample standard deviation (divisor n - 1).
     *
     * @return the deviation, 0 for one reading
     */
    public double deviation() {
        return deviation;
    }

    /**
     * Half-width of the 95 % interval of the mean: Student's t times s over the root of n
     * (NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.2.1), joined in quadrature with half
     * the resolution, which all readings share. A single reading is doubted by one whole step of
     * the resolution (common practice, no source).
     *
     * @return the doubt, 0 for an exact value
     */
    public double doubt() {
        if (readings.length == 1) {
            return resolution;
        }
        double random = tQuantile(readings.length - 1) * deviation / Math.sqrt(readings.length);
        return Math.hypot(random, resolution / 2);
    }

    private static double tQuantile(int degreesOfFreedom) {
        if (degreesOfFreedom >= T_QUANTILE.length) {
            return new TDistribution(null, degreesOfFreedom)
                    .inverseCumulativeProbability(UPPER_TAIL);
        }
        // A race only computes the same number twice.
        if (T_QUANTILE[degreesOfFreedom] == 0) {
            T_QUANTILE[degreesOfFreedom] =
                    new TDistribution(null, degreesOfFreedom)
                            .inverseCumulativeProbability(UPPER_TAIL);
        }
        return T_QUANTILE[degreesOfFreedom];
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Measured that
                && Arrays.equals(readings, that.readings)
                && resolution == that.resolution;
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(readings) + Double.hashCode(resolution);
    }

    @Override
    public String toString() {
        return mean + " ± " + doubt() + " (n=" + readings.length + ")";
    }
}
