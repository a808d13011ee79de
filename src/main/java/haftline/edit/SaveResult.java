package haftline.edit;

import haftline.store.SaveException;
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
     * @param file the file that could not be written
     * @param reason what is wrong with it, a few words without its name
     * @param why both together, a sentence
     * @param written what had been written before it went wrong
     */
    record Failed(Path file, String reason, String why, List<Path> written) implements SaveResult {
        static Failed of(SaveException failed, List<Path> written) {
            return new Failed(failed.file(), failed.why(), failed.getMessage(), written);
        }
    }

    /**
     * Whether all is on the disk.
     *
     * @return true where it was saved
     */
    default boolean isSaved() {
        return this instanceof Saved;
    }
}
