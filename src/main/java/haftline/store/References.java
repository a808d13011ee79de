package haftline.store;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

/**
 * What a set document says of other files, as it says it, so that it can be written again.
 *
 * @param shape path of the shape document
 * @param parts path of the parts document
 * @param batch the batch, or empty for the last one of the parts document
 * @param rules path of the rules document, or empty for common practice
 * @param workshop path of the workshop document, or empty for the common one
 * @param catalogues paths of further catalogue files
 * @param rack the rack's items
 * @param pieceShapes paths of the shapes of pieces that have their own, by the piece's name
 */
public record References(
        String shape,
        String parts,
        Optional<String> batch,
        Optional<String> rules,
        Optional<String> workshop,
        List<String> catalogues,
        List<RackItem> rack,
        Map<String, String> pieceShapes) {
    /** Copies the collections. */
    public References {
        catalogues = List.copyOf(catalogues);
        rack = List.copyOf(rack);
        pieceShapes = java.util.Collections.unmodifiableMap(new TreeMap<>(pieceShapes));
    }

    /**
     * A series of drills, or one drill.
     *
     * @param name key of the series or name of the drill
     * @param flutesMm length of the drill's flutes, mm, where measured
     * @param pointDeg included angle of the drill's point, degrees, where not the usual one
     */
    public record RackItem(String name, OptionalDouble flutesMm, OptionalDouble pointDeg) {}
}
