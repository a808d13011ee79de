package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.Rules;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.handle.Wander;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Walls against their definition, r(x) - bore(x)/2 - e(x), looked up at every step along the bore.
 */
class WallsTest {
    private static final double ROUNDING = 1e-10;

    /** Stretch of a zone and the bore under it. */
    private record Stretch(Bore bore, double from, double to) {
        static Stretch of(Handle handle, Zone zone) {
            return switch (zone) {
                case TENON -> new Stretch(handle.tangBore(), handle.tenonEndX(), 0);
                case BODY -> new Stretch(handle.tangBore(), 0, handle.buttX());
                case CAP -> new Stretch(handle.capBore().orElseThrow(), 0, handle.buttX());
            };
        }

        /** The lesser radius of the outline at x; at an end of the zone, that inside. */
        double outline(Handle handle, double x) {
            Outline outline = handle.outline();
            if (x <= from) {
                return outline.rAfter(from);
            }
            return x >= to ? outline.rBefore(to) : outline.r(x);
        }

        /** The wall by its definition, infinite where there is no bore. */
        double wall(Handle handle, double x, Wander wander) {
            double depth = bore.depthAt(x);
            double radius = bore.radiusAt(x);
            return radius > 0
                    ? outline(handle, x) - radius - wander.at(depth)
                    : Double.POSITIVE_INFINITY;
        }
    }

    private static double bruteForce(Handle handle, Stretch stretch, Wander wander, double step) {
        double least = Double.POSITIVE_INFINITY;
        int steps = (int) Math.ceil((stretch.to() - stretch.from()) / step);
        for (int i = 0; i <= steps; i++) {
            double x = Math.min(stretch.to(), stretch.from() + i * step);
            least = Math.min(least, stretch.wall(handle, x, wander));
        }
        return least;
    }

    private static int compare(Handle handle, double step, String what) {
        int compared = 0;
        for (Wall wall : Walls.of(handle)) {
            Stretch stretch = Stretch.of(handle, wall.zone());
            String as = what + " " + wall.zone();
            // Never thicker than the truth.
            assertThat(wall.worstMm())
                    .as(as)
                    .isLessThanOrEqualTo(
                            bruteForce(handle, stretch, handle.wander(), step) + ROUNDING);
            assertThat(wall.nominalMm())
                    .as(as)
                    .isLessThanOrEqualTo(
                            bruteForce(handle, stretch, new Wander(0, 0), step) + ROUNDING);
            // Nor thinner: the wall really stands at the place that is named, which is closer
            // than the slope of the outline over one step would allow.
            assertThat(wall.worstMm())
                    .as(as)
                    .isCloseTo(atOrBeside(handle, stretch, wall.atX()), within(1e-7));
            compared++;
        }
        return compared;
    }

