package haftline.handle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Edge;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class BoreProfileTest {
    private static final double[] POINTS = {60, 90, 118, 135, 180};

    private static BoreStep step(double d, double depth, double angle) {
        return new BoreStep(d, d, "drill", depth, angle);
    }

    private static Bore bore(BoreStep... steps) {
        return new Bore(Bore.End.FERRULE, -11.5, List.of(steps));
    }

    private static List<BoreStep> randomSteps(SplittableRandom random) {
        int count = 1 + random.nextInt(4);
        List<BoreStep> steps = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            // Whole sizes now and then, so that steps share depths and diameters.
            double d = random.nextBoolean() ? 2 + random.nextInt(8) : random.nextDouble(2, 10);
            double depth = random.nextBoolean() ? 5 * random.nextInt(9) : random.nextDouble(0, 40);
            steps.add(step(d, depth, POINTS[random.nextInt(POINTS.length)]));
        }
        return steps;
    }

    /** Radius of the chain at a depth, between its corners by straight lines. */
    private static double radius(BoreProfile edge, double z) {
        for (int i = 1; i < edge.size(); i++) {
            if (z >= edge.depth(i - 1) && z <= edge.depth(i) && edge.depth(i) > edge.depth(i - 1)) {
                double t = (z - edge.depth(i - 1)) / (edge.depth(i) - edge.depth(i - 1));
                return edge.radius(i - 1) + t * (edge.radius(i) - edge.radius(i - 1));
            }
        }
        return 0;
    }

    /** The union at a depth, from the definition of each step alone. */
    private static double union(List<BoreStep> steps, double z) {
        double widest = 0;
        for (BoreStep step : steps) {
            double r = step.diameterMm() / 2;
            double beyond = z - step.depthMm();
            if (beyond > 0) {
                r =
                        step.pointAngleDeg() == 180
                                ? 0
                                : r - beyond * Math.tan(Math.toRadians(step.pointAngleDeg() / 2));
            }
            widest = Math.max(widest, r);
        }
        return widest;
    }

    @ParameterizedTest
    @ValueSource(longs = {91, 92})
    void unionOfSteps_bruteForce(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int n = 0; n < 2000; n++) {
            List<BoreStep> steps = randomSteps(random);
            BoreProfile edge = BoreProfile.of(bore(steps.toArray(new BoreStep[0])));
            String as = "seed " + seed + " bore " + n + " " + steps;
            for (int i = 0; i < 50; i++) {
                double z = random.nextDouble(0, 50);
                assertThat(radius(edge, z)).as(as).isCloseTo(union(steps, z), within(1e-9));
            }
            assertThat(edge.depth(0)).as(as).isZero();
            assertThat(edge.radius(edge.size() - 1)).as(as).isZero();
            for (int i = 1; i < edge.size(); i++) {
                assertThat(edge.depth(i)).as(as).isGreaterThanOrEqualTo(edge.depth(i - 1));
            }
        }
    }

    @Test
    void volumeAndMoment_bruteForce() {
        SplittableRandom random = new SplittableRandom(93);
        for (int n = 0; n < 100; n++) {
            List<BoreStep> steps = randomSteps(random);
            BoreProfile edge = BoreProfile.of(bore(steps.toArray(new BoreStep[0])));
            double reach = edge.depth(edge.size() - 1);
            double volume = 0;
            double moment = 0;
            int slices = 20_000;
            double h = reach / slices;
            for (int i = 0; i < slices; i++) {
                double z = (i + 0.5) * h;
                double r = union(steps, z);
                volume += Math.PI * r * r * h;
                moment += Math.PI * r * r * h * z;
            }
            String as = "seed 93 bore " + n + " " + steps;
            assertThat(edge.volumeMm3()).as(as).isCloseTo(volume, within(0.5));
            assertThat(edge.momentMm4()).as(as).isCloseTo(moment, within(20.0));
        }
    }

    /** Cylinder and cone: area x depth, and a third of area x point. */
    @Test
    void oneStep_closedForm() {
        BoreProfile edge = BoreProfile.of(bore(step(6.2, 47, 118)));
        double area = Math.PI / 4 * 6.2 * 6.2;
        double point = 3.1 / Math.tan(Math.toRadians(59));
        assertThat(edge.volumeMm3()).isCloseTo(area * (47 + point / 3), within(1e-9));
        assertThat(edge.momentMm4())
                .isCloseTo(area * 47 * 23.5 + area * point / 3 * (47 + point / 4), within(1e-7));
    }

    /** L = (d/2) / tan(angle/2): 118 degrees 0.300 d, 135 degrees 0.207 d, 90 degrees 0.5 d. */
    @ParameterizedTest
    @CsvSource({"118, 0.300", "135, 0.207", "90, 0.500", "180, 0"})
    void pointLength(double angle, double perDiameter) {
        assertThat(step(1, 5, angle).pointMm()).isCloseTo(perDiameter, within(5e-4));
    }

    @Test
    void boreFromTheButt_runsBackwards() {
        Bore bore = new Bore(Bore.End.BUTT, 105, List.of(step(6, 10, 118)));
        assertThat(bore.depthAt(100)).isEqualTo(5);
        assertThat(bore.xAt(5)).isEqualTo(100);
        assertThat(bore.radiusAt(100)).isEqualTo(3);
        assertThat(bore.radiusAt(106)).isZero();
        assertThat(bore.radiusAt(50)).isZero();
    }

    @Test
    void deepestStep_isTheOneAroundTheTip_reachCountsEveryPoint() {
        BoreStep flat = step(5, 41, 180);
        BoreStep pointed = step(8, 40, 90);
        assertThat(bore(flat, pointed).deepest()).isEqualTo(flat);
        assertThat(bore(flat, pointed).reachMm()).isCloseTo(44, within(1e-12));
        assertThat(bore(flat, pointed).widestMm()).isEqualTo(8);
    }

    @Test
    void impossibleSteps_areRefused() {
        assertThatThrownBy(() -> new Bore(Bore.End.BUTT, 0, List.of()))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("no step");
        assertThatThrownBy(() -> new BoreStep(5, 6, "drill", 10, 118))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("hole");
        assertThatThrownBy(() -> step(5, Double.NaN, 118))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("bore depth");
        assertThatThrownBy(() -> step(5, 10, 190))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("point angle");
    }

    /** By hand: a 6 mm hole 20 deep with a flat end, off the axis by 0.25 mm and 1 in 80. */
    @Test
    void edgesRunOffTheAxisWithTheDepth() {
        BoreStep flat = step(6, 20, 180);
        Wander wander = new Wander(0.25, 0.0125);
        assertThat(BoreProfile.edges(new Bore(Bore.End.FERRULE, -10, List.of(flat)), wander))
                .containsExactly(new Edge(-10, 3.25, 10, 3.5), new Edge(10, 3.5, 10, 0.5));
        assertThat(BoreProfile.edges(new Bore(Bore.End.BUTT, 90, List.of(flat)), wander))
                .containsExactly(new Edge(90, 3.25, 70, 3.5), new Edge(70, 3.5, 70, 0.5));
        assertThat(BoreProfile.edges(new Bore(Bore.End.BUTT, 90, List.of(flat)), Wander.NONE))
                .containsExactly(new Edge(90, 3, 70, 3), new Edge(70, 3, 70, 0));
    }

    /** No bare number, and no letter that could be any. */
    @Test
    void aDrillIsAskedForByItsNameAndUnit() {
        assertThat(new BoreStep(7.2, 7.2, "7.2", 20, 118).drill()).isEqualTo("7.2 mm");
        assertThat(new BoreStep(6.35, 6.35, "1/4", 20, 118).drill()).isEqualTo("1/4 in");
        assertThat(new BoreStep(6.5278, 6.5278, "F", 20, 118).drill()).isEqualTo("letter F");
        assertThat(new BoreStep(5.3086, 5.3086, "#4", 20, 118).drill()).isEqualTo("#4");
    }
}
