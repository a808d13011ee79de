package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;

class RealRootsTest {
    private static double[] withRoots(double... roots) {
        double[] a = {1};
        for (double root : roots) {
            double[] next = new double[a.length + 1];
            for (int i = 0; i < a.length; i++) {
                next[i + 1] += a[i];
                next[i] -= root * a[i];
            }
            a = next;
        }
        return a;
    }

    @Test
    void quintics_giveTheRootsTheyWereBuiltFrom() {
        long seed = 61;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 5000; i++) {
            double[] roots = new double[5];
            for (int k = 0; k < 5; k++) {
                roots[k] = random.between(-0.5, 1.5);
            }
            Arrays.sort(roots);
            double least = 1;
            for (int k = 1; k < 5; k++) {
                least = Math.min(least, roots[k] - roots[k - 1]);
            }
            if (least < 1e-3) {
                continue;
            }
            double[] inside = Arrays.stream(roots).filter(t -> t >= 0 && t <= 1).toArray();
            double[] found = new double[5];
            int count = RealRoots.within(withRoots(roots), 5, 0, 1, found);
            assertThat(count)
                    .as("seed %d %s", seed, Arrays.toString(roots))
                    .isEqualTo(inside.length);
            for (int k = 0; k < count; k++) {
                assertThat(found[k]).isCloseTo(inside[k], within(1e-7));
            }
        }
    }

    @Test
    void touchedRoots_countOnce() {
        double[] found = new double[4];
        assertThat(RealRoots.within(withRoots(0.5, 0.5), 2, 0, 1, found)).isEqualTo(1);
        assertThat(found[0]).isEqualTo(0.5);
        assertThat(RealRoots.within(withRoots(0.25, 0.25, 0.75, 0.75), 4, 0, 1, found))
                .isEqualTo(2);
        assertThat(RealRoots.within(new double[] {1, 0, 0}, 2, 0, 1, found)).isZero();
        assertThat(RealRoots.within(new double[] {0, 0, 0}, 2, 0, 1, found)).isZero();
        assertThat(RealRoots.within(new double[] {1, 0, 1}, 2, -1, 1, found)).isZero();
        assertThat(RealRoots.within(withRoots(0, 1), 2, 0, 1, found)).isEqualTo(2);
    }
}
