package haftline.edit;

import haftline.handle.Rules;
import haftline.parts.PartsList;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.set.Workshop;
import haftline.shape.Shape;
import haftline.store.References;
import haftline.write.FileName;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;

/**
 * What a save writes: the set's own file always; the parts file where readings changed; the shared
 * shape's file where the shape itself was edited; for a piece whose own shape is new or edited a
 * file beside the set's, named after set and piece, so that a shape that other sets may share is
 * never changed by the edit of one piece; the rules' file and the workshop's where a setting of it
 * was changed, or a new one where the set names none. Under a new name nothing that the old set
 * names is written over: what changed goes to files beside the new one.
 *
 * @param file the set's own file, written last
 * @param references the files that the set names, seen from it
 * @param parts the parts file to write, if any
 * @param shapes the shape files to write
 * @param rules the rules' file to write, if any
 * @param workshops the workshop's file to write, if any
 * @param moves files that give way to new ones under a new name
 */
record SavePlan(
        Path file,
        References references,
        Map<Path, PartsList> parts,
        Map<Path, Shape> shapes,
        Map<Path, Rules> rules,
        Map<Path, Workshop> workshops,
        Map<Path, Path> moves) {

    static SavePlan of(Draft draft, Path file, Whereabouts where, KnownFiles known) {
        return new Making(draft, Whereabouts.normal(file), where, known).plan();
    }

    /** All files that are written, in the order of writing. */
    List<Path> files() {
        List<Path> files = new ArrayList<>(parts.keySet());
        files.addAll(shapes.keySet());
        files.addAll(rules.keySet());
        files.addAll(workshops.keySet());
        files.add(file);
        return files;
    }

    /** A plan in the making. */
    private static final class Making {
        private final Draft draft;
        private final HandleSet set;
        private final Path file;
        private final Whereabouts where;
        private final KnownFiles known;
        private final Map<Path, PartsList> parts = new LinkedHashMap<>();
        private final Map<Path, Shape> shapes = new LinkedHashMap<>();
        private final Map<Path, Rules> rules = new LinkedHashMap<>();
        private final Map<Path, Workshop> workshops = new LinkedHashMap<>();
        private final Map<Path, Path> moves = new LinkedHashMap<>();

        /** What each shape file will say. */
        private final Map<Path, Shape> claimed = new HashMap<>();

        Making(Draft draft, Path file, Whereabouts where, KnownFiles known) {
            this.draft = draft;
            this.set = draft.set();
            this.file = file;
            this.where = where;
            this.known = known;
        }

        SavePlan plan() {
            References said = draft.references();
            Path partsFile = partsFile(where.resolve(said.parts()));
            Path shapeFile = shapeFile(where.resolve(said.shape()));
            Map<String, Path> ownShapes = ownShapes(shapeFile);
            Optional<Path> rulesFile = rulesFile(said.rules().flatMap(where::resolve));
            Optional<Path> workshopFile = workshopFile(said.workshop().flatMap(where::resolve));
            References seen = where.seenFrom(file, said);
            Map<String, String> named = new TreeMap<>();
            ownShapes.forEach(
                    (piece, path) -> named.put(piece, name(said.pieceShapes().get(piece), path)));
            References references =
                    new References(
                            name(said.shape(), shapeFile),
                            name(said.parts(), partsFile),
                            said.batch().map(batch -> set.batch()),
                            rulesFile.map(path -> name(said.rules().orElse(null), path)),
                            workshopFile.map(path -> name(said.workshop().orElse(null), path)),
                            seen.catalogues(),
                            seen.rack(),
                            named);
            return new SavePlan(file, references, parts, shapes, rules, workshops, moves);
        }

        /** A reference as it was written, where it still means the same file from here. */
        private String name(String said, Path path) {
            boolean isSame =
                    said != null
                            && !said.isBlank()
                            && Whereabouts.normal(file.resolveSibling(said)).equals(path);
            return isSame ? said : Whereabouts.reference(file, path);
        }

        private Path partsFile(Optional<Path> now) {
            boolean isWritten =
                    now.isPresent() && known.parts(now.get()).equals(Optional.of(set.parts()));
            if (isWritten && !isLeftBehind(now.get())) {
                return now.get();
            }
            Path path = target(now, beside("parts"));
            if (!known.parts(path).equals(Optional.of(set.parts()))) {
                parts.put(path, set.parts());
            }
            return path;
        }

        private Path shapeFile(Optional<Path> now) {
            boolean isWritten =
                    now.isPresent() && known.shape(now.get()).equals(Optional.of(set.shape()));
            if (isWritten && !isLeftBehind(now.get())) {
                return now.get();
            }
            Path path = target(now, beside("shape"));
            write(path, set.shape());
            return path;
        }

        /** None for a set that names none and goes by the common rules. */
        private Optional<Path> rulesFile(Optional<Path> now) {
            return settings(now, set.rules(), Rules.COMMON_PRACTICE, "rules", known::rules, rules);
        }

        /** None for a set that names none and is made in the common workshop. */
        private Optional<Path> workshopFile(Optional<Path> now) {
            return settings(
                    now,
                    set.workshop(),
                    Workshop.COMMON_PRACTICE,
                    "workshop",
                    known::workshop,
                    workshops);
        }

        private <T> Optional<Path> settings(
                Optional<Path> now,
                T wanted,
                T usual,
                String what,
                Function<Path, Optional<T>> says,
                Map<Path, T> toWrite) {
            if (now.isEmpty() && wanted.equals(usual)) {
                return now;
            }
            boolean isWritten =
                    now.isPresent() && says.apply(now.get()).equals(Optional.of(wanted));
            if (isWritten && !isLeftBehind(now.get())) {
                return now;
            }
            Path path = target(now, beside(what));
            if (!says.apply(path).equals(Optional.of(wanted))) {
                toWrite.put(path, wanted);
            }
            return Optional.of(path);
        }

        /** The file that there is or, where there is none or the set gets a new name, a new one. */
        private Path target(Optional<Path> now, Path fresh) {
            if (now.isEmpty()) {
                return fresh;
            }
            if (!isNewName()) {
                return now.get();
            }
            moves.put(now.get(), fresh);
            return fresh;
        }

        /**
         * The files of own shapes: first those that are written over, so that nobody else goes on
         * trusting them, then those that are right as they are, then new ones.
         */
        private Map<String, Path> ownShapes(Path shapeFile) {
            claimed.put(shapeFile, set.shape());
            Map<String, Path> paths = new LinkedHashMap<>();
            List<Piece> own =
                    set.pieces().stream().filter(piece -> piece.shape().isPresent()).toList();
            for (Piece piece : own) {
                Path derived = derived(piece.name());
                boolean isNamed = said(piece).filter(derived::equals).isPresent();
                if (isNamed && isFree(derived, piece.shape().get())) {
                    settle(paths, piece, derived);
                }
            }
            for (Piece piece : own) {
                said(piece)
                        .filter(path -> !paths.containsKey(piece.name()))
                        .filter(path -> isThere(path, piece.shape().get()))
                        .filter(path -> !isLeftBehind(path))
                        .ifPresent(path -> settle(paths, piece, path));
            }
            for (Piece piece : own) {
                if (!paths.containsKey(piece.name())) {
                    settle(paths, piece, free(derived(piece.name()), piece.shape().get()));
                }
            }
            return paths;
        }

        private void settle(Map<String, Path> paths, Piece piece, Path path) {
            Shape shape = piece.shape().orElseThrow();
            claimed.put(path, shape);
            write(path, shape);
            paths.put(piece.name(), path);
        }

        private void write(Path path, Shape shape) {
            if (!known.shape(path).equals(Optional.of(shape))) {
                shapes.put(path, shape);
            }
        }

        private boolean isFree(Path path, Shape shape) {
            Shape other = claimed.get(path);
            return other == null || other.equals(shape);
        }

        private Optional<Path> said(Piece piece) {
            return Optional.ofNullable(draft.references().pieceShapes().get(piece.name()))
                    .flatMap(where::resolve);
        }

        private boolean isThere(Path path, Shape shape) {
            return known.shape(path).equals(Optional.of(shape)) && isFree(path, shape);
        }

        private boolean isNewName() {
            return !file.equals(where.now());
        }

        /** A file that belongs to the set under its old name alone, and does not go along. */
        private boolean isLeftBehind(Path path) {
            String stem = stem(where.now());
            return isNewName()
                    && path.getParent().equals(where.now().getParent())
                    && path.getFileName().toString().startsWith(stem + "-");
        }

        private Path derived(String piece) {
            return file.resolveSibling(stem(file) + "-" + FileName.from(piece) + "-shape.yaml");
        }

        private Path beside(String what) {
            return free(file.resolveSibling(stem(file) + "-" + what + ".yaml"), null);
        }

        /** The path itself, or a numbered one where another's file or another shape has it. */
        private Path free(Path wanted, Shape shape) {
            Path path = wanted;
            for (int number = 2; isTaken(path, shape); number++) {
                String name = wanted.getFileName().toString().replaceFirst("\\.yaml$", "");
                path = wanted.resolveSibling(name + "-" + number + ".yaml");
            }
            return path;
        }

        private boolean isTaken(Path path, Shape shape) {
            return known.isForeign(path) || shape != null && !isFree(path, shape);
        }

        private static String stem(Path file) {
            return file.getFileName().toString().replaceFirst("\\.[^.]*$", "");
        }
    }
}