    /** Rounding may put the place just past the end of a flat-bottomed bore or of a point. */
    private static double atOrBeside(Handle handle, Stretch stretch, double x) {
        double least = Double.POSITIVE_INFINITY;
        for (double dx : new double[] {-1e-9, 0, 1e-9}) {
            double at = Math.max(stretch.from(), Math.min(stretch.to(), x + dx));
            double depth = Math.max(0, stretch.bore().depthAt(at));
            double radius = 0;
            for (BoreStep step : stretch.bore().steps()) {
                radius = Math.max(radius, step.radiusAt(depth));
            }
            if (radius > 0 || stretch.bore().reachMm() - depth < 1e-8) {
                least =
                        Math.min(
                                least,
                                stretch.outline(handle, at) - radius - handle.wander().at(depth));
            }
        }
        return least;
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2})
    void neverThickerThanTheTruth_atFinestSteps(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        for (int i = 0; i < 6; i++) {
            compare(handles.next(), 1e-4, "seed " + seed + " handle " + i);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13})
    void neverThickerThanTheTruth_onManyHandles(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        RandomHandles reckless = RandomHandles.reckless(seed);
        int compared = 0;
        for (int i = 0; i < 150; i++) {
            compared += compare(handles.next(), 0.02, "seed " + seed + " handle " + i);
            compared += compare(reckless.next(), 0.02, "seed " + seed + " reckless " + i);
        }
        assertThat(compared).isGreaterThan(600);
    }

    @Test
    void shortestWayIsFoundByBruteForceToo() {
        RandomHandles handles = RandomHandles.of(21);
        int compared = 0;
        for (int i = 0; i < 20; i++) {
            Handle handle = handles.next();
            for (Wall wall : Walls.of(handle)) {
                if (wall.worstMm() <= 0) {
                    assertThat(wall.shortestWorstMm()).isZero();
                    continue;
                }
                double brute = shortest(handle, Stretch.of(handle, wall.zone()));
                String as = "seed 21 handle " + i + " " + wall.zone();
                assertThat(wall.shortestWorstMm())
                        .as(as)
                        .isBetween(brute - SPACING, Math.min(brute, wall.worstMm()) + ROUNDING);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(40);
    }

    /** Points on either curve lie no farther apart than this, mm. */
    private static final double SPACING = 0.15;

    private static double shortest(Handle handle, Stretch stretch) {
        List<double[]> outside = new ArrayList<>();
        List<Segment> segments = handle.outline().part(stretch.from(), stretch.to()).segments();
        for (int s = 0; s < segments.size(); s++) {
            Segment segment = segments.get(s);
            if (s > 0) {
                line(
                        outside,
                        segment.startX(),
                        segments.get(s - 1).end().r(),
                        segment.startX(),
                        segment.start().r());
            }
            int n = 2 + (int) (segment.arcLength(0.1) / SPACING * 3);
            for (int i = 0; i < n; i++) {
                double a = segment.startX() + (segment.endX() - segment.startX()) * i / n;
                double b = segment.startX() + (segment.endX() - segment.startX()) * (i + 1) / n;
                double end = i == n - 1 ? segment.endX() : b;
                outside.add(new double[] {a, segment.r(a)});
                outside.add(new double[] {end, segment.r(end)});
            }
        }
        // The bore's section, wandered, step by step; a step inside a wider one only adds points
        // that are farther from the outline.
        List<double[]> inside = new ArrayList<>();
        Bore bore = stretch.bore();
        Wander wander = handle.wander();
        for (BoreStep step : bore.steps()) {
            double tip = step.depthMm() + step.pointMm();
            double r = step.diameterMm() / 2;
            line(
                    inside,
                    bore.xAt(0),
                    r + wander.at(0),
                    bore.xAt(step.depthMm()),
                    r + wander.at(step.depthMm()));
            line(
                    inside,
                    bore.xAt(step.depthMm()),
                    r + wander.at(step.depthMm()),
                    bore.xAt(tip),
                    wander.at(tip));
        }
        double least = Double.POSITIVE_INFINITY;
        for (double[] p : outside) {
            for (double[] q : inside) {
                least = Math.min(least, Math.hypot(p[0] - q[0], p[1] - q[1]));
            }
        }
        return least;
    }

    private static void line(List<double[]> into, double xa, double ra, double xb, double rb) {
        int n = 1 + (int) (Math.hypot(xb - xa, rb - ra) / SPACING * 2);
        for (int i = 0; i <= n; i++) {
            double t = (double) i / n;
            into.add(new double[] {xa + (xb - xa) * t, ra + (rb - ra) * t});
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {3, 0.5, 0, -1})
    void buttFaceCountsAsSurface(double left) {
        Handle usual = new TestBrief().handle();
        double point = usual.tangBore().deepest().pointMm();
        double depth = usual.lengths().turnedWoodMm() - point - left;
        Handle deep = new TestBrief().choose(Choices.builder().tangDepthMm(depth)).handle();
        Wall body = Walls.of(deep).get(1);

        assertThat(body.worstMm()).isGreaterThan(4);
        assertThat(body.shortestWorstMm()).isCloseTo(Math.max(0, left), within(1e-9));
    }

    @Test
    void limitsFollowTheStock() {
        Handle cherry = new TestBrief().handle();
        Handle acrylic = new TestBrief().stock(SampleStock.acrylic()).handle();
        assertThat(Walls.of(cherry)).extracting(Wall::limitMm).containsExactly(2.5, 3.0);
        assertThat(Walls.of(acrylic)).extracting(Wall::limitMm).containsExactly(3.0, 3.5);
        assertThat(Walls.of(P1.handle(P1.brief())))
                .extracting(Wall::limitMm)
                .containsExactly(2.5, 3.0, 2.5);
    }

    /** At least the larger of 8 mm and the larger bore: common practice, no source. */
    @ParameterizedTest
    @CsvSource({"6, 8", "9, 9"})
    void webIsTheLargerOfEightAndTheWiderBore(double capDrill, double limit) {
        var brief = P1.brief();
        var wide = brief.withChoices(brief.choices().toBuilder().capDrillMm(capDrill).build());
        assertThat(Walls.web(P1.handle(wide)).orElseThrow().limitMm()).isEqualTo(limit);
    }

    /** Under the stop nothing is made, so no limit is lower, that of the web neither. */
    @Test
    void noLimitIsLowerThanTheStop() {
        Handle handle =
                new TestBrief()
                        .cap(P1.kit(5).cap().orElseThrow())
                        .walls(new Rules.Walls(2.5, 3, 12, 3.5, 2.5, 10))
                        .handle();
        assertThat(Zone.values())
                .extracting(zone -> Walls.limitMm(handle, zone))
                .containsExactly(10.0, 12.0, 10.0);
        assertThat(Walls.of(handle)).extracting(Wall::limitMm).containsExactly(10.0, 12.0, 10.0);
        assertThat(Walls.web(handle).orElseThrow().limitMm()).isEqualTo(10);
    }
}
