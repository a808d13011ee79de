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

    /**
     * A set as the text of its own document; the files that it names are not written.
     *
     * @param set the set
     * @return YAML that is read back as the same set
     */
    public static String text(LoadedSet set) {
        return TreeWriter.write(SetWriter.tree(set.set(), set.references()), OldText.none());
    }

    /**
     * Saves a set's own document, keeping the comments of the file that is there. The files that it
     * names are saved by themselves.
     *
     * @param file the file; paths that the set names are seen from its folder
     * @param set the set
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, LoadedSet set) throws SaveException {
        Tree.Fields tree = SetWriter.tree(set.set(), set.references());
        Document.save(file, tree, Document.old(file));
    }
}
