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

    /**
     * A parts list as the text of a document.
     *
     * @param parts the parts list
     * @return YAML that is read back as the same parts list
     */
    public static String text(PartsList parts) {
        return TreeWriter.write(PartsWriter.tree(parts), OldText.none());
    }

    /**
     * Saves a parts list, keeping the comments of the file that is there.
     *
     * @param file the file
     * @param parts the parts list
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, PartsList parts) throws SaveException {
        Document.save(file, PartsWriter.tree(parts), Document.old(file));
    }
}
