package haftline.store;

import java.util.ArrayList;
import java.util.List;

/** Keys of a set document. */
final class SetKeys {
    static final String KIND = "set";

    static final Key NAME = Key.text("name", "name of the set").must();
    static final Key NOTE = Key.note("note", "free text");
    static final Key SHAPE =
            Key.text("shape", "shape document, path from this file's folder").must();
    static final Key PARTS =
            Key.text("parts", "parts document, path from this file's folder").must();
    static final Key BATCH =
            Key.text("batch", "batch of the parts document; the last one where not said");
    static final Key RULES =
            Key.text(
                    "rules",
                    "rules document, path from this file's folder; common practice where not said");
    static final Key WORKSHOP =
            Key.text(
                    "workshop",
                    "workshop document, path from this file's folder; common practice where not"
                            + " said");
    static final Key CATALOGUES =
            Key.texts("catalogues", "further catalogue files, paths from this file's folder");
    static final Key STOCK =
            Key.text("stock", "key of the wood or plastic of pieces that name none").must();
    static final Key ADHESIVE =
            Key.text("adhesive", "key of the adhesive; slow-epoxy where not said");
    static final Key RACK =
            Key.several(
                            "rack",
                            "a list of the drills on hand: series such as metric-0.5, drills such"
                                    + " as 6.2 or 17/64, or maps with drill, flutes and point")
                    .must();
    static final Key DRILL = Key.text("drill", "name of the drill").must();
    static final Key FLUTES = Key.length("flutes", 1, 1000, "length of its flutes in mm");
    static final Key POINT =
            Key.number("point", 30, 180, "degrees", "included angle of its point; 180 is flat");
    static final Keys RACK_ITEM = Keys.of("drill", DRILL, FLUTES, POINT);

    static final Key PIECE_NAME = Key.text("name", "name of the piece, unique in the set").must();
    static final Key KIT = Key.text("kit", "kit of the batch").must();
    static final Key PIECE_STOCK =
            Key.text("stock", "key of its own wood or plastic, where not the set's");
    static final Key PIECE_SHAPE = Key.text("shape", "shape document of its own");
    static final Keys PIECE = withChoices("piece", PIECE_NAME, KIT, PIECE_STOCK, PIECE_SHAPE);
    static final Key PIECES = Key.maps("pieces", PIECE, "the pieces of the set").must();

    static final Keys SET = set();

    private SetKeys() {}

    private static Keys withChoices(String what, Key... own) {
        List<Key> keys = new ArrayList<>(List.of(own));
        keys.addAll(ChoicesKeys.ALL);
        return new Keys(what, List.copyOf(keys));
    }

    private static Keys set() {
        Keys head =
                Document.keys(
                        KIND,
                        NAME,
                        NOTE,
                        SHAPE,
                        PARTS,
                        BATCH,
                        RULES,
                        WORKSHOP,
                        CATALOGUES,
                        STOCK,
                        ADHESIVE,
                        RACK);
        List<Key> keys = new ArrayList<>(head.keys());
        keys.addAll(ChoicesKeys.ALL);
        keys.add(PIECES);
        return new Keys(head.what(), List.copyOf(keys));
    }
}
