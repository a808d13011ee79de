package haftline.cli;

import haftline.adjust.solve.Move;
import haftline.edit.AdjustEdits;
import haftline.edit.Command;
import haftline.edit.OpenDocument;
import haftline.edit.SaveResult;
import haftline.set.Piece;
import haftline.store.LoadedSet;
import haftline.write.OutputException;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Which files an adjustment changes, told before they are written, and the writing of them. */
final class AdjustFiles {
    private final LoadedSet loaded;
    private final List<Move> moves;
    private final Optional<OpenDocument> document;

    private AdjustFiles(LoadedSet loaded, List<Move> moves, Optional<OpenDocument> document) {
        this.loaded = loaded;
        this.moves = moves;
        this.document = document;
    }

    /**
     * A file that changes.
     *
     * @param file as the user named the set, by the same way
     * @param what what of it changes: {@code shared-shape}, {@code own-shape} or {@code set}
     * @param pieces the pieces of this set that go by it
     */
    record Change(String file, String what, List<String> pieces) {
        static final String SHARED = "shared-shape";
        static final String OWN = "own-shape";
        static final String SET = "set";

        String inWords() {
            String of = String.join(", ", pieces);
            return switch (what) {
                case SHARED ->
                        file
                                + ", the shape that is shared by "
                                + of
                                + "; it changes for every other set that names it too"
                                + (pieces.size() > 1 ? " (--each changes pieces alone)" : "");
                case OWN -> file + ", the own shape of " + of;
                default -> file + ", what the set decides for " + of;
            };
        }
    }

    /**
     * What proposals change in a set's files.
     *
     * @param loaded the set as it was read
     * @param proposals an adjustment, and a fairing of what it makes, if any
     */
    static AdjustFiles of(LoadedSet loaded, List<haftline.adjust.solve.Proposal> proposals) {
        List<Move> moves = proposals.stream().flatMap(each -> each.moves().stream()).toList();
        if (moves.isEmpty()) {
            return new AdjustFiles(loaded, moves, Optional.empty());
        }
        OpenDocument document = OpenDocument.of(loaded);
        Command accept =
                proposals.stream().map(AdjustEdits::accept).reduce(Command::then).orElseThrow();
        document.apply(accept)
                .refusal()
                .ifPresent(
                        why -> {
                            // The proposal was made for this very content.
                            throw new IllegalStateException(why);
                        });
        return new AdjustFiles(loaded, moves, Optional.of(document));
    }

    /** The files that a save changes, in the order of writing. */
    List<Change> changes() {
        List<Change> changes = new ArrayList<>();
        if (document.isEmpty()) {
            return changes;
        }
        Path own = document.get().file().orElseThrow();
        Path shared = absolute(loaded.file().resolveSibling(loaded.references().shape()));
        boolean isNewlyNamed = false;
        for (Path file : document.get().filesToSave()) {
            if (file.equals(shared)) {
                changes.add(new Change(shown(file), Change.SHARED, sharing()));
            } else if (!file.equals(own)) {
                changes.add(new Change(shown(file), Change.OWN, ofDocument("own-shape")));
                isNewlyNamed |= !Files.exists(file);
            }
        }
        List<String> decided = new ArrayList<>(ofDocument("piece"));
        decided.addAll(ofDocument("set"));
        if (!decided.isEmpty() || isNewlyNamed) {
            List<String> names = isNewlyNamed ? ofDocument("own-shape") : List.of();
            decided.addAll(names);
            changes.add(new Change(shown(own), Change.SET, decided.stream().distinct().toList()));
        }
        return changes;
    }

    private List<String> sharing() {
        return loaded.set().pieces().stream()
                .filter(piece -> piece.shape().isEmpty())
                .map(Piece::name)
                .toList();
    }

    /** Names of the pieces that moves of one document concern. */
    private List<String> ofDocument(String word) {
        return moves.stream()
                .filter(move -> AdjustJson.word(move.document()).equals(word))
                .flatMap(move -> move.sizes().stream())
                .map(Move.Size::piece)
                .distinct()
                .toList();
    }

    /**
     * Saves as the editor does, each file whole and with one backup.
     *
     * @return the files that say something else than before
     * @throws OutputException where not all could be saved
     */
    List<String> write() throws OutputException {
        if (document.isEmpty()) {
            return List.of();
        }
        List<Path> files = document.get().filesToSave();
        List<byte[]> before = files.stream().map(AdjustFiles::content).toList();
        SaveResult result = document.get().save();
        if (result instanceof SaveResult.Failed failed) {
            String others =
                    failed.written().isEmpty()
                            ? ""
                            : failed.written().stream()
                                    .map(this::shown)
                                    .collect(Collectors.joining(", ", "; written before it: ", ""));
            throw new OutputException(
                    Path.of(shown(failed.file())), failed.reason() + others, null);
        }
        if (!result.isSaved()) {
            throw new OutputException(
                    loaded.file(),
                    "it or a file that it names was changed by another program meanwhile",
                    null);
        }
        List<String> written = new ArrayList<>();
        for (int i = 0; i < files.size(); i++) {
            if (!Arrays.equals(before.get(i), content(files.get(i)))) {
                written.add(shown(files.get(i)));
            }
        }
        return written;
    }

    /** What a file says; nothing where there is none yet. */
    private static byte[] content(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException none) {
            return new byte[0];
        }
    }

    private static Path absolute(Path path) {
        return path.toAbsolutePath().normalize();
    }

    /**
     * A file by the way that the user named the set: from the folder that he works in, or whole.
     */
    private String shown(Path file) {
        Path here = absolute(Path.of(""));
        boolean isWhole = loaded.file().isAbsolute() || !file.getRoot().equals(here.getRoot());
        return (isWhole ? file : here.relativize(file)).toString();
    }
}
