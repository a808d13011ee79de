package haftline.store;

import static haftline.store.ChoicesKeys.*;

import haftline.handle.Choices;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Fit;
import haftline.handle.Use;
import haftline.measure.Quote;
import haftline.shape.Node;
import haftline.shape.Shape;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Reads what a maker decides over the rules, for a set or for one piece. */
final class ChoicesReader {
    private ChoicesReader() {}

    /**
     * Reads the choices in a map that may have other keys as well.
     *
     * @param map the map of a set or a piece
     * @param shapes the shapes whose nodes may be named, empty where they could not be read
     * @return the choices, or empty where anything in the map is not in order
     */
    static Optional<Choices> read(MapReader map, Collection<Shape> shapes) {
        ChoicesBuilder choices = Choices.builder();
        map.optionalNumber(LENGTH_RATIO).ifPresent(choices::lengthRatio);
        map.optionalLength(SWELL).ifPresent(choices::swellMm);
        map.optionalLength(BUTT).ifPresent(choices::buttMm);
        map.word(USE, Use.values()).ifPresent(choices::use);
        map.word(FIT, Fit.values()).ifPresent(choices::fit);
        map.optionalLength(TANG_DRILL).ifPresent(choices::tangDrillMm);
        map.optionalLength(TANG_DEPTH).ifPresent(choices::tangDepthMm);
        map.optionalLength(CAP_DRILL).ifPresent(choices::capDrillMm);
        map.optionalLength(CAP_DEPTH).ifPresent(choices::capDepthMm);
        map.map(TENON)
                .ifPresent(
                        tenon -> {
                            tenon.optionalLength(TENON_DIAMETER)
                                    .ifPresent(choices::tenonDiameterMm);
                            tenon.optionalLength(TENON_LENGTH).ifPresent(choices::tenonLengthMm);
                        });
        map.value(WanderReader.WANDER).flatMap(WanderReader::read).ifPresent(choices::wander);
        map.map(BLANK)
                .ifPresent(
                        blank -> {
                            blank.optionalLength(BLANK_SIDE).ifPresent(choices::blankSideMm);
                            blank.optionalLength(BLANK_LENGTH).ifPresent(choices::blankLengthMm);
                        });
        nodes(map, shapes, choices);
        return map.build(choices::build);
    }

    private static void nodes(MapReader map, Collection<Shape> shapes, ChoicesBuilder choices) {
        Set<String> known = new TreeSet<>();
        shapes.forEach(shape -> shape.nodes().stream().map(Node::name).forEach(known::add));
        for (Entry entry : map.named(NODES)) {
            if (!shapes.isEmpty() && !known.contains(entry.name())) {
                entry.value()
                        .problem(
                                "no node "
                                        + Quote.of(entry.name())
                                        + " in the shape"
                                        + Hint.nearest(List.copyOf(known), entry.name()));
                continue;
            }
            MapReader node = entry.value().map(NODES.child().orElseThrow());
            node.optionalLength(NODE_DIAMETER)
                    .ifPresent(mm -> choices.nodeDiameterMm(entry.name(), mm));
            node.optionalNumber(NODE_AT).ifPresent(share -> choices.nodePlace(entry.name(), share));
        }
    }
}
