package haftline.edit;

import haftline.set.Piece;
import haftline.set.production.Progress;
import haftline.store.DocumentException;
import haftline.store.ProgressFile;
import haftline.store.SaveException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Names that pieces were given since the set was last saved. The progress of a batch is kept by the
 * names of the pieces in a file of its own, which is written with every tick: until the set is
 * saved it goes by the names that the set has on the disk.
 *
 * <p>Not safe for several threads at once.
 */
public final class Renames {
    /** From the name on the disk to the name now, where they differ. */
    private final Map<String, String> now = new LinkedHashMap<>();

    private List<Piece> known;

    Renames(List<Piece> pieces) {
        known = pieces;
    }

    /** Where nothing is renamed. */
    static Renames none() {
        return new Renames(List.of());
    }

    /** A step was made, taken back or made again: a piece in its place is the same piece. */
    void follow(Draft draft) {
        List<Piece> before = known;
        known = draft.set().pieces();
        if (known.size() != before.size()) {
            return;
        }
        for (int i = 0; i < known.size(); i++) {
            String was = before.get(i).name();
            String is = known.get(i).name();
            if (!was.equals(is)
                    && draft.set().piece(was).isEmpty()
                    && before.stream().noneMatch(piece -> piece.name().equals(is))) {
                renamed(was, is);
            }
        }
    }

    private void renamed(String was, String is) {
        String onDisk = onDisk(was);
        now.remove(onDisk);
        if (!onDisk.equals(is)) {
            now.put(onDisk, is);
        }
    }

    private String onDisk(String name) {
        return now.entrySet().stream()
                .filter(entry -> entry.getValue().equals(name))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(name);
    }

    /**
     * Progress that goes by the names on the disk.
     *
     * @param kept the progress
     * @return the same by the names that the pieces have now
     */
    Progress toNow(Progress kept) {
        return changed(kept, name -> now.getOrDefault(name, name));
    }

    /**
     * Progress that goes by the names that the pieces have now.
     *
     * @param shown the progress
     * @return the same by the names on the disk
     */
    Progress toDisk(Progress shown) {
        return changed(shown, this::onDisk);
    }

    /** Where a name would then stand twice, an old one of a piece that is gone keeps its row. */
    private static Progress changed(Progress progress, UnaryOperator<String> name) {
        try {
            return progress.withNames(name);
        } catch (IllegalArgumentException twice) {
            return progress;
        }
    }

    /**
     * The set was saved: the progress beside it goes by the new names from now on.
     *
     * @param set the set's file
     * @param written what was written
     * @return saved, or why the progress could not be
     */
    SaveResult settle(Path set, List<Path> written) {
        Path file = ProgressFile.beside(set);
        try {
            if (!now.isEmpty() && Files.exists(file)) {
                ProgressFile.save(file, toNow(ProgressFile.read(file)));
            }
            now.clear();
            return new SaveResult.Saved(written);
        } catch (DocumentException wrong) {
            // The next save tries again; until then the names are told apart as before.
            return new SaveResult.Failed(file, wrong.getMessage(), wrong.getMessage(), written);
        } catch (SaveException failed) {
            return SaveResult.Failed.of(failed, written);
        }
    }

    /** The names on the disk are those of now. */
    void forget() {
        now.clear();
    }
}
