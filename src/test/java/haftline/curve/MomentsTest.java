package haftline.curve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;

/** Volume, centroid and second moments against closed forms and against Commons Math. */
class MomentsTest {
    private static final double PI = Math.PI;

    private static void close(double actual, double expected) {
        assertThat(actual).isCloseTo(expected, within(1e-12 * Math.abs(expected)));
    }

    private static Moments of(Segment... segments) {
        return Outline.of(segments).moments();
    }

    /** Solid cylinder: m R^2/2 about the axis, m (3R^2 + h^2)/12 across (any dynamics text). */
    @Test
    void cylinder_hasItsTextbookMoments() {
        Moments m = of(StraightLine.level(3, 63, 12.5));
        double volume = PI * 12.5 * 12.5 * 60;
        close(m.volume(), volume);
        close(m.centroidX(), 33);
        close(m.aboutAxis(), volume * 12.5 * 12.5 / 2);
        close(m.transverse(33), volume * (3 * 12.5 * 12.5 + 60 * 60) / 12);
        close(m.transverse(3), volume * (3 * 12.5 * 12.5 / 12 + 60 * 60 / 3.0));
    }

    /** Frustum R 10, r 6, h 20: standard formulas, values 4105.014401, 8.367347 and 1025.218704. */
    @Test
    void frustum_hasVolumeCentroidAndLateralArea() {
        StraightLine line = new StraightLine(0, 10, 20, 6);
        Moments m = line.moments();
        close(m.volume(), PI * 20 * (100 + 60 + 36) / 3);
        close(m.centroidX(), 20.0 * (100 + 120 + 108) / (4 * 196));
        close(line.surfaceArea(1), PI * 16 * Math.sqrt(16 + 400));
        assertThat(m.volume()).isCloseTo(4105.014401, within(5e-7));
        assertThat(m.centroidX()).isCloseTo(8.367347, within(5e-7));
        assertThat(line.surfaceArea(1)).isCloseTo(1025.218704, within(5e-7));
        // pi/10 h (R^5 - r^5)/(R - r): polar moment of a frustum, by integration.
        close(m.aboutAxis(), PI / 10 * 20 * (1e5 - 7776) / 4);
    }

    /** Sphere: 4/3 pi R^3, 2/5 m R^2 about any diameter; as an arc and as an ellipse. */
    @Test
    void sphere_isTheSameAboutEveryDiameter() {
        for (Segment s :
                List.of(
                        CircularArc.about(40, 0, 12, 28, 52, true),
                        new EllipseQuarter(40, 0, 12, 12, 28, 52, true))) {
            Moments m = s.moments();
            double volume = 4.0 / 3 * PI * 1728;
            close(m.volume(), volume);
            close(m.centroidX(), 40);
            close(m.aboutAxis(), 0.4 * volume * 144);
            close(m.transverse(40), 0.4 * volume * 144);
        }
    }

    /**
     * Spherical cap R 12, h 5: pi h^2 (3R - h)/3 = 811.578102, centroid 8.733871, area 376.991118.
     */
    @Test
    void sphericalCap_hasVolumeCentroidAndArea() {
        CircularArc cap = CircularArc.about(0, 0, 12, 7, 12, true);
        close(cap.moments().volume(), PI * 25 * 31 / 3);
        close(cap.moments().centroidX(), 3.0 * 19 * 19 / (4 * 31));
        close(cap.surfaceArea(1), 2 * PI * 12 * 5);
        assertThat(cap.moments().volume()).isCloseTo(811.578102, within(5e-7));
        assertThat(cap.moments().centroidX()).isCloseTo(8.733871, within(5e-7));
        assertThat(cap.surfaceArea(1)).isCloseTo(376.991118, within(5e-7));
        CircularArc hemisphere = CircularArc.about(0, 0, 12, 0, 12, true);
        close(hemisphere.moments().centroidX(), 3 * 12 / 8.0);
    }

    /** Prolate spheroid a 20, b 10: 4/3 pi a b^2 = 8377.580410, surface 2147.843533, half 3a/8. */
    @Test
    void prolateSpheroid_hasVolumeSurfaceAndHalfCentroid() {
        EllipseQuarter whole = new EllipseQuarter(0, 0, 20, 10, -20, 20, true);
        close(whole.moments().volume(), 4.0 / 3 * PI * 2000);
        double e = Math.sqrt(0.75);
        double surface = 2 * PI * 100 * (1 + 2 / e * Math.asin(e));
        assertThat(whole.surfaceArea(1e-9)).isCloseTo(surface, within(1e-9));
        assertThat(whole.surfaceArea(1e-9)).isCloseTo(2147.843533, within(5e-7));
        EllipseQuarter half = new EllipseQuarter(0, 0, 20, 10, 0, 20, true);
        close(half.moments().centroidX(), 7.5);
        // Ellipsoid of semi-axes a, b, b: m (a^2 + b^2)/5 across, 2 m b^2/5 about.
        close(whole.moments().transverse(0), whole.moments().volume() * 500 / 5);
        close(whole.moments().aboutAxis(), whole.moments().volume() * 200 / 5);
    }

