package haftline.store;

import haftline.measure.Length;
import haftline.measure.Units;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.api.lowlevel.Compose;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/** Whether two documents say the same in the same order, however they are laid out. */
final class SameMeaning {
    private SameMeaning() {}

    static boolean of(String one, String other) {
        LoadSettings settings = YamlTree.settings("", false);
        try {
            Optional<Node> a = new Compose(settings).composeString(one);
            Optional<Node> b = new Compose(settings).composeString(other);
            return a.isPresent() && b.isPresent() && same(a.get(), b.get());
        } catch (YamlEngineException e) {
            return false;
        }
    }

    private static boolean same(Node one, Node other) {
        if (one instanceof ScalarNode a && other instanceof ScalarNode b) {
            String text = a.getValue().strip();
            return text.equals(b.getValue().strip()) || sameLength(text, b.getValue());
        }
        if (one instanceof SequenceNode a && other instanceof SequenceNode b) {
            return same(a.getValue(), b.getValue());
        }
        return one instanceof MappingNode a
                && other instanceof MappingNode b
                && same(keys(a), keys(b))
                && same(values(a), values(b));
    }

    private static boolean same(List<Node> some, List<Node> others) {
        if (some.size() != others.size()) {
            return false;
        }
        for (int i = 0; i < some.size(); i++) {
            if (!same(some.get(i), others.get(i))) {
                return false;
            }
        }
        return true;
    }

    private static List<Node> keys(MappingNode map) {
        return map.getValue().stream().map(NodeTuple::getKeyNode).toList();
    }

    private static List<Node> values(MappingNode map) {
        return map.getValue().stream().map(NodeTuple::getValueNode).toList();
    }

    private static boolean sameLength(String one, String other) {
        OptionalDouble mm = Length.parse(one, Units.MM);
        return mm.isPresent() && mm.equals(Length.parse(other, Units.MM));
    }
}
