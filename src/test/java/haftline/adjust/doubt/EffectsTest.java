package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class EffectsTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();

    private static double[] shares(int inputs, int walks, Effects.Model model) {
        int[] each = new int[inputs];
        Arrays.setAll(each, i -> i);
        Effects effects = new Effects(each, each, inputs, 1);
        double[] sums = effects.sums();
        SplittableRandom random = new SplittableRandom(7);
        for (int i = 0; i < walks; i++) {
            effects.walk(
                    random.doubles(inputs).map(NORMAL::inverseCumulativeProbability).toArray(),
                    random.doubles(inputs).map(NORMAL::inverseCumulativeProbability).toArray(),
                    model,
                    random,
                    sums);
        }
        return effects.shares(sums, 0);
    }

    /** Of a sum each input's share is its own variance, 9 : 4 : 1 : 0. */
    @Test
    void ofASumEachInputHasItsOwnVariance() {
        double[] shares = shares(4, 40_000, (x, y) -> y[0] = 3 * x[0] - 2 * x[1] + x[2] + 0 * x[3]);
        assertThat(shares[0]).isCloseTo(9 / 14.0, within(0.01));
        assertThat(shares[1]).isCloseTo(4 / 14.0, within(0.01));
        assertThat(shares[2]).isCloseTo(1 / 14.0, within(0.01));
        assertThat(shares[3]).isZero();
    }

    /**
     * The function of Ishigami and Homma, sin x1 + 7 sin² x2 + 0.1 x3⁴ sin x1 with x even over -pi
     * to pi. Its published indices (Saltelli and others, Global Sensitivity Analysis, 2008, section
     * 4.6: S1 = 0.3139, S2 = 0.4424, S13 = 0.2437, all others none) make Shapley effects of S1 +
     * S13 / 2, S2 and S13 / 2.
     */
    @Test
    void ofIshigamisFunctionTheyAreThosePublished() {
        double[] shares =
                shares(
                        3,
                        60_000,
                        (x, y) -> {
                            double[] u = new double[3];
                            Arrays.setAll(
                                    u, i -> Math.PI * (2 * NORMAL.cumulativeProbability(x[i]) - 1));
                            double sine = Math.sin(u[0]);
                            y[0] =
                                    sine
                                            + 7 * Math.pow(Math.sin(u[1]), 2)
                                            + 0.1 * Math.pow(u[2], 4) * sine;
                        });
        assertThat(shares[0]).isCloseTo(0.3139 + 0.2437 / 2, within(0.012));
        assertThat(shares[1]).isCloseTo(0.4424, within(0.012));
        assertThat(shares[2]).isCloseTo(0.2437 / 2, within(0.012));
    }

    /** A product has no first-order index at all: its inputs share what they do together. */
    @Test
    void whatInputsDoTogetherIsDealtOutEvenly() {
        double[] shares = shares(2, 40_000, (x, y) -> y[0] = x[0] * x[1]);
        assertThat(shares[0]).isCloseTo(0.5, within(0.02));
        assertThat(shares[0] + shares[1]).isCloseTo(1, within(1e-12));
    }

    @Test
    void addUpToTheWholeHoweverFewTheWalks() {
        for (int walks = 1; walks < 40; walks++) {
            double[] shares =
                    shares(5, walks, (x, y) -> y[0] = Math.hypot(x[0] + x[1], x[2]) + x[3] * x[4]);
            assertThat(Arrays.stream(shares).sum()).isCloseTo(1, within(1e-12));
            assertThat(Arrays.stream(shares).min().orElseThrow()).isNotNegative();
        }
    }

    @Test
    void areNoneWhereNothingMovesIt() {
        assertThat(shares(3, 10, (x, y) -> y[0] = 4)).containsOnly(0);
    }
}
