package haftline.store;

import static haftline.store.PartsKeys.*;

import haftline.measure.Quote;
import haftline.parts.Batch;
import haftline.parts.Kit;
import haftline.parts.PartsList;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads a parts document. */
final class PartsReader {
    private final Collection<String> metals;

    PartsReader(Collection<String> metals) {
        this.metals = metals;
    }

    Optional<PartsList> read(MapReader map) {
        String name = map.text(NAME);
        String note = map.text(NOTE);
        List<Batch> batches = new ArrayList<>();
        Set<String> ids = new HashSet<>();
        for (MapReader each : map.maps(BATCHES)) {
            batch(each).ifPresent(batches::add);
            String id = each.text(ID);
            if (each.has(ID) && !ids.add(id)) {
                each.problem(ID, "found " + Quote.of(id) + " a second time, expected another name");
            }
        }
        if (map.has(BATCHES) && map.isSound() && batches.isEmpty()) {
            map.problem(BATCHES, "found an empty list, expected at least one batch");
        }
        return map.build(() -> new PartsList(name, note, batches));
    }

    private Optional<Batch> batch(MapReader map) {
        String id = map.text(ID);
        String note = map.text(NOTE);
        KitReader reader = new KitReader(metals, map.length(MeasuredKeys.RESOLUTION, 0));
        List<Kit> kits = new ArrayList<>();
        for (Entry entry : map.named(KITS)) {
            reader.read(entry.name(), entry.value().map(KIT)).ifPresent(kits::add);
        }
        return map.build(() -> new Batch(id, note, kits));
    }
}
