package haftline.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OutlierTest {
    private static Measured of(double resolution, double... readings) {
        List<Double> list = new ArrayList<>();
        for (double reading : readings) {
            list.add(reading);
        }
        return Measured.of(list, resolution);
    }

    /**
     * The table of Grubbs' test at 2.5 % on one side, which is 5 % on either (Grubbs and Beck 1972;
     * ASTM E178, Table 1), printed to three decimals.
     */
    @ParameterizedTest
    @CsvSource({
        "3, 1.155",
        "4, 1.481",
        "5, 1.715",
        "6, 1.887",
        "7, 2.020",
        "8, 2.126",
        "9, 2.215",
        "10, 2.290",
        "15, 2.549",
        "20, 2.709"
    })
    void critical_isThePrintedTable(int count, double printed) {
        assertThat(Outlier.critical(count)).isCloseTo(printed, within(0.001));
    }

    @Test
    void critical_ofThree_isInClosedForm() {
        // Student's t with one degree of freedom is the cotangent of pi p.
        double t = 1 / Math.tan(Math.PI * 0.05 / 6);
        double expected = 2 / Math.sqrt(3) * Math.sqrt(t * t / (1 + t * t));
        assertThat(Outlier.critical(3)).isCloseTo(expected, within(1e-12));
    }

    /** NIST/SEMATECH e-Handbook, 1.3.5.17.1: eight readings of uranium, G = 2.4687. */
    @Test
    void handbookExample() {
        Outlier outlier =
                Outlier.of(of(0, 199.31, 199.53, 200.19, 200.82, 201.92, 201.95, 202.18, 245.57))
                        .orElseThrow();
        assertThat(outlier.statistic()).isCloseTo(2.4687, within(1e-4));
        assertThat(outlier.place()).isEqualTo(8);
        assertThat(outlier.reading()).isEqualTo(245.57);
        assertThat(outlier.othersMean()).isCloseTo(200.842857, within(1e-6));
    }

    @Test
    void oneOrTwoReadings_cannotTell() {
        assertThat(Outlier.of(of(0.05, 6))).isEmpty();
        assertThat(Outlier.of(of(0.05, 6, 9))).isEmpty();
        assertThatThrownBy(() -> Outlier.critical(2)).hasMessageContaining("expected 3 or more");
    }

    @Test
    void identicalReadings_haveNone() {
        for (int n = 1; n <= 10; n++) {
            double[] same = new double[n];
            java.util.Arrays.fill(same, 6.05);
            assertThat(Outlier.of(of(0.05, same))).isEmpty();
            assertThat(Outlier.of(of(0, same))).isEmpty();
        }
    }

    /**
     * Two of three alike and one beside them is what a calliper's steps give: G is then 2/root 3
     * whatever the distance, over the critical 1.1543.
     */
    @ParameterizedTest
    @CsvSource({"6.05, false", "6.10, false", "6.15, true", "5.90, false", "5.85, true"})
    void stepsOfTheTool_areNoOutliers(double third, boolean stands) {
        assertThat(Outlier.of(of(0.05, 6, 6, third)).isPresent()).isEqualTo(stands);
    }

    @ParameterizedTest
    @CsvSource({"4", "5", "6", "7", "8", "9", "10"})
    void oneSlip_isNamed_amongReadingsAStepApart(int count) {
        for (int slip = 0; slip < count; slip++) {
            double[] readings = new double[count];
            for (int i = 0; i < count; i++) {
                readings[i] = 6 + (i % 2) * 0.05;
            }
            readings[slip] = 6.6;
            Outlier outlier = Outlier.of(of(0.05, readings)).orElseThrow();
            assertThat(outlier.place()).isEqualTo(slip + 1);
            assertThat(outlier.reading()).isEqualTo(6.6);
        }
    }

    /**
     * At 5 % about one in twenty samples without an outlier is blamed; moved or stretched alike.
     */
    @Test
    void normalReadings_areBlamedOneInTwenty_whereverAndHoweverLarge() {
        long seed = 20261125;
        SplittableRandom random = new SplittableRandom(seed);
        for (int n : new int[] {3, 5, 10}) {
            int blamed = 0;
            int samples = 4000;
            for (int s = 0; s < samples; s++) {
                double[] plain = new double[n];
                double[] moved = new double[n];
                for (int i = 0; i < n; i++) {
                    plain[i] = 50 + random.nextGaussian();
                    moved[i] = 7 + 3 * plain[i];
                }
                boolean first = Outlier.of(of(0, plain)).isPresent();
                assertThat(Outlier.of(of(0, moved)).isPresent())
                        .as("seed " + seed)
                        .isEqualTo(first);
                blamed += first ? 1 : 0;
            }
            // Three deviations of a binomial share.
            assertThat(blamed / (double) samples).as("n " + n).isCloseTo(0.05, within(0.0104));
        }
    }
}
