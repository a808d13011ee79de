package haftline.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;
import java.util.HexFormat;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Saves a file so that at every moment either the old or the new one is there, whole: the bytes go
 * to a temporary file in the same folder and to the medium before it takes the old one's name. The
 * old file is kept once, under its name with a tilde behind.
 */
public final class AtomicSave {
    private static final String BACKUP_MARK = "~";

    /** Links that lead in a circle are not followed for ever. */
    private static final int MOST_LINKS = 40;

    private AtomicSave() {}

    /**
     * Writes a file in place of the one that is there, if any. Where the name is a symbolic link,
     * the file that it leads to is replaced and the link stays. Permissions of the old file are
     * kept.
     *
     * @param file the file
     * @param bytes its new content
     * @throws SaveException where it cannot be written; the old file is then as it was, and nothing
     *     half-written stays behind
     */
    public static void write(Path file, byte[] bytes) throws SaveException {
        write(file, bytes, Disk.REAL);
    }

    /**
     * Name of the backup that a save leaves beside a file.
     *
     * @param file the file
     * @return the same name with a tilde behind
     */
    public static Path backup(Path file) {
        return file.resolveSibling(file.getFileName() + BACKUP_MARK);
    }

    /** What a save asks of a disk, so that a test can let it fail. */
    interface Disk {
        Disk REAL =
                new Disk() {
                    @Override
                    public void write(FileChannel out, ByteBuffer bytes) throws IOException {
                        while (bytes.hasRemaining()) {
                            out.write(bytes);
                        }
                        out.force(true);
                    }

                    @Override
                    public void move(Path from, Path to) throws IOException {
                        Files.move(
                                from,
                                to,
                                StandardCopyOption.ATOMIC_MOVE,
                                StandardCopyOption.REPLACE_EXISTING);
                    }
                };

        /** Writes all bytes and does not return before they are on the medium. */
        void write(FileChannel out, ByteBuffer bytes) throws IOException;

        /** Gives a file another name, taking the place of what has it, in one step. */
        void move(Path from, Path to) throws IOException;
    }

    static void write(Path file, byte[] bytes, Disk disk) throws SaveException {
        try {
            Path target = behindLinks(file);
            if (Files.isDirectory(target)) {
                throw new SaveException(file, "a folder has this name", null);
            }
            if (Files.exists(target)) {
                if (!Files.isRegularFile(target)) {
                    throw new SaveException(file, "it is not a plain file", null);
                }
                replace(backup(target), Files.readAllBytes(target), target, disk);
            }
            replace(target, bytes, target, disk);
        } catch (IOException e) {
            throw new SaveException(file, reason(e), e);
        }
    }

    private static Path behindLinks(Path file) throws IOException {
        Path target = file.toAbsolutePath();
        for (int i = 0; i < MOST_LINKS && Files.isSymbolicLink(target); i++) {
            target = target.resolveSibling(Files.readSymbolicLink(target));
        }
        if (Files.isSymbolicLink(target)) {
            throw new FileSystemException(file.toString(), null, "links lead in a circle");
        }
        return target;
    }

    /** Puts bytes under a name in one step, with the permissions of a file that is there. */
    private static void replace(Path target, byte[] bytes, Path like, Disk disk)
            throws IOException {
        String unique = HexFormat.of().toHexDigits(ThreadLocalRandom.current().nextInt());
        Path temporary = target.resolveSibling("." + target.getFileName() + "." + unique + ".tmp");
        try {
            try (FileChannel out =
                    FileChannel.open(
                            temporary, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
                disk.write(out, ByteBuffer.wrap(bytes));
            }
            keepPermissions(like, temporary);
            disk.move(temporary, target);
        } finally {
            Files.deleteIfExists(temporary);
        }
        syncFolder(target.getParent());
    }

    private static void keepPermissions(Path from, Path to) throws IOException {
        PosixFileAttributeView old = view(from);
        PosixFileAttributeView own = view(to);
        // Not every file system knows them.
        if (Files.exists(from) && old != null && own != null) {
            own.setPermissions(old.readAttributes().permissions());
        }
    }

    private static PosixFileAttributeView view(Path file) {
        return Files.getFileAttributeView(
                file, PosixFileAttributeView.class, LinkOption.NOFOLLOW_LINKS);
    }

    /**
     * The new name itself must reach the medium; some systems cannot open a folder, and need not.
     */
    private static void syncFolder(Path folder) {
        try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
            channel.force(true);
        } catch (IOException e) {
            // The file itself is safe; only the moment at which its name is, is left to the system.
            return;
        }
    }

    private static String reason(IOException e) {
        if (e instanceof NoSuchFileException) {
            return "there is no such folder";
        }
        if (e instanceof AccessDeniedException) {
            return "permission denied";
        }
        if (e instanceof FileSystemException system && system.getReason() != null) {
            return system.getReason();
        }
        return String.valueOf(e.getMessage());
    }
}
