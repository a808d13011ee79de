package haftline.store;

import haftline.handle.Wander;
import haftline.measure.NumberText;
import java.util.Map;
import java.util.Optional;

/**
 * Reads how far a bore may leave the axis: by how it is drilled, in figures, or from the maker's
 * own test hole.
 */
final class WanderReader {
    static final Map<String, Wander> PRESETS = Wander.PRESETS;

    static final Key AT_FACE =
            Key.length("at_face", 0, 5, "how far the axis is off at the face, mm").must();
    static final Key PER_MM = Key.number("per_mm", 0, 0.2, "", "mm of wander a mm of depth").must();
    static final Keys FIGURES = Keys.of("wander", AT_FACE, PER_MM);

    static final Key ENTRY = Key.length("entry", -5, 5, "test hole: offset at the face, mm").must();
    static final Key EXIT =
            Key.length("exit", -50, 50, "test hole: offset at the far end, mm").must();
    static final Key DEPTH =
            Key.length("depth", 1, 1000, "test hole: depth between the two, mm").must();
    static final Keys TEST_HOLE = Keys.of("test hole", ENTRY, EXIT, DEPTH);

    static final Key WANDER =
            Key.several(
                    "wander",
                    "one of "
                            + String.join(" | ", PRESETS.keySet())
                            + ", or a map with at_face and per_mm, or with entry, exit and depth"
                            + " of a test hole");

    private WanderReader() {}

    static Optional<Wander> read(Value value) {
        if (!value.isMap()) {
            Optional<Wander> preset = value.word().map(PRESETS::get);
            if (preset.isEmpty()) {
                value.expected(
                        WANDER.expected()
                                + value.word()
                                        .map(word -> Hint.near(PRESETS.keySet(), word))
                                        .orElse(""));
            }
            return preset;
        }
        boolean testHole =
                TEST_HOLE.names().stream().anyMatch(name -> value.peek(name).isPresent());
        return testHole ? ofTestHole(value.map(TEST_HOLE)) : ofFigures(value.map(FIGURES));
    }

    private static Optional<Wander> ofFigures(MapReader map) {
        double atFace = map.length(AT_FACE, 0);
        double perMm = map.number(PER_MM, 0);
        return map.build(() -> new Wander(atFace, perMm));
    }

    private static Optional<Wander> ofTestHole(MapReader map) {
        double entry = map.length(ENTRY, 0);
        double exit = map.length(EXIT, 0);
        double depth = map.length(DEPTH, 1);
        double most = PER_MM.range().high();
        map.require(
                Math.abs(exit - entry) <= most * depth,
                EXIT,
                "at most " + NumberText.shortest(most) + " mm of wander a mm of depth");
        return map.build(() -> Wander.ofTestHole(entry, exit, depth));
    }
}
