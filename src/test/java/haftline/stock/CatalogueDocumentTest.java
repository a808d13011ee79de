package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The page on the format, held to what the program does. */
class CatalogueDocumentTest {
    private static final Path PAGE = Path.of("docs", "formats", "catalogues.md");
    private static final Pattern EXAMPLE = Pattern.compile("```csv\n(.*?)```", Pattern.DOTALL);

    @Test
    void exampleWood_reads(@TempDir Path folder) throws IOException, CatalogueException {
        List<Path> files = new ArrayList<>();
        Matcher example = EXAMPLE.matcher(Files.readString(PAGE));
        while (example.find()) {
            Path file = folder.resolve("example-" + files.size() + ".csv");
            files.add(Files.writeString(file, example.group(1)));
        }
        assertThat(files).hasSize(2);
        Wood plum = CatalogueReader.starterWith(files).woods().find("plum").orElseThrow();
        assertThat(plum.densityKgM3(9)).isEqualTo(760);
        // By hand: 0.6972 at 9 %, 0.6174 green, 0.6846 at 12 %, times 1120 (Equations 4-13, 4-14).
        assertThat(plum.densityKgM3(12)).isCloseTo(766.7, within(0.1));
        assertThat(plum.strength().tensionAcrossMPa().orElseThrow().isEstimate()).isTrue();
        assertThat(plum.statedDensity().basis()).isEqualTo(Basis.MEASURED);
    }

    @Test
    void everyColumnThatAMakerMustFill_andEverySeries_standsOnThePage()
            throws IOException, CatalogueException {
        String page = Files.readString(PAGE);
        for (Layout layout : Layout.ALL) {
            for (String column : layout.required()) {
                if (!column.endsWith("_source")) {
                    assertThat(page).contains("`" + column + "`");
                }
            }
        }
        for (String series : CatalogueReader.starter().drills().series().keys()) {
            assertThat(page).contains("`" + series + "`");
        }
        for (Basis basis : Basis.values()) {
            assertThat(page).contains("`" + basis.words() + "`");
        }
    }
}
