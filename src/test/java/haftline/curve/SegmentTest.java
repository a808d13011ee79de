package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Segments against brute force at fine steps and against what is known on paper. */
class SegmentTest {
    private static final int STEPS = 4000;

    @Test
    void leastAndGreatestAbove_matchBruteForceOnRandomSegments() {
        long seed = 41;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 3000; i++) {
            Segment s = curves.segment(curves.between(-10, 50));
            double c = curves.between(-5, 10);
            double m = curves.coin() ? 0 : curves.between(-0.5, 0.5);
            double length = s.endX() - s.startX();
            double from = s.startX() + length * (curves.coin() ? 0 : curves.between(0, 0.4));
            double to = s.endX() - length * (curves.coin() ? 0 : curves.between(0, 0.4));
            Gap least = s.leastAbove(c, m, from, to);
            Gap greatest = s.greatestAbove(c, m, from, to);
            String what = "seed " + seed + ", " + s + " over " + c + " + " + m + " x";
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int k = 0; k <= STEPS; k++) {
                double x = k == STEPS ? to : from + (to - from) * k / STEPS;
                double g = s.r(x) - (c + m * x);
                low = Math.min(low, g);
                high = Math.max(high, g);
            }
            // Never thicker than the truth, never thinner than the steps allow.
            assertThat(least.height()).as(what).isLessThanOrEqualTo(low + 1e-12);
            assertThat(greatest.height()).as(what).isGreaterThanOrEqualTo(high - 1e-12);
            double coarse = (to - from) / STEPS * Math.min(50, s.steepest(from, to) + Math.abs(m));
            assertThat(least.height()).as(what).isGreaterThan(low - coarse - 1e-12);
            assertThat(greatest.height()).as(what).isLessThan(high + coarse + 1e-12);
            double there = s.r(least.x()) - (c + m * least.x());
            assertThat(there).as(what).isCloseTo(least.height(), within(1e-12));
            assertThat(least.x()).as(what).isBetween(from, to);
        }
    }

    @Test
    void slopeAndCurvature_areTheDerivativesOfTheRadius() {
        long seed = 42;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 3000; i++) {
            Segment s = curves.segment(curves.between(-10, 50));
            double length = s.endX() - s.startX();
            double x = s.startX() + length * curves.between(0.1, 0.9);
            double e = 1e-4 * length;
            double slope = (s.r(x + e) - s.r(x - e)) / (2 * e);
            double second = (s.slope(x + e) - s.slope(x - e)) / (2 * e);
            double w = 1 + s.slope(x) * s.slope(x);
            String what = "seed " + seed + ", x " + x + ", " + s;
            assertThat(s.slope(x)).as(what).isCloseTo(slope, within(1e-5 * (1 + w * w)));
            assertThat(s.curvature(x) * w * Math.sqrt(w))
                    .as(what)
                    .isCloseTo(second, within(1e-5 * (1 + Math.abs(second)) * w));
        }
    }

    @Test
    void steepestAndTightest_matchBruteForce() {
        long seed = 43;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 2000; i++) {
            Segment s = curves.segment(curves.between(-10, 50));
            double from = s.startX();
            double to = s.endX();
            double steep = 0;
            double hollow = 0;
            double round = 0;
            for (int k = 0; k <= STEPS; k++) {
                double x = k == STEPS ? to : from + (to - from) * k / STEPS;
                steep = Math.max(steep, Math.abs(s.slope(x)));
                hollow = Math.max(hollow, s.curvature(x));
                round = Math.max(round, -s.curvature(x));
            }
            String what = "seed " + seed + ", " + s;
            assertThat(s.steepest(from, to)).as(what).isGreaterThanOrEqualTo(steep * (1 - 1e-9));
            double tightHollow = 1 / s.tightestConcave(from, to).radius();
            double tightRound = 1 / s.tightestConvex(from, to).radius();
            assertThat(tightHollow).as(what).isGreaterThanOrEqualTo(hollow * (1 - 1e-9));
            assertThat(tightRound).as(what).isGreaterThanOrEqualTo(round * (1 - 1e-9));
            assertThat(tightHollow).as(what).isLessThanOrEqualTo(hollow * 1.001 + 1e-6);
            assertThat(tightRound).as(what).isLessThanOrEqualTo(round * 1.001 + 1e-6);
            BendRadius bend = s.tightestConvex(from, to);
            if (bend != BendRadius.NONE) {
                assertThat(-1 / s.curvature(bend.x()))
                        .isCloseTo(bend.radius(), within(1e-9 * bend.radius()));
            }
        }
    }

    @Test
    void partsAndEnds_lieOnTheSameCurve() {
        long seed = 44;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 2000; i++) {
            Segment s = curves.segment(curves.between(-10, 50));
            double length = s.endX() - s.startX();
            double from = s.startX() + length * curves.between(0, 0.5);
            double to = s.endX() - length * curves.between(0, 0.4);
            Segment part = s.part(from, to);
            String what = "seed " + seed + ", " + s + " from " + from + " to " + to;
            assertThat(part.startX()).isEqualTo(from);
            assertThat(part.endX()).isEqualTo(to);
            for (int k = 0; k <= 10; k++) {
                double x = k == 10 ? to : from + (to - from) * k / 10;
                double steep = Math.min(1e6, Math.abs(s.slope(x)));
                assertThat(part.r(x))
                        .as(what)
                        .isCloseTo(s.r(x), within(1e-13 * (10 + 100 * steep)));
                assertThat(s.shifted(8).r(x + 8))
                        .as(what)
                        .isCloseTo(s.r(x), within(1e-12 * (10 + 100 * steep)));
            }
            assertThat(s.part(s.startX(), s.endX())).isEqualTo(s);
            assertThat(Hull.low(s)).as(what).isLessThanOrEqualTo(s.least(from, to).r() + 1e-12);
            assertThat(Hull.high(s))
                    .as(what)
                    .isGreaterThanOrEqualTo(s.greatest(from, to).r() - 1e-12);
        }
    }

    @Test
    void lengthAndArea_matchFinePolygons() {
        long seed = 45;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 400; i++) {
            Segment s = curves.segment(curves.between(-10, 50));
            double mid = 0.5 * (s.startX() + s.endX());
            double half = 0.5 * (s.endX() - s.startX());
            double length = 0;
            double area = 0;
            Point before = s.start();
            for (int k = 1; k <= STEPS; k++) {
                double x = k == STEPS ? s.endX() : mid - half * Math.cos(Math.PI * k / STEPS);
                Point next = new Point(x, s.r(x));
                length += before.distanceTo(next);
                area += Math.PI * (before.r() + next.r()) * before.distanceTo(next);
                before = next;
            }
            String what = "seed " + seed + ", " + s;
            assertThat(s.arcLength(1e-9)).as(what).isCloseTo(length, within(2e-6 * length));
            assertThat(s.surfaceArea(1e-9)).as(what).isCloseTo(area, within(2e-6 * area));
        }
    }

    @Test
    void arcOfACircle_keepsCentreRadiusAndAngles() {
        CircularArc round = CircularArc.about(40, 5, 10, 35, 50, true);
        assertThat(round.centre().x()).isCloseTo(40, within(1e-13));
        assertThat(round.centre().r()).isCloseTo(5, within(1e-13));
        assertThat(round.radius()).isCloseTo(10, within(1e-13));
        assertThat(round.fromDegrees()).isCloseTo(120, within(1e-12));
        assertThat(round.toDegrees()).isCloseTo(0, within(1e-12));
        assertThat(round.isConvex()).isTrue();
        assertThat(round.curvature()).isCloseTo(-0.1, within(1e-15));
        assertThat(round.r(50)).isEqualTo(5);
        assertThat(round.slope(50)).isLessThan(-1e15);
        assertThat(round.r(40)).isCloseTo(15, within(1e-14));

        CircularArc hollow = CircularArc.about(40, 20, 10, 35, 48, false);
        assertThat(hollow.fromDegrees()).isCloseTo(-120, within(1e-12));
        assertThat(hollow.toDegrees()).isCloseTo(Math.toDegrees(-Math.asin(0.6)), within(1e-12));
        assertThat(hollow.r(40)).isCloseTo(10, within(1e-14));
        assertThat(hollow.curvature(40)).isCloseTo(0.1, within(1e-15));
        assertThat(hollow.start().r()).isCloseTo(20 - Math.sqrt(75), within(1e-14));
    }

    /** Radius of an arc by chord and depth, c^2/(8h) + h/2: 12 x 3 is 7.50, 20 x 2 is 26.0. */
    @Test
    void arcByChordAndDepth_hasTheRadiusTurnersCompute() {
        assertThat(new CircularArc(0, 10, 12, 10, 2.0 * 3 / 12).radius()).isEqualTo(7.5);
        assertThat(new CircularArc(0, 10, 20, 10, -2.0 * 2 / 20).radius())
                .isCloseTo(26, within(1e-13));
    }

    @Test
    void domeMeetsTheAxis_atItsPole() {
        EllipseQuarter dome = new EllipseQuarter(101.3, 0, 6.1, 11.7, 101.3, 101.3 + 6.1, true);
        assertThat(dome.end().r()).isZero();
        assertThat(dome.start().r()).isEqualTo(11.7);
        assertThat(dome.slope(dome.endX())).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(dome.slope(101.3)).isZero();
        // Radius of curvature b^2/a at the pole, a^2/b at the crown, a along the axis.
        assertThat(dome.tightestConvex(101.3, 107.4).radius())
                .isCloseTo(6.1 * 6.1 / 11.7, within(1e-12));
        CircularArc ball = CircularArc.about(101.3, 0, 6.1, 101.3, 101.3 + 6.1, true);
        assertThat(ball.end().r()).isZero();
        assertThat(ball.r(101.3 + 6.1 - 1e-9)).isCloseTo(Math.sqrt(2 * 6.1 * 1e-9), within(1e-9));
    }

    @Test
    void cubic_isTheBezierCurveWithControlsAtThirds() {
        GraphCubic c = new GraphCubic(10, 40, 8, 0.3, 12, -0.2);
        assertThat(c.firstControlR()).isCloseTo(11, within(1e-14));
        assertThat(c.secondControlR()).isCloseTo(14, within(1e-14));
        double t = 0.37;
        double s = 1 - t;
        double bezier = s * s * s * 8 + 3 * s * s * t * 11 + 3 * s * t * t * 14 + t * t * t * 12;
        assertThat(c.r(10 + 30 * t)).isCloseTo(bezier, within(1e-14));
        assertThat(c.curvature(10)).isCloseTo(c.startSecond() / Math.pow(1.09, 1.5), within(1e-15));
        assertThat(c.second(40)).isCloseTo(c.endSecond(), within(1e-15));
    }

    @Test
    void impossibleSegments_areRefusedInWords() {
        List<Runnable> refused =
                List.of(
                        () -> new StraightLine(5, 1, 5, 1),
                        () -> new StraightLine(0, -1, 5, 1),
                        () -> new StraightLine(0, 1, Double.NaN, 1),
                        () -> new GraphCubic(0, 10, 5, -40, 5, 40),
                        () -> new GraphCubic(0, 10, 5, Double.POSITIVE_INFINITY, 5, 0),
                        () -> new CircularArc(0, 5, 10, 5, 0),
                        () -> new CircularArc(0, 5, 10, 15, 0.9),
                        () -> new CircularArc(0, 3, 10, 3, 1),
                        () -> CircularArc.about(0, 0, 5, -6, 0, true),
                        () -> new EllipseQuarter(0, 0, 10, 5, -11, 0, true),
                        () -> new EllipseQuarter(0, 4, 10, 5, -5, 5, false),
                        () -> new EllipseQuarter(0, 4, -10, 5, -5, 5, true),
                        () -> new Point(0, Double.NaN),
                        () -> new StraightLine(0, 1, 10, 1).leastAbove(0, 0, 11, 12),
                        () -> new StraightLine(0, 1, 10, 1).part(-1, 5));
        for (Runnable r : refused) {
            assertThatThrownBy(r::run)
                    .isInstanceOf(IllegalArgumentException.class)
                    .message()
                    .isNotBlank();
        }
    }
}
