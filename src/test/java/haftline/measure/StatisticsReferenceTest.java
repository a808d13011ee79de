package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Readings against certified and printed figures. */
class StatisticsReferenceTest {
    private static List<Double> michelson() throws IOException {
        return Files.readAllLines(Path.of("src/test/resources/nist-strd/Michelso.txt")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(Double::valueOf)
                .toList();
    }

    /** NIST StRD, Michelso: certified to 15 digits. */
    @Test
    void michelson_hasTheCertifiedMeanAndDeviation() throws IOException {
        Measured set = Measured.of(michelson(), 0);
        assertThat(set.count()).isEqualTo(100);
        assertThat(set.mean()).isCloseTo(299.852400000000, within(1e-12));
        assertThat(set.deviation()).isCloseTo(0.0790105478190518, within(1e-13));
    }

    @Test
    void michelson_agreesWithCommonsMath() throws IOException {
        DescriptiveStatistics other = new DescriptiveStatistics();
        michelson().forEach(other::addValue);
        Measured set = Measured.of(michelson(), 0);
        assertThat(set.mean()).isCloseTo(other.getMean(), within(1e-12));
        assertThat(set.deviation()).isCloseTo(other.getStandardDeviation(), within(1e-12));
        assertThat(set.spread()).isEqualTo(other.getMax() - other.getMin());
    }

    /**
     * Student's t at 97.5 %: NIST/SEMATECH e-Handbook, 1.3.6.7.2, three decimals; and the same by
     * Commons Math.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 12.706", "2, 4.303", "3, 3.182", "4, 2.776", "5, 2.571", "6, 2.447", "7, 2.365",
        "8, 2.306", "9, 2.262", "10, 2.228", "15, 2.131", "20, 2.086", "30, 2.042", "60, 2.000",
        "100, 1.984"
    })
    void doubt_usesThePrintedQuantile(int degrees, double printed) {
        int n = degrees + 1;
        List<Double> readings = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            readings.add(6 + i * 0.01);
        }
        // Deviation of equally spaced readings in closed form: step times root of n (n + 1) / 12.
        double s = 0.01 * Math.sqrt(n * (n + 1) / 12.0);
        double quantile = Measured.of(readings, 0).doubt() * Math.sqrt(n) / s;
        assertThat(quantile).isCloseTo(printed, within(0.00051));
        assertThat(quantile)
                .isCloseTo(
                        new TDistribution(degrees).inverseCumulativeProbability(0.975),
                        within(1e-6));
    }
}
