package haftline.store;

import java.nio.file.Path;

/** A document that could not be saved; what was there before is untouched. */
public final class SaveException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient Path file;
    private final String why;

    SaveException(Path file, String why, Throwable cause) {
        super(file + ": not saved: " + why + "; what was there before is untouched", cause);
        this.file = file;
        this.why = why;
    }

    /**
     * The file that could not be saved.
     *
     * @return as it was named
     */
    public Path file() {
        return file;
    }

    /**
     * The reason alone.
     *
     * @return a few words, without the file
     */
    public String why() {
        return why;
    }
}
