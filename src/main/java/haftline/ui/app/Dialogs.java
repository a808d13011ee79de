package haftline.ui.app;

import java.nio.file.Path;
import java.util.Optional;

/** Questions that are put to the maker in windows of their own; behind an interface for tests. */
public interface Dialogs {
    /**
     * Which set to open.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen
     */
    Optional<Path> openSet(Path folder);

    /**
     * Whether unsaved changes may be dropped.
     *
     * @param set name of the set
     * @return true to go on without them
     */
    boolean dropChanges(String set);
}
