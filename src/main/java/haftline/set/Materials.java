package haftline.set;

import haftline.stock.Adhesive;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueException;
import haftline.stock.Catalogues;
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
        return found(metals.find(key).orElse(null), metals.missing(key));
    }

    Stock stock(String key) {
        return found(stock.find(key).orElse(null), stock.missing(key));
    }

    Adhesive adhesive(String key) {
        return found(adhesives.find(key).orElse(null), adhesives.missing(key));
    }

    private static <T> T found(T entry, String message) {
        if (entry == null) {
            throw new IllegalArgumentException(message);
        }
        return entry;
    }
}
