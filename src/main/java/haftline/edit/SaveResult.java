package haftline.edit;

import java.nio.file.Path;
import java.util.List;

/** What came of a save. */
public sealed interface SaveResult {
    /**
     * It was saved.
     *
     * @param files the files that were written
     */
    record Saved(List<Path> files) implements SaveResult {}

    /** The set has no file yet and needs a name first. */
    record NeedsName() implements SaveResult {}

    /**
     * Nothing was written: another program has changed or removed files since they were read.
     *
     * @param files those files
     */
    record ChangedOnDisk(List<Path> files) implements SaveResult {}

    /**
     * It was not saved, or not all of it; the document stays modified.
     *
     * @param why what is wrong, a sentence
     * @param written what had been written before it went wrong
     */
    record Failed(String why, List<Path> written) implements SaveResult {}

    /**
     * Whether all is on the disk.
     *
     * @return true where it was saved
     */
    default boolean isSaved() {
        return this instanceof Saved;
    }
}
