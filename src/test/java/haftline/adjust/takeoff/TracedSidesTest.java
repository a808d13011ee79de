package haftline.adjust.takeoff;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Point;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class TracedSidesTest {
    private static double radius(double x) {
        return 10 + 2 * Math.sin(x / 12);
    }

    @Test
    void oneSideAloneIsTwiceItsRadius() {
        List<Reading> readings =
                TracedSides.of(
                        List.of(new Point(30, -9), new Point(0, -8), new Point(15, -8.5)), 0.3);
        assertThat(readings).extracting(Reading::x).containsExactly(0.0, 15.0, 30.0);
        assertThat(readings).extracting(Reading::diameterMm).containsExactly(16.0, 17.0, 18.0);
    }

    /** The axis lies 0.4 mm too high and is tilted by a degree: the diameters do not mind. */
    @Test
    void bothSidesMakeGoodAnAxisThatIsOff() {
        List<Point> points = new ArrayList<>();
        for (double x = 0; x <= 90; x += 3) {
            points.add(new Point(x, radius(x) - 0.4 - x * Math.tan(Math.toRadians(1))));
        }
        for (double x = 91; x >= -1; x -= 4) {
            points.add(new Point(x, -radius(x) - 0.4 - x * Math.tan(Math.toRadians(1))));
        }
        List<Reading> readings = TracedSides.of(points, 0.3);
        assertThat(readings.get(0).x()).isEqualTo(-1);
        assertThat(readings.subList(1, 32))
                .allSatisfy(
                        r -> assertThat(r.diameterMm()).isCloseTo(2 * radius(r.x()), within(0.03)));
        // Where the other side ends, one has to do.
        assertThat(readings.get(readings.size() - 1).x()).isEqualTo(91);
    }

    @Test
    void aStepIsReadOnBothItsSidesWhicheverWayItWasTraced() {
        List<Point> there =
                List.of(
                        new Point(0, 8),
                        new Point(10, 8),
                        new Point(20, 8),
                        new Point(20, 10),
                        new Point(30, 10),
                        new Point(40, 10));
        List<Point> back =
                List.of(
                        new Point(40, -9.8),
                        new Point(20.1, -9.8),
                        new Point(20.1, -7.8),
                        new Point(0, -7.8));
        List<Point> points = new ArrayList<>(there);
        points.addAll(back);
        List<Reading> readings = TracedSides.of(points, 0.3);
        assertThat(readings)
                .extracting(Reading::x)
                .containsExactly(0.0, 10.0, 20.0, 20.0, 30.0, 40.0);
        assertThat(readings.get(2).diameterMm()).isCloseTo(15.8, within(1e-9));
        assertThat(readings.get(3).diameterMm()).isCloseTo(19.8, within(1e-9));
    }

    @Test
    void nothingTracedIsNothingRead() {
        assertThat(TracedSides.of(List.of(), 0.3)).isEmpty();
        assertThat(TracedSides.of(List.of(new Point(3, 4)), 0.3)).hasSize(1);
    }
}
