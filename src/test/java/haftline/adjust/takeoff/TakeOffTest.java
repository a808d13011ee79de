package haftline.adjust.takeoff;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.shape.Detail;
import haftline.shape.Shape;
import haftline.store.ShapeFile;
import haftline.store.Starter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
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
        StarterRun.Case one = StarterRun.of(ShapeFile.read(file), 2);
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

    @Test
    void knowsTheDetailsOfTheCovedNeckReadFromTheButt() throws Exception {
        List<Reading> readings =
                new Bench(starter("coved-neck.yaml")).readings(1, 0.05, new SplittableRandom(2));
        Collections.reverse(readings);
        TakeOff taken = TakeOff.of(readings, 0.1, "knife", Ends.UNKNOWN).orElseThrow();
        assertThat(taken.shape().details())
                .extracting(Detail::kind)
                .containsExactly("cove", "fillet", "bead", "fillet");
    }

    private static Shape starter(String file) throws Exception {
        return ShapeFile.read(starters().filter(f -> f.endsWith(file)).findFirst().orElseThrow());
    }
}
