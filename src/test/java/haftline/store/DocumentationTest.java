package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The examples of the format's documentation are whole, and work as they stand. */
class DocumentationTest {
    private static final Pattern EXAMPLE =
            Pattern.compile("```yaml\n# (\\S+)\n(.*?)```", Pattern.DOTALL);

    @TempDir Path folder;
    private String page;

    @BeforeEach
    void write() throws Exception {
        page = Files.readString(Path.of("docs/formats/documents.md"));
        Matcher example = EXAMPLE.matcher(page);
        while (example.find()) {
            Files.writeString(folder.resolve(example.group(1)), example.group(2));
        }
    }

    @Test
    void theSetAndEverythingThatItNamesIsRead() throws Exception {
        LoadedSet set = SetFile.read(folder.resolve("set.yaml"));
        assertThat(set.briefs()).hasSize(2);
        assertThat(set.set().parts().batches().get(0).kits()).hasSize(6);
    }

    @Test
    void savedUnchangedTheExamplesKeepTheirComments() throws Exception {
        Path shape = folder.resolve("shape.yaml");
        String before = Files.readString(shape);
        ShapeFile.save(shape, ShapeFile.read(shape));
        assertThat(shape).hasContent(before);
        Path parts = folder.resolve("parts.yaml");
        before = Files.readString(parts);
        PartsFile.save(parts, Documents.parts(parts));
        assertThat(parts).hasContent(before);
        Path workshop = folder.resolve("workshop.yaml");
        before = Files.readString(workshop);
        WorkshopFile.save(workshop, WorkshopFile.read(workshop));
        assertThat(workshop).hasContent(before);
        Path progress = folder.resolve("progress.yaml");
        before = Files.readString(progress);
        ProgressFile.save(progress, ProgressFile.read(progress));
        assertThat(progress).hasContent(before);
    }

    @Test
    void everyKeyIsShown() {
        List<String> missing = new ArrayList<>();
        for (Keys keys :
                List.of(
                        SetKeys.SET,
                        PartsKeys.PARTS,
                        ShapeKeys.SHAPE,
                        RulesKeys.RULES,
                        WorkshopKeys.WORKSHOP,
                        ProgressKeys.PROGRESS)) {
            collect(keys, missing);
        }
        PartsKeys.TANGS.forEach(keys -> collect(keys, missing));
        for (Keys keys :
                List.of(
                        ShapeKeys.PLACE,
                        ShapeKeys.SIZE,
                        PartsKeys.OVAL,
                        MeasuredKeys.MEASURED,
                        WanderReader.FIGURES,
                        WanderReader.TEST_HOLE,
                        SetKeys.RACK_ITEM)) {
            collect(keys, missing);
        }
        assertThat(missing).isEmpty();
    }

    private void collect(Keys keys, List<String> missing) {
        for (Key key : keys.keys()) {
            if (!page.contains(key.name() + ":")) {
                missing.add(keys.what() + ": " + key.name());
            }
            key.child().ifPresent(child -> collect(child, missing));
        }
    }

    @Test
    void everyPresetOfTheWanderIsInTheTable() {
        WanderReader.PRESETS.keySet().forEach(word -> assertThat(page).contains("`" + word + "`"));
    }
}
