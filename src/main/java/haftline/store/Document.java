package haftline.store;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.snakeyaml.engine.v2.nodes.MappingNode;

/** What all kinds of document have in common: a version and a kind at their head. */
final class Document {
    /** The version that is read and written. */
    static final int VERSION = 1;

    static final Key HAFTLINE =
            Key.whole("haftline", VERSION, VERSION, "version of the document's format").must();

    private Document() {}

    /** The key of the kind, which is always one word. */
    static Key kindKey(String kind) {
        return Key.word("kind", List.of(kind), "kind of document").must();
    }

    /** The keys of a kind of document, with those at its head. */
    static Keys keys(String kind, Key... own) {
        List<Key> keys = new ArrayList<>(List.of(HAFTLINE, kindKey(kind)));
        keys.addAll(List.of(own));
        return new Keys(kind + " document", List.copyOf(keys));
    }

    /** The head of a document to be written. */
    static Tree.Fields head(String kind) {
        return Tree.Fields.tall()
                .put(HAFTLINE, new Tree.Word(Integer.toString(VERSION)))
                .put("kind", new Tree.Word(kind));
    }

    /** What a person put into the file that a save replaces; nothing where there is none. */
    static OldText old(Path file) {
        return Files.isRegularFile(file)
                ? SourceText.read(file, new Problems("")).map(OldText::of).orElseGet(OldText::none)
                : OldText.none();
    }

    /**
     * Writes a document in place of the file that is there, with what a person put into that one;
     * without it, should it change the meaning.
     */
    static void save(Path file, Tree.Fields tree, OldText old) throws SaveException {
        String text = TreeWriter.write(tree, old);
        // By now the old fields are known by the names that their items have got.
        String bare = TreeWriter.write(tree, old.bare());
        String saved = SameMeaning.of(text, bare) ? text : bare;
        AtomicSave.write(file, saved.getBytes(StandardCharsets.UTF_8));
    }

    /** Opens a document of a kind from the disk. */
    static Optional<MapReader> open(Path file, String kind, Keys keys, Problems problems) {
        return SourceText.read(file, problems).flatMap(text -> parse(text, kind, keys, problems));
    }

    /** Opens a document of a kind from its text. */
    static Optional<MapReader> parse(String text, String kind, Keys keys, Problems problems) {
        Optional<MappingNode> map = YamlTree.of(text, problems);
        if (map.isEmpty() || !isReadable(map.get(), kind, problems)) {
            return Optional.empty();
        }
        return map.map(node -> new MapReader(problems, "", node, keys));
    }

    /** A document of another kind or version would only give a heap of unknown keys. */
    private static boolean isReadable(MappingNode map, String kind, Problems problems) {
        Problems room = problems.room();
        Value document = new Value(room, "", map);
        document.peek(HAFTLINE.name()).ifPresent(Document::checkVersion);
        document.peek("kind")
                .filter(given -> !given.word().equals(Optional.of(kind)))
                .ifPresent(given -> given.expected(kind));
        return room.isEmpty();
    }

    private static void checkVersion(Value given) {
        String version = given.word().orElse("");
        if (!version.equals(Integer.toString(VERSION))) {
            boolean newer = version.matches("[1-9][0-9]{0,8}");
            given.expected(VERSION + (newer ? "; a newer Haftline may have written it" : ""));
        }
    }
}
