package haftline.cli;

import haftline.measure.NearestWord;
import haftline.parts.Batch;
import haftline.parts.PartsList;
import haftline.store.DocumentException;
import haftline.store.LoadedSet;
import haftline.store.PartsFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A batch that was chosen for comparing.
 *
 * @param file the parts document, as it was named
 * @param batch the batch in it
 */
record ChosenBatch(Path file, Batch batch) {
    /** What a command line asks for makes no sense; the message says why. */
    static final class UnknownException extends Exception {
        private static final long serialVersionUID = 1L;

        UnknownException(String message) {
            super(message);
        }
    }

    /** Two batches: the one before and the new one. */
    record Pair(ChosenBatch before, ChosenBatch after) {}

    /**
     * Chooses two batches. What is not named is the batch in use in the set's own parts document,
     * and the last one of any other; within one document the new one is the last, and the one
     * before is the batch in use, or the last but one where that is the new one.
     */
    static Pair pair(
            LoadedSet loaded,
            Path first,
            Optional<Path> second,
            Optional<String> firstId,
            Optional<String> secondId)
            throws DocumentException, UnknownException {
        PartsList before = read(first, loaded);
        if (second.isPresent()) {
            PartsList after = read(second.get(), loaded);
            return new Pair(
                    new ChosenBatch(first, chosen(first, before, firstId, loaded)),
                    new ChosenBatch(second.get(), chosen(second.get(), after, secondId, loaded)));
        }
        List<Batch> batches = before.batches();
        Batch now =
                secondId.isPresent()
                        ? named(first, before, secondId.get())
                        : batches.get(batches.size() - 1);
        if (firstId.isPresent()) {
            return pair(first, named(first, before, firstId.get()), now);
        }
        Optional<Batch> inUse =
                isOwn(first, loaded) ? before.batch(loaded.set().batch()) : Optional.empty();
        if (inUse.isPresent() && !inUse.get().id().equals(now.id())) {
            return pair(first, inUse.get(), now);
        }
        int place = batches.indexOf(now);
        if (place == 0) {
            throw new UnknownException(
                    first
                            + " has no batch before "
                            + now.id()
                            + ": name a second parts file, or both batches");
        }
        return pair(first, batches.get(place - 1), now);
    }

    private static Pair pair(Path file, Batch before, Batch after) {
        return new Pair(new ChosenBatch(file, before), new ChosenBatch(file, after));
    }

    private static PartsList read(Path file, LoadedSet loaded) throws DocumentException {
        return PartsFile.read(file, loaded.materials().metals().keys());
    }

    private static Batch chosen(Path file, PartsList parts, Optional<String> id, LoadedSet loaded)
            throws UnknownException {
        if (id.isPresent()) {
            return named(file, parts, id.get());
        }
        Batch last = parts.batches().get(parts.batches().size() - 1);
        return isOwn(file, loaded) ? parts.batch(loaded.set().batch()).orElse(last) : last;
    }

    private static Batch named(Path file, PartsList parts, String id) throws UnknownException {
        Optional<Batch> batch = parts.batch(id);
        if (batch.isEmpty()) {
            List<String> ids = parts.batches().stream().map(Batch::id).toList();
            throw new UnknownException(
                    "there is no batch \""
                            + Paper.harmless(id)
                            + "\" in "
                            + file
                            + "; there are "
                            + String.join(", ", ids)
                            + NearestWord.to(ids, id)
                                    .map(near -> "; did you mean " + near + "?")
                                    .orElse(""));
        }
        return batch.get();
    }

    private static boolean isOwn(Path file, LoadedSet loaded) {
        try {
            return Files.isSameFile(
                    file, loaded.file().resolveSibling(loaded.references().parts()));
        } catch (IOException e) {
            // Both were read a moment ago; a file that went away since is not the set's own.
            return false;
        }
    }
}
