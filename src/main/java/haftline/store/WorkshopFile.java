package haftline.store;

import haftline.set.Workshop;
import haftline.stock.Catalogue;
import haftline.stock.Stock;
import java.nio.file.Path;
import java.util.Optional;

/** Workshop documents on the disk. */
public final class WorkshopFile {
    private WorkshopFile() {}

    /**
     * Reads a workshop document.
     *
     * @param file the file
     * @return what it says
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static Workshop read(Path file) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<Workshop> read = read(file, Optional.empty(), problems);
        problems.refuseIfAny();
        return read.orElseThrow();
    }

    static Optional<Workshop> read(Path file, Optional<Catalogue<Stock>> stock, Problems problems) {
        return Document.open(file, WorkshopKeys.KIND, WorkshopKeys.WORKSHOP, problems)
                .flatMap(map -> WorkshopReader.read(map, stock));
    }

    /**
     * A workshop as the text of a document, which says only where it differs from common practice.
     *
     * @param workshop the workshop
     * @return YAML that is read back as the same workshop
     */
    public static String text(Workshop workshop) {
        return TreeWriter.write(WorkshopWriter.tree(workshop, OldText.none()), OldText.none());
    }

    /**
     * Saves a workshop, keeping the comments of the file that is there and what it states.
     *
     * @param file the file
     * @param workshop the workshop
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, Workshop workshop) throws SaveException {
        OldText old = Document.old(file);
        Document.save(file, WorkshopWriter.tree(workshop, old), old);
    }
}
