package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ResaveTest {
    private static final Path PARTS = Path.of("shared/parts/tidewater.yaml");
    private static final List<String> METALS = List.of("brass", "stainless-304", "stainless-420");

    @TempDir Path folder;

    private Path copy(Path file) throws Exception {
        return Files.copy(file, folder.resolve(file.getFileName()));
    }

    @ParameterizedTest
    @MethodSource("haftline.store.ShippedDocumentsTest#shapes")
    void aShapeSavedUnchangedIsTheSameFile(Path file) throws Exception {
        Path copy = copy(file);
        ShapeFile.save(copy, ShapeFile.read(file));
        assertThat(copy).hasSameTextualContentAs(file);
    }

    @Test
    void aPartsListSavedUnchangedIsTheSameFile() throws Exception {
        Path copy = copy(PARTS);
        PartsFile.save(copy, PartsFile.read(PARTS, METALS));
        assertThat(copy).hasSameTextualContentAs(PARTS);
    }

    @ParameterizedTest
    @MethodSource("haftline.store.ShippedDocumentsTest#sets")
    void aSetSavedUnchangedIsTheSameFile(Path file) throws Exception {
        Path copy = copy(file);
        SetFile.save(copy, SetFile.read(file));
        assertThat(copy).hasSameTextualContentAs(file);
    }

    @Test
    void theRulesSavedUnchangedAreTheSameFile() throws Exception {
        Path file = Path.of("shared/rules.yaml");
        Path copy = copy(file);
        RulesFile.save(copy, RulesFile.read(file));
        assertThat(copy).hasSameTextualContentAs(file);
    }

    @Test
    void theWorkshopSavedUnchangedIsTheSameFile() throws Exception {
        Path file = Path.of("shared/workshop.yaml");
        Path copy = copy(file);
        WorkshopFile.save(copy, WorkshopFile.read(file));
        assertThat(copy).hasSameTextualContentAs(file);
    }

    @ParameterizedTest
    @MethodSource("haftline.store.ShippedDocumentsTest#shapes")
    void aShapeWrittenAfreshIsTheSameShape(Path file) throws Exception {
        Path fresh = folder.resolve("fresh.yaml");
        Files.writeString(fresh, ShapeFile.text(ShapeFile.read(file)));
        assertThat(ShapeFile.read(fresh)).isEqualTo(ShapeFile.read(file));
    }

    @Test
    void aPartsListWrittenAfreshIsTheSameList() throws Exception {
        Path fresh = folder.resolve("fresh.yaml");
        Files.writeString(fresh, PartsFile.text(PartsFile.read(PARTS, METALS)));
        assertThat(PartsFile.read(fresh, METALS)).isEqualTo(PartsFile.read(PARTS, METALS));
    }
}
