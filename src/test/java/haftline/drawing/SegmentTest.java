package haftline.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SegmentTest {
    private static final long SEED = 7;
    private static final int ROUNDS = 300;
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvSource({
        // Tangent of a quarter of the angle, from a table of tangents.
        "90, 0.41421356237309503",
        "180, 1",
        "-180, -1",
        "60, 0.2679491924311227",
        "240, 1.7320508075688772"
    })
    void bulge_isTheTangentOfAQuarterOfTheAngle(double sweepDeg, double bulge) {
        Arc arc = Arc.of(new Vertex(3, -2), 5, 20, sweepDeg);
        assertThat(arc.bulge()).isCloseTo(bulge, within(1e-15));
        assertThat(arc.sweepDeg()).isCloseTo(sweepDeg, within(1e-12));
    }

    @Test
    void arc_fromCircleAndAnglesGivesThemBack() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < ROUNDS; i++) {
            Vertex centre = vertex(random);
            double radius = random.nextDouble(0.5, 200);
            double start = random.nextDouble(0, 360);
            double sweep = random.nextDouble(-350, 350);
            Arc arc = Arc.of(centre, radius, start, sweep);
            assertThat(arc.radiusMm()).as("seed %d", SEED).isCloseTo(radius, within(ROUNDING));
            assertThat(arc.centre().distanceMm(centre)).isLessThan(ROUNDING);
            assertThat(arc.startDeg()).isCloseTo(start, within(1e-8));
            Arc about = Arc.about(arc.start(), arc.end(), centre, sweep > 0);
            assertThat(about.start()).isSameAs(arc.start());
            assertThat(about.bulge()).isCloseTo(arc.bulge(), within(1e-9 * Math.abs(arc.bulge())));
        }
    }

    @Test
    void arc_endsAtRightAnglesAreExact() {
        Arc arc = Arc.of(new Vertex(10, 0), 3, 90, 90);
        assertThat(arc.start()).isEqualTo(new Vertex(10, 3));
        assertThat(arc.end()).isEqualTo(new Vertex(7, 0));
    }

    @Test
    void arc_allButStraightKeepsItsRise() {
        Arc arc = new Arc(new Vertex(0, 0), new Vertex(100, 0), 1e-9);
        assertThat(arc.riseMm()).isCloseTo(5e-8, within(1e-20));
        assertThat(arc.chords(1e-3)).containsExactly(arc.end());
        assertThat(arc.bounds().minYMm()).isCloseTo(-5e-8, within(1e-6));
    }

    @Test
    void sweptArea_ofClosedForms() {
        Vertex right = new Vertex(1, 0);
        Vertex left = new Vertex(-1, 0);
        assertThat(new Arc(right, left, 1).sweptAreaMm2()).isCloseTo(Math.PI / 2, within(1e-15));
        EllipseArc dome =
                new EllipseArc(new Vertex(4, 0), new Vertex(0, 7), new Vertex(0, 0), 4, 7, true);
        assertThat(dome.sweptAreaMm2()).isCloseTo(Math.PI * 4 * 7 / 4, within(1e-12));
    }

    @Test
    void sweptArea_agreesWithQuadrature() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < ROUNDS; i++) {
            Arc arc = arc(random);
            double start = Math.toRadians(arc.startDeg());
            double sweep = Math.toRadians(arc.sweepDeg());
            double radius = arc.radiusMm();
            assertArea(
                    arc,
                    t -> arc.centreXMm() + radius * Math.cos(start + t * sweep),
                    t -> arc.centreYMm() + radius * Math.sin(start + t * sweep));
            EllipseArc ellipse = ellipse(random);
            double from = Math.toRadians(ellipse.startDeg());
            double over = Math.toRadians(ellipse.sweepDeg());
            assertArea(
                    ellipse,
                    t -> ellipse.centre().xMm() + ellipse.semiXMm() * Math.cos(from + t * over),
                    t -> ellipse.centre().yMm() + ellipse.semiYMm() * Math.sin(from + t * over));
            Cubic cubic = cubic(random);
            assertArea(cubic, t -> cubic.at(t).xMm(), t -> cubic.at(t).yMm());
        }
    }

    /**
     * Half the integral of x dy - y dx, the derivatives by central differences of a smooth curve.
     */
    private static void assertArea(
            Segment segment, DoubleFunction<Double> x, DoubleFunction<Double> y) {
        double h = 1e-5;
        double area =
                new IterativeLegendreGaussIntegrator(12, 1e-11, 1e-11)
                        .integrate(
                                100_000,
                                t ->
                                        (x.apply(t) * (y.apply(t + h) - y.apply(t - h))
                                                        - y.apply(t)
                                                                * (x.apply(t + h) - x.apply(t - h)))
                                                / (4 * h),
                                0,
                                1);
        double scale = 1 + Math.abs(area);
        assertThat(segment.sweptAreaMm2()).as("%s", segment).isCloseTo(area, within(1e-6 * scale));
        assertThat(segment.reversed().sweptAreaMm2()).isCloseTo(-area, within(1e-6 * scale));
        assertThat(segment.mirrored().sweptAreaMm2()).isCloseTo(-area, within(1e-6 * scale));
    }

    @Test
    void bounds_holdEveryPlaceAndAreTouched() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < ROUNDS; i++) {
            for (Segment segment : List.of(arc(random), ellipse(random), cubic(random))) {
                double[] seen = {
                    segment.start().xMm(), segment.start().yMm(),
                    segment.start().xMm(), segment.start().yMm()
                };
                for (Vertex vertex : segment.chords(1e-5)) {
                    seen[0] = Math.min(seen[0], vertex.xMm());
                    seen[1] = Math.min(seen[1], vertex.yMm());
                    seen[2] = Math.max(seen[2], vertex.xMm());
                    seen[3] = Math.max(seen[3], vertex.yMm());
                }
                Bounds bounds = segment.bounds();
                double[] told = {
                    bounds.minXMm(), bounds.minYMm(), bounds.maxXMm(), bounds.maxYMm()
                };
                for (int side = 0; side < 4; side++) {
                    double outward = (side < 2 ? -1 : 1) * (told[side] - seen[side]);
                    assertThat(outward).as("seed %d, %s", SEED, segment).isBetween(-1e-9, 1.1e-5);
                }
            }
        }
    }

    @Test
    void chords_stayWithinTheirTolerance() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int i = 0; i < ROUNDS; i++) {
            Arc arc = arc(random);
            double tolerance = 0.01;
            Vertex from = arc.start();
            for (Vertex to : arc.chords(tolerance)) {
                double middle =
                        Math.hypot(
                                (from.xMm() + to.xMm()) / 2 - arc.centreXMm(),
                                (from.yMm() + to.yMm()) / 2 - arc.centreYMm());
                assertThat(arc.radiusMm() - middle)
                        .as("seed %d", SEED)
                        .isBetween(-ROUNDING, tolerance + ROUNDING);
                from = to;
            }
            assertThat(from).isEqualTo(arc.end());
        }
    }

    @Test
    void segments_refuseToGoNowhere() {
        Vertex here = new Vertex(1, 2);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Line(here, new Vertex(1, 2)))
                .withMessageContaining("two different places");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Arc(here, new Vertex(2, 2), 0))
                .withMessage("bulge 0: expected an arc, use a line");
        assertThatIllegalArgumentException().isThrownBy(() -> new Vertex(Double.NaN, 0));
        assertThatIllegalArgumentException().isThrownBy(() -> new Vertex(0, 1e7));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new EllipseArc(here, new Vertex(5, 5), here, 2, 2, true))
                .withMessageContaining("on the ellipse");
    }

    private static Vertex vertex(SplittableRandom random) {
        return new Vertex(random.nextDouble(-100, 100), random.nextDouble(-100, 100));
    }

    private static Arc arc(SplittableRandom random) {
        return new Arc(vertex(random), vertex(random), random.nextDouble(-3, 3));
    }

    private static Cubic cubic(SplittableRandom random) {
        return new Cubic(vertex(random), vertex(random), vertex(random), vertex(random));
    }

    private static EllipseArc ellipse(SplittableRandom random) {
        Vertex centre = vertex(random);
        double a = random.nextDouble(1, 50);
        double b = random.nextDouble(1, 50);
        double from = random.nextDouble(0, 360);
        double to = from + random.nextDouble(5, 355);
        return new EllipseArc(
                new Vertex(centre.xMm() + a * Angle.cos(from), centre.yMm() + b * Angle.sin(from)),
                new Vertex(centre.xMm() + a * Angle.cos(to), centre.yMm() + b * Angle.sin(to)),
                centre,
                a,
                b,
                random.nextBoolean());
    }
}
