package haftline.store;

import static haftline.store.ProgressKeys.*;

import haftline.set.production.Progress;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Progress documents on the disk: how far the batch of a set is. */
public final class ProgressFile {
    private static final String ENDING = "-progress.yaml";

    private ProgressFile() {}

    /**
     * Where the progress of a set is kept: beside the set.
     *
     * @param set the set's file
     * @return the file, whether it is there or not
     */
    public static Path beside(Path set) {
        String stem = set.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        return set.resolveSibling(stem + ENDING);
    }

    /**
     * Reads a progress document.
     *
     * @param file the file
     * @return what it says
     * @throws DocumentException where it cannot be read or anything is wrong with it
     */
    public static Progress read(Path file) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Optional<Progress> read =
                Document.open(file, KIND, PROGRESS, problems).flatMap(ProgressReader::read);
        problems.refuseIfAny();
        return read.orElseThrow();
    }

    /**
     * Refuses a progress document with pieces that its set does not have, or not any more.
     *
     * @param file the file
     * @param pieces names of the set's pieces
     * @throws DocumentException where there are such, or the file cannot be read
     */
    public static void refuseStrangers(Path file, List<String> pieces) throws DocumentException {
        Problems problems = new Problems(file.toString());
        Document.open(file, KIND, PROGRESS, problems)
                .ifPresent(map -> ProgressReader.strangers(map, pieces));
        problems.refuseIfAny();
    }

    /**
     * Progress as the text of a document.
     *
     * @param progress the progress
     * @return YAML that is read back as the same progress
     */
    public static String text(Progress progress) {
        return TreeWriter.write(tree(progress), OldText.none());
    }

    /**
     * Saves progress, keeping the comments of the file that is there.
     *
     * @param file the file
     * @param progress the progress
     * @throws SaveException where it cannot be written; the old file is then as it was
     */
    public static void save(Path file, Progress progress) throws SaveException {
        Document.save(file, tree(progress), Document.old(file));
    }

    private static Tree.Fields tree(Progress progress) {
        return Document.head(KIND)
                .text(SET, progress.set())
                .text(BATCH, progress.batch())
                .put(STEPS, Tree.Rows.flat(progress.steps().stream().map(Tree.Text::new).toList()))
                .put(
                        PIECES,
                        Tree.Rows.tall(
                                progress.pieces().stream()
                                        .map(piece -> piece(piece, progress.steps()))
                                        .toList()));
    }

    private static Tree.Fields piece(Progress.PieceProgress piece, List<String> steps) {
        List<Tree> done = new ArrayList<>();
        for (int i = 0; i < steps.size(); i++) {
            if (piece.done().get(i) > 0) {
                done.add(
                        Tree.Fields.flat()
                                .text(STEP, steps.get(i))
                                .number(COUNT, piece.done().get(i)));
            }
        }
        return Tree.Fields.tall()
                .text(NAME, piece.piece())
                .number(QUANTITY, piece.quantity())
                .some(DONE, Tree.Rows.tall(done));
    }
}
