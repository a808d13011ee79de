package haftline.store;

import haftline.measure.Length;
import haftline.measure.Units;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.ToIntBiFunction;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.api.lowlevel.Parse;
import org.snakeyaml.engine.v2.comments.CommentType;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.events.CommentEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.CollectionNode;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * What a person put into a document that its meaning does not hold: comments, blank lines, the
 * spelling of numbers, what stands on lines of its own. Everything is remembered by the path of the
 * field or item that it belongs to, so that it can be written again.
 *
 * <p>A comment behind a field belongs to it; a comment on a line of its own and a blank line belong
 * to the next field or item that begins below.
 */
final class OldText {
    /** Between the names of a path; no name has it. */
    private static final String STEP = "\u0000";

    /**
     * A comment behind a field.
     *
     * @param column where it begins, from 0
     * @param text the comment with its sign
     */
    private record Behind(int column, String text) {}

    private final NavigableMap<Integer, String> pathByLine = new TreeMap<>();
    private final Map<String, ScalarNode> scalars = new HashMap<>();
    private final Set<String> paths = new HashSet<>();
    private final Set<String> tall = new HashSet<>();
    private final Set<String> onOneLine = new HashSet<>();
    private final Set<String> inFlow = new HashSet<>();
    private final Map<String, List<String>> above = new LinkedHashMap<>();
    private final Map<String, Behind> behind = new LinkedHashMap<>();
    private final List<String> foot = new ArrayList<>();

    /** Names of the items of each list, in their order. */
    private final Map<String, List<String>> items = new HashMap<>();

    private final int[] codePoints;

    private OldText(String text) {
        codePoints = text.codePoints().toArray();
    }

    /** Nothing is remembered. */
    static OldText none() {
        return new OldText("");
    }

    /** Remembers what a text holds; nothing where it is not readable. */
    static OldText of(String text) {
        OldText old = new OldText(text);
        try {
            Optional<Node> root = new Compose(YamlTree.settings("", false)).composeString(text);
            root.ifPresent(node -> old.walk("", node, new IdentityHashMap<>()));
            for (Event event : new Parse(YamlTree.settings("", true)).parseString(text)) {
                if (event instanceof CommentEvent comment) {
                    old.keep(comment);
                }
            }
        } catch (YamlEngineException e) {
            return none();
        }
        return old;
    }

    /** Only which fields there were, without how they were written. */
    OldText bare() {
        OldText bare = none();
        bare.paths.addAll(paths);
        return bare;
    }

    /** The path of a field of a map, or of an item of a list, below another path. */
    static String path(String parent, String name) {
        return parent + STEP + name;
    }

