package haftline.stock;

import haftline.measure.Checks;
import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;

/**
 * A hand measure of a population.
 *
 * @param key catalogue key, such as {@code male-hand-length}
 * @param people whose hands, in words
 * @param measure what is measured
 * @param count how many people
 * @param meanMm mean, mm
 * @param deviationMm standard deviation, mm
 * @param percentilesMm the percentiles that are given, mm, by percent
 * @param source the survey
 */
public record HandSize(
        String key,
        String people,
        String measure,
        int count,
        double meanMm,
        double deviationMm,
        Map<Integer, Double> percentilesMm,
        Source source)
        implements Keyed {
    public HandSize {
        Checks.named("key", key);
        percentilesMm = Collections.unmodifiableMap(new TreeMap<>(percentilesMm));
    }

    /**
     * A percentile.
     *
     * @param percent one of those given
     * @return mm
     * @throws IllegalArgumentException where that percentile is not given
     */
    public double percentileMm(int percent) {
        Double value = percentilesMm.get(percent);
        if (value == null) {
            throw new IllegalArgumentException(
                    "percentile " + percent + ": expected one of " + percentilesMm.keySet());
        }
        return value;
    }
}
