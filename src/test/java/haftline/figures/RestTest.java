package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.TestBrief;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RestTest {
    private static Rest rest(Handle handle) {
        return Figures.of(handle).rest();
    }

    private static Blade blade(double width, double balance) {
        return new Blade(
                P1.exactly(120),
                width,
                2,
                OptionalDouble.empty(),
                "stainless",
                OptionalDouble.of(38),
                false,
                OptionalDouble.of(balance));
    }

    private static Balance at(double x) {
        return new Balance(List.of(), 100, x, x + 12);
    }

    /** The worked handle: half-depth 12 at the heel, x = -20, and the swell, (65, 11.5). */
    @Test
    void workedHandle_liesOnHeelAndSwell() {
        Rest rest = rest(P1.handle(P1.brief()));
        assertThat(rest.touches())
                .containsExactly(
                        new Rest.Touch(Rest.Part.BLADE, -20, 12),
                        new Rest.Touch(Rest.Part.WOOD, 65, 11.5));
        assertThat(rest.rolls()).isFalse();
        assertThat(rest.bladeClearanceMm()).isZero();
    }

    @Test
    void narrowBlade_rolls() {
        // Ferrule and wood 14 mm thick, a blade that reaches 4 mm below the axis.
        Handle handle = new TestBrief().blade(blade(8, 42)).handle();
        Rest rest = Rest.of(handle, at(20));
        assertThat(rest.rolls()).isTrue();
        assertThat(rest.bladeClearanceMm()).isCloseTo(3, within(1e-9));
        assertThat(rest.touches()).extracting(Rest.Touch::part).doesNotContain(Rest.Part.BLADE);
    }

    @Test
    void headHeavyPiece_liesOnItsBlade() {
        Handle handle = new TestBrief().blade(blade(40, 60)).handle();
        Rest rest = Rest.of(handle, at(-60));
        assertThat(rest.touches())
                .extracting(Rest.Touch::part)
                .containsExactly(Rest.Part.BLADE, Rest.Part.BLADE);
        assertThat(rest.touches()).extracting(Rest.Touch::belowAxisMm).containsExactly(20.0, 20.0);
    }

    @Test
    void tilted_clearanceIsSquareToTheTable() {
        // Narrow blade; cap of 24 mm behind a 14 mm handle: it lies on the ferrule's front rim and
        // the cap's front rim, a slope of 5 mm.
        EndCap cap =
                new EndCap(
                        P1.exactly(6),
                        P1.exactly(8),
                        P1.exactly(24),
                        P1.exactly(3),
                        EndCap.Form.FLAT,
                        "brass",
                        OptionalDouble.of(5),
                        OptionalDouble.of(1));
        Handle handle = new TestBrief().blade(blade(4, 42)).cap(cap).smooth(0.9, 14).handle();
        Rest rest = Rest.of(handle, at(20));
        assertThat(rest.touches().get(0)).isEqualTo(new Rest.Touch(Rest.Part.FERRULE, -12, 7));
        assertThat(rest.touches().get(1).belowAxisMm()).isEqualTo(12);
        double slope = 5 / (handle.buttX() + 12);
        // The heel, 8 mm in front of the seating face, and the belly; the lower is the belly.
        double belly = 7 - slope * 80 - 2;
        assertThat(rest.bladeClearanceMm()).isCloseTo(belly / Math.hypot(1, slope), within(1e-9));
    }

    /** The hull of points looked up every 0.01 mm, by the monotone chain. */
    @ParameterizedTest
    @ValueSource(longs = {81, 82})
    void hull_bruteForce(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        for (int n = 0; n < 60; n++) {
            Handle handle = handles.next();
            Figures figures = Figures.of(handle);
            Rest rest = figures.rest();
            String as = "seed " + seed + " handle " + n;
            Rest.Touch left = rest.touches().get(0);
            Rest.Touch right = rest.touches().get(1);
            double x = figures.balance().x();
            assertThat(left.x()).as(as).isLessThanOrEqualTo(x);
            assertThat(right.x()).as(as).isGreaterThanOrEqualTo(x);
            List<double[]> points = points(handle);
            double m = (right.belowAxisMm() - left.belowAxisMm()) / (right.x() - left.x());
            for (double[] p : points) {
                double under = p[1] - (left.belowAxisMm() + m * (p[0] - left.x()));
                assertThat(under).as(as).isLessThanOrEqualTo(1e-8);
            }
            double[][] edge = edge(hull(points), x);
            double height =
                    edge[0][1]
                            + (edge[1][1] - edge[0][1])
                                    / (edge[1][0] - edge[0][0])
                                    * (x - edge[0][0]);
            // The chord of an arc's points lies above the arc, never by much at this step.
            assertThat(left.belowAxisMm() + m * (x - left.x()))
                    .as(as)
                    .isBetween(height - 1e-9, height + 2e-3);
        }
    }

    private static List<double[]> points(Handle handle) {
        List<double[]> points = new ArrayList<>();
        Blade blade = handle.brief().kit().blade();
        double seat = handle.fit().seatX();
        double length = blade.length().mean();
        points.add(new double[] {seat - length, 0});
        points.add(new double[] {seat - length * 2 / 3, blade.edgeMm()});
        points.add(new double[] {seat - Math.min(8, length / 4), blade.edgeMm()});
        double ferrule = handle.brief().kit().ferrule().outside().greatest() / 2;
        points.add(new double[] {-handle.lengths().ferruleMm(), ferrule});
        points.add(new double[] {0, ferrule});
        int steps = (int) (handle.buttX() / 0.01);
        for (int i = 0; i <= steps; i++) {
            double x = i == steps ? handle.buttX() : handle.buttX() * i / steps;
            double r = handle.outline().rAfter(x);
            points.add(new double[] {x, x > 0 ? Math.max(r, handle.outline().rBefore(x)) : r});
        }
        handle.brief()
                .kit()
                .cap()
                .ifPresent(
                        cap -> {
                            double r = cap.headDiameter().mean() / 2;
                            double t = cap.headThickness().mean();
                            for (int i = 0; i <= 1000; i++) {
                                double s = i / 1000.0;
                                double height =
                                        cap.form() == EndCap.Form.FLAT
                                                ? r
                                                : r * Math.sqrt(1 - s * s);
                                points.add(new double[] {handle.buttX() + t * s, height});
                            }
                        });
        return points;
    }

    private static List<double[]> hull(List<double[]> points) {
        List<double[]> sorted = new ArrayList<>(points);
        sorted.sort(Comparator.<double[]>comparingDouble(p -> p[0]).thenComparingDouble(p -> p[1]));
        List<double[]> hull = new ArrayList<>();
        for (double[] p : sorted) {
            while (hull.size() > 1) {
                double[] a = hull.get(hull.size() - 2);
                double[] b = hull.get(hull.size() - 1);
                if ((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]) < 0) {
                    break;
                }
                hull.remove(hull.size() - 1);
            }
            hull.add(p);
        }
        return hull;
    }

    private static double[][] edge(List<double[]> hull, double x) {
        for (int i = 1; i < hull.size(); i++) {
            if (hull.get(i)[0] >= x && hull.get(i)[0] > hull.get(i - 1)[0]) {
                return new double[][] {hull.get(i - 1), hull.get(i)};
            }
        }
        throw new AssertionError("the balance lies outside of the piece");
    }
}
