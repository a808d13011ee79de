package haftline.write;

import java.nio.file.Path;

/** A file could not be written; nothing half-written was left. */
public final class OutputException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path path;
    private final String reason;

    /**
     * A failure.
     *
     * @param path the file or folder that could not be written
     * @param reason why, in words for the user
     * @param cause what the system said
     */
    public OutputException(Path path, String reason, Throwable cause) {
        super("cannot write " + path + ": " + reason, cause);
        this.path = path;
        this.reason = reason;
    }

    /**
     * What could not be written.
     *
     * @return the file or folder
     */
    public Path path() {
        return path;
    }

    /**
     * Why.
     *
     * @return words for the user
     */
    public String reason() {
        return reason;
    }
}
