package haftline.edit;

import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Unsaved work that a process left behind when it was killed.
 *
 * @param journal the folder that it lies in
 * @param entry the last whole entry in it
 * @param name name of the set
 * @param file the set's file, or empty for a set that was never saved
 * @param at when it was written
 */
public record Recovery(Path journal, Path entry, String name, Optional<Path> file, Instant at) {
    /**
     * All that was left behind; the work of processes that are alive is not.
     *
     * @param recovery the folder of all journals
     * @return the newest first; empty where the folder cannot be read
     */
    public static List<Recovery> left(Path recovery) {
        List<Recovery> left = new ArrayList<>();
        if (Files.isDirectory(recovery)) {
            try (Stream<Path> journals = Files.list(recovery)) {
                for (Path journal : journals.filter(Files::isDirectory).toList()) {
                    if (!isAlive(journal)) {
                        lastEntry(journal)
                                .ifPresentOrElse(left::add, () -> Journal.deleteAll(journal));
                    }
                }
            } catch (IOException unreadable) {
                return List.of();
            }
        }
        left.sort(Comparator.comparing(Recovery::at).reversed());
        return left;
    }

    private static boolean isAlive(Path journal) {
        try (FileChannel channel =
                        FileChannel.open(journal.resolve(Journal.LOCK), StandardOpenOption.WRITE);
                FileLock lock = channel.tryLock()) {
            return lock == null;
        } catch (OverlappingFileLockException ours) {
            return true;
        } catch (IOException noLock) {
            // A journal without its lock was left in the middle of being made or removed.
            return false;
        }
    }

    private static Optional<Recovery> lastEntry(Path journal) throws IOException {
        try (Stream<Path> entries = Files.list(journal)) {
            Optional<Path> last =
                    entries.filter(entry -> entry.getFileName().toString().matches("[0-9]{1,9}"))
                            .filter(entry -> Files.isRegularFile(entry.resolve(Journal.SET)))
                            .max(
                                    Comparator.comparingInt(
                                            entry ->
                                                    Integer.parseInt(
                                                            entry.getFileName().toString())));
            if (last.isEmpty()) {
                return Optional.empty();
            }
            Path set = last.get().resolve(Journal.SET);
            Origin origin = Origin.read(last.get().resolve(Journal.ORIGIN));
            return Optional.of(
                    new Recovery(
                            journal,
                            last.get(),
                            origin.name(),
                            origin.file(),
                            Files.getLastModifiedTime(set).toInstant()));
        }
    }

    /**
     * Opens what was left behind, as unsaved work on the file that it belongs to. It stays where it
     * is until {@link #discard} is called.
     *
     * @return the open document, modified
     * @throws DocumentException where it cannot be read
     * @throws IOException where it cannot be read
     */
    public OpenDocument open() throws DocumentException, IOException {
        Origin origin = Origin.read(entry.resolve(Journal.ORIGIN));
        LoadedSet read = SetFile.read(entry.resolve(Journal.SET));
        LoadedSet belonging =
                new LoadedSet(
                        origin.seenFrom(),
                        read.set(),
                        origin.references(read),
                        read.catalogues(),
                        read.materials());
        return OpenDocument.recovered(belonging, origin.file());
    }

    /** Deletes what was left behind. */
    public void discard() {
        Journal.deleteAll(journal);
    }
}
