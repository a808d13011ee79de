package haftline.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.OptionalInt;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/** Where in a document a key stands, so that somebody can be shown the place. */
public final class KeyLine {
    /** A document that somebody wrote by hand is not longer than this, bytes. */
    private static final long LONGEST = 1_000_000;

    private KeyLine() {}

    /**
     * The line that holds a key.
     *
     * @param file a document
     * @param keys the key's way down from the top, such as {@code walls} and {@code body_wood}
     * @return its line, from 1; empty where the document does not state it or cannot be read
     */
    public static OptionalInt of(Path file, String... keys) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LONGEST) {
                return OptionalInt.empty();
            }
            Node at =
                    YamlTree.of(Files.readString(file), new Problems(file.toString())).orElse(null);
            OptionalInt line = OptionalInt.empty();
            for (String key : keys) {
                Optional<NodeTuple> entry = entry(at, key);
                line = entry.map(KeyLine::line).orElseGet(OptionalInt::empty);
                at = entry.map(NodeTuple::getValueNode).orElse(null);
            }
            return line;
        } catch (IOException unreadable) {
            return OptionalInt.empty();
        }
    }

    private static Optional<NodeTuple> entry(Node node, String key) {
        return node instanceof MappingNode map
                ? map.getValue().stream()
                        .filter(
                                entry ->
                                        entry.getKeyNode() instanceof ScalarNode name
                                                && name.getValue().equals(key))
                        .findFirst()
                : Optional.empty();
    }

    private static OptionalInt line(NodeTuple entry) {
        return entry.getKeyNode()
                .getStartMark()
                .map(mark -> OptionalInt.of(mark.getLine() + 1))
                .orElseGet(OptionalInt::empty);
    }
}
