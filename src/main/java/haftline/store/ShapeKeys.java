package haftline.store;

import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Reference;
import java.util.Arrays;
import java.util.List;

/** Keys of a shape document. */
final class ShapeKeys {
    static final String KIND = "shape";

    static final Key NAME = Key.text("name", "name in the trade's words").must();
    static final Key NOTE = Key.note("note", "what the shape is good for");
    static final Key SHADOW_LINE =
            Key.length(
                    "shadow_line",
                    -3,
                    3,
                    "step in radius at the ferrule in mm, positive where the wood stands proud");
    static final Key SHOULDER_SLOPE = slope("shoulder_slope", "where the wood leaves the ferrule");
    static final Key SEAT_SLOPE = slope("seat_slope", "where the wood meets the seat");

    static final Key NODE_NAME = Key.text("name", "a turner's word, unique in the shape").must();
    static final Key AT =
            Key.several(
                            "at",
                            "a share of the wood between 0 and 1, or a map with from_shoulder or"
                                    + " from_butt in mm")
                    .must();
    static final Key DIAMETER =
            Key.several("diameter", "a length from 1 to 200 mm, or a map with times and of").must();
    static final Key JOIN = Key.word("join", words(Join.values()), "how the outline passes");
    static final Key SLOPE = slope("slope", "of the outline at a smooth node");
    static final Key SLIDES =
            Key.yesNo(
                    "slides",
                    "whether a widest or narrowest node may slide to where its flat spot is least");
    static final Keys NODE = Keys.of("node", NODE_NAME, AT, DIAMETER, JOIN, SLOPE, SLIDES);
    static final Key NODES =
            Key.maps("nodes", NODE, "the nodes between ferrule and seat, in order");

    static final Key SHARE = Key.share("at", "share of the visible wood");
    static final Key FROM_SHOULDER = Key.distance("from_shoulder", 1000, "mm behind the shoulder");
    static final Key FROM_BUTT = Key.distance("from_butt", 1000, "mm in front of the butt");
    static final Keys PLACE = Keys.of("place", FROM_SHOULDER, FROM_BUTT);

    static final Key PLAIN = Key.length("diameter", 1, 200, "diameter in mm");
    static final Key TIMES = Key.number("times", 0.1, 10, "", "multiple").must();
    static final Key OF =
            Key.word("of", words(Reference.values()), "what it is a multiple of").must();
    static final Keys SIZE = Keys.of("diameter", TIMES, OF);

    static final Key WIDTH =
            Key.length("width", Detail.NARROWEST, Detail.WIDEST, "width along the axis in mm")
                    .must();
    static final Key HEIGHT =
            Key.length("height", 0.05, Detail.WIDEST / 2, "how far it stands proud in mm").must();
    static final Key DEPTH =
            Key.length("depth", 0.05, Detail.WIDEST / 2, "how deep it is cut in mm").must();
    static final Key VEE_DEPTH =
            Key.length("depth", 0.05, 2 * Detail.WIDEST, "how deep it is cut in mm").must();
    static final Key FILLET_HEIGHT =
            Key.length("height", -10, 10, "above the body in mm, negative where it is sunk").must();
    static final Key BURNT_WIDTH =
            Key.length("width", Detail.NARROWEST, 3, "width at the surface in mm").must();
    static final Key BURNT_DEPTH = Key.length("depth", 0.05, 2, "depth in mm").must();

    static final Key BEAD =
            Key.map("bead", Keys.of("bead", AT, WIDTH, HEIGHT), "a convex round above the body");
    static final Key COVE =
            Key.map("cove", Keys.of("cove", AT, WIDTH, DEPTH), "a concave round cut in");
    static final Key VEE = Key.map("vee", Keys.of("vee", AT, WIDTH, VEE_DEPTH), "a vee groove");
    static final Key FILLET =
            Key.map(
                    "fillet",
                    Keys.of("fillet", AT, WIDTH, FILLET_HEIGHT),
                    "a narrow level band, raised or sunk");
    static final Key FLAT =
            Key.map("flat", Keys.of("flat", AT, WIDTH), "a straight run on the body");
    static final Key BURNT_LINE =
            Key.map(
                    "burnt line",
                    Keys.of("burnt line", AT, BURNT_WIDTH, BURNT_DEPTH),
                    "a line burnt in with a wire");
    static final Keys DETAIL = Keys.of("detail", BEAD, COVE, VEE, FILLET, FLAT, BURNT_LINE);
    static final Key DETAILS = Key.maps("details", DETAIL, "small forms laid over the body");

    static final Key RUN_FROM = Key.text("from", "node where it begins, or shoulder").must();
    static final Key RUN_TO = Key.text("to", "node where it ends, or seat").must();
    static final Keys RUN = Keys.of("monotone run", RUN_FROM, RUN_TO);
    static final Key MONOTONE =
            Key.maps(
                    "monotone",
                    RUN,
                    "runs along which the wood is to thicken or thin without a turn");

    static final String SQUARE = "square";
    static final Key CHAMFERED =
            Key.length("chamfered", 0.1, 20, "a chamfer of 45 degrees, mm along and across");
    static final Key ROUNDED = Key.length("rounded", 0.1, 40, "a quarter round, radius in mm");
    static final Key DOMED = Key.length("domed", 0.5, 60, "a dome that closes, height in mm");
    static final Keys BUTT_FORM = Keys.of("butt", CHAMFERED, ROUNDED, DOMED);
    static final Key BUTT =
            Key.several("butt", "square, or a map with chamfered, rounded or domed in mm");

    static final Keys SHAPE =
            Document.keys(
                    KIND,
                    NAME,
                    NOTE,
                    SHADOW_LINE,
                    SHOULDER_SLOPE,
                    NODES,
                    SEAT_SLOPE,
                    DETAILS,
                    MONOTONE,
                    BUTT);

    private ShapeKeys() {}

    private static Key slope(String name, String where) {
        return Key.number(name, -Node.STEEPEST_DEG, Node.STEEPEST_DEG, "degrees", "slope " + where);
    }

    static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants).map(MapReader::written).toList();
    }
}
