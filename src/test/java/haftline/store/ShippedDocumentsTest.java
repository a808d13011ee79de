package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Rules;
import haftline.set.Workshop;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ShippedDocumentsTest {
    static List<Path> in(String folder) throws IOException {
        try (Stream<Path> files = Files.list(Path.of(folder))) {
            return files.filter(f -> f.toString().endsWith(".yaml")).sorted().toList();
        }
    }

    static List<Path> shapes() throws IOException {
        return in("profiles/shapes");
    }

    static List<Path> sets() throws IOException {
        return in("profiles/sets");
    }

    @ParameterizedTest
    @MethodSource("shapes")
    void everyStarterShapeIsReadAndSaysWhatItIsGoodFor(Path file) throws DocumentException {
        assertThat(ShapeFile.read(file).note()).contains("Good ");
    }

    @ParameterizedTest
    @MethodSource("sets")
    void everySetResolvesIntoHandles(Path file) throws DocumentException {
        for (var brief : SetFile.read(file).briefs()) {
            assertThat(Resolve.of(brief)).as(brief.name()).isInstanceOf(Resolution.Resolved.class);
        }
    }

    @Test
    void theRulesFileStatesCommonPractice() throws DocumentException {
        assertThat(RulesFile.read(Path.of("shared/rules.yaml"))).isEqualTo(Rules.COMMON_PRACTICE);
    }

    @Test
    void theWorkshopFileStatesCommonPractice() throws DocumentException {
        assertThat(WorkshopFile.read(Path.of("shared/workshop.yaml")))
                .isEqualTo(Workshop.COMMON_PRACTICE);
    }

    @Test
    void theDemonstrationShowsWhatItIsMeantTo() throws DocumentException {
        LoadedSet tidewater = SetFile.read(Path.of("profiles/sets/tidewater.yaml"));
        List<Brief> briefs = tidewater.briefs();
        assertThat(briefs)
                .extracting(Brief::name)
                .containsExactly("shucker", "butter spreader", "seafood fork", "citrus zester");
        assertThat(briefs).extracting(brief -> brief.kit().tang().kind()).doesNotHaveDuplicates();
        assertThat(briefs).filteredOn(brief -> brief.kit().cap().isEmpty()).hasSize(1);
        assertThat(briefs).filteredOn(brief -> brief.stock().key().equals("acrylic")).hasSize(1);
        assertThat(tidewater.set().note()).contains("invented");
        assertThat(tidewater.set().parts().note()).contains("Invented");
        assertThat(tidewater.set().parts().batches()).hasSize(2);
    }

    @Test
    void theDemonstrationHasWarningsButNothingThatStops() throws DocumentException {
        for (Brief brief : SetFile.read(Path.of("profiles/sets/tidewater.yaml")).briefs()) {
            Handle handle = ((Resolution.Resolved) Resolve.of(brief)).handle();
            assertThat(Findings.of(Figures.of(handle)))
                    .as(brief.name())
                    .extracting(Finding::gravity)
                    .contains(Gravity.WARN)
                    .doesNotContain(Gravity.STOP);
        }
    }
}
