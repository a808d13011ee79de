package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class VersionTest {
    @Test
    void version_isThatOfTheProject() throws IOException {
        assertThat(Files.readString(Path.of("pom.xml")))
                .contains(
                        "<artifactId>haftline</artifactId>\n  <version>"
                                + Version.NUMBER
                                + "</version>");
    }
}
