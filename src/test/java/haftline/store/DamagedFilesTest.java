package haftline.store;

import static java.nio.charset.StandardCharsets.UTF_16LE;
import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Files that are no sound YAML, or no file at all. */
class DamagedFilesTest {
    @TempDir Path folder;
    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("shape.yaml");
    }

    private List<String> problems() {
        DocumentException refused =
                catchThrowableOfType(DocumentException.class, () -> ShapeFile.read(file));
        assertThat(refused).isNotNull();
        return refused.problems().stream()
                .map(problem -> problem.text().replace(folder + "/", ""))
                .toList();
    }

    private List<String> problems(String text) throws IOException {
        Files.writeString(file, text);
        return problems();
    }

    private List<String> problems(byte[] bytes) throws IOException {
        Files.write(file, bytes);
        return problems();
    }

    @Test
    void missing() {
        assertThat(problems()).containsExactly("shape.yaml: no such file");
    }

    @Test
    void missing_namesTheNearestInTheFolder() throws IOException {
        Files.writeString(folder.resolve("shapes.yaml"), Documents.SHAPE);
        assertThat(problems())
                .containsExactly("shape.yaml: no such file; did you mean shapes.yaml?");
    }

    @Test
    void missingFolder() {
        file = folder.resolve("none").resolve("shape.yaml");
        assertThat(problems().get(0))
                .startsWith("none/shape.yaml: no such file; there is no folder");
    }

    @Test
    void aFolder() throws IOException {
        Files.createDirectory(file);
        assertThat(problems()).containsExactly("shape.yaml: is a folder, expected a file");
    }

    @Test
    void tooLarge_isNotReadAtAll() throws IOException {
        try (RandomAccessFile sparse = new RandomAccessFile(file.toFile(), "rw")) {
            sparse.setLength(100L * 1024 * 1024);
        }
        System.gc();
        long before = used();
        assertThat(problems())
                .containsExactly("shape.yaml: is 102400 KiB large, expected at most 4096 KiB");
        assertThat(used() - before).isLessThan(20_000_000);
    }

    private static long used() {
        Runtime runtime = Runtime.getRuntime();
        return runtime.totalMemory() - runtime.freeMemory();
    }

    @Test
    void empty() throws IOException {
        assertThat(problems(""))
                .containsExactly(
                        "shape.yaml:1:1: the document is empty, expected haftline: 1 and a kind");
    }

    @Test
    void onlyComments() throws IOException {
        assertThat(problems("# nothing\n\n"))
                .containsExactly(
                        "shape.yaml:1:1: the document is empty, expected haftline: 1 and a kind");
    }

    @ParameterizedTest
    @ValueSource(strings = {"hello", "- a\n- b\n", "42"})
    void noMap(String text) throws IOException {
        assertThat(problems(text))
                .containsExactly(
                        "shape.yaml:1:1: found a document that is no map, expected haftline: 1 and"
                                + " a kind");
    }

    @Test
    void binary() throws IOException {
        assertThat(problems(new byte[] {'a', '\n', 'b', 0, 1, 2}))
                .containsExactly(
                        "shape.yaml:2:2: found the character U+0000, which no YAML text may hold");
    }

    @Test
    void invalidUtf8() throws IOException {
        byte[] latin =
                "kind: shape\nname: B\u00fcgel"
                        .getBytes(java.nio.charset.StandardCharsets.ISO_8859_1);
        assertThat(problems(latin))
                .containsExactly(
                        "shape.yaml:2:8: found the byte 0xFC, which is not UTF-8; save the file as"
                                + " UTF-8");
    }

    @Test
    void utf16() throws IOException {
        assertThat(problems(("\uFEFF" + Documents.SHAPE).getBytes(UTF_16LE)))
                .containsExactly("shape.yaml: is in UTF-16, expected UTF-8; save it as UTF-8");
    }

    @Test
    void aByteOrderMarkIsAcceptedAndMovesNoColumn() throws Exception {
        Files.write(file, ("\uFEFF" + Documents.SHAPE).getBytes(UTF_8));
        assertThat(ShapeFile.read(file).name()).isEqualTo("Waisted");
        assertThat(problems("\uFEFF" + Documents.SHAPE.replace("haftline: 1", "haftline: 7")))
                .containsExactly(
                        "shape.yaml:1:11: haftline: found 7, expected 1; a newer Haftline may have"
                                + " written it");
    }

    @Test
    void windowsLineEndsAreAccepted() throws Exception {
        Files.writeString(file, Documents.SHAPE.replace("\n", "\r\n"));
        assertThat(ShapeFile.read(file).nodes()).hasSize(2);
    }

    @Test
    void tabs() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("  - {name: swell", "\t- {name: swell")))
                .containsExactly(
                        "shape.yaml:6:1: found a tab, expected blanks: YAML is indented with"
                                + " blanks only");
    }

    @Test
    void brokenYaml() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("slope: 0}", "slope: 0")))
                .singleElement()
                .asString()
                .startsWith("shape.yaml:7:")
                .contains("not YAML: ")
                .doesNotContain("\n");
    }

    @Test
    void keyWithoutItsColon() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("kind: shape", "kind shape")))
                .containsExactly("shape.yaml:2:1: not YAML: found a key without a colon behind it");
    }

    /** A remark that was none takes the end of its list with it. */
    @Test
    void listThatARemarkLeavesOpen() throws IOException {
        assertThat(problems("haftline: 1\nkind: set\nrack: [number, #7]\nstock: teak\n"))
                .singleElement()
                .asString()
                .startsWith("shape.yaml:5:1: not YAML: ")
                .endsWith(
                        "; it was opened on line 3, where # begins a remark: such a name stands in"
                                + " quotation marks, \"#7\"");
    }

    @Test
    void twoDocuments() throws IOException {
        assertThat(problems(Documents.SHAPE + "---\n" + Documents.SHAPE))
                .containsExactly(
                        "shape.yaml:12:1: found a second document (---) in this file, expected"
                                + " one");
    }

    @Test
    void deepNesting() throws IOException {
        assertThat(problems(Documents.SHAPE + "x: " + "[".repeat(50_000)))
                .containsExactly(
                        "shape.yaml:12:35: nested more than 32 levels deep, which no document"
                                + " needs");
    }

    @Test
    void deepNestingInBlocks() throws IOException {
        StringBuilder text = new StringBuilder("haftline: 1\nkind: shape\n");
        for (int i = 0; i < 1000; i++) {
            text.append(" ".repeat(i)).append("a:\n");
        }
        assertThat(problems(text.toString())).singleElement().asString().contains("32 levels");
    }

    @Test
    void aliasBomb() throws IOException {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 10; i++) {
            String before = "*a" + (i - 1);
            bomb.append("a" + i + ": &a" + i + " [" + (before + ", ").repeat(9) + before + "]\n");
        }
        assertThat(problems(Documents.SHAPE + bomb))
                .containsExactly(
                        "shape.yaml:15:10: more than 20 aliases (*), expected few or none");
    }

    @Test
    void aliasOfItself() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("nodes:", "nodes: &n\n  - *n")))
                .isNotEmpty()
                .allSatisfy(line -> assertThat(line).startsWith("shape.yaml:"));
    }

    @Test
    void aliasOfNothing() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("name: Waisted", "name: *other")))
                .containsExactly(
                        "shape.yaml:3:7: found an alias (*) of something that is not there before"
                                + " it");
    }

    @Test
    void tagOfAnotherLanguage() throws IOException {
        assertThat(problems(Documents.SHAPE.replace("name: Waisted", "name: !!java/object x")))
                .containsExactly("shape.yaml:3:7: found a tag (!), expected a plain value");
    }

    @Test
    void manyProblemsAreCut() throws IOException {
        StringBuilder keys = new StringBuilder(Documents.SHAPE);
        for (int i = 0; i < 500; i++) {
            keys.append("key" + i + ": 1\n");
        }
        List<String> told = problems(keys.toString());
        assertThat(told).hasSize(41);
        assertThat(told.get(40)).isEqualTo("shape.yaml: and 460 more problems after these");
    }

    @Test
    void longAndStrangeValuesAreQuotedShort() throws IOException {
        String wild = "x\\u202Ey\\u0007" + "z".repeat(10_000);
        assertThat(problems(Documents.SHAPE.replace("join: smooth", "join: \"" + wild + "\"")))
                .containsExactly(
                        "shape.yaml:6:48: nodes[2].join: found \"x\\u202ey\\u0007"
                                + "z".repeat(36)
                                + "...\", expected one of: smooth, crisp");
    }

    @ParameterizedTest
    @ValueSource(strings = {"de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva"})
    void theLocaleChangesNothing(String tag) throws Exception {
        Locale before = Locale.getDefault();
        String sound = Documents.SHAPE.replace("join: smooth", "join: SMOOTH");
        String spoiled = Documents.SHAPE.replace("at: 0.6", "at: {from_butt: 1234.5}");
        Files.writeString(file, sound);
        var shape = ShapeFile.read(file);
        String text = ShapeFile.text(shape);
        List<String> told = problems(spoiled);
        try {
            Locale.setDefault(Locale.forLanguageTag(tag));
            Files.writeString(file, sound);
            assertThat(ShapeFile.read(file)).isEqualTo(shape);
            assertThat(ShapeFile.text(shape)).isEqualTo(text);
            assertThat(problems(spoiled)).isEqualTo(told);
        } finally {
            Locale.setDefault(before);
        }
    }
}
