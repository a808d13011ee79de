package haftline.adjust.fair;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.BattenSpline;
import haftline.curve.CircularArc;
import haftline.curve.EndSlope;
import haftline.curve.GraphCubic;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.handle.Handle;
import haftline.handle.RandomHandles;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

class CurvatureVariationTest {
    @Test
    void isNothingForALineAndACircle() {
        assertThat(CurvatureVariation.of(List.of(new StraightLine(0, 8, 40, 12))).total()).isZero();
        Segment arc = new CircularArc(0, 8, 40, 8, -0.2);
        assertThat(CurvatureVariation.of(List.of(arc)).total()).isZero();
    }

    @Test
    void countsTheJumpFromALineToACircle() {
        // A level line and then an arc of radius 50 that begins level: the jump is 1/50.
        double end = 20;
        double drop = 50 - Math.sqrt(50 * 50 - end * end);
        double turn = Math.asin(end / 50);
        Segment line = new StraightLine(-20, 10, 0, 10);
        Segment arc = new CircularArc(0, 10, end, 10 - drop, -Math.tan(turn / 4));
        CurvatureVariation found = CurvatureVariation.of(List.of(line, arc));
        assertThat(found.within()).isZero();
        assertThat(found.jumps()).isCloseTo(1 / 2500.0, within(1e-10));
    }

    @Test
    void isTheIntegralByAdaptiveQuadrature_randomBattens() {
        SplittableRandom random = new SplittableRandom(8);
        for (int rep = 0; rep < 50; rep++) {
            double[] x = {0, 20, 45, 70, 100};
            double[] r = new double[5];
            for (int i = 0; i < 5; i++) {
                r[i] = random.nextDouble(6, 12);
            }
            var spline = BattenSpline.through(x, r, EndSlope.FREE, EndSlope.FREE);
            for (GraphCubic cubic : spline.cubics()) {
                double expected =
                        new IterativeLegendreGaussIntegrator(6, 1e-12, 1e-18)
                                .integrate(
                                        1_000_000,
                                        at -> rate(cubic, at) * rate(cubic, at) * ds(cubic, at),
                                        cubic.x0() + 1e-3,
                                        cubic.x1() - 1e-3);
                double found = CurvatureVariation.of(List.of(cubic)).within();
                assertThat(found).isCloseTo(expected, within(1e-6 + 0.01 * expected));
            }
        }
    }

    /** By differences of the curve's own curvature. */
    private static double rate(GraphCubic cubic, double x) {
        double h = 5e-4;
        return (cubic.curvature(x + h) - cubic.curvature(x - h)) / (2 * h) / ds(cubic, x);
    }

    private static double ds(GraphCubic cubic, double x) {
        return Math.sqrt(1 + cubic.slope(x) * cubic.slope(x));
    }

    @Test
    void combHasTwoTeethAtAJointAndNormalsOfLengthOne() {
        RandomHandles handles = RandomHandles.of(4);
        for (int i = 0; i < 20; i++) {
            Handle handle = handles.next();
            List<CurvatureComb.Tooth> teeth = CurvatureComb.of(handle, 1).teeth();
            for (int k = 0; k < teeth.size(); k++) {
                var tooth = teeth.get(k);
                assertThat(Math.hypot(tooth.normalX(), tooth.normalR()))
                        .isCloseTo(1, within(1e-12));
                assertThat(tooth.normalR()).isPositive();
                assertThat(tooth.x()).isBetween(0.0, handle.buttX());
                if (k > 0) {
                    assertThat(tooth.x() - teeth.get(k - 1).x()).isBetween(0.0, 1 + 1e-9);
                }
            }
        }
    }

    @Test
    void aToothStandsOutOfARound() {
        var tooth = new CurvatureComb.Tooth(10, 8, -0.02, 0, 1);
        assertThat(tooth.endR(100)).isEqualTo(10);
        assertThat(tooth.endX(100)).isEqualTo(10);
    }
}
