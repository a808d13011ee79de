package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class BattenSlideTest {
    private static final double GAP = 1;

    private static double jumps(BattenSpline batten, double[] r) {
        double sum = 0;
        for (int i = 1; i + 1 < r.length; i++) {
            if ((r[i] - r[i - 1]) * (r[i + 1] - r[i]) < 0) {
                sum += batten.curvatureJump(i) * batten.curvatureJump(i);
            }
        }
        return Math.sqrt(sum);
    }

    /**
     * One swell between level ends: curvatures 6 D / h^2 meet where h1 / h2 = sqrt(D1 / D2), worked
     * out by hand.
     */
    @Test
    void aSwellBetweenLevelEnds_slidesToTheSquareRootRatio() {
        double[] x = {0, 50, 110};
        double[] r = {9, 13, 11};
        double[] room = {0, 20, 0};
        BattenSpline settled =
                BattenSlide.settle(x, r, room, room, EndSlope.LEVEL, EndSlope.LEVEL, GAP);
        double h1 = settled.cubics().get(0).x1();
        assertThat(h1 / (110 - h1)).isCloseTo(Math.sqrt(4.0 / 2), within(1e-9));
        assertThat(settled.curvatureJump(1)).isCloseTo(0, within(1e-12));
    }

    @Test
    void aPinnedNode_staysWhereItIs() {
        double[] x = {0, 50, 110};
        double[] r = {9, 13, 11};
        double[] none = new double[3];
        BattenSpline settled =
                BattenSlide.settle(x, r, none, none, EndSlope.FREE, EndSlope.FREE, GAP);
        assertThat(settled.cubics().get(0).x1()).isEqualTo(50);
    }

    @Test
    void aShortRange_isUsedToItsEnd() {
        double[] x = {0, 50, 110};
        double[] r = {9, 13, 11};
        double[] room = {0, 2, 0};
        BattenSpline settled =
                BattenSlide.settle(x, r, room, room, EndSlope.LEVEL, EndSlope.LEVEL, GAP);
        assertThat(settled.cubics().get(0).x1()).isEqualTo(52);
    }

    @Test
    void randomLists_areSettledAsWellAsAFineSearchCan() {
        long seed = 11;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 300; i++) {
            double[] x = {
                0, random.between(15, 30), random.between(40, 70), random.between(80, 95), 110
            };
            double waist = random.between(6, 8);
            double[] r = {random.between(8.5, 10), waist, random.between(11, 15), 0, 0};
            // Two turning nodes, or three.
            r[3] = random.between(8, 10.5);
            r[4] = random.coin() ? random.between(7, 8) : random.between(10.6, 13);
            double[] room = {0, 6, 6, 6, 0};
            BattenSpline settled =
                    BattenSlide.settle(x, r, room, room, EndSlope.FREE, EndSlope.FREE, GAP);
            double left = jumps(settled, r);
            double best = Double.POSITIVE_INFINITY;
            double[] tried = x.clone();
            int steps = 12;
            boolean third = (r[3] - r[2]) * (r[4] - r[3]) < 0;
            for (int a = 0; a <= steps; a++) {
                tried[1] = x[1] - 6 + 12.0 * a / steps;
                for (int b = 0; b <= steps; b++) {
                    tried[2] = x[2] - 6 + 12.0 * b / steps;
                    for (int c = 0; c <= (third ? steps : 0); c++) {
                        tried[3] = third ? x[3] - 6 + 12.0 * c / steps : x[3];
                        if (tried[2] - tried[1] >= GAP && tried[3] - tried[2] >= GAP) {
                            best =
                                    Math.min(
                                            best,
                                            jumps(
                                                    BattenSpline.through(
                                                            tried, r, EndSlope.FREE, EndSlope.FREE),
                                                    r));
                        }
                    }
                }
            }
            String what = "seed " + seed + " list " + i;
            assertThat(left).as(what).isLessThanOrEqualTo(best * 1.0001 + 1e-9);
            assertThat(left)
                    .as(what)
                    .isLessThanOrEqualTo(
                            jumps(BattenSpline.through(x, r, EndSlope.FREE, EndSlope.FREE), r));
        }
    }

    @Test
    void crowdedNodes_keepTheirOrderAndGap() {
        long seed = 12;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 2000; i++) {
            int n = random.count(3, 9);
            double[] x = random.risingPlaces(n);
            for (int k = 1; k < n; k++) {
                x[k] = Math.max(x[k], x[k - 1] + 1.5);
            }
            double[] r = random.radii(n);
            double[] room = new double[n];
            java.util.Arrays.fill(room, 15);
            BattenSpline settled =
                    BattenSlide.settle(x, r, room, room, EndSlope.FREE, EndSlope.FREE, GAP);
            for (GraphCubic piece : settled.cubics()) {
                assertThat(piece.x1() - piece.x0())
                        .as("seed %d list %d", seed, i)
                        .isGreaterThan(GAP - 1e-9);
            }
        }
    }

    @Test
    void runsSettle_eachWithinItsCrispEnds() {
        List<BattenNode> nodes =
                List.of(
                        BattenNode.smooth(0, 9, EndSlope.LEVEL),
                        BattenNode.smooth(50, 13),
                        new BattenNode(110, 11, true, EndSlope.LEVEL, EndSlope.FREE),
                        BattenNode.smooth(125, 14));
        double[] room = {5, 20, 5, 5};
        BattenRuns runs = BattenRuns.settled(nodes, room, room, GAP);
        assertThat(runs.splines()).hasSize(2);
        double h1 = runs.splines().get(0).x(1);
        assertThat(h1 / (110 - h1)).isCloseTo(Math.sqrt(2), within(1e-9));
        assertThat(runs.splines().get(0).r(1)).isEqualTo(13);
        assertThat(runs.splines().get(1).x(0)).isEqualTo(110);
        assertThat(BattenRuns.through(nodes).splines().get(0).x(1)).isEqualTo(50);
        assertThatThrownBy(() -> BattenRuns.settled(nodes, new double[1], room, GAP))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("one figure a node");
    }
}
