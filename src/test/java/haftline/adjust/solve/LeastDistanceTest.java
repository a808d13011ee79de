package haftline.adjust.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.Watch;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class LeastDistanceTest {
    @Test
    void staysWhereEveryRowIsMet() {
        LeastDistance program = new LeastDistance(new double[] {1, 2}, Watch.NOBODY);
        program.row(new double[] {1, 0}, 0);
        assertThat(program.solve().orElseThrow()).containsExactly(1, 2);
    }

    @Test
    void dropsAPerpendicularOnAHalfPlane() {
        LeastDistance program = new LeastDistance(new double[] {0, 0}, Watch.NOBODY);
        program.row(new double[] {3, 4}, 10);
        assertThat(program.solve().orElseThrow())
                .containsExactly(new double[] {1.2, 1.6}, within(1e-12));
    }

    @Test
    void saysWhereNoPointMeetsAllRows() {
        LeastDistance program = new LeastDistance(new double[] {0}, Watch.NOBODY);
        program.row(new double[] {1}, 1);
        program.row(new double[] {-1}, 0);
        assertThat(program.solve()).isEmpty();
    }

    /** Against the dual found by coordinate ascent (Hildreth 1957), with rows almost parallel. */
    @Test
    void findsTheNearestPoint_randomPolyhedra() {
        SplittableRandom random = new SplittableRandom(5);
        for (int rep = 0; rep < 300; rep++) {
            int n = 2 + random.nextInt(6);
            int m = 2 + random.nextInt(14);
            double[][] a = new double[m][n];
            double[] b = new double[m];
            double[] inside = new double[n];
            for (int j = 0; j < n; j++) {
                inside[j] = random.nextDouble(-2, 2);
            }
            for (int i = 0; i < m; i++) {
                boolean twin = i > 0 && random.nextDouble() < 0.3;
                for (int j = 0; j < n; j++) {
                    a[i][j] =
                            twin
                                    ? a[i - 1][j] * (1 + 1e-6 * random.nextDouble())
                                    : random.nextDouble(-0.5, 1.5);
                    b[i] += a[i][j] * inside[j];
                }
                b[i] -= 0.3 * random.nextDouble();
            }
            LeastDistance program = new LeastDistance(new double[n], Watch.NOBODY);
            for (int i = 0; i < m; i++) {
                program.row(a[i], b[i]);
            }
            Optional<double[]> found = program.solve();
            assertThat(found).as("case " + rep).isPresent();
            double[] best = hildreth(a, b);
            assertThat(square(found.get()))
                    .as("case " + rep)
                    .isCloseTo(square(best), within(1e-4 * (1 + square(best))));
            for (int i = 0; i < m; i++) {
                double slack = -b[i];
                for (int j = 0; j < n; j++) {
                    slack += a[i][j] * found.get()[j];
                }
                assertThat(slack).as("case " + rep).isGreaterThan(-1e-9);
            }
        }
    }

    private static double[] hildreth(double[][] a, double[] b) {
        double[] x = new double[a[0].length];
        double[] pull = new double[b.length];
        for (int round = 0; round < 4000; round++) {
            for (int i = 0; i < b.length; i++) {
                double gap = b[i];
                double length = 0;
                for (int j = 0; j < x.length; j++) {
                    gap -= a[i][j] * x[j];
                    length += a[i][j] * a[i][j];
                }
                double step = Math.max(-pull[i], gap / length);
                pull[i] += step;
                for (int j = 0; j < x.length; j++) {
                    x[j] += step * a[i][j];
                }
            }
        }
        return x;
    }

    private static double square(double[] x) {
        double sum = 0;
        for (double each : x) {
            sum += each * each;
        }
        return sum;
    }
}
