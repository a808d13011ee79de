package haftline.set;

import haftline.stock.Adhesive;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueException;
import haftline.stock.Catalogues;
import haftline.stock.Keyed;
import haftline.stock.Metal;
import haftline.stock.Stock;

/**
 * What pieces are made of, looked up by key.
 *
 * @param stock woods and plastics
 * @param metals metals of blades, ferrules and caps
 * @param adhesives adhesives
 */
public record Materials(
        Catalogue<Stock> stock, Catalogue<Metal> metals, Catalogue<Adhesive> adhesives) {
    /**
     * Reads what pieces need from the catalogues.
     *
     * @param catalogues all catalogues
     * @return the materials
     * @throws CatalogueException where a catalogue file has errors
     */
    public static Materials of(Catalogues catalogues) throws CatalogueException {
        return new Materials(catalogues.stock(), catalogues.metals(), catalogues.adhesives());
    }

    Metal metal(String key) {
        return of(metals, key);
    }

    Stock stock(String key) {
        return of(stock, key);
    }

    Adhesive adhesive(String key) {
        return of(adhesives, key);
    }

    /** What is missing is said only where it is: it takes longer than all of a piece's lookups. */
    private static <E extends Keyed> E of(Catalogue<E> catalogue, String key) {
        return catalogue
                .find(key)
                .orElseThrow(() -> new IllegalArgumentException(catalogue.missing(key)));
    }
}
