package haftline.store;

import haftline.handle.Rules;
import java.nio.file.Path;
import java.util.Optional;

/** Rules documents on the disk. */
public final class RulesFile {
    private RulesFile() {}

    /**
     * Reads a rules document.
     *
     * @param file the file
     * @return what it says
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static Rules read(Path file) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<Rules> read = read(file, problems);
        problems.refuseIfAny();
        return read.orElseThrow();
    }

    static Optional<Rules> read(Path file, Problems problems) {
        return Document.open(file, RulesKeys.KIND, RulesKeys.RULES, problems)
                .flatMap(RulesReader::read);
    }

    /**
     * Rules as the text of a document, which says only where they differ from common practice.
     *
     * @param rules the rules
     * @return YAML that is read back as the same rules
     */
    public static String text(Rules rules) {
        return TreeWriter.write(RulesWriter.tree(rules, OldText.none()), OldText.none());
    }

    /**
     * Saves rules, keeping the comments of the file that is there and the rules that it states.
     *
     * @param file the file
     * @param rules the rules
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, Rules rules) throws SaveException {
        OldText old = Document.old(file);
        Document.save(file, RulesWriter.tree(rules, old), old);
    }
}
