package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StarterTest {
    @TempDir Path folder;

    @Test
    void theDemonstrationSetIsReadFromTheClassPath() throws Exception {
        assertThat(SetFile.read(Starter.set()).set().name()).isEqualTo("Tidewater");
    }

    @Test
    void theShapesAreThoseOfTheRepository() throws Exception {
        assertThat(Starter.shapes().stream().map(path -> path.getFileName().toString()))
                .containsAll(
                        ShippedDocumentsTest.shapes().stream()
                                .map(path -> path.getFileName().toString())
                                .toList());
    }

    @Test
    void aSetIsReadFromWithinAJarWithTheFilesThatItNames() throws Exception {
        Path jar = folder.resolve("with blank.jar");
        try (OutputStream out = Files.newOutputStream(jar);
                ZipOutputStream zip = new ZipOutputStream(out)) {
            for (String tree : List.of("profiles", "shared")) {
                try (Stream<Path> files = Files.walk(Path.of(tree))) {
                    for (Path file : files.filter(Files::isRegularFile).toList()) {
                        zip.putNextEntry(new ZipEntry(file.toString().replace('\\', '/')));
                        Files.copy(file, zip);
                    }
                }
            }
        }
        URI within = URI.create("jar:" + jar.toUri() + "!/profiles/sets/tidewater.yaml");
        assertThat(SetFile.read(Starter.path(within)).set().pieces()).hasSize(4);
        assertThat(SetFile.read(Starter.path(within)).set().pieces()).hasSize(4);
        Starter.path(within).getFileSystem().close();
    }
}
