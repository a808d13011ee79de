package haftline.edit;

import haftline.handle.Rules;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.store.LoadedSet;
import haftline.store.PartsFile;
import haftline.store.References;
import haftline.store.RulesFile;
import haftline.store.SetFile;
import haftline.store.ShapeFile;
import haftline.store.WorkshopFile;
import java.io.Closeable;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.atomic.AtomicReference;

/**
 * Unsaved work, written beside the documents after every step, so that a kill loses at most the
 * gesture under way. A journal is a folder of its own that its process holds a lock on; what it
 * holds is a set with its files in the ordinary formats, so that it can be read by hand too.
 *
 * <p>Writing is done by a thread of its own: an edit never waits for the disk. Where it cannot be
 * written, editing goes on and {@link #problem()} says so.
 */
public final class Journal implements Closeable {
    static final String LOCK = "lock";
    static final String SET = "set.yaml";
    static final String ORIGIN = "origin.properties";
    private static final String PARTS = "parts.yaml";
    private static final String SHAPE = "shape.yaml";
    private static final String RULES = "rules.yaml";
    private static final String WORKSHOP = "workshop.yaml";

    /** What is to be written: the content, and the file it belongs to, if any. */
    private record Entry(LoadedSet content, Optional<Path> file) {}

    private final Path folder;
    private final FileChannel channel;
    private final FileLock lock;
    private final AtomicReference<Entry> waiting = new AtomicReference<>();
    private final AtomicReference<String> problem = new AtomicReference<>();
    private final ExecutorService writer =
            Executors.newSingleThreadExecutor(
                    task -> {
                        Thread thread = new Thread(task, "journal");
                        thread.setDaemon(true);
                        return thread;
                    });
    private int number;

    private Journal(Path folder, FileChannel channel, FileLock lock) {
        this.folder = folder;
        this.channel = channel;
        this.lock = lock;
    }

    /**
     * A new journal.
     *
     * @param recovery the folder of all journals, made if it is not there
     * @return the journal, empty
     * @throws IOException where the folder cannot be written to
     */
    public static Journal in(Path recovery) throws IOException {
        Files.createDirectories(recovery);
        Path folder = Files.createTempDirectory(recovery, "set-");
        FileChannel channel =
                FileChannel.open(
                        folder.resolve(LOCK), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        return new Journal(folder, channel, channel.lock());
    }

    /**
     * Writes the content down, in the background; of several that wait only the last is written.
     *
     * @param content the content; its references are seen from its file
     * @param file the file that it belongs to, or empty for a set that was never saved
     */
    void record(LoadedSet content, Optional<Path> file) {
        waiting.set(new Entry(content, file));
        writer.execute(this::writeWaiting);
    }

    /** Forgets all that was written: there is nothing unsaved any more. */
    void clear() {
        waiting.set(null);
        writer.execute(() -> remove(number));
    }

    /**
     * Why unsaved work could not be written down.
     *
     * @return a sentence, or empty where it was
     */
    public Optional<String> problem() {
        return Optional.ofNullable(problem.get());
    }

    /**
     * Waits until all that was asked for is on the disk.
     *
     * @throws IOException where the wait is broken off
     */
    public void settle() throws IOException {
        try {
            writer.submit(() -> {}).get();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException("interrupted while the journal was written", e);
        } catch (ExecutionException e) {
            throw new IOException(e.getCause());
        }
    }

    private void writeWaiting() {
        Entry entry = waiting.getAndSet(null);
        if (entry == null) {
            return;
        }
        try {
            Path passing = Files.createDirectories(folder.resolve("writing"));
            deleteAll(passing);
            Files.createDirectories(passing);
            write(passing, entry);
            // Whoever looks finds a whole entry or none.
            Files.move(
                    passing,
                    folder.resolve(Integer.toString(number + 1)),
                    StandardCopyOption.ATOMIC_MOVE);
            number++;
            remove(number - 1);
            problem.set(null);
        } catch (IOException e) {
            problem.set("Unsaved work cannot be kept in " + folder + ": " + e.getMessage());
        }
    }

    private void remove(int entry) {
        deleteAll(folder.resolve(Integer.toString(entry)));
    }

    private static void write(Path to, Entry entry) throws IOException {
        LoadedSet content = entry.content();
        References said = content.references();
        Map<String, String> shapes = new HashMap<>();
        int count = 0;
        for (var piece : content.set().pieces()) {
            if (piece.shape().isPresent()) {
                String name = "piece-" + ++count + ".yaml";
                write(to.resolve(name), ShapeFile.text(piece.shape().get()));
                shapes.put(piece.name(), name);
            }
        }
        Shape shared = content.set().shape();
        write(to.resolve(SHAPE), ShapeFile.text(shared));
        write(to.resolve(PARTS), PartsFile.text(content.set().parts()));
        References here =
                new References(
                        SHAPE,
                        PARTS,
                        Optional.of(content.set().batch()),
                        rules(to, content.set().rules()),
                        workshop(to, content.set().workshop()),
                        said.catalogues().stream()
                                .map(path -> absolute(content.file(), path))
                                .toList(),
                        said.rack(),
                        shapes);
        LoadedSet moved =
                new LoadedSet(
                        to.resolve(SET),
                        content.set(),
                        here,
                        content.catalogues(),
                        content.materials());
        write(to.resolve(ORIGIN), Origin.of(content, entry.file()).text());
        write(to.resolve(SET), SetFile.text(moved));
    }

    /** The rules as they are now: their own file may not say so yet. */
    private static Optional<String> rules(Path to, Rules rules) throws IOException {
        if (rules.equals(Rules.COMMON_PRACTICE)) {
            return Optional.empty();
        }
        write(to.resolve(RULES), RulesFile.text(rules));
        return Optional.of(RULES);
    }

    /** The workshop as it is now: its own file may not say so yet. */
    private static Optional<String> workshop(Path to, Workshop workshop) throws IOException {
        if (workshop.equals(Workshop.COMMON_PRACTICE)) {
            return Optional.empty();
        }
        write(to.resolve(WORKSHOP), WorkshopFile.text(workshop));
        return Optional.of(WORKSHOP);
    }

    private static String absolute(Path file, String reference) {
        return Whereabouts.normal(file.resolveSibling(reference)).toString();
    }

    private static void write(Path file, String text) throws IOException {
        try (FileChannel out =
                FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
            ByteBuffer bytes = ByteBuffer.wrap(text.getBytes(StandardCharsets.UTF_8));
            while (bytes.hasRemaining()) {
                out.write(bytes);
            }
            out.force(true);
        }
    }

    /** The document is closed in good order: nothing is left to recover. */
    @Override
    public void close() throws IOException {
        waiting.set(null);
        writer.shutdown();
        try {
            // A write under way must not make again what is deleted here.
            writer.awaitTermination(5, java.util.concurrent.TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        lock.release();
        channel.close();
        deleteAll(folder);
    }

    /** Deletes a folder; what cannot be deleted stays and harms nobody. */
    static void deleteAll(Path folder) {
        java.io.File[] files = folder.toFile().listFiles();
        if (files != null) {
            for (java.io.File file : files) {
                deleteAll(file.toPath());
            }
        }
        folder.toFile().delete();
    }
}
