package haftline.store;

import haftline.handle.Fit;
import haftline.handle.Use;
import java.util.List;

/** Keys of what a maker decides over the rules, on a set and on a piece alike. */
final class ChoicesKeys {
    static final Key LENGTH_RATIO =
            Key.number("length_ratio", 0.1, 10, "", "handle length as a multiple of the blade's");
    static final Key SWELL = Key.length("swell", 5, 200, "common greatest diameter in mm");
    static final Key BUTT =
            Key.length("butt", 2, 200, "diameter of the butt where there is no cap, in mm");
    static final Key FIT = Key.word("fit", ShapeKeys.words(Fit.values()), "how the tang is held");
    static final Key TANG_DRILL =
            Key.length("tang_drill", 0.3, 60, "drill for the tang in mm, the deepest of several");
    static final Key TANG_DEPTH =
            Key.length("tang_depth", 1, 500, "full depth of the tang's bore in mm");
    static final Key CAP_DRILL = Key.length("cap_drill", 0.3, 60, "drill for the spigot in mm");
    static final Key CAP_DEPTH =
            Key.length("cap_depth", 0.5, 300, "full depth of the spigot's bore in mm");
    static final Key TENON_DIAMETER = Key.length("diameter", 1, 80, "diameter in mm");
    static final Key TENON_LENGTH = Key.length("length", 0.5, 100, "length in mm");
    static final Key TENON =
            Key.map(
                    "tenon",
                    Keys.of("tenon", TENON_DIAMETER, TENON_LENGTH),
                    "the spigot of wood in the ferrule");
    static final Key USE = Key.word("use", ShapeKeys.words(Use.values()), "how the piece is held");
    static final Key BLANK_SIDE =
            Key.length("side", 2, 300, "side of the square or diameter of the rod in mm");
    static final Key BLANK_LENGTH = Key.length("length", 5, 2000, "length in mm");
    static final Key BLANK =
            Key.map("blank", Keys.of("blank", BLANK_SIDE, BLANK_LENGTH), "the blank on hand");
    static final Key NODE_DIAMETER = Key.length("diameter", 1, 200, "diameter in mm");
    static final Key NODE_AT =
            Key.share("at", "share of the visible wood; the node no longer slides");
    static final Key NODES =
            Key.namedMaps(
                    "nodes",
                    Keys.of("node", NODE_DIAMETER, NODE_AT),
                    "nodes of the shape that are to stand otherwise here");

    static final List<Key> ALL =
            List.of(
                    USE,
                    LENGTH_RATIO,
                    SWELL,
                    BUTT,
                    FIT,
                    TANG_DRILL,
                    TANG_DEPTH,
                    CAP_DRILL,
                    CAP_DEPTH,
                    TENON,
                    WanderReader.WANDER,
                    BLANK,
                    NODES);

    private ChoicesKeys() {}
}
