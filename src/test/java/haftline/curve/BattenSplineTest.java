package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.apache.commons.math3.analysis.interpolation.SplineInterpolator;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

class BattenSplineTest {
    private static BattenSpline free(double[] x, double[] r) {
        return BattenSpline.through(x, r, EndSlope.FREE, EndSlope.FREE);
    }

    /** Commons Math 3.6.1, SplineInterpolator: the natural cubic spline. */
    @Test
    void whereNoBoundIsActive_itIsTheNaturalSpline() {
        long seed = 1;
        RandomCurves random = new RandomCurves(seed);
        int compared = 0;
        for (int i = 0; i < 1500; i++) {
            // Steadily rising or falling with slopes that differ little: no bound can be active.
            int n = random.count(3, 9);
            double[] x = new double[n];
            double[] r = new double[n];
            double sign = random.coin() ? 1 : -1;
            r[0] = sign > 0 ? 3 : 90;
            x[0] = random.between(-5, 5);
            for (int k = 1; k < n; k++) {
                double h = random.between(8, 14);
                x[k] = x[k - 1] + h;
                r[k] = r[k - 1] + sign * h * random.between(0.3, 0.6);
            }
            PolynomialSplineFunction natural = new SplineInterpolator().interpolate(x, r);
            BattenSpline batten = free(x, r);
            boolean bound = false;
            for (int k = 0; k < n; k++) {
                bound |= batten.bound(k) != BattenSpline.Bound.NONE;
                double slope =
                        natural.polynomialSplineDerivative()
                                .value(Math.min(x[k], Math.nextDown(x[n - 1])));
                assertThat(batten.allowed(k).holds(slope))
                        .as("seed " + seed + " list " + i)
                        .isEqualTo(true);
                assertThat(batten.slope(k)).isCloseTo(slope, within(1e-12));
            }
            assertThat(bound).isFalse();
            Outline outline = batten.outline();
            for (int k = 0; k <= 50; k++) {
                double at = k == 50 ? x[n - 1] : x[0] + (x[n - 1] - x[0]) * k / 50;
                assertThat(outline.r(at))
                        .isCloseTo(natural.value(at), within(1e-12 * r[n - 1] + 1e-12));
            }
            compared++;
        }
        assertThat(compared).isGreaterThanOrEqualTo(1000);
    }

    /**
     * Karush-Kuhn-Tucker: with the gradient g of the energy, g = 0 where the slope is inside its
     * bounds, g >= 0 at the least and g <= 0 at the greatest. The energy is taken from the
     * statement of the problem, not from the solver's matrix.
     */
    @Test
    void slopes_satisfyTheOptimalityConditions() {
        long seed = 2;
        RandomCurves random = new RandomCurves(seed);
        int active = 0;
        for (int i = 0; i < 20_000; i++) {
            int n = random.count(2, i % 20 == 0 ? 60 : 12);
            double[] x = random.risingPlaces(n);
            double[] r = random.radii(n);
            if (i % 2 == 0) {
                java.util.Arrays.sort(r);
            }
            EndSlope first = random.coin() ? EndSlope.FREE : EndSlope.LEVEL;
            EndSlope last = random.coin() ? EndSlope.FREE : EndSlope.LEVEL;
            BattenSpline batten = BattenSpline.through(x, r, first, last);
            double[] d = batten.slopes();
            for (int k = 0; k < n; k++) {
                double gradient = 0;
                double size = 0;
                double before = Double.NaN;
                double after = Double.NaN;
                if (k > 0) {
                    double h = x[k] - x[k - 1];
                    before = (r[k] - r[k - 1]) / h;
                    gradient += 4 / h * ((d[k - 1] - before) + 2 * (d[k] - before));
                    size +=
                            4
                                    / h
                                    * (Math.abs(d[k - 1])
                                            + 2 * Math.abs(d[k])
                                            + 3 * Math.abs(before));
                }
                if (k + 1 < n) {
                    double h = x[k + 1] - x[k];
                    after = (r[k + 1] - r[k]) / h;
                    gradient += 4 / h * (2 * (d[k] - after) + (d[k + 1] - after));
                    size += 4 / h * (2 * Math.abs(d[k]) + Math.abs(d[k + 1]) + 3 * Math.abs(after));
                }
                double s0 = k > 0 ? before : after;
                double s1 = k + 1 < n ? after : before;
                double low = s0 < 0 && s1 < 0 ? 3 * Math.max(s0, s1) : 0;
                double high = s0 > 0 && s1 > 0 ? 3 * Math.min(s0, s1) : 0;
                String what = "seed " + seed + " list " + i + " node " + k;
                if (!(d[k] >= low && d[k] <= high)) {
                    fail(what + ": slope " + d[k] + " outside " + low + " to " + high);
                }
                boolean fixed = k == 0 && !first.free() || k == n - 1 && !last.free();
                double slack = 1e-10 * size;
                if (fixed || low == high) {
                    assertThat(d[k]).as(what).isZero();
                } else if (d[k] == low) {
                    active++;
                    assertThat(gradient).as(what).isGreaterThan(-slack);
                } else if (d[k] == high) {
                    active++;
                    assertThat(gradient).as(what).isLessThan(slack);
                } else if (Math.abs(gradient) > slack) {
                    fail(what + ": gradient " + gradient);
                }
            }
        }
        assertThat(active).as("lists where a bound is active").isGreaterThan(5000);
    }

