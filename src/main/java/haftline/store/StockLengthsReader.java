package haftline.store;

import static haftline.store.StockLengthsKeys.*;

import haftline.set.StockLength;
import haftline.set.StockLengths;
import haftline.stock.Catalogue;
import haftline.stock.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Reads the sticks on the rack. */
final class StockLengthsReader {
    private StockLengthsReader() {}

    static Optional<StockLengths> read(MapReader map, Optional<Catalogue<Stock>> stock) {
        double kerf = map.length(KERF, 0);
        OptionalDouble kept = map.optionalLength(KEPT);
        List<StockLength> sticks = new ArrayList<>();
        map.maps(STICKS).forEach(each -> stick(each, stock).ifPresent(sticks::add));
        return map.build(() -> new StockLengths(kerf, kept, sticks));
    }

    private static Optional<StockLength> stick(MapReader map, Optional<Catalogue<Stock>> stock) {
        String key = map.text(STOCK);
        if (!key.isEmpty() && stock.isPresent() && stock.get().find(key).isEmpty()) {
            map.problem(STOCK, stock.get().missing(key));
        }
        double across = map.length(ACROSS, 1);
        double length = map.length(LENGTH, 1);
        int count = map.whole(COUNT, 0);
        OptionalDouble each = map.optionalNumber(PRICE_EACH);
        OptionalDouble perMetre = map.optionalNumber(PRICE_PER_METRE);
        return map.build(() -> new StockLength(key, across, length, count, each, perMetre));
    }
}
