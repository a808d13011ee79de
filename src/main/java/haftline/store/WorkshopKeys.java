package haftline.store;

import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import java.util.stream.Stream;

/** Keys of a workshop document, in groups. */
final class WorkshopKeys {
    static final String KIND = "workshop";

    static final Key NAME = Key.text("name", "name of the workshop");
    static final Key NOTE = Key.note("note", "free text");

    static final Key TOOL =
            Key.word("tool", ShapeKeys.words(TemplateSettings.Tool.values()), "what cuts cards");
    static final Key KERF = Key.length("kerf", 0, 2, "width of the cut, mm");
    static final Key LASER = group("laser", "the laser, where that is the tool", KERF);
    static final Key BIT = Key.length("bit", 0.2, 30, "diameter of the bit, mm");
    static final Key RELIEVED =
            Key.yesNo("corners_relieved", "whether square inside corners may be opened for it");
    static final Key ROUTER = group("router", "the router, where that is the tool", BIT, RELIEVED);

    static final Key WIDTH = Key.length("width", 20, 5000, "along the handles, mm");
    static final Key HEIGHT = Key.length("height", 20, 5000, "across the handles, mm");
    static final Key MARGIN = Key.length("margin", 0, 100, "kept free along the edges, mm");
    static final Key GAP = Key.length("gap", 0, 50, "between two cards, mm");
    static final Key THICKNESS = Key.length("thickness", 0.2, 25, "mm, noted on the cards");
    static final Key SHEET =
            group("sheet", "what cards are cut from", WIDTH, HEIGHT, MARGIN, GAP, THICKNESS);

    static final Key LETTERING =
            Key.word(
                    "lettering",
                    ShapeKeys.words(TemplateSettings.Lettering.values()),
                    "how text is written on cards");

    static final Key PROFILE = Key.yesNo("profile", "whether profile gauges are made");
    static final Key SLOTS = Key.yesNo("slots", "whether sizing slots are made");
    static final Key STORY_ROD = Key.yesNo("story_rod", "whether story rods are made");
    static final Key CARDS =
            Key.word(
                    "cards",
                    ShapeKeys.words(TemplateSettings.Gauges.Cards.values()),
                    "which gauges share a card");
    static final Key REGISTER =
            Key.word(
                    "register",
                    ShapeKeys.words(TemplateSettings.Gauges.Register.values()),
                    "the face that a profile gauge bears on");
    static final Key RELIEF =
            Key.length("relief", 0, 6, "width of the relief at sharp joints, mm; 0 for none");
    static final Key CLEARANCE =
            Key.length("clearance", 0, 2, "air between the gauge and the finished work, mm");
    static final Key SLOTS_OVER =
            Key.length("slots_over", 0, 3, "slots wider than the finished diameter, mm");
    static final Key TENON_TOLERANCE =
            Key.length(
                    "tenon_tolerance",
                    0.01,
                    0.5,
                    "go slot over, and no-go slot under, the tenon's diameter, mm");
    static final Key HANGING_HOLE =
            Key.length("hanging_hole", 0, 12, "diameter of the hole to hang it by, mm; 0 for none");
    static final Key GAUGES =
            group(
                    "gauges",
                    "which gauges are made, and how",
                    PROFILE,
                    SLOTS,
                    STORY_ROD,
                    CARDS,
                    REGISTER,
                    RELIEF,
                    CLEARANCE,
                    SLOTS_OVER,
                    TENON_TOLERANCE,
                    HANGING_HOLE);

    static final Key MADE = Key.yesNo("made", "whether copying templates are made");
    static final Key SIDES =
            Key.word(
                    "sides",
                    ShapeKeys.words(TemplateSettings.Copying.Sides.values()),
                    "which sides of the axis are cut");
    static final Key BACK =
            Key.length("back", 2, 200, "depth of a one-sided card below the axis, mm");
    static final Key RUN_ON = Key.length("run_on", 0, 50, "straight before the shoulder, mm");
    static final Key RUN_OFF = Key.length("run_off", 0, 50, "straight behind the seat, mm");
    static final Key RADIAL_RATIO =
            Key.number(
                    "radial_ratio",
                    0.25,
                    4,
                    "",
                    "how far the follower moves for each mm of the cutter across the axis");
    static final Key CUTTER_ANGLE =
            Key.number(
                    "cutter_angle",
                    10,
                    150,
                    "degrees",
                    "between the flanks of a pointed cutter; may lower the steepest slope of the"
                            + " rules");
    static final Key CUTTER_CLEARANCE =
            Key.number("cutter_clearance", 0, 20, "degrees", "air between its flank and the work");
    static final Key FROM =
            Key.word(
                            "from",
                            ShapeKeys.words(TemplateSettings.Hole.End.values()),
                            "the end line that it is measured from")
                    .must();
    static final Key BEYOND =
            Key.length("beyond", -500, 200, "mm beyond that line; negative between the two").must();
    static final Key HOLE_HEIGHT =
            Key.length("height", -200, 200, "mm over the axis; negative towards the back").must();
    static final Key HOLE_DIAMETER = Key.length("diameter", 0.5, 50, "mm").must();
    static final Key HOLES =
            Key.maps(
                    "holes",
                    Keys.of("mounting hole", FROM, BEYOND, HOLE_HEIGHT, HOLE_DIAMETER),
                    "mounting holes");
    static final Key COPYING =
            group(
                    "copying",
                    "whether copying templates are made, and how",
                    MADE,
                    SIDES,
                    BACK,
                    RUN_ON,
                    RUN_OFF,
                    RADIAL_RATIO,
                    CUTTER_ANGLE,
                    CUTTER_CLEARANCE,
                    HOLES);

    static final Key TEMPLATES =
            group(
                    "templates",
                    "how gauges and copying templates are made",
                    TOOL,
                    LASER,
                    ROUTER,
                    SHEET,
                    LETTERING,
                    GAUGES,
                    COPYING);

    static final Key DXF =
            Key.word("dxf", ShapeKeys.words(FileSettings.Dxf.values()), "what DXF files are for");
    static final Key HAIRLINES =
            Key.yesNo("hairlines", "whether cut lines in SVG files are as thin as a hair");
    static final Key PAPER =
            Key.word(
                    "paper",
                    Stream.of(FileSettings.Paper.values()).map(FileSettings.Paper::label).toList(),
                    "what is printed on");
    static final Key SHORT_EDGE = bar("short_edge", "short");
    static final Key LONG_EDGE = bar("long_edge", "long");
    static final Key PRINTER =
            group(
                    "printer",
                    "what the 100 mm check bars measure on a print that was not corrected",
                    SHORT_EDGE,
                    LONG_EDGE);
    static final Key FILES =
            group("files", "how files are written", DXF, HAIRLINES, PAPER, PRINTER);

    static final Keys WORKSHOP =
            Document.keys(
                    KIND,
                    NAME,
                    NOTE,
                    TEMPLATES,
                    FILES,
                    StockLengthsKeys.STOCK_LENGTHS,
                    RatesKeys.RATES);

    private WorkshopKeys() {}

    private static Key group(String name, String says, Key... keys) {
        return Key.map(name, Keys.of("group of the workshop", keys), says);
    }

    private static Key bar(String name, String edge) {
        return Key.length(
                name,
                FileSettings.Printer.LEAST_BAR_MM,
                FileSettings.Printer.GREATEST_BAR_MM,
                "the bar along the paper's " + edge + " edge, mm");
    }
}