    /** r = x^2 from 0 to b: pi b^5/5, centroid 5b/6, int x^2: pi b^7/7, polar pi b^9/18. */
    @Test
    void solidOfTheSquare_isExact() {
        GraphCubic parabola = new GraphCubic(0, 3, 0, 0, 9, 6);
        Moments m = parabola.moments();
        close(m.volume(), PI * 243 / 5);
        close(m.centroidX(), 5 * 3 / 6.0);
        close(m.secondX(), PI * 2187 / 7);
        close(m.aboutAxis(), PI * 19683 / 18);
    }

    /**
     * Torus, Pappus: 2 pi^2 R r^2; polar (R^2 + 3/4 r^2) m. Published example R 4, r 1: 78.96,
     * 157.91.
     */
    @Test
    void torus_isOuterLessInner() {
        for (double[] size : new double[][] {{50, 5}, {4, 1}}) {
            double big = size[0];
            double small = size[1];
            CircularArc outer = CircularArc.about(10, big, small, 10 - small, 10 + small, true);
            CircularArc inner = CircularArc.about(10, big, small, 10 - small, 10 + small, false);
            Moments m = outer.moments().minus(inner.moments());
            close(m.volume(), 2 * PI * PI * big * small * small);
            close(m.centroidX(), 10);
            close(m.aboutAxis(), m.volume() * (big * big + 0.75 * small * small));
            double area = outer.surfaceArea(1) + inner.surfaceArea(1);
            close(area, 4 * PI * PI * big * small);
            if (big == 4) {
                assertThat(m.volume()).isCloseTo(78.96, within(0.005));
                assertThat(area).isCloseTo(157.91, within(0.005));
            } else {
                assertThat(m.volume()).isCloseTo(24674.011003, within(5e-7));
            }
        }
    }

    /**
     * Kepler's barrel, elliptical stave D 40, d 30, h 100: pi h (2D^2 + d^2)/12 = 107337.748998.
     */
    @Test
    void barrelWithEllipticalStave_isKeplers() {
        // The ellipse of half height 20 that stands at 15 when 50 from its middle.
        double semiX = 50 / Math.sqrt(1 - 0.75 * 0.75);
        EllipseQuarter stave = new EllipseQuarter(50, 0, semiX, 20, 0, 100, true);
        close(stave.moments().volume(), PI * 100 * (2 * 1600 + 900) / 12);
        assertThat(stave.moments().volume()).isCloseTo(107337.748998, within(5e-7));
    }

    /** Parabolic stave, same barrel: pi h (8D^2 + 4Dd + 3d^2)/60 = 106290.551446. */
    @Test
    void barrelWithParabolicStave_hasItsClosedForm() {
        GraphCubic stave = new GraphCubic(0, 100, 15, 0.2, 15, -0.2);
        close(stave.moments().volume(), PI * 100 * (8 * 1600 + 4 * 1200 + 3 * 900) / 60);
        assertThat(stave.moments().volume()).isCloseTo(106290.551446, within(5e-7));
    }

    /** Half-round cove and bead r 4 on a cylinder R 15, Pappus: 2100.622483 and 2636.787629. */
    @Test
    void coveAndBead_takeAndAddWhatPappusSays() {
        Outline cylinder = Outline.of(StraightLine.level(0, 60, 15));
        Outline cove =
                cylinder.replaced(20, 28, List.of(CircularArc.about(24, 15, 4, 20, 28, false)));
        Outline bead =
                cylinder.replaced(20, 28, List.of(CircularArc.about(24, 15, 4, 20, 28, true)));
        double taken = cylinder.moments().minus(cove.moments()).volume();
        double added = bead.moments().minus(cylinder.moments()).volume();
        double half = PI * 16 / 2;
        assertThat(taken).isCloseTo(2 * PI * (15 - 16 / (3 * PI)) * half, within(1e-9));
        assertThat(added).isCloseTo(2 * PI * (15 + 16 / (3 * PI)) * half, within(1e-9));
        assertThat(taken).isCloseTo(2100.622483, within(5e-7));
        assertThat(added).isCloseTo(2636.787629, within(5e-7));
    }

