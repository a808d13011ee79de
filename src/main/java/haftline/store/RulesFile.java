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
}
