package haftline.store;

import java.nio.file.Path;
import java.util.Optional;

/** Set documents on the disk. */
public final class SetFile {
    private SetFile() {}

    /**
     * Reads a set document and the files that it names.
     *
     * @param file the file
     * @return what it says
     * @throws DocumentException where it, or a file that it names, cannot be read or anything is
     *     wrong with it
     */
    public static LoadedSet read(Path file) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<LoadedSet> read =
                Document.open(file, SetKeys.KIND, SetKeys.SET, problems)
                        .flatMap(new SetReader(file, problems)::read);
        problems.refuseIfAny();
        return read.orElseThrow();
    }
}
