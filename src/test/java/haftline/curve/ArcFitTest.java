package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class ArcFitTest {
    private static final double TOLERANCE = 0.01;
    private static final int POINTS = 1500;

    /** Bodies by the trade's names; radii and shares of the length drawn at random about these. */
    enum Body {
        WAIST(new double[] {0, 0.45, 1}, new double[] {11, 8.5, 12}),
        SWELL(new double[] {0, 0.13, 0.55, 0.88, 1}, new double[] {10, 8.6, 13.5, 10.2, 11}),
        PEAR(new double[] {0, 0.32, 0.76, 1}, new double[] {8, 8.6, 13, 10}),
        BARREL(new double[] {0, 0.5, 1}, new double[] {9, 13, 9}),
        TAPER(new double[] {0, 0.36, 0.73, 1}, new double[] {9, 10.2, 11.8, 14});

        private final double[] share;
        private final double[] radius;

        Body(double[] share, double[] radius) {
            this.share = share;
            this.radius = radius;
        }

        /** Lengths 75 to 130 mm, diameters 10 to 30 mm; swells and waists slid as a maker would. */
        BattenSpline spline(RandomCurves random) {
            int n = share.length;
            double length = random.between(75, 130);
            double thick = random.between(0.7, 1.05);
            double[] x = new double[n];
            double[] r = new double[n];
            double[] room = new double[n];
            for (int i = 0; i < n; i++) {
                boolean inner = i > 0 && i < n - 1;
                x[i] = length * (share[i] + (inner ? random.between(-0.04, 0.04) : 0));
                r[i] = thick * radius[i] * random.between(0.96, 1.04);
                room[i] = inner ? 0.06 * length : 0;
            }
            return BattenSlide.settle(x, r, room, room, EndSlope.FREE, EndSlope.FREE, 2);
        }
    }

    @ParameterizedTest
    @EnumSource(Body.class)
    void typicalHandles_takeFewArcs(Body body) {
        long seed = 71 + body.ordinal();
        RandomCurves random = new RandomCurves(seed);
        for (int i = 0; i < 12; i++) {
            BattenSpline spline = body.spline(random);
            Outline outline = spline.outline();
            ArcFit fit = ArcFit.of(outline, TOLERANCE);
            String what = "seed " + seed + " shape " + i + ": " + outline;
            check(what, outline, fit, TOLERANCE);
            int stretches = 1;
            for (int k = 1; k < spline.nodes() - 1; k++) {
                stretches += spline.slope(k) == 0 ? 1 : 0;
            }
            int free = FreeArcs.count(outline, TOLERANCE, POINTS);
            assertThat((double) fit.arcs() + fit.lines())
                    .as(what)
                    .isLessThanOrEqualTo(1.5 * free + stretches);
        }
    }

    @Test
    void randomSplines_takeFewArcsAndHoldTheTolerance() {
        long seed = 80;
        RandomCurves random = new RandomCurves(seed);
        int arcs = 0;
        int least = 0;
        for (int i = 0; i < 60; i++) {
            int n = random.count(2, 7);
            double length = random.between(75, 130);
            double[] x = new double[n];
            double[] r = new double[n];
            for (int k = 0; k < n; k++) {
                boolean inner = k > 0 && k < n - 1;
                x[k] = length / (n - 1) * (k + (inner ? random.between(-0.2, 0.2) : 0));
                r[k] = random.between(5, 15);
            }
            Outline outline = BattenSpline.through(x, r, EndSlope.FREE, EndSlope.FREE).outline();
            ArcFit fit = ArcFit.of(outline, TOLERANCE);
            String what = "seed " + seed + " spline " + i + ": " + outline;
            check(what, outline, fit, TOLERANCE);
            int free = FreeArcs.count(outline, TOLERANCE, POINTS);
            assertThat((double) fit.arcs() + fit.lines())
                    .as(what)
                    .isLessThanOrEqualTo(1.5 * free + n - 1);
            arcs += fit.arcs() + fit.lines();
            least += free;
        }
        assertThat((double) arcs).as("all arcs").isLessThan(1.5 * least);
    }

    @Test
    void randomOutlines_holdEveryTolerance() {
        long seed = 81;
        RandomCurves random = new RandomCurves(seed);
        double[] tolerances = {0.01, 0.05, 0.002, 0.2};
        for (int i = 0; i < 120; i++) {
            Outline outline = random.outline();
            double tolerance = tolerances[i % tolerances.length];
            ArcFit fit = ArcFit.of(outline, tolerance);
            check("seed " + seed + " outline " + i + ": " + outline, outline, fit, tolerance);
        }
    }

    /**
     * Ends, tangents, level places, tolerance both ways; nothing here trusts the fit's own word.
     */
    private static void check(String what, Outline outline, ArcFit fit, double tolerance) {
        Outline fitted = fit.outline();
        assertThat(fitted.startX()).as(what).isEqualTo(outline.startX());
        assertThat(fitted.endX()).as(what).isEqualTo(outline.endX());
        assertThat(fitted.rAfter(fitted.startX())).isEqualTo(outline.rAfter(outline.startX()));
        assertThat(fitted.rBefore(fitted.endX())).isEqualTo(outline.rBefore(outline.endX()));
        assertThat(fit.deviationMm()).as(what).isLessThanOrEqualTo(tolerance);
        double crisp = 0;
        for (Joint joint : fitted.joints()) {
            if (outline.segmentAt(joint.x()).startX() == joint.x()) {
                assertThat(joint.rBefore()).as(what).isEqualTo(outline.rBefore(joint.x()));
                assertThat(joint.rAfter()).as(what).isEqualTo(outline.rAfter(joint.x()));
                crisp = turn(outline, joint.x());
            } else {
                assertThat(joint.step()).as(what).isZero();
                crisp = 0;
            }
            if (Math.abs(crisp) < 1e-9 && joint.step() == 0) {
                double bend = Math.toRadians(Math.abs(joint.bendDegrees()));
                assertThat(bend).as(what + " at " + joint.x()).isLessThan(1e-9);
            }
        }
        for (Segment segment : outline.segments()) {
            levelPlace(what, outline, fitted, segment.greatest(segment.startX(), segment.endX()));
            levelPlace(what, outline, fitted, segment.least(segment.startX(), segment.endX()));
        }
        double apart = Math.max(farthest(outline, fitted, 400), farthest(fitted, outline, 400));
        assertThat(apart).as(what).isLessThanOrEqualTo(tolerance * (1 + 1e-9));
        assertThat(apart).as(what).isLessThanOrEqualTo(fit.deviationMm() + 1e-9);
        assertThat(apart).as(what).isGreaterThan(0.9 * fit.deviationMm() - 1e-9);
    }

    private static double turn(Outline outline, double x) {
        for (Joint joint : outline.joints()) {
            if (joint.x() == x) {
                return joint.step() != 0 ? 1 : Math.toRadians(joint.bendDegrees());
            }
        }
        return 0;
    }

    /**
     * Where the outline is smooth and level, a swell or a waist, the fit is there and level too.
     */
    private static void levelPlace(String what, Outline outline, Outline fitted, Extreme extreme) {
        double x = extreme.x();
        boolean inside = x > outline.startX() && x < outline.endX();
        if (inside && Math.abs(outline.slope(x)) < 1e-9 && Math.abs(turn(outline, x)) < 1e-9) {
            double sharp = 1 + 1e-4 * Math.abs(outline.curvature(x));
            assertThat(fitted.r(x)).as(what).isCloseTo(extreme.r(), within(1e-12 * sharp));
            Segment there = fitted.segmentAt(x);
            double level = 1e-7 * Math.abs(there.curvature(x)) + 1e-9;
            assertThat(there.slope(x)).as(what).isCloseTo(0, within(level));
        }
    }

    /** Greatest distance of points of one outline, closely set along it, from the other. */
    private static double farthest(Outline from, Outline to, int steps) {
        double greatest = 0;
        for (Segment segment : from.segments()) {
            double mid = 0.5 * (segment.startX() + segment.endX());
            double half = 0.5 * (segment.endX() - segment.startX());
            int count = Math.max(40, (int) (steps * half / 30));
            for (int k = 1; k < count; k++) {
                double x = mid - half * Math.cos(Math.PI * k / count);
                double distance = NearestDistance.ofPoint(to, x, segment.r(x), false).distance();
                greatest = Math.max(greatest, distance);
            }
        }
        return greatest;
    }

    /** The yardstick itself: three arcs with crisp bends between them are three free arcs. */
    @Test
    void freeArcs_areCountedRight() {
        Outline three =
                Outline.of(
                        new CircularArc(0, 12, 30, 14, 0.2),
                        new CircularArc(30, 14, 60, 11, -0.15),
                        new CircularArc(60, 11, 90, 13, 0.1));
        assertThat(FreeArcs.count(three, 1e-6, POINTS)).isEqualTo(3);
        // A cubic parabola y = c x^3 is followed within e by arcs of length (32 e / c)^(1/3).
        Outline cubic = Outline.of(new GraphCubic(0, 100, 10, 0, 11, 0.03));
        double each = Math.cbrt(32 * 1e-4 / 1e-6);
        assertThat(FreeArcs.count(cubic, 1e-4, POINTS)).isEqualTo((int) Math.ceil(100 / each));
    }

    @Test
    void linesAndArcs_stayAsTheyAre() {
        Outline outline =
                Outline.of(
                        StraightLine.level(-11, 0, 8),
                        new StraightLine(0, 10, 30, 12),
                        CircularArc.about(34, 12, 4, 30, 38, false),
                        StraightLine.level(38, 60, 12));
        ArcFit fit = ArcFit.of(outline, TOLERANCE);
        assertThat(fit.outline()).isEqualTo(outline);
        assertThat(fit.deviationMm()).isZero();
        assertThat(fit.arcs()).isEqualTo(1);
        assertThat(fit.lines()).isEqualTo(3);
    }

    @Test
    void aCurveThatRunsSmoothlyIntoALine_keepsItsTangent() {
        Outline outline =
                Outline.of(
                        new StraightLine(0, 8, 20, 10),
                        new GraphCubic(20, 60, 10, 0.1, 12, -0.05),
                        new StraightLine(60, 12, 80, 11));
        ArcFit fit = ArcFit.of(outline, TOLERANCE);
        check("tied cubic", outline, fit, TOLERANCE);
        assertThat(fit.outline().segments()).contains(outline.segments().get(0));
    }

    @Test
    void aDome_closesSquareToTheAxis() {
        Outline outline =
                Outline.of(
                        StraightLine.level(60, 100, 12),
                        new EllipseQuarter(100, 0, 7, 12, 100, 107, true));
        ArcFit fit = ArcFit.of(outline, TOLERANCE);
        check("dome", outline, fit, TOLERANCE);
        List<Segment> arcs = fit.outline().segments();
        assertThat(Math.abs(arcs.get(arcs.size() - 1).slope(107))).isGreaterThan(1e9);
        assertThat(fit.arcs()).isLessThanOrEqualTo(8);
    }

    @Test
    void pathologicalCurves_areFittedToo() {
        double tiny = 0.02;
        List<GraphCubic> curves =
                List.of(
                        // Nearly straight: one line or arc will do.
                        new GraphCubic(0, 100, 10, 0.02, 12, 0.0200001),
                        // Level at both ends, a hair apart: an S of two arcs.
                        new GraphCubic(0, 100, 10, 0, 10.0001, 0),
                        // Level throughout but for rounding.
                        new GraphCubic(0, 100, 10, 0, 10 + 1e-13, 0),
                        // Steep.
                        new GraphCubic(0, 2, 3, 0, 15, 0),
                        new GraphCubic(0, 0.3, 3, 0.2, 15, 0.2),
                        // Tiny.
                        new GraphCubic(50, 50 + tiny, 10, 0.5, 10 + tiny / 4, -0.5),
                        // One inflection inside.
                        new GraphCubic(0, 60, 8, -0.1, 13, -0.1),
                        // A level inflection.
                        new GraphCubic(0, 60, 8, 0.3, 14, 0.3),
                        // Two extremes inside.
                        new GraphCubic(0, 60, 10, 0.8, 11, 0.8));
        for (GraphCubic curve : curves) {
            Outline outline = Outline.of(curve);
            ArcFit fit = ArcFit.of(outline, TOLERANCE);
            check(curve.toString(), outline, fit, TOLERANCE);
        }
        assertThat(ArcFit.of(Outline.of(curves.get(0)), TOLERANCE).outline().segments()).hasSize(1);
        assertThat(ArcFit.of(Outline.of(curves.get(1)), TOLERANCE).arcs()).isEqualTo(2);
    }

    @Test
    void aSymmetricBarrel_hasOneArcOverItsSwell() {
        Outline barrel =
                BattenSpline.through(
                                new double[] {0, 50, 100},
                                new double[] {9, 13, 9},
                                EndSlope.FREE,
                                EndSlope.FREE)
                        .outline();
        ArcFit fit = ArcFit.of(barrel, TOLERANCE);
        Segment middle = fit.outline().segmentAt(50);
        assertThat(middle.startX()).isLessThan(45);
        assertThat(middle.endX()).isGreaterThan(55);
        assertThat(fit.arcs()).isLessThanOrEqualTo(5);
    }

    @Test
    void anImpossibleTolerance_isRefused() {
        Outline outline = Outline.of(new GraphCubic(0, 60, 8, -0.1, 13, -0.1));
        for (double tolerance : new double[] {0, -1, 1e-9, Double.NaN}) {
            assertThatThrownBy(() -> ArcFit.of(outline, tolerance))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining("toleranceMm");
        }
    }
}
