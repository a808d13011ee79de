package haftline.edit;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.nio.file.attribute.FileTime;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.Optional;

/**
 * What a file was when it was last seen, so that a change by another program is noticed.
 *
 * @param size bytes
 * @param modified when it was last written
 * @param digest of its content
 */
record FileStamp(long size, FileTime modified, String digest) {
    /** The stamp of a file; empty where there is none that can be read. */
    static Optional<FileStamp> of(Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return Optional.of(new FileStamp(now.size(), now.lastModifiedTime(), digest(file)));
        } catch (IOException unreadable) {
            return Optional.empty();
        }
    }

    /** Whether a file's content is still this; read again only where size or time differ. */
    boolean isOf(Path file) {
        try {
            BasicFileAttributes now = Files.readAttributes(file, BasicFileAttributes.class);
            return now.size() == size
                    && (now.lastModifiedTime().equals(modified) || digest(file).equals(digest));
        } catch (IOException unreadable) {
            return false;
        }
    }

    private static String digest(Path file) throws IOException {
        try {
            MessageDigest sha = MessageDigest.getInstance("SHA-256");
            return HexFormat.of().formatHex(sha.digest(Files.readAllBytes(file)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
