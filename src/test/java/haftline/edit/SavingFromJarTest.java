package haftline.edit;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.store.LoadedSet;
import haftline.store.Starter;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The demonstration set as it travels in the jar, opened and saved by a program that runs from it.
 */
class SavingFromJarTest {
    @TempDir Path folder;

    @Test
    void theSetWithinTheJarIsSavedWithAllThatItNeeds() throws Exception {
        Path jar = jar();
        Path to = folder.resolve("mine.yaml");
        Path printed = folder.resolve("printed.txt");
        Process child =
                new ProcessBuilder(
                                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                                "-cp",
                                jar + File.pathSeparator + System.getProperty("java.class.path"),
                                SavingChild.class.getName(),
                                to.toString())
                        .redirectErrorStream(true)
                        .redirectOutput(printed.toFile())
                        .start();
        try {
            assertThat(child.waitFor(5, TimeUnit.MINUTES)).isTrue();
        } finally {
            child.destroyForcibly().waitFor();
        }
        assertThat(Files.readString(printed))
                .startsWith("opened jar:")
                .contains("saved mine-parts.yaml", "saved mine.yaml", "saved again mine-parts.yaml")
                .doesNotContain("Exception");
        LoadedSet read = DemoSet.read(to);
        assertThat(read.references().parts()).isEqualTo("mine-parts.yaml");
        assertThat(read.references().shape()).isEqualTo("mine-shape.yaml");
        assertThat(read.references().workshop()).contains("mine-workshop.yaml");
        assertThat(read.set().pieces()).extracting(piece -> piece.kit()).contains("oyster fork");
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files.filter(file -> file.toString().endsWith(".yaml")))
                    .allSatisfy(
                            file ->
                                    assertThat(Files.readString(file))
                                            .doesNotContain("app.jar", "haftline/starter"));
        }
    }

    /** The program's own classes and documents, packed as a release packs them. */
    private Path jar() throws IOException, URISyntaxException {
        Path classes =
                Path.of(Starter.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Path jar = folder.resolve("app.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out);
                Stream<Path> files = Files.walk(classes.resolve("haftline"))) {
            zip.setLevel(Deflater.BEST_SPEED);
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                zip.putNextEntry(
                        new ZipEntry(classes.relativize(file).toString().replace('\\', '/')));
                Files.copy(file, zip);
            }
        }
        return jar;
    }
}
