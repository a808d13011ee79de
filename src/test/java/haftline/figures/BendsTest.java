package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.TestBrief;
import haftline.shape.Butt;
import haftline.shape.Detail;
import haftline.shape.Place;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BendsTest {
    private static final Place MIDDLE = new Place.Share(0.5);

    @Test
    void straightTapers() {
        Bends bends = Bends.of(P1.handle(P1.brief()));
        // Half of 18 to 14 mm over 10 mm.
        assertThat(bends.steepestDeg()).isCloseTo(Math.toDegrees(Math.atan(0.2)), within(1e-9));
        assertThat(bends.steepestX()).isEqualTo(95);
        assertThat(bends.hollowMm()).isZero();
        assertThat(bends.hollowX()).isEqualTo(20);
        assertThat(bends.roundMm()).isZero();
        assertThat(bends.roundX()).isEqualTo(65);
    }

    @Test
    void plainCylinder_hasNone() {
        Bends bends = Bends.of(new TestBrief().handle());
        assertThat(bends)
                .isEqualTo(
                        new Bends(0, 0, Double.POSITIVE_INFINITY, 0, Double.POSITIVE_INFINITY, 0));
    }

    /**
     * Radius of an arc of chord c and height h: c2 / (8 h) + h / 2; 12 x 3 is 7.50, 20 x 2 26.0.
     */
    @ParameterizedTest
    @CsvSource({"12, 3, 7.5", "20, 2, 26.0"})
    void cove_isAsTightAsItsArc_withCrispEdges(double width, double depth, double radius) {
        Handle handle =
                new TestBrief()
                        .ferrule(12, 20, 12)
                        .choose(haftline.handle.Choices.builder().buttMm(20))
                        .detail(new Detail.Cove(MIDDLE, width, depth))
                        .handle();
        Bends bends = Bends.of(handle);
        assertThat(bends.hollowMm()).isCloseTo(radius, within(1e-9));
        assertThat(bends.roundMm()).isZero();
        assertThat(bends.roundX()).isCloseTo((handle.buttX() - width) / 2, within(1e-9));
        // The arc leaves its chord at the angle whose sine is half the chord over the radius.
        assertThat(bends.steepestDeg())
                .isCloseTo(Math.toDegrees(Math.asin(width / 2 / radius)), within(1e-6));
    }

    @ParameterizedTest
    @CsvSource({"12, 3, 7.5", "20, 2, 26.0"})
    void bead_isAsTightAsItsArc_withCrispCorners(double width, double height, double radius) {
        Bends bends =
                Bends.of(new TestBrief().detail(new Detail.Bead(MIDDLE, width, height)).handle());
        assertThat(bends.roundMm()).isCloseTo(radius, within(1e-9));
        assertThat(bends.hollowMm()).isZero();
    }

    @Test
    void halfRoundBead_standsUpright() {
        Bends bends = Bends.of(new TestBrief().detail(new Detail.Bead(MIDDLE, 4, 2)).handle());
        assertThat(bends.steepestDeg()).isCloseTo(90, within(1e-4));
        assertThat(bends.roundMm()).isCloseTo(2, within(1e-9));
    }

    @Test
    void vee_isCrispAtItsBottom() {
        Bends bends = Bends.of(new TestBrief().detail(new Detail.Vee(MIDDLE, 2, 1)).handle());
        assertThat(bends.steepestDeg()).isCloseTo(45, within(1e-9));
        assertThat(bends.hollowMm()).isZero();
        assertThat(bends.roundMm()).isZero();
        assertThat(bends.hollowX() - bends.roundX()).isCloseTo(1, within(1e-9));
    }

    @Test
    void fillet_steps() {
        Bends bends = Bends.of(new TestBrief().detail(new Detail.Fillet(MIDDLE, 3, 0.5)).handle());
        assertThat(bends.steepestDeg()).isEqualTo(90);
        assertThat(bends.hollowMm()).isZero();
        assertThat(bends.roundMm()).isZero();
        assertThat(bends.steepestX()).isEqualTo(bends.hollowX()).isEqualTo(bends.roundX());
    }

    @Test
    void buttFormAndShoulder_doNotCount() {
        Bends bends =
                Bends.of(
                        new TestBrief()
                                .shadowLineMm(0.5)
                                .choose(haftline.handle.Choices.builder().buttMm(15))
                                .butt(new Butt.Domed(5))
                                .handle());
        assertThat(bends.steepestDeg()).isZero();
        assertThat(bends.roundMm()).isInfinite();
    }

    /** Smooth bodies against slope and curvature by central differences at small steps. */
    @Test
    void smoothBodies_bruteForce() {
        SplittableRandom random = new SplittableRandom(71);
        for (int n = 0; n < 60; n++) {
            TestBrief brief = new TestBrief();
            for (int i = 0; i < 4; i++) {
                brief.smooth(
                        0.15 + 0.2 * i + random.nextDouble(-0.05, 0.05), random.nextDouble(12, 26));
            }
            Handle handle = brief.handle();
            Bends bends = Bends.of(handle);
            Outline outline = handle.outline();
            double steepest = 0;
            double hollow = Double.POSITIVE_INFINITY;
            double round = Double.POSITIVE_INFINITY;
            double h = 1e-3;
            int steps = 20_000;
            for (int i = 1; i < steps; i++) {
                double x = handle.buttX() * i / steps;
                // Within one segment: at a node the curvature may jump.
                if (outline.indexAt(x - h) != outline.indexAt(Math.min(x + h, handle.buttX()))) {
                    continue;
                }
                double before = outline.r(x - h);
                double after = outline.r(Math.min(x + h, handle.buttX()));
                double slope = (after - before) / (2 * h);
                double second = (after - 2 * outline.r(x) + before) / (h * h);
                double curvature = second / Math.pow(1 + slope * slope, 1.5);
                steepest = Math.max(steepest, Math.abs(slope));
                if (curvature > 1e-6) {
                    hollow = Math.min(hollow, 1 / curvature);
                }
                if (curvature < -1e-6) {
                    round = Math.min(round, -1 / curvature);
                }
            }
            String as = "seed 71 handle " + n;
            double tangent = Math.tan(Math.toRadians(bends.steepestDeg()));
            assertThat(tangent).as(as).isBetween(steepest - 1e-6, steepest + 1e-3);
            assertThat(bends.hollowMm()).as(as).isCloseTo(hollow, within(0.005 * hollow));
            assertThat(bends.roundMm()).as(as).isCloseTo(round, within(0.005 * round));
            assertThat(Math.abs(outline.slope(bends.steepestX())))
                    .as(as)
                    .isCloseTo(tangent, within(1e-9));
        }
    }
}
