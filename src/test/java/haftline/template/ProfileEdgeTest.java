package haftline.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class ProfileEdgeTest {
    private static final long SEED = 4_09_01;

    /** Longer than any disc used here, so that nothing depends on what lies beyond the ends. */
    private static final double BEYOND_MM = 60;

    @Test
    void offsetKeepsItsDistance_tenThousandRandomProfiles() {
        SplittableRandom random = new SplittableRandom(SEED);
        int offsets = 0;
        double worst = 0;
        for (int i = 0; i < 10_000; i++) {
            Outline outline = RandomProfiles.any(random);
            ProfileEdge edge = ProfileEdge.of(outline).extended(BEYOND_MM, BEYOND_MM);
            double d = random.nextDouble(0.05, 10);
            for (double signed : new double[] {d, -d}) {
                ProfileEdge moved = edge.offset(signed);
                String what = "seed " + SEED + ", profile " + i + ", offset " + signed;
                worst = Math.max(worst, deviation(edge, moved, signed, outline, what));
                offsets++;
            }
        }
        assertThat(offsets).isEqualTo(20_000);
    }

    @Test
    void offsetKeepsItsDistance_starterShapes() throws Exception {
        for (Workpiece work : StarterWork.everyShape()) {
            ProfileEdge edge = ProfileEdge.fitted(work.body(), 0.01).extended(BEYOND_MM, BEYOND_MM);
            for (double d : new double[] {0.1, 0.5, 1.5, 3, 10}) {
                deviation(edge, edge.grown(d), d, work.body(), work.name() + ", outward " + d);
                deviation(edge, edge.shrunk(d), -d, work.body(), work.name() + ", inward " + d);
            }
        }
    }

    @Test
    void easesToTheSlopeAskedForAndLeavesTheRest() {
        Outline step =
                Outline.of(
                        haftline.curve.StraightLine.level(0, 30, 8),
                        haftline.curve.StraightLine.level(30, 60, 12));
        ProfileEdge eased = ProfileEdge.of(step).eased(45);
        assertThat(eased.yAfter(28)).isCloseTo(10, within(1e-9));
        assertThat(eased.yAfter(25)).isEqualTo(8);
        assertThat(eased.yAfter(40)).isEqualTo(12);
    }

    @Test
    void scalesRadiallyWithinItsTolerance() {
        Outline dome = Outline.of(haftline.curve.CircularArc.about(20, 0, 20, 0, 40, true));
        ProfileEdge scaled = ProfileEdge.of(dome).scaled(2, 1e-3);
        for (double x = 0.5; x < 40; x += 0.5) {
            double slope = 2 * dome.slope(x);
            double across =
                    Math.abs(scaled.yAfter(x) - 2 * dome.r(x)) / Math.sqrt(1 + slope * slope);
            assertThat(across).as("x %s", x).isLessThan(1.1e-3);
        }
    }

    private static double deviation(
            ProfileEdge edge, ProfileEdge moved, double signed, Outline outline, String what) {
        double from = outline.startX() - 5;
        double to = outline.endX() + 5;
        assertThat(moved.startX()).as(what).isLessThan(from);
        assertThat(moved.endX()).as(what).isGreaterThan(to);
        double worst = 0;
        for (Stroke stroke : moved.part(from, to).strokes()) {
            for (double share : new double[] {0, 0.37, 0.74}) {
                Spot spot = stroke.at(share);
                double miss = Math.abs(edge.distance(spot) - Math.abs(signed));
                worst = Math.max(worst, miss);
                assertThat(miss).as("%s at %s", what, spot).isLessThan(1e-7);
            }
        }
        // Nothing was left out: the highest disc of a few, the lowest of a few, bounds the edge.
        for (int i = 0; i <= 6; i++) {
            double x = from + (to - from) * i / 6;
            for (int k = -8; k <= 8; k++) {
                double t = signed * k / 8.01;
                double rise = Math.sqrt(signed * signed - t * t);
                if (signed > 0) {
                    assertThat(Math.max(moved.yBefore(x), moved.yAfter(x)))
                            .as("%s at x %s", what, x)
                            .isGreaterThan(
                                    Math.max(edge.yBefore(x + t), edge.yAfter(x + t))
                                            + rise
                                            - 1e-6);
                } else {
                    assertThat(Math.min(moved.yBefore(x), moved.yAfter(x)))
                            .as("%s at x %s", what, x)
                            .isLessThan(
                                    Math.min(edge.yBefore(x + t), edge.yAfter(x + t))
                                            - rise
                                            + 1e-6);
                }
            }
        }
        return worst;
    }
}
