package haftline.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class OutputFolderTest {
    private static final byte[] NEW = "new".getBytes(StandardCharsets.UTF_8);
    private static final Path FULL = Path.of("/dev/full");

    @TempDir private Path folder;

    @Test
    void write_makesTheFolderAndReplacesTheFile() throws Exception {
        Path deep = folder.resolve("a/b");
        OutputFolder output = OutputFolder.at(deep);
        output.write("x.svg", "old".getBytes(StandardCharsets.UTF_8));
        assertThat(output.write("x.svg", NEW))
                .isEqualTo(deep.resolve("x.svg"))
                .hasBinaryContent(NEW);
        assertThat(names(deep)).containsExactly("x.svg");
    }

    @Test
    void folderThatIsAFile_isNamedAndKept() throws Exception {
        Path file = Files.writeString(folder.resolve("exports"), "mine");
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> OutputFolder.at(file).write("x.svg", NEW))
                .withMessage("cannot write " + file + ": it is a file, not a folder")
                .satisfies(e -> assertThat(e.path()).isEqualTo(file));
        assertThat(file).hasContent("mine");
    }

    @Test
    void folderUnderAFile_cannotBeMade() throws Exception {
        Path file = Files.writeString(folder.resolve("exports"), "mine");
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> OutputFolder.at(file.resolve("deep/er")).write("x.svg", NEW))
                .withMessageStartingWith("cannot write " + file.resolve("deep/er"));
        assertThat(names(folder)).containsExactly("exports");
    }

    /** As the shell's mkdir -p: a folder that the path only passes through is made, too. */
    @Test
    void pathThroughAFolderThatIsNotThere_isMade() throws Exception {
        Path winding = folder.resolve("a/../b");
        Path written = OutputFolder.at(winding).write("x.csv", new byte[] {1});
        assertThat(written).isEqualTo(winding.resolve("x.csv"));
        assertThat(folder.resolve("b/x.csv")).exists();
    }

    @Test
    void folderInPlaceOfTheFile_isNamedAndKept() throws Exception {
        Files.createDirectory(folder.resolve("x.svg"));
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> OutputFolder.at(folder).write("x.svg", NEW))
                .withMessage(
                        "cannot write "
                                + folder.resolve("x.svg")
                                + ": there is a folder of that name");
        assertThat(names(folder)).containsExactly("x.svg");
    }

    /** Half of the bytes arrive, then there is no more room. */
    private static void fillUp(Path file, byte[] content) throws IOException {
        Files.write(file, Arrays.copyOf(content, content.length / 2));
        throw new IOException("No space left on device");
    }

    @Test
    void diskThatFills_leavesNothingHalfWrittenAndTheOldFileWhole() throws Exception {
        Files.writeString(folder.resolve("x.svg"), "old");
        OutputFolder full = OutputFolder.at(folder, OutputFolderTest::fillUp);
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> full.write("x.svg", NEW))
                .satisfies(e -> assertThat(e.reason()).isEqualTo("No space left on device"));
        assertThat(folder.resolve("x.svg")).hasContent("old");
        assertThat(names(folder)).containsExactly("x.svg");
    }

    @Test
    void diskThatFillsAtTheThirdFile_changesNone() throws Exception {
        Files.writeString(folder.resolve("1.svg"), "old");
        int[] count = {0};
        FileSink sink =
                (file, content) -> {
                    if (++count[0] == 3) {
                        fillUp(file, content);
                    }
                    FileSink.DISK.write(file, content);
                };
        List<OutputFile> files =
                List.of(
                        OutputFile.text("1.svg", "new"),
                        OutputFile.text("2.svg", "new"),
                        OutputFile.text("3.svg", "new"));
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> OutputFolder.at(folder, sink).write(files))
                .satisfies(e -> assertThat(e.path()).isEqualTo(folder.resolve("3.svg")));
        assertThat(folder.resolve("1.svg")).hasContent("old");
        assertThat(names(folder)).containsExactly("1.svg");
    }

    @Test
    void theSystemsOwnFullDisk_isToldInItsWords() throws Exception {
        assumeTrue(Files.exists(FULL), "no /dev/full on this system");
        FileSink sink =
                (file, content) -> {
                    Files.createFile(file);
                    try (OutputStream out = Files.newOutputStream(FULL)) {
                        out.write(content);
                    }
                };
        assertThatExceptionOfType(OutputException.class)
                .isThrownBy(() -> OutputFolder.at(folder, sink).write("x.svg", NEW))
                .satisfies(e -> assertThat(e.reason()).isNotBlank());
        assertThat(names(folder)).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", ".", "..", "../x", "a/b", "a\\b", "a\u0000b", "a\nb"})
    void fileNames_thatLeaveTheFolderAreRefused(String name) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new OutputFile(name, NEW))
                .withMessageContaining("plain name");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }
}
