package haftline.parts;

import haftline.measure.Checks;
import java.util.List;
import java.util.Optional;

/**
 * One measured batch of kits.
 *
 * @param id what the maker calls it, unique in its parts list
 * @param note free text, may be empty
 * @param kits the kits, names unique
 */
public record Batch(String id, String note, List<Kit> kits) {
    /** Checks the name and copies the list. */
    public Batch {
        Checks.named("batch", id);
        kits = List.copyOf(kits);
        if (kits.stream().map(Kit::name).distinct().count() != kits.size()) {
            throw new IllegalArgumentException("batch " + id + ": two kits have one name");
        }
    }

    /**
     * Finds a kit by its name.
     *
     * @param name the kit's name
     * @return the kit, or empty
     */
    public Optional<Kit> kit(String name) {
        return kits.stream().filter(kit -> kit.name().equals(name)).findFirst();
    }
}
