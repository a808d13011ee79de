package haftline.cli;

import haftline.figures.Speeds;
import haftline.stock.HandSize;
import java.util.List;
import java.util.Optional;

/**
 * What catalogues and workshop say of a piece beside its own figures.
 *
 * @param speeds speeds of the lathe by the first rule of the catalogue; empty where there is none
 * @param breadths breadths of hands, to be held against a handle for the whole hand
 * @param mixedMorePercent adhesive that is mixed beyond what the joints hold, %
 */
record Guidance(Optional<Speeds> speeds, List<HandSize> breadths, double mixedMorePercent) {
    /** For a piece that cannot be drawn. */
    static final Guidance NONE = new Guidance(Optional.empty(), List.of(), 0);

    Guidance {
        breadths = List.copyOf(breadths);
    }
}
