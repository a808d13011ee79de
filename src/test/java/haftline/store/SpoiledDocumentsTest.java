package haftline.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Documents that are sound but for one thing, from the tables in the test resources. */
class SpoiledDocumentsTest {
    private static final Path TABLES = Path.of("src/test/resources/spoiled");

    @TempDir Path folder;

    /**
     * A case of the tables.
     *
     * @param file name of the document
     * @param name what is wrong with it
     * @param from text of the sound document
     * @param to text in its place
     * @param problems what is expected, one a line
     */
    record Spoiled(String file, String name, String from, String to, String problems) {
        String spoil(String sound) {
            assertThat(sound).as(name).contains(from);
            return sound.replaceFirst(Pattern.quote(from), Matcher.quoteReplacement(to));
        }

        @Override
        public String toString() {
            return file + ": " + name;
        }
    }

    static Stream<Spoiled> cases() throws IOException {
        List<Spoiled> cases = new ArrayList<>();
        for (String kind : List.of("shape", "parts", "rules", "workshop", "progress", "set")) {
            String table = Files.readString(TABLES.resolve(kind + ".txt"));
            for (String block : table.split("(?m)^== ")) {
                if (!block.startsWith("#")) {
                    cases.add(spoiled(kind + ".yaml", block.lines().toList()));
                }
            }
        }
        return cases.stream();
    }

    private static Spoiled spoiled(String file, List<String> lines) {
        return new Spoiled(
                file, lines.get(0), marked(lines, '-'), marked(lines, '+'), marked(lines, '='));
    }

    private static String marked(List<String> lines, char mark) {
        return String.join(
                "\n",
                lines.stream()
                        .skip(1)
                        .filter(line -> !line.isEmpty() && line.charAt(0) == mark)
                        .map(line -> line.length() < 2 ? "" : line.substring(2))
                        .toList());
    }

    @ParameterizedTest
    @MethodSource("cases")
    void isRefusedWithExactlyThis(Spoiled spoiled) throws IOException {
        Documents.write(folder);
        Files.writeString(
                folder.resolve("bad.yaml"), Documents.PARTS.replace("bore: 12", "bore: -12"));
        Path file = folder.resolve(spoiled.file());
        Files.writeString(file, spoiled.spoil(Files.readString(file)));
        Map<String, String> before = contents();

        DocumentException refused =
                catchThrowableOfType(DocumentException.class, () -> Documents.read(file));

        assertThat(refused).isNotNull();
        String told = refused.getMessage().replace(folder + "/", "");
        assertThat(told).isEqualTo(spoiled.problems());
        assertThat(contents()).isEqualTo(before);
    }

    private Map<String, String> contents() throws IOException {
        Map<String, String> contents = new TreeMap<>();
        try (Stream<Path> files = Files.list(folder)) {
            for (Path file : files.toList()) {
                contents.put(file.toString(), Files.readString(file));
            }
        }
        return contents;
    }
}
