package haftline.edit;

import haftline.handle.Choices;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.store.References;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Commands on the pieces of a set. */
public final class PieceEdits {
    private PieceEdits() {}

    /**
     * Adds a piece behind the others.
     *
     * @param kit name of its kit in the batch in use; also its name, numbered where that is taken
     * @return the command
     */
    public static Command add(String kit) {
        return new Command(
                "add piece",
                draft ->
                        pieces(
                                draft,
                                pieces ->
                                        pieces.add(
                                                new Piece(
                                                        freeName(draft.set(), kit),
                                                        kit,
                                                        Optional.empty(),
                                                        Optional.empty(),
                                                        Choices.NONE))));
    }

    /**
     * Copies a piece, with all in which it goes its own way, behind itself.
     *
     * @param name the piece's name
     * @return the command
     */
    public static Command copy(String name) {
        return new Command(
                "copy " + name,
                draft -> {
                    Piece original = draft.piece(name);
                    String copyName = freeName(draft.set(), name);
                    Draft copied =
                            pieces(
                                    draft,
                                    pieces ->
                                            pieces.add(
                                                    pieces.indexOf(original) + 1,
                                                    original.withName(copyName)));
                    return shapes(
                            copied,
                            shapes ->
                                    Optional.ofNullable(shapes.get(name))
                                            .ifPresent(path -> shapes.put(copyName, path)));
                });
    }

    /**
     * Takes a piece out of the set.
     *
     * @param name the piece's name
     * @return the command; refused for the last piece
     */
    public static Command remove(String name) {
        return new Command(
                "remove " + name,
                draft -> {
                    if (draft.set().pieces().size() == 1) {
                        throw new IllegalArgumentException(
                                "a set has at least one piece; add another before this one goes");
                    }
                    Piece gone = draft.piece(name);
                    return shapes(
                            pieces(draft, pieces -> pieces.remove(gone)),
                            shapes -> shapes.remove(name));
                });
    }

    /**
     * Puts a piece at another place in the row.
     *
     * @param name the piece's name
     * @param index where it will stand, 0 for the first
     * @return the command
     */
    public static Command reorder(String name, int index) {
        return new Command(
                "reorder " + name,
                draft -> {
                    Piece moved = draft.piece(name);
                    return pieces(
                            draft,
                            pieces -> {
                                pieces.remove(moved);
                                pieces.add(Math.max(0, Math.min(index, pieces.size())), moved);
                            });
                });
    }

    /**
     * Gives a piece another name.
     *
     * @param name its name now
     * @param newName unique in the set
     * @return the command
     */
    public static Command rename(String name, String newName) {
        String wanted = newName.strip();
        return new Command(
                "rename " + name,
                draft -> {
                    if (!wanted.equals(name) && draft.set().piece(wanted).isPresent()) {
                        throw new IllegalArgumentException(
                                "another piece is called \"" + wanted + "\"");
                    }
                    Draft renamed = draft.withPiece(name, piece -> piece.withName(wanted));
                    HandleSet set = renamed.set();
                    return shapes(
                            renamed.withSet(
                                    set.withWorkshop(
                                            WorkshopEdits.renamed(
                                                    set.workshop(),
                                                    r -> r.withPieceAlso(name, wanted)))),
                            shapes ->
                                    Optional.ofNullable(shapes.remove(name))
                                            .ifPresent(path -> shapes.put(wanted, path)));
                });
    }

    /**
     * Gives a piece another kit of the batch.
     *
     * @param name the piece's name
     * @param kit name of the kit
     * @return the command
     */
    public static Command kit(String name, String kit) {
        return new Command(
                "take kit " + kit, draft -> draft.withPiece(name, piece -> piece.withKit(kit)));
    }

    /** The name itself, or the first of "name 2", "name 3" that no piece has. */
    static String freeName(String name, Predicate<String> isTaken) {
        String base = name.replaceFirst(" \\d+$", "");
        String free = base;
        for (int number = 2; isTaken.test(free); number++) {
            free = base + " " + number;
        }
        return free;
    }

    private static String freeName(HandleSet set, String name) {
        return freeName(name, other -> set.piece(other).isPresent());
    }

    private static Draft pieces(Draft draft, Consumer<List<Piece>> change) {
        List<Piece> pieces = new ArrayList<>(draft.set().pieces());
        change.accept(pieces);
        return draft.withSet(draft.set().withPieces(pieces));
    }

    private static Draft shapes(Draft draft, Consumer<Map<String, String>> change) {
        References now = draft.references();
        Map<String, String> shapes = new TreeMap<>(now.pieceShapes());
        change.accept(shapes);
        return draft.withReferences(
                new References(
                        now.shape(),
                        now.parts(),
                        now.batch(),
                        now.rules(),
                        now.workshop(),
                        now.catalogues(),
                        now.rack(),
                        shapes));
    }
}
