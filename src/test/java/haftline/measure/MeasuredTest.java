package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeasuredTest {
    private static Measured of(double... readings) {
        List<Double> list = new ArrayList<>();
        for (double reading : readings) {
            list.add(reading);
        }
        return Measured.of(list, 0);
    }

    /** NIST StRD, NumAcc1: mean 10000002, deviation 1, both exact. */
    @Test
    void numAcc1() {
        Measured set = of(10000001, 10000003, 10000002);
        assertThat(set.mean()).isEqualTo(10000002);
        assertThat(set.deviation()).isEqualTo(1);
    }

    /**
     * NIST StRD, NumAcc2 to 4: 1001 observations, the mean and then 500 times 0.1 under and 0.1
     * over it; certified deviation 0.1.
     */
    @ParameterizedTest
    @CsvSource({"1.2, 1e-13", "1000000.2, 1e-8", "10000000.2, 1e-7"})
    void numAcc2To4(double mean, double tolerance) {
        List<Double> list = new ArrayList<>();
        list.add(mean);
        for (int i = 0; i < 500; i++) {
            list.add(mean - 0.1);
            list.add(mean + 0.1);
        }
        Measured set = Measured.of(list, 0);
        assertThat(set.mean()).isCloseTo(mean, within(tolerance));
        assertThat(set.deviation()).isCloseTo(0.1, within(tolerance));
    }

    /**
     * Half-width t s / sqrt(n), t of 95 % two-sided from the printed table: 2 readings 12.706, 3
     * 4.303, 5 2.776, 10 2.262.
     */
    @ParameterizedTest
    @CsvSource({"2, 12.706", "3, 4.303", "5, 2.776", "10, 2.262"})
    void doubt_isStudentsInterval(int n, double t) {
        double[] readings = new double[n];
        double sum = 0;
        for (int i = 0; i < n; i++) {
            readings[i] = 6 + i * 0.01;
            sum += (i - (n - 1) / 2.0) * (i - (n - 1) / 2.0) * 1e-4;
        }
        double s = Math.sqrt(sum / (n - 1));
        Measured measured = of(readings);
        assertThat(measured.doubt()).isCloseTo(t * s / Math.sqrt(n), within(1e-4 * t * s));
    }

    /** Many readings: the normal quantile 1.960, nearly. */
    @Test
    void doubt_ofManyReadings() {
        List<Double> list = new ArrayList<>(Collections.nCopies(100, 5.9));
        list.addAll(Collections.nCopies(100, 6.1));
        double s = Math.sqrt(200.0 * 0.01 / 199);
        assertThat(Measured.of(list, 0).doubt())
                .isCloseTo(1.972 * s / Math.sqrt(200), within(1e-5));
    }

    @Test
    void doubt_joinsTheTool() {
        // Equal readings: half of the tool's step is left.
        assertThat(Measured.of(List.of(6.0, 6.0, 6.0), 0.05).doubt()).isEqualTo(0.025);
        assertThat(Measured.of(List.of(6.0), 0.05).doubt()).isEqualTo(0.05);
        assertThat(Measured.exactly(6).doubt()).isZero();
        double random = Measured.of(List.of(5.9, 6.0, 6.1), 0).doubt();
        assertThat(Measured.of(List.of(5.9, 6.0, 6.1), 0.06).doubt())
                .isCloseTo(Math.hypot(random, 0.03), within(1e-15));
    }

    @Test
    void extremes() {
        Measured set = of(6.05, 5.95, 6.0);
        assertThat(set.least()).isEqualTo(5.95);
        assertThat(set.greatest()).isEqualTo(6.05);
        assertThat(set.spread()).isCloseTo(0.1, within(1e-12));
        assertThat(set.count()).isEqualTo(3);
        assertThat(set.readings()).containsExactly(6.05, 5.95, 6.0);
    }

    @Test
    void equalReadings_haveThatMean() {
        assertThat(of(0.1, 0.1, 0.1).mean()).isEqualTo(0.1);
        assertThat(of(0.1, 0.1, 0.1).deviation()).isZero();
    }

    @Test
    void equality_isOfReadingsAndTool() {
        assertThat(of(1, 2)).isEqualTo(of(1, 2)).hasSameHashCodeAs(of(1, 2));
        assertThat(of(1, 2)).isNotEqualTo(of(2, 1));
        assertThat(Measured.of(List.of(1.0), 0.1)).isNotEqualTo(Measured.exactly(1));
    }

    @Test
    void nonsense_isRefused() {
        assertThatThrownBy(() -> Measured.of(List.of(), 0.1))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("none given");
        for (double bad : new double[] {-1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> Measured.exactly(bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("reading");
            assertThatThrownBy(() -> Measured.of(List.of(1.0), bad))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("resolution");
        }
    }
}