    private void walk(String path, Node node, Map<Node, Boolean> seen) {
        paths.add(path);
        if (node instanceof ScalarNode scalar) {
            scalars.put(path, scalar);
            return;
        }
        // An alias may lead back to where it came from.
        if (seen.put(node, true) != null) {
            return;
        }
        boolean flow = ((CollectionNode<?>) node).getFlowStyle() == FlowStyle.FLOW;
        if (!flow) {
            tall.add(path);
        } else if (line(node.getStartMark()) == line(node.getEndMark())) {
            onOneLine.add(path);
        }
        if (node instanceof MappingNode map) {
            for (NodeTuple tuple : map.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key) {
                    String child = path(path, key.getValue());
                    begin(key, child, flow);
                    walk(child, tuple.getValueNode(), seen);
                }
            }
        } else if (node instanceof SequenceNode list) {
            int i = 0;
            for (Node item : list.getValue()) {
                Optional<String> name = id(item);
                name.ifPresent(n -> items.computeIfAbsent(path, p -> new ArrayList<>()).add(n));
                String child = path(path, name.orElse(Integer.toString(i++)));
                begin(item, child, flow);
                walk(child, item, seen);
            }
        }
    }

    private static int line(Optional<Mark> mark) {
        return mark.orElseThrow().getLine();
    }

    private void begin(Node node, String path, boolean flow) {
        if (flow) {
            inFlow.add(path);
        }
        node.getStartMark().ifPresent(mark -> pathByLine.putIfAbsent(mark.getLine(), path));
    }

    /** Items that have a name are known by it, so that they may change places. */
    private static Optional<String> id(Node item) {
        if (!(item instanceof MappingNode map)) {
            return Optional.empty();
        }
        for (String naming : Tree.Fields.NAMING) {
            for (NodeTuple tuple : map.getValue()) {
                if (tuple.getKeyNode() instanceof ScalarNode key
                        && naming.equals(key.getValue())
                        && tuple.getValueNode() instanceof ScalarNode value) {
                    return Optional.of(value.getValue());
                }
            }
        }
        return Optional.empty();
    }

    private void keep(CommentEvent comment) {
        int line = comment.getStartMark().map(mark -> mark.getLine()).orElse(0);
        String text =
                comment.getCommentType() == CommentType.BLANK_LINE ? "" : "#" + comment.getValue();
        if (comment.getCommentType() == CommentType.IN_LINE) {
            var begun = pathByLine.floorEntry(line);
            if (begun != null && !behind.containsKey(begun.getValue())) {
                int column = comment.getStartMark().map(mark -> mark.getColumn()).orElse(0);
                behind.put(begun.getValue(), new Behind(column, text));
                return;
            }
        }
        var next = pathByLine.higherEntry(line);
        (next == null ? foot : above.computeIfAbsent(next.getValue(), p -> new ArrayList<>()))
                .add(text);
    }

    /**
     * Lets what belongs to items that were given another name follow them. An item that is new is
     * one that is gone under another name where both stand behind the same item and have something
     * in common: of several the one with most.
     *
     * @param list the list's path
     * @param now names of the items in their order
     * @param inCommon how much an item that is gone and one that is new have in common; 0 for
     *     nothing
     */
    void rename(String list, List<String> now, ToIntBiFunction<String, String> inCommon) {
        List<String> before = List.copyOf(items.getOrDefault(list, List.of()));
        int at = 0;
        for (String name : now) {
            if (before.contains(name)) {
                at = before.indexOf(name) + 1;
                continue;
            }
            int next = at;
            int most = 0;
            for (int i = at; i < before.size() && !now.contains(before.get(i)); i++) {
                int own = inCommon.applyAsInt(before.get(i), name);
                if (own > most) {
                    most = own;
                    next = i + 1;
                }
            }
            if (most > 0) {
                move(path(list, before.get(next - 1)), path(list, name));
                at = next;
            }
        }
    }

    private void move(String from, String to) {
        for (Map<String, ?> map : List.of(scalars, above, behind, items)) {
            moveKeys(map, from, to);
        }
        for (Set<String> set : List.of(paths, tall, onOneLine, inFlow)) {
            List<String> moving = set.stream().filter(path -> isWithin(path, from)).toList();
            moving.forEach(set::remove);
            moving.forEach(path -> set.add(to + path.substring(from.length())));
        }
    }

    private static <T> void moveKeys(Map<String, T> map, String from, String to) {
        List<String> moving = map.keySet().stream().filter(path -> isWithin(path, from)).toList();
        moving.forEach(path -> map.put(to + path.substring(from.length()), map.remove(path)));
    }

    private static boolean isWithin(String path, String around) {
        return path.equals(around) || path.startsWith(around + STEP);
    }

    /**
     * Moves what belongs to fields that are gone to the nearest one around them, or to the foot.
     */
    void settleOn(Set<String> newPaths) {
        for (String path : List.copyOf(above.keySet())) {
            if (!newPaths.contains(path)) {
                move(path, above.remove(path), newPaths);
            }
        }
        for (String path : List.copyOf(behind.keySet())) {
            if (!newPaths.contains(path)) {
                move(path, List.of(behind.remove(path).text()), newPaths);
            }
        }
    }

    private void move(String path, List<String> lines, Set<String> newPaths) {
        List<String> comments = lines.stream().filter(line -> !line.isEmpty()).toList();
        String around = path;
        while (!around.isEmpty() && !newPaths.contains(around)) {
            around = around.substring(0, around.lastIndexOf(STEP));
        }
        if (around.isEmpty()) {
            foot.addAll(comments);
        } else if (!comments.isEmpty()) {
            above.computeIfAbsent(around, p -> new ArrayList<>()).addAll(comments);
        }
    }

    boolean has(String path) {
        return paths.contains(path);
    }

    boolean isEmpty() {
        return paths.isEmpty();
    }

    /** Whether a map or list must have lines of its own: it had them, or comments stand in it. */
    boolean isTall(String path) {
        String within = path + STEP;
        return tall.contains(path)
                || above.keySet().stream().anyMatch(p -> p.startsWith(within))
                || behind.keySet().stream().anyMatch(p -> p.startsWith(within));
    }

    /** Whether a map or list stood on one line, however long. */
    boolean isOnOneLine(String path) {
        return onOneLine.contains(path);
    }

    List<String> above(String path) {
        return above.getOrDefault(path, List.of());
    }

    /** A line with the comment that stands behind a path, in its old column if there is room. */
    String commented(String line, String path) {
        Behind comment = behind.get(path);
        if (comment == null) {
            return line;
        }
        int blanks = Math.max(2, comment.column() - line.codePointCount(0, line.length()));
        return line + " ".repeat(blanks) + comment.text();
    }

    List<String> foot() {
        int end = foot.size();
        while (end > 0 && foot.get(end - 1).isEmpty()) {
            end--;
        }
        return foot.subList(0, end);
    }

    /** The text that stood at a path. */
    Optional<String> text(String path) {
        return Optional.ofNullable(scalars.get(path)).map(node -> node.getValue().strip());
    }

    /**
     * How a text was written, quotation marks and line breaks included, where it still says it.
     *
     * @param within whether it is to stand in a flow collection
     */
    Optional<String> writing(String path, String text, boolean within) {
        ScalarNode scalar = scalars.get(path);
        boolean same = scalar != null && scalar.getValue().strip().equals(text);
        if (!same || within != inFlow.contains(path)) {
            return Optional.empty();
        }
        int start = scalar.getStartMark().orElseThrow().getIndex();
        int end = scalar.getEndMark().orElseThrow().getIndex();
        String written = new String(codePoints, start, end - start).stripTrailing();
        if (!scalar.isPlain() && "|>".indexOf(written.charAt(0)) >= 0) {
            // A comment behind the sign of a block text is within what is written.
            behind.remove(path);
        }
        return Optional.of(written);
    }

    /** Lets the comment behind an item of a list stand behind its first field. */
    void passDown(String item, String firstField) {
        Behind comment = behind.remove(item);
        if (comment != null) {
            behind.putIfAbsent(firstField, comment);
        }
    }

    /**
     * How a number was spelt, such as {@code 31/64 in} or {@code 12.0}, where it still means it.
     */
    Optional<String> spelling(String path, double value) {
        // What stood in quotation marks may need them.
        return Optional.ofNullable(scalars.get(path))
                .filter(ScalarNode::isPlain)
                .map(ScalarNode::getValue)
                .filter(
                        text -> {
                            var mm = Length.parse(text, Units.MM);
                            return mm.isPresent() && mm.getAsDouble() == value;
                        });
    }
}
