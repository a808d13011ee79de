package haftline.ui.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/** Questions that are put to the maker in windows of their own; behind an interface for tests. */
public interface Dialogs {
    /** What to do with unsaved changes. */
    enum Unsaved {
        /** Save them first. */
        SAVE,
        /** Go on without them. */
        DROP,
        /** Go on working. */
        STAY
    }

    /** What to do with a file that another program has changed. */
    enum Changed {
        /** Go on with what is on the board. */
        KEEP_MINE,
        /** Read the files again. */
        READ_AGAIN,
        /** Decide later. */
        LATER
    }

    /** What to do with work that a killed editor left behind. */
    enum LeftBehind {
        /** Go on with it. */
        TAKE_UP,
        /** Throw it away. */
        THROW_AWAY,
        /** Decide at the next start. */
        LATER
    }

    /**
     * Which set to open.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the file, or empty where none was chosen
     */
    Optional<Path> openSet(Path folder);

    /**
     * Where to save a set.
     *
     * @param folder where to look first; ignored where it is no folder
     * @param name name of the file to begin with
     * @return the file, or empty where none was chosen
     */
    Optional<Path> saveSet(Path folder, String name);

    /**
     * Which folder to write into.
     *
     * @param folder where to look first; ignored where it is no folder
     * @return the folder, or empty where none was chosen
     */
    Optional<Path> folder(Path folder);

    /**
     * What to do with unsaved changes.
     *
     * @param set name of the set
     * @return the answer
     */
    Unsaved unsaved(String set);

    /**
     * What to do with files that another program has changed.
     *
     * @param files the files
     * @return the answer
     */
    Changed changedOnDisk(List<Path> files);

    /**
     * What to do with work that was left behind.
     *
     * @param set name of the set
     * @param when when it was last written down, in words
     * @return the answer
     */
    LeftBehind leftBehind(String set, String when);

    /**
     * Asks for a name.
     *
     * @param what what is to be named
     * @param name the name now
     * @return the new name, or empty where none was given
     */
    Optional<String> name(String what, String name);
}
