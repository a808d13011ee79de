package haftline.edit;

import haftline.store.References;
import haftline.store.Starter;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Where the files of an open document lie. The references in its history are as the document said
 * them when it was opened, seen from the folder that it was opened from, for as long as it is open;
 * they are turned into those of another folder when they are written there.
 */
final class Whereabouts {
    private final Path opened;
    private final boolean isInProgram;
    private final Map<Path, Path> moved = new HashMap<>();
    private Path now;

    /**
     * Files seen from where a set was opened.
     *
     * @param opened the set's file
     */
    Whereabouts(Path opened) {
        this.opened = normal(opened);
        isInProgram = Starter.isSet(opened);
        now = this.opened;
    }

    /** The set's own file by now. */
    Path now() {
        return now;
    }

    /** The set has a file of another name. */
    void settle(Path file) {
        now = normal(file);
    }

    static Path normal(Path path) {
        return path.toAbsolutePath().normalize();
    }

    /** The file that a reference means, or empty where it names none yet, or one in the program. */
    Optional<Path> resolve(String reference) {
        if (reference.isBlank() || isInProgram) {
            return Optional.empty();
        }
        Path path = normal(opened.resolveSibling(reference));
        return Optional.of(moved.getOrDefault(path, path));
    }

    /** From now on, what was saved in one file is saved in another. */
    void move(Path from, Path to) {
        moved.replaceAll((old, now) -> now.equals(from) ? to : now);
        moved.put(from, to);
    }

    /** References as they are by now, seen from where the set was opened. */
    References current(References said) {
        if (moved.isEmpty()) {
            return said;
        }
        Map<String, String> shapes = new HashMap<>(said.pieceShapes());
        shapes.replaceAll((piece, path) -> current(path));
        return new References(
                current(said.shape()),
                current(said.parts()),
                said.batch(),
                said.rules().map(this::current),
                said.workshop().map(this::current),
                said.catalogues(),
                said.rack(),
                shapes);
    }

    private String current(String reference) {
        return resolve(reference)
                .filter(moved::containsValue)
                .map(path -> reference(opened, path))
                .orElse(reference);
    }

    /** A file as it is named from a set's file: relative where there is a way. */
    static String reference(Path from, Path to) {
        Path folder = normal(from).getParent();
        boolean isReachable = folder != null && folder.getRoot().equals(to.getRoot());
        Path named = isReachable ? folder.relativize(to) : to;
        return named.toString().replace('\\', '/');
    }

    /** References to files that are only read, seen from another file. */
    References seenFrom(Path file, References references) {
        if (normal(file).getParent().equals(opened.getParent())) {
            return references;
        }
        return new References(
                references.shape(),
                references.parts(),
                references.batch(),
                references.rules().map(path -> seenFrom(file, path)),
                references.workshop().map(path -> seenFrom(file, path)),
                references.catalogues().stream().map(path -> seenFrom(file, path)).toList(),
                references.rack(),
                references.pieceShapes());
    }

    private String seenFrom(Path file, String reference) {
        return resolve(reference).map(path -> reference(file, path)).orElse(reference);
    }

    /** All files that a set names. */
    List<Path> all(References references) {
        return java.util.stream.Stream.of(
                        List.of(references.shape(), references.parts()),
                        references.rules().stream().toList(),
                        references.workshop().stream().toList(),
                        references.catalogues(),
                        references.pieceShapes().values())
                .flatMap(java.util.Collection::stream)
                .flatMap(text -> resolve(text).stream())
                .toList();
    }
}
