package haftline.store;

import haftline.parts.PartsList;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Optional;

/** Parts documents on the disk. */
public final class PartsFile {
    private PartsFile() {}

    /**
     * Reads a parts document.
     *
     * @param file the file
     * @param metals keys of the metals that are known
     * @return what it says
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static PartsList read(Path file, Collection<String> metals) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<PartsList> read = read(file, metals, problems);
        problems.refuseIfAny();
        return read.orElseThrow();
    }

    static Optional<PartsList> read(Path file, Collection<String> metals, Problems problems) {
        return Document.open(file, PartsKeys.KIND, PartsKeys.PARTS, problems)
                .flatMap(new PartsReader(metals)::read);
    }
}
