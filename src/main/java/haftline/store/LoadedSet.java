package haftline.store;

import haftline.handle.Brief;
import haftline.set.HandleSet;
import haftline.set.Materials;
import haftline.set.Piece;
import haftline.stock.Catalogues;
import java.nio.file.Path;
import java.util.List;

/**
 * A set as it was read, with what it was read from.
 *
 * @param file the set's own file
 * @param set the set
 * @param references what the file says of other files
 * @param catalogues the catalogues, the maker's own included
 * @param materials what its keys are looked up in
 */
public record LoadedSet(
        Path file,
        HandleSet set,
        References references,
        Catalogues catalogues,
        Materials materials) {
    /**
     * Everything from which each handle follows, in the order of the pieces.
     *
     * @return one brief a piece
     */
    public List<Brief> briefs() {
        return set.pieces().stream().map(this::brief).toList();
    }

    /**
     * Everything from which one piece's handle follows.
     *
     * @param piece a piece of the set
     * @return its brief
     */
    public Brief brief(Piece piece) {
        return set.brief(piece, materials);
    }

    /**
     * The same file with a changed set.
     *
     * @param changed the set
     * @return the changed copy
     */
    public LoadedSet withSet(HandleSet changed) {
        return new LoadedSet(file, changed, references, catalogues, materials);
    }
}