    /** Cylinder D 25, L 120, bore 8 x 50, 705.6 kg/m^3: 39.7899 g, balance 61.559889 mm. */
    @Test
    void boredCylinder_hasMassAndBalancePoint() {
        Moments m = of(StraightLine.level(0, 120, 12.5)).minus(of(StraightLine.level(0, 50, 4)));
        assertThat(m.times(705.6e-6).volume()).isCloseTo(39.7899, within(5e-5));
        assertThat(m.centroidX()).isCloseTo(61.559889, within(5e-7));
    }

    @Test
    void shallowArc_losesNothingAgainstTheParabolaItNearlyIs() {
        // Sagitta s over a chord c: r = 10 + s (1 - u^2) + O(s^3/c^2), u from -1 to 1.
        double sagitta = 1e-7;
        CircularArc arc = new CircularArc(100, 10, 101, 10, -2 * sagitta);
        double volume = PI * (100 + 2 * 10 * sagitta * 2 / 3);
        assertThat(arc.moments().volume()).isCloseTo(volume, within(1e-12));
        assertThat(arc.r(100.5) - 10).isCloseTo(sagitta, within(4e-15));
    }

    @Test
    void randomOutlines_agreeWithCommonsMathQuadrature() {
        long seed = 20260101;
        RandomCurves curves = new RandomCurves(seed);
        IterativeLegendreGaussIntegrator gauss =
                new IterativeLegendreGaussIntegrator(24, 1e-13, 1e-13, 2, 40);
        for (int i = 0; i < 300; i++) {
            Outline outline = curves.outline();
            double[] sums = new double[4];
            for (Segment s : outline.segments()) {
                sums[0] += PI * integral(gauss, s, 0, 2);
                sums[1] += PI * integral(gauss, s, 1, 2);
                sums[2] += PI * integral(gauss, s, 2, 2);
                sums[3] += PI / 2 * integral(gauss, s, 0, 4);
            }
            Moments m = outline.moments();
            double reach = Math.max(Math.abs(outline.startX()), Math.abs(outline.endX()));
            String what = "seed " + seed + ", outline " + i + ": " + outline;
            assertThat(m.volume()).as(what).isCloseTo(sums[0], within(1e-10 * sums[0]));
            assertThat(m.firstX()).as(what).isCloseTo(sums[1], within(1e-10 * sums[0] * reach));
            assertThat(m.secondX()).as(what).isCloseTo(sums[2], within(1e-10 * Math.abs(sums[2])));
            assertThat(m.aboutAxis()).as(what).isCloseTo(sums[3], within(1e-10 * sums[3]));
        }
    }

    /** int x^p r^q dx with x = mid - half cos u, which takes the edge off the pole of a dome. */
    private static double integral(
            IterativeLegendreGaussIntegrator gauss, Segment s, int p, int q) {
        double mid = 0.5 * (s.startX() + s.endX());
        double half = 0.5 * (s.endX() - s.startX());
        UnivariateFunction f =
                u -> {
                    double x = mid - half * Math.cos(u);
                    return Math.pow(x, p) * Math.pow(s.r(x), q) * half * Math.sin(u);
                };
        return gauss.integrate(Integer.MAX_VALUE, f, 0, PI);
    }

    @Test
    void cuttingAndMoving_changeNothingButThePlace() {
        long seed = 7;
        RandomCurves curves = new RandomCurves(seed);
        for (int i = 0; i < 300; i++) {
            Outline outline = curves.outline();
            double length = outline.endX() - outline.startX();
            List<Segment> cut = new ArrayList<>();
            double from = outline.startX();
            for (int k = 1; k <= 7; k++) {
                double to = k == 7 ? outline.endX() : outline.startX() + length * k / 7;
                cut.addAll(outline.part(from, to).segments());
                from = to;
            }
            Moments whole = outline.moments();
            Moments parts = new Outline(cut).moments();
            Moments moved = outline.shifted(25).moments();
            String what = "seed " + seed + ", outline " + i + ": " + outline;
            double v = whole.volume();
            assertThat(parts.volume()).as(what).isCloseTo(v, within(1e-11 * v));
            assertThat(parts.aboutAxis())
                    .as(what)
                    .isCloseTo(whole.aboutAxis(), within(1e-11 * whole.aboutAxis()));
            assertThat(moved.secondX())
                    .as(what)
                    .isCloseTo(whole.shifted(25).secondX(), within(1e-9 * moved.secondX()));
            assertThat(moved.centroidX()).as(what).isCloseTo(whole.centroidX() + 25, within(1e-9));
        }
    }
}
