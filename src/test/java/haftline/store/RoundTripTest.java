package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Node;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever a document can hold is read back as it was written. */
class RoundTripTest {
    private static final int ROUNDS = 100;

    @TempDir Path folder;

    @Test
    void shapes() throws Exception {
        Path file = folder.resolve("shape.yaml");
        for (long seed = 0; seed < ROUNDS; seed++) {
            var shape = new RandomDocuments(seed).shape();
            String text = ShapeFile.text(shape);
            Files.writeString(file, text);
            assertThat(ShapeFile.read(file)).as("seed %d:%n%s", seed, text).isEqualTo(shape);
        }
    }

    @Test
    void parts() throws Exception {
        Path file = folder.resolve("parts.yaml");
        for (long seed = 0; seed < ROUNDS; seed++) {
            var parts = new RandomDocuments(seed).parts(Documents.METALS);
            String text = PartsFile.text(parts);
            Files.writeString(file, text);
            assertThat(Documents.parts(file)).as("seed %d:%n%s", seed, text).isEqualTo(parts);
        }
    }

    @Test
    void rules() throws Exception {
        Path file = folder.resolve("rules.yaml");
        for (long seed = 0; seed < ROUNDS; seed++) {
            var rules = new RandomDocuments(seed).rules();
            String text = RulesFile.text(rules);
            Files.writeString(file, text);
            assertThat(RulesFile.read(file)).as("seed %d:%n%s", seed, text).isEqualTo(rules);
        }
    }

    @Test
    void workshops() throws Exception {
        Path file = folder.resolve("workshop.yaml");
        for (long seed = 0; seed < ROUNDS; seed++) {
            var workshop = new RandomDocuments(seed).workshop();
            String text = WorkshopFile.text(workshop);
            Files.writeString(file, text);
            assertThat(WorkshopFile.read(file)).as("seed %d:%n%s", seed, text).isEqualTo(workshop);
        }
    }

    @Test
    void progress() throws Exception {
        Path file = folder.resolve("progress.yaml");
        for (long seed = 0; seed < ROUNDS; seed++) {
            var progress = new RandomDocuments(seed).progress();
            String text = ProgressFile.text(progress);
            Files.writeString(file, text);
            assertThat(ProgressFile.read(file)).as("seed %d:%n%s", seed, text).isEqualTo(progress);
        }
    }

    @Test
    void sets() throws Exception {
        Documents.write(folder);
        Path file = folder.resolve("set.yaml");
        LoadedSet sound = SetFile.read(file);
        List<String> nodes = sound.set().shape().nodes().stream().map(Node::name).toList();
        for (long seed = 0; seed < 20; seed++) {
            RandomDocuments random = new RandomDocuments(seed);
            List<Piece> pieces = new ArrayList<>();
            for (int i = 0; i < 3; i++) {
                pieces.add(
                        new Piece(
                                "piece: " + i,
                                "knife",
                                i == 0 ? Optional.of("acrylic") : Optional.empty(),
                                i == 1 ? Optional.of(sound.set().shape()) : Optional.empty(),
                                random.choices(nodes)));
            }
            HandleSet old = sound.set();
            HandleSet set =
                    new HandleSet(
                            "<&\"'>",
                            "Note.",
                            old.shape(),
                            old.parts(),
                            old.batch(),
                            old.rules(),
                            old.workshop(),
                            old.rack(),
                            old.stock(),
                            "filled-epoxy",
                            random.choices(nodes),
                            pieces);
            References from = sound.references();
            References references =
                    new References(
                            from.shape(),
                            from.parts(),
                            from.batch(),
                            from.rules(),
                            from.workshop(),
                            from.catalogues(),
                            from.rack(),
                            Map.of("piece: 1", "shape.yaml"));
            LoadedSet changed =
                    new LoadedSet(file, set, references, sound.catalogues(), sound.materials());
            SetFile.save(file, changed);
            LoadedSet read = SetFile.read(file);
            assertThat(read.references()).as("seed %d", seed).isEqualTo(references);
            assertThat(read.set().rack().drills()).isEqualTo(set.rack().drills());
            assertThat(read.set())
                    .as("seed %d", seed)
                    .usingRecursiveComparison()
                    .ignoringFields("rack")
                    .isEqualTo(set);
        }
    }
}
