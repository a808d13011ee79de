package haftline.edit;

import haftline.handle.Rules;
import haftline.parts.PartsList;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.store.DocumentException;
import haftline.store.PartsFile;
import haftline.store.RulesFile;
import haftline.store.ShapeFile;
import haftline.store.WorkshopFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The files behind an open document, as they were last read or written. Paths are absolute and
 * normal.
 */
final class KnownFiles {
    private final Collection<String> metals;
    private final Map<Path, Object> contents = new HashMap<>();
    private final Map<Path, Optional<FileStamp>> stamps = new HashMap<>();

    KnownFiles(Collection<String> metals) {
        this.metals = metals;
    }

    /** A file was just read or written, and this is what it says. */
    void know(Path file, Object content) {
        contents.put(file, content);
        watch(file);
    }

    /** A file was just read or written. */
    void watch(Path file) {
        stamps.put(file, FileStamp.of(file));
    }

    /** What a shape file says, or empty where there is none that can be read. */
    Optional<Shape> shape(Path file) {
        return Optional.ofNullable(contents.get(file))
                .or(() -> read(file, () -> ShapeFile.read(file)))
                .filter(Shape.class::isInstance)
                .map(Shape.class::cast);
    }

    /** What a parts file says, or empty where there is none that can be read. */
    Optional<PartsList> parts(Path file) {
        return Optional.ofNullable(contents.get(file))
                .or(() -> read(file, () -> PartsFile.read(file, metals)))
                .filter(PartsList.class::isInstance)
                .map(PartsList.class::cast);
    }

    /** What a workshop file says, or empty where there is none that can be read. */
    Optional<Workshop> workshop(Path file) {
        return Optional.ofNullable(contents.get(file))
                .or(() -> read(file, () -> WorkshopFile.read(file)))
                .filter(Workshop.class::isInstance)
                .map(Workshop.class::cast);
    }

    /** What a rules file says, or empty where there is none that can be read. */
    Optional<Rules> rules(Path file) {
        return Optional.ofNullable(contents.get(file))
                .or(() -> read(file, () -> RulesFile.read(file)))
                .filter(Rules.class::isInstance)
                .map(Rules.class::cast);
    }

    private interface Reader {
        Object read() throws DocumentException;
    }

    /** A file that the document came to name since it was opened. */
    private Optional<Object> read(Path file, Reader reader) {
        if (!Files.isRegularFile(file)) {
            return Optional.empty();
        }
        try {
            know(file, reader.read());
            return Optional.of(contents.get(file));
        } catch (DocumentException otherwise) {
            return Optional.empty();
        }
    }

    /** Whether a name is taken by a file that is none of this document's. */
    boolean isForeign(Path file) {
        return !contents.containsKey(file) && Files.exists(file);
    }

    /** Files that another program has changed or removed. */
    List<Path> changed() {
        return stamps.entrySet().stream()
                .filter(entry -> isChanged(entry.getKey(), entry.getValue()))
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
    }

    private static boolean isChanged(Path file, Optional<FileStamp> then) {
        return then.map(stamp -> !stamp.isOf(file)).orElseGet(() -> Files.exists(file));
    }

    /** The changes by other programs are known and will be written over. */
    void acceptChanges() {
        List.copyOf(stamps.keySet()).forEach(this::watch);
    }
}
