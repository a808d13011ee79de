package haftline.adjust.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Against data sets with certified answers: NIST Statistical Reference Datasets (StRD), linear and
 * nonlinear regression. Data and certified values were typed by hand and compared with copies in
 * the test suites of several open-source libraries; a wrong figure could not give the certified
 * digits.
 */
class LeastSquaresTest {
    @ParameterizedTest
    @ValueSource(doubles = {500, 250})
    void misra1aComesToTheCertifiedAnswer(double start) {
        double[] x = {
            77.6, 114.9, 141.1, 190.8, 239.9, 289.0, 332.8, 378.4, 434.8, 477.3, 536.8, 593.1,
            689.1, 760.0
        };
        double[] y = {
            10.07, 14.73, 17.94, 23.93, 29.61, 35.18, 40.02, 44.82, 50.76, 55.05, 61.01, 66.40,
            75.47, 81.78
        };
        double[] from = {start, start == 500 ? 0.0001 : 0.0005};
        LeastSquares.Fit fit =
                fit(
                        p -> {
                            double[] r = new double[x.length];
                            for (int i = 0; i < x.length; i++) {
                                r[i] = y[i] - p[0] * (1 - Math.exp(-p[1] * x[i]));
                            }
                            return r;
                        },
                        from,
                        new double[] {1, 1e-4});
        assertThat(fit.parameters()[0]).isCloseTo(2.3894212918E+02, relative(2.4E+02, 1e-7));
        assertThat(fit.parameters()[1]).isCloseTo(5.5015643181E-04, relative(5.5E-04, 1e-7));
        assertThat(fit.sum()).isCloseTo(1.2455138894E-01, relative(0.12, 1e-8));
    }

    @Test
    void boxBodComesToTheCertifiedAnswer() {
        double[] x = {1, 2, 3, 5, 7, 10};
        double[] y = {109, 149, 149, 191, 213, 224};
        LeastSquares.Fit fit =
                fit(
                        p -> {
                            double[] r = new double[x.length];
                            for (int i = 0; i < x.length; i++) {
                                r[i] = y[i] - p[0] * (1 - Math.exp(-p[1] * x[i]));
                            }
                            return r;
                        },
                        new double[] {100, 0.75},
                        new double[] {1, 1e-2});
        assertThat(fit.parameters()[0]).isCloseTo(2.1380940889E+02, relative(2.1E+02, 1e-7));
        assertThat(fit.parameters()[1]).isCloseTo(5.4723748542E-01, relative(0.55, 1e-7));
        assertThat(fit.sum()).isCloseTo(1.1680088766E+03, relative(1.2E+03, 1e-8));
    }

    /** Wampler1 and Wampler2: polynomials of order 5 in x = 0, 1, ... 20, exact. */
    @ParameterizedTest
    @ValueSource(doubles = {1, 0.1})
    void wamplerGivesItsCoefficientsBack(double ratio) {
        double[] x = new double[21];
        double[] y = new double[21];
        for (int i = 0; i < 21; i++) {
            x[i] = i;
            double power = 1;
            for (int k = 0; k <= 5; k++) {
                y[i] += power;
                power *= ratio * i;
            }
        }
        double[] scale = {1, 1, 1, 1, 1, 1};
        LeastSquares.Fit fit =
                fit(
                        p -> {
                            double[] r = new double[x.length];
                            for (int i = 0; i < x.length; i++) {
                                double sum = 0;
                                for (int k = 5; k >= 0; k--) {
                                    sum = sum * x[i] + p[k];
                                }
                                r[i] = y[i] - sum;
                            }
                            return r;
                        },
                        new double[6],
                        scale);
        for (int k = 0; k <= 5; k++) {
            double certified = Math.pow(ratio, k);
            assertThat(fit.parameters()[k])
                    .as("B" + k)
                    .isCloseTo(certified, within(1e-4 * certified));
        }
    }

