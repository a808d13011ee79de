package haftline.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class AtomicSaveTest {
    private static final byte[] OLD = "old".getBytes(UTF_8);
    private static final byte[] NEW = "new and longer".getBytes(UTF_8);

    @TempDir Path folder;
    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("set.yaml");
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void aNewFileHasNoBackup() throws Exception {
        AtomicSave.write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(names()).containsExactly("set.yaml");
    }

    @Test
    void theOldFileIsKeptOnce() throws Exception {
        AtomicSave.write(file, "older".getBytes(UTF_8));
        AtomicSave.write(file, OLD);
        AtomicSave.write(file, NEW);
        assertThat(file).hasBinaryContent(NEW);
        assertThat(AtomicSave.backup(file)).hasBinaryContent(OLD);
        assertThat(names()).containsExactly("set.yaml", "set.yaml~");
    }

    /** Fails at one step, having written only part of what it was given. */
    private static final class FailingDisk implements AtomicSave.Disk {
        private int stepsLeft;

        FailingDisk(int stepsLeft) {
            this.stepsLeft = stepsLeft;
        }

        private void step() throws IOException {
            if (stepsLeft-- == 0) {
                throw new IOException("No space left on device");
            }
        }

        @Override
        public void write(FileChannel out, ByteBuffer bytes) throws IOException {
            ByteBuffer half = bytes.duplicate().limit(bytes.limit() / 2);
            bytes.position(out.write(half));
            step();
            AtomicSave.Disk.REAL.write(out, bytes);
        }

        @Override
        public void move(Path from, Path to) throws IOException {
            step();
            AtomicSave.Disk.REAL.move(from, to);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void aDiskThatFailsAtAnyStepLosesNothing(int step) throws Exception {
        Files.write(file, OLD);
        assertThatThrownBy(() -> AtomicSave.write(file, NEW, new FailingDisk(step)))
                .isInstanceOf(SaveException.class)
                .hasMessage(
                        file
                                + ": not saved: No space left on device; what was there before is"
                                + " untouched");
        assertThat(file).hasBinaryContent(OLD);
        assertThat(names()).isSubsetOf("set.yaml", "set.yaml~");
        if (Files.exists(AtomicSave.backup(file))) {
            assertThat(AtomicSave.backup(file)).hasBinaryContent(OLD);
        }
    }

    @Test
    void theStepsEndWithTheFourth() throws Exception {
        Files.write(file, OLD);
        AtomicSave.write(file, NEW, new FailingDisk(4));
        assertThat(file).hasSize(NEW.length);
    }

    @Test
    void aFailureLeavesNoHalfOfANewFile() throws Exception {
        assertThatThrownBy(() -> AtomicSave.write(file, NEW, new FailingDisk(0)))
                .isInstanceOf(SaveException.class);
        assertThat(names()).isEmpty();
    }

    @Test
    void throughALink() throws Exception {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        Path real = elsewhere.resolve("real.yaml");
        Files.write(real, OLD);
        Files.createSymbolicLink(file, Path.of("elsewhere", "real.yaml"));
        AtomicSave.write(file, NEW);
        assertThat(file).isSymbolicLink();
        assertThat(real).hasBinaryContent(NEW);
        assertThat(elsewhere.resolve("real.yaml~")).hasBinaryContent(OLD);
        assertThat(names()).containsExactly("elsewhere", "set.yaml");
    }

    @Test
    void throughALinkToNothingYet() throws Exception {
        Files.createSymbolicLink(file, Path.of("later.yaml"));
        AtomicSave.write(file, NEW);
        assertThat(file).isSymbolicLink();
        assertThat(folder.resolve("later.yaml")).hasBinaryContent(NEW);
    }

    @Test
    void throughLinksInACircle() throws Exception {
        Files.createSymbolicLink(file, Path.of("other.yaml"));
        Files.createSymbolicLink(folder.resolve("other.yaml"), Path.of("set.yaml"));
        assertThatThrownBy(() -> AtomicSave.write(file, NEW))
                .isInstanceOf(SaveException.class)
                .hasMessageContaining("circle");
    }

    @Test
    void permissionsAreKept() throws Exception {
        Files.write(file, OLD);
        assumeThat(Files.getFileStore(file).supportsFileAttributeView("posix")).isTrue();
        var permissions = PosixFilePermissions.fromString("rw-rw-r--");
        Files.setPosixFilePermissions(file, permissions);
        AtomicSave.write(file, NEW);
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(permissions);
        assertThat(Files.getPosixFilePermissions(AtomicSave.backup(file))).isEqualTo(permissions);
    }

    @Test
    void aFolderInTheWay() throws Exception {
        Files.createDirectory(file);
        assertThatThrownBy(() -> AtomicSave.write(file, NEW))
                .isInstanceOf(SaveException.class)
                .hasMessageContaining("a folder has this name");
    }

    @Test
    void noSuchFolder() {
        assertThatThrownBy(() -> AtomicSave.write(folder.resolve("none/set.yaml"), NEW))
                .isInstanceOf(SaveException.class)
                .hasMessageContaining("there is no such folder");
    }

    @Test
    void aFullDevice() {
        // The real thing where the system has one: a file system without room for a single byte.
        Path full = Path.of("/dev/full");
        assumeThat(full).exists();
        assertThatThrownBy(
                        () -> {
                            try (FileChannel out =
                                    FileChannel.open(
                                            full, java.nio.file.StandardOpenOption.WRITE)) {
                                AtomicSave.Disk.REAL.write(out, ByteBuffer.wrap(NEW));
                            }
                        })
                .isInstanceOf(IOException.class);
    }
}
