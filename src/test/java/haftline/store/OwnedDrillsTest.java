package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.handle.BoreStep;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.stock.Drill;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a maker says of a drill is what is reckoned with. */
class OwnedDrillsTest {
    @TempDir private Path folder;

    private HandledSet set(String rack) throws IOException, DocumentException {
        Documents.write(folder);
        Path file = folder.resolve("set.yaml");
        Files.writeString(file, Documents.SET.replace("[metric-0.5, 6.2, 17/64]", rack));
        return new HandledSet(file);
    }

    private record HandledSet(Path file) {
        Drill drill(double mm) throws DocumentException {
            return SetFile.read(file).set().rack().nearest(mm).orElseThrow();
        }

        BoreStep tangBore() throws DocumentException {
            return ((Resolution.Resolved) Resolve.of(SetFile.read(file).briefs().get(1)))
                    .handle()
                    .tangBore()
                    .deepest();
        }
    }

    @Test
    void measuredDrill_standsBeforeItsLikeInASeries() throws Exception {
        Drill drill = set("[metric-0.1, {drill: 6.2, flutes: 91, point: 135}]").drill(6.2);
        assertThat(drill.fluteLengthMm()).hasValue(91);
        assertThat(drill.pointAngleDeg()).hasValue(135);
    }

    @Test
    void drillWithMeasuredFlutes_keepsTheRulesPoint() throws Exception {
        Drill drill = set("[metric-0.1, {drill: 6.2, flutes: 91}]").drill(6.2);
        assertThat(drill.fluteLengthMm()).hasValue(91);
        assertThat(drill.pointAngleDeg()).isEmpty();
    }

    @Test
    void pointOfTheRules_isThatOfDrillsThatSayNone() throws Exception {
        HandledSet set = set("[metric-0.1]");
        assertThat(set.tangBore().pointAngleDeg()).isEqualTo(118);
        Files.writeString(
                folder.resolve("rules.yaml"),
                Documents.RULES.replace("point_angle: 118", "point_angle: 180"));
        assertThat(set.tangBore().pointAngleDeg()).isEqualTo(180);
        assertThat(set.tangBore().pointMm()).isZero();
    }

    @Test
    void pointOfADrill_goesBeforeTheRules() throws Exception {
        HandledSet set = set("[{drill: 6.2, point: 90}]");
        assertThat(set.tangBore().pointAngleDeg()).isEqualTo(90);
    }
}