    /** Longley: six regressors that go nearly together, so rounding costs some nine digits. */
    @Test
    void longleyComesToTheCertifiedAnswer() throws IOException {
        double[] certified = {
            -3482258.63459582,
            15.0618722713733,
            -0.358191792925910E-01,
            -2.02022980381683,
            -1.03322686717359,
            -0.511041056535807E-01,
            1829.15146461355
        };
        double[][] rows =
                Files.readAllLines(Path.of("src/test/resources/nist-strd/Longley.txt")).stream()
                        .filter(line -> !line.startsWith("#"))
                        .map(line -> line.split(" "))
                        .map(cells -> Arrays.stream(cells).mapToDouble(Double::valueOf).toArray())
                        .toArray(double[][]::new);
        assertThat(rows).hasDimensions(16, 7);
        LeastSquares.Fit fit =
                fit(
                        p -> {
                            double[] r = new double[rows.length];
                            for (int i = 0; i < rows.length; i++) {
                                r[i] = rows[i][0] - p[0];
                                for (int k = 1; k < p.length; k++) {
                                    r[i] -= p[k] * rows[i][k];
                                }
                            }
                            return r;
                        },
                        new double[7],
                        new double[] {1e6, 10, 0.1, 1, 1, 0.1, 1000});
        for (int k = 0; k < certified.length; k++) {
            assertThat(fit.parameters()[k])
                    .as("b" + k)
                    .isCloseTo(certified[k], within(1e-5 * Math.abs(certified[k])));
        }
        assertThat(fit.sum()).isCloseTo(836424.055505915, relative(836424, 1e-8));
    }

    /** The cubic that a batten piece is, by Forsythe's polynomials, against an exact cubic. */
    @Test
    void aCubicIsGivenBackExactly() {
        double[] x = {0, 0.5, 1, 2, 3, 5, 8, 13};
        double[] d =
                Arrays.stream(x)
                        .map(t -> 14 + 0.3 * t - 0.04 * t * t + 0.002 * t * t * t)
                        .toArray();
        Polynomial fit = new Polynomial(x, d, 0, x.length - 1);
        assertThat(fit.sum(3)).isCloseTo(0, within(1e-20));
        assertThat(fit.at(6.5, 3)).isCloseTo(14 + 1.95 - 1.69 + 0.54925, within(1e-12));
        assertThat(fit.slope(6.5, 3)).isCloseTo(0.3 - 0.52 + 0.2535, within(1e-12));
    }

    /** A run that grows reading by reading leaves what its polynomials leave, twins included. */
    @Test
    void aGrowingRunLeavesWhatItsPolynomialsLeave() {
        SplittableRandom random = new SplittableRandom(20261130);
        for (int run = 0; run < 200; run++) {
            int n = 2 + random.nextInt(60);
            double[] x = new double[n];
            double[] d = new double[n];
            for (int j = 0; j < n; j++) {
                boolean twin = j > 0 && random.nextInt(5) == 0;
                x[j] = j == 0 ? 0 : x[j - 1] + (twin ? 0 : 0.1 + random.nextDouble());
                d[j] = 20 + 3 * Math.sin(x[j] / 5) + 0.05 * random.nextGaussian();
            }
            GrowingFit growing = new GrowingFit(x[0], d[0]);
            for (int j = 0; j < n; j++) {
                growing.add(x[j], d[j]);
                Polynomial fit = new Polynomial(x, d, 0, j);
                int order = fit.cheapest(0.01);
                assertThat(growing.cheapest(0.01)).as("run %d to %d", run, j).isEqualTo(order);
                assertThat(growing.sum(order)).isCloseTo(fit.sum(order), within(1e-9));
            }
        }
    }

    private static Offset<Double> relative(double of, double share) {
        return within(of * share);
    }

    private static LeastSquares.Fit fit(LeastSquares.Model model, double[] start, double[] scale) {
        double[] high = new double[start.length];
        double[] low = new double[start.length];
        Arrays.fill(high, Double.MAX_VALUE);
        Arrays.fill(low, -Double.MAX_VALUE);
        return new LeastSquares(model, low, high, scale).from(start, 500, 0);
    }
}
