package haftline.parts;

import haftline.measure.Checks;
import java.util.List;
import java.util.Optional;

/**
 * All measured batches of a family of kits, oldest first.
 *
 * @param name name of the list
 * @param note free text, may be empty
 * @param batches at least one, ids unique
 */
public record PartsList(String name, String note, List<Batch> batches) {
    /** Checks the name and copies the list. */
    public PartsList {
        Checks.named("parts name", name);
        batches = List.copyOf(batches);
        if (batches.isEmpty()) {
            throw new IllegalArgumentException("parts " + name + ": no batch");
        }
        if (batches.stream().map(Batch::id).distinct().count() != batches.size()) {
            throw new IllegalArgumentException("parts " + name + ": two batches have one name");
        }
    }

    /**
     * Finds a batch by its id.
     *
     * @param id the batch's id
     * @return the batch, or empty
     */
    public Optional<Batch> batch(String id) {
        return batches.stream().filter(batch -> batch.id().equals(id)).findFirst();
    }
}