    @Test
    void outline_neverLeavesTheRangeOfNeighbouringNodes() {
        long seed = 3;
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 100_000; i++) {
            int n = random.count(2, 10);
            double[] x = random.risingPlaces(n);
            double[] r = random.radii(n);
            int k = 0;
            for (GraphCubic piece : free(x, r).cubics()) {
                double low = Math.min(r[k], r[k + 1]);
                double high = Math.max(r[k], r[k + 1]);
                k++;
                double least = piece.least(piece.x0(), piece.x1()).r();
                double greatest = piece.greatest(piece.x0(), piece.x1()).r();
                double x5 = piece.x0() + (piece.x1() - piece.x0()) * (i % 97 + 1) / 98.0;
                double between = piece.r(x5);
                if (least < low - 1e-13
                        || greatest > high + 1e-13
                        || between < low - 1e-13
                        || between > high + 1e-13) {
                    fail("seed " + seed + " list " + i + ": " + piece);
                }
            }
        }
    }

    @Test
    void energy_isTheIntegralOfTheSquaredSecondDerivative() {
        BattenSpline batten =
                free(new double[] {0, 20, 55, 95, 110}, new double[] {9, 8, 13, 9.5, 10.5});
        double sum = 0;
        for (GraphCubic c : batten.cubics()) {
            double a = c.startSecond();
            double b = c.endSecond();
            sum += (c.x1() - c.x0()) / 3 * (a * a + a * b + b * b);
        }
        assertThat(batten.bendingEnergy()).isCloseTo(sum, within(1e-15));
        assertThat(batten.curvatureJump(2))
                .isCloseTo(batten.outline().joints().get(1).curvatureJump(), within(1e-15));
    }

    @Test
    void aSlopeOutsideTheBox_isRefusedWithTheRange() {
        double[] x = {0, 10, 30};
        double[] r = {5, 8, 9};
        SlopeOutsideRangeException e =
                catchThrowableOfType(
                        SlopeOutsideRangeException.class,
                        () -> BattenSpline.through(x, r, EndSlope.of(0.95), EndSlope.FREE));
        assertThat(e.node()).isZero();
        assertThat(e.slope()).isEqualTo(0.95);
        assertThat(e.allowed().least()).isZero();
        assertThat(e.allowed().greatest()).isCloseTo(0.9, within(1e-15));
        assertThat(e).hasMessageContaining("0.95");
        e =
                catchThrowableOfType(
                        SlopeOutsideRangeException.class,
                        () -> BattenSpline.through(x, r, EndSlope.FREE, EndSlope.of(-0.01)));
        assertThat(e.node()).isEqualTo(2);
        assertThat(BattenSpline.through(x, r, EndSlope.of(0.9), EndSlope.LEVEL).slopes())
                .startsWith(Math.nextDown(0.9))
                .endsWith(0.0);
        assertThat(BattenSpline.through(x, r, EndSlope.ofDegrees(20), EndSlope.FREE).bound(0))
                .isEqualTo(BattenSpline.Bound.GIVEN);
    }

    @Test
    void twoNodesAndNodesInALine_giveStraightLines() {
        List<Segment> two = free(new double[] {0, 70}, new double[] {9, 12.3}).segments();
        assertThat(two).containsExactly(new StraightLine(0, 9, 70, 12.3));
        List<Segment> line =
                free(new double[] {0, 13, 29, 70}, new double[] {9, 10.3, 11.9, 16}).segments();
        assertThat(line).hasSize(3).allMatch(StraightLine.class::isInstance);
        List<Segment> level =
                free(new double[] {0, 10, 40, 50}, new double[] {9, 11, 11, 8}).segments();
        assertThat(level.get(1)).isEqualTo(StraightLine.level(10, 40, 11));
        assertThat(level.get(0)).isInstanceOf(GraphCubic.class);
    }

    @Test
    void bounds_areNamed() {
        BattenSpline batten =
                free(new double[] {0, 10, 20, 30, 31, 60}, new double[] {10, 12, 9, 8.9, 5, 4.99});
        assertThat(batten.bound(1)).isEqualTo(BattenSpline.Bound.TURN);
        assertThat(batten.slope(1)).isZero();
        assertThat(batten.bound(3)).isEqualTo(BattenSpline.Bound.STEEPEST);
        assertThat(batten.slope(3)).isCloseTo(-0.03, within(1e-12));
    }

    @Test
    void crispAndFixedNodes_splitTheRun() {
        BattenRuns runs =
                BattenRuns.through(
                        List.of(
                                BattenNode.smooth(0, 9),
                                BattenNode.smooth(20, 8),
                                BattenNode.crisp(40, 12),
                                BattenNode.smooth(60, 13, EndSlope.of(0.02)),
                                BattenNode.smooth(90, 14)));
        assertThat(runs.splines()).hasSize(3);
        List<Joint> joints = runs.outline().joints();
        assertThat(joints.get(0).bendDegrees()).isZero();
        assertThat(Math.abs(joints.get(1).bendDegrees())).isGreaterThan(1);
        assertThat(joints.get(2).slopeBefore()).isEqualTo(0.02);
        assertThat(joints.get(2).bendDegrees()).isZero();
        SlopeOutsideRangeException e =
                catchThrowableOfType(
                        SlopeOutsideRangeException.class,
                        () ->
                                BattenRuns.through(
                                        List.of(
                                                BattenNode.smooth(0, 9),
                                                BattenNode.crisp(40, 12),
                                                BattenNode.smooth(60, 13, EndSlope.of(-0.1)),
                                                BattenNode.smooth(90, 14))));
        assertThat(e.node()).isEqualTo(2);
    }

    @Test
    void badNodes_areRefused() {
        double[] two = {0, 1};
        assertThatThrownBy(() -> free(new double[] {0}, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> free(two, new double[] {1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> free(new double[] {1, 1}, two))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("rise");
        assertThatThrownBy(() -> free(two, new double[] {Double.NaN, 1}))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> free(two, new double[] {-1, 1}))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
