package haftline.cli;

import java.nio.file.Path;
import java.util.Optional;

/**
 * The editor's window, found as a service: the command line knows nothing of the toolkit, which
 * would cost every other verb its start.
 */
public interface Window {
    /**
     * Opens the window and returns when it is closed.
     *
     * @param set the set to open, or empty for the demonstration set
     */
    void open(Optional<Path> set);
}
