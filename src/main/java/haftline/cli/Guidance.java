package haftline.cli;

import haftline.figures.Speeds;
import haftline.stock.HandSize;
import java.util.List;
import java.util.Optional;

/**
 * What the catalogues say of a piece beside its own figures.
 *
 * @param speeds speeds of the lathe by the first rule of the catalogue; empty where there is none
 * @param breadths breadths of hands, to be held against a handle for the whole hand
 */
record Guidance(Optional<Speeds> speeds, List<HandSize> breadths) {
    /** For a piece that cannot be drawn. */
    static final Guidance NONE = new Guidance(Optional.empty(), List.of());

    Guidance {
        breadths = List.copyOf(breadths);
    }
}
