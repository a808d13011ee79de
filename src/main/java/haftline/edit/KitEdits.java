package haftline.edit;

import haftline.parts.Batch;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import haftline.set.HandleSet;
import haftline.set.Piece;
import java.util.ArrayList;
import java.util.List;

/** Commands on the kits of the batch in use themselves, beside what is measured of them. */
public final class KitEdits {
    private KitEdits() {}

    /**
     * Gives a piece a kit of its own, like the one that it had until it is measured; it goes by
     * that one's name with a number.
     *
     * @param piece name of the piece
     * @return the command
     */
    public static Command another(String piece) {
        return new Command(
                "another kit",
                draft -> {
                    String kit = draft.piece(piece).kit();
                    Batch inUse = draft.set().batchInUse();
                    String name = PieceEdits.freeName(kit, other -> has(inUse, other));
                    Draft more =
                            PartsEdits.batch(
                                    draft,
                                    kits -> {
                                        List<Kit> all = new ArrayList<>(kits);
                                        all.add(named(PartsEdits.find(kits, kit), name));
                                        return all;
                                    });
                    return more.withPiece(piece, own -> own.withKit(name));
                });
    }

    /**
     * Gives a kit another name in every batch; the pieces that use it follow, and it has the price
     * of its old name.
     *
     * @param kit its name now
     * @param newName no other kit's
     * @return the command
     */
    public static Command rename(String kit, String newName) {
        String wanted = newName.strip();
        return new Command(
                "rename kit " + kit,
                draft -> {
                    HandleSet set = draft.set();
                    PartsList parts = set.parts();
                    if (!wanted.equals(kit)
                            && parts.batches().stream().anyMatch(b -> has(b, wanted))) {
                        throw new IllegalArgumentException(
                                "another kit is called \"" + wanted + "\"");
                    }
                    List<Batch> batches =
                            parts.batches().stream()
                                    .map(b -> new Batch(b.id(), b.note(), renamed(b, kit, wanted)))
                                    .toList();
                    List<Piece> pieces =
                            set.pieces().stream()
                                    .map(p -> p.kit().equals(kit) ? p.withKit(wanted) : p)
                                    .toList();
                    return draft.withSet(
                            new HandleSet(
                                    set.name(),
                                    set.note(),
                                    set.shape(),
                                    new PartsList(parts.name(), parts.note(), batches),
                                    set.batch(),
                                    set.rules(),
                                    WorkshopEdits.renamed(
                                            set.workshop(), r -> r.withKitAlso(kit, wanted)),
                                    set.rack(),
                                    set.stock(),
                                    set.adhesive(),
                                    set.common(),
                                    pieces));
                });
    }

    private static boolean has(Batch batch, String kit) {
        return batch.kits().stream().anyMatch(each -> each.name().equals(kit));
    }

    private static List<Kit> renamed(Batch batch, String kit, String newName) {
        return batch.kits().stream()
                .map(old -> old.name().equals(kit) ? named(old, newName) : old)
                .toList();
    }

    private static Kit named(Kit kit, String name) {
        return new Kit(name, kit.blade(), kit.tang(), kit.seatMm(), kit.ferrule(), kit.cap());
    }
}
