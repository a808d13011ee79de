package haftline.store;

import haftline.measure.Quote;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;

/**
 * One entry of a map.
 *
 * @param name its key
 * @param mark where the key stands
 * @param value what stands behind it
 */
record Entry(String name, Optional<Mark> mark, Value value) {
    /** The entries of a map; a key given twice and a key that is no text are told and left out. */
    static List<Entry> of(Problems problems, String path, MappingNode map) {
        Map<String, Optional<Mark>> seen = new HashMap<>();
        List<Entry> entries = new ArrayList<>();
        for (NodeTuple tuple : map.getValue()) {
            Node key = tuple.getKeyNode();
            Optional<Mark> mark = key.getStartMark();
            if (!(key instanceof ScalarNode scalar)) {
                problems.add(mark, path, "found a list or a map as a key, expected a name");
                continue;
            }
            String name = scalar.getValue();
            String field = join(path, Quote.plain(name));
            Optional<Mark> first = seen.putIfAbsent(name, mark);
            if (first != null) {
                int line = first.map(m -> m.getLine() + 1).orElse(0);
                problems.add(mark, field, "given twice, first on line " + line);
            } else {
                entries.add(
                        new Entry(name, mark, new Value(problems, field, tuple.getValueNode())));
            }
        }
        return entries;
    }

    static String join(String path, String name) {
        return path.isEmpty() ? name : path + "." + name;
    }
}
