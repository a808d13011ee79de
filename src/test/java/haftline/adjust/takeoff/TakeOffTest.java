package haftline.adjust.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.shape.Detail;
import haftline.shape.Place;
import haftline.shape.Shape;
import haftline.store.ShapeFile;
import haftline.store.Starter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Shapes measured with a noisy calliper come back; {@code StarterRun} does it with 200 seeds. */
class TakeOffTest {
    static Stream<Path> starters() {
        return Starter.shapes().stream();
    }

    @ParameterizedTest
    @MethodSource("starters")
    void givesAStarterShapeBack(Path file) throws Exception {
        Shape shape = ShapeFile.read(file);
        StarterRun.Case one = StarterRun.of(shape, 2);
        assertThat(one.details()).as("%s", one).isEqualTo(shape.details().size());
        assertThat(one.off()).as("%s", one).isLessThanOrEqualTo(0.1);
        assertThat(one.crispOff()).as("%s", one).isLessThanOrEqualTo(0.5);
        assertThat(one.more()).as("%s", one).isLessThanOrEqualTo(1);
    }

    @Test
    void namesAStrayByItsLine() throws Exception {
        Bench bench = new Bench(starter("waisted.yaml"));
        List<Reading> readings = new ArrayList<>();
        for (Reading one : bench.readings(1, 0.05, new SplittableRandom(7))) {
            double spoilt = one.x() == 50 ? 1.0 : 0;
            readings.add(new Reading(one.x(), one.diameterMm() + spoilt, readings.size() + 2));
        }
        TakeOff taken = TakeOff.of(readings, 0.1, "knife", Ends.UNKNOWN).orElseThrow();
        assertThat(taken.strays()).hasSize(1);
        assertThat(taken.strays().get(0).x()).isEqualTo(50);
        assertThat(readings.get(taken.strays().get(0).reading().line() - 2).x()).isEqualTo(50);
        assertThat(taken.strays().get(0).mm()).isBetween(0.8, 1.2);
    }

    /** A cylinder of 20 mm with a band of 22 mm from 30 to 34 mm, read from the butt. */
    @Test
    void readsFromTheButtTheOtherSideOfAStepFirst() {
        List<Reading> readings = new ArrayList<>();
        for (double x = 60; x >= 0; x -= 2) {
            if (x == 34) {
                readings.add(new Reading(x, 20, 0));
            }
            readings.add(new Reading(x, x >= 30 && x <= 34 ? 22 : 20, 0));
            if (x == 30) {
                readings.add(new Reading(x, 20, 0));
            }
        }
        TakeOff taken = TakeOff.of(readings, 0.1, "band", Ends.UNKNOWN).orElseThrow();
        assertThat(taken.shape().nodes()).isEmpty();
        assertThat(taken.shape().details())
                .containsExactly(new Detail.Fillet(new Place.FromShoulder(32), 4, 1));
        assertThat(taken.greatest().mm()).isZero();
    }

    private static Shape starter(String file) throws Exception {
        return ShapeFile.read(starters().filter(f -> f.endsWith(file)).findFirst().orElseThrow());
    }
}
