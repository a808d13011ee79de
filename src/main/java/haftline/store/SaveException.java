package haftline.store;

import java.nio.file.Path;

/** A document that could not be saved; what was there before is untouched. */
public final class SaveException extends Exception {
    private static final long serialVersionUID = 1L;

    private final String why;

    SaveException(Path file, String why, Throwable cause) {
        super(file + ": not saved: " + why + "; what was there before is untouched", cause);
        this.why = why;
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
