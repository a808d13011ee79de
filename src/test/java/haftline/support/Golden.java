package haftline.support;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Compares what is written with what was written before and looked at.
 *
 * <p>When a change is meant, {@code mvn test -Dgolden.refresh=true} writes the files anew; look at
 * the difference before it is committed.
 */
public final class Golden {
    private static final Path FOLDER = Path.of("src/test/resources/golden");
    private static final boolean REFRESH = Boolean.getBoolean("golden.refresh");

    private Golden() {}

    /** Asserts that a text equals the golden file of a name, to the byte. */
    public static void assertMatches(String name, String actual) throws IOException {
        Path file = FOLDER.resolve(name);
        byte[] bytes = actual.getBytes(StandardCharsets.UTF_8);
        if (REFRESH) {
            Files.createDirectories(file.getParent());
            Files.write(file, bytes);
        }
        assertThat(Files.readString(file))
                .as("%s; refresh with -Dgolden.refresh=true if the change is meant", file)
                .isEqualTo(actual);
    }
}
