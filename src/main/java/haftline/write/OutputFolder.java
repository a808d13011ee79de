package haftline.write;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.NotDirectoryException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/**
 * A folder that files are written to, whole or not at all.
 *
 * <p>Every file is first written under a passing name in the same folder, forced to the disk and
 * then renamed, so that a reader sees the old file or the new one. Several files are all staged
 * before the first is renamed: a disk that fills leaves the folder as it was.
 */
public final class OutputFolder {
    /** Tells two runs and two files of one run apart; the names never outlive a run. */
    private static final AtomicLong COUNTER = new AtomicLong();

    private final Path folder;
    private final FileSink sink;

    private OutputFolder(Path folder, FileSink sink) {
        this.folder = folder;
        this.sink = sink;
    }

    /**
     * A folder, made with its parents on the first write if it is not there.
     *
     * @param folder its path
     * @return the folder
     */
    public static OutputFolder at(Path folder) {
        return at(folder, FileSink.DISK);
    }

    /** A folder on something else than the disk. */
    static OutputFolder at(Path folder, FileSink sink) {
        return new OutputFolder(folder, sink);
    }

    /**
     * Where the folder is.
     *
     * @return its path
     */
    public Path path() {
        return folder;
    }

    /**
     * Writes one file, in place of any of that name.
     *
     * @param name a plain file name
     * @param content the bytes
     * @return the path of the file
     * @throws OutputException where it cannot be written; the folder's files are then as before
     */
    public Path write(String name, byte[] content) throws OutputException {
        return write(List.of(new OutputFile(name, content))).get(0);
    }

    /**
     * Writes some files, in place of any of those names.
     *
     * @param files the files
     * @return the paths of the files, in the same order
     * @throws OutputException where one cannot be written; no file is then half-written, and if
     *     there was no room or no permission for one, none is changed
     */
    public List<Path> write(List<OutputFile> files) throws OutputException {
        makeFolder();
        List<Path> staged = new ArrayList<>(files.size());
        try {
            for (OutputFile file : files) {
                staged.add(stage(file));
            }
            List<Path> written = new ArrayList<>(files.size());
            for (int i = 0; i < files.size(); i++) {
                written.add(rename(staged.get(i), folder.resolve(files.get(i).name())));
            }
            return List.copyOf(written);
        } finally {
            // What was renamed is no longer there under its passing name; what is left must go.
            staged.forEach(OutputFolder::discard);
        }
    }

    private void makeFolder() throws OutputException {
        try {
            for (Path left : left()) {
                Files.createDirectories(left);
            }
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException e) {
            throw new OutputException(folder, "it is a file, not a folder", e);
        } catch (NoSuchFileException e) {
            throw new OutputException(folder, "no folder can be made there", e);
        } catch (IOException e) {
            throw new OutputException(folder, reason(e), e);
        }
    }

    /** Folders that the path enters and leaves again: {@code new/../other} leads through new. */
    private List<Path> left() {
        List<Path> left = new ArrayList<>();
        Path way = folder.getRoot() == null ? Path.of("") : folder.getRoot();
        for (Path name : folder) {
            if (name.toString().equals("..")) {
                left.add(way);
            }
            way = way.resolve(name);
        }
        return left;
    }

    private Path stage(OutputFile file) throws OutputException {
        Path target = folder.resolve(file.name());
        if (Files.isDirectory(target, LinkOption.NOFOLLOW_LINKS)) {
            throw new OutputException(target, "there is a folder of that name", null);
        }
        Path passing =
                folder.resolve(
                        "."
                                + ProcessHandle.current().pid()
                                + "-"
                                + COUNTER.incrementAndGet()
                                + ".part");
        try {
            sink.write(passing, file.content());
            return passing;
        } catch (IOException e) {
            discard(passing);
            throw new OutputException(target, reason(e), e);
        }
    }

    private static Path rename(Path passing, Path target) throws OutputException {
        try {
            return Files.move(
                    passing,
                    target,
                    StandardCopyOption.ATOMIC_MOVE,
                    StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new OutputException(target, reason(e), e);
        }
    }

    private static void discard(Path passing) {
        try {
            Files.deleteIfExists(passing);
        } catch (IOException e) {
            // The failure that led here is the one worth telling; a stray passing file harms
            // nobody.
            passing.toFile().deleteOnExit();
        }
    }

    private static String reason(IOException e) {
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof NotDirectoryException || e instanceof FileAlreadyExistsException) {
            return "a file is in the way where a folder is needed";
        }
        if (e instanceof NoSuchFileException) {
            return "the folder is no longer there";
        }
        if (e instanceof FileSystemException fileSystem && fileSystem.getReason() != null) {
            return fileSystem.getReason();
        }
        return e.getMessage() == null ? e.getClass().getSimpleName() : e.getMessage();
    }
}
