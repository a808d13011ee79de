package haftline.store;

import haftline.parts.EndCap;
import haftline.parts.Tang;
import java.util.ArrayList;
import java.util.List;

/** Keys of a parts document. */
final class PartsKeys {
    static final String KIND = "parts";

    static final Key NAME = Key.text("name", "name of the family of kits").must();
    static final Key NOTE = Key.note("note", "free text");

    static final Key MASS = Key.number("mass", 0.1, 5000, "g", "mass in g, where weighed");
    static final Key MATERIAL = Key.text("material", "key of the metal in the catalogue").must();

    static final Key BLADE_LENGTH =
            Key.measured("length", 5, 1000, "exposed length, seating face to tip").must();
    static final Key BLADE_WIDTH =
            Key.length("width", 0.5, 300, "greatest depth of the blade in mm").must();
    static final Key BLADE_THICKNESS = Key.length("thickness", 0.1, 60, "in mm").must();
    static final Key EDGE =
            Key.length(
                    "edge_below_axis",
                    -300,
                    300,
                    "how far the edge stands below the axis in mm; half of the width where not"
                            + " said");
    static final Key INCLUDES_TANG =
            Key.yesNo("includes_tang", "whether the tang was on the scale too; true if not said");
    static final Key BLADE_BALANCE =
            Key.length(
                    "balance",
                    -400,
                    1000,
                    "centre of mass of what was weighed, mm in front of the seating face, ferrule"
                            + " off");
    static final Keys BLADE_KEYS =
            Keys.of(
                    "blade",
                    BLADE_LENGTH,
                    BLADE_WIDTH,
                    BLADE_THICKNESS,
                    EDGE,
                    MATERIAL,
                    MASS,
                    INCLUDES_TANG,
                    BLADE_BALANCE);
    static final Key BLADE =
            Key.map("blade", BLADE_KEYS, "the working part in front of the ferrule").must();

    static final Key FLARE_DIAMETER =
            Key.measured("diameter", Tang.LEAST, 60, "greatest diameter over the flare").must();
    static final Key FLARE_LENGTH =
            Key.measured("length", Tang.LEAST, 60, "how far it reaches along the tang").must();
    static final Key FLARE =
            Key.map(
                    "flare",
                    Keys.of("flare", FLARE_DIAMETER, FLARE_LENGTH),
                    "thickening at the tang's root");

    static final Key TANG_LENGTH =
            Key.measured("length", Tang.LEAST, Tang.LONGEST, "seating face to tip").must();
    static final Key DIAMETER = across("diameter", "diameter");
    static final Key WIDTH = across("width", "the larger cross size");
    static final Key THICKNESS = across("thickness", "the smaller cross size");
    static final Key ROOT = across("root", "diameter at the seating face");
    static final Key TIP = across("tip", "diameter at the tip");
    static final Key CORE = across("core", "diameter between the barbs");
    static final Key BARB = across("barb", "diameter over the barbs");
    static final Key CREST = across("crest", "diameter over the thread");
    static final Key THREAD_BORE =
            Key.length("thread_bore", Tang.LEAST, Tang.WIDEST, "bore for the thread in mm").must();
    static final Key CLEARANCE_BORE =
            Key.length(
                            "clearance_bore",
                            Tang.LEAST,
                            Tang.WIDEST,
                            "bore that the plain part passes in mm")
                    .must();
    static final Key PLAIN_LENGTH =
            Key.measured(
                            "plain_length",
                            0,
                            Tang.LONGEST,
                            "length of the plain part from the seating face")
                    .must();

    static final Keys ROUND = tang("round", DIAMETER);
    static final Keys FLAT = tang("flat", WIDTH, THICKNESS);
    static final Keys SQUARE = tang("square", WIDTH);
    static final Keys TAPERED = tang("tapered", ROOT, TIP);
    static final Keys BARBED = tang("barbed", CORE, BARB);
    static final Keys THREADED = tang("threaded", CREST, THREAD_BORE, CLEARANCE_BORE, PLAIN_LENGTH);
    static final Key TANG_KIND =
            Key.word(
                            "kind",
                            List.of("round", "flat", "square", "tapered", "barbed", "threaded"),
                            "kind of tang")
                    .must();
    static final List<Keys> TANGS = List.of(ROUND, FLAT, SQUARE, TAPERED, BARBED, THREADED);
    static final Key TANG =
            Key.several(
                            "tang",
                            "a map with kind (round, flat, square, tapered, barbed or threaded),"
                                    + " its sizes and length")
                    .must();

    static final Key BORE = Key.measured("bore", 1, 60, "inside diameter").must();
    static final Key OUTSIDE_DIAMETER =
            Key.measured("outside", 1, 80, "outside diameter at the wood's end");
    static final Key LEAST = Key.measured("least", 1, 80, "the lesser axis of an oval one").must();
    static final Key GREATEST =
            Key.measured("greatest", 1, 80, "the greater axis of an oval one").must();
    static final Keys OVAL = Keys.of("oval outside", LEAST, GREATEST);
    static final Key OUTSIDE =
            Key.several(
                            "outside",
                            "a length from 1 to 80 mm, a list of readings, or a map with least"
                                    + " and greatest")
                    .must();
    static final Key FERRULE_LENGTH =
            Key.measured("length", 0.5, 100, "front face to rear rim").must();
    static final Key LIP =
            Key.length("lip", 0, 100, "thickness of the lip that closes the front in mm");
    static final Key LIP_HOLE =
            Key.length("lip_hole", 0.5, 60, "hole in the lip that the tang passes in mm");
    static final Key CHAMFER = Key.length("chamfer", 0, 40, "chamfer outside the rear rim in mm");
    static final Key FERRULE =
            Key.map(
                            "ferrule",
                            Keys.of(
                                    "ferrule",
                                    BORE,
                                    OUTSIDE,
                                    FERRULE_LENGTH,
                                    LIP,
                                    LIP_HOLE,
                                    CHAMFER,
                                    MATERIAL,
                                    MASS),
                            "the metal ring between blade and wood")
                    .must();

    static final Key SPIGOT_DIAMETER = Key.measured("diameter", 0.5, 60, "diameter").must();
    static final Key SPIGOT_LENGTH =
            Key.measured("length", 0.5, 200, "seating face to its end in the wood").must();
    static final Key SPIGOT =
            Key.map(
                            "spigot",
                            Keys.of("spigot", SPIGOT_DIAMETER, SPIGOT_LENGTH),
                            "what stands in the wood")
                    .must();
    static final Key HEAD_DIAMETER =
            Key.measured("diameter", 0.5, 80, "diameter at the wood's face").must();
    static final Key HEAD_THICKNESS =
            Key.measured("thickness", 0.1, 60, "seating face to the end of the head").must();
    static final Key HEAD =
            Key.map(
                            "head",
                            Keys.of("head", HEAD_DIAMETER, HEAD_THICKNESS),
                            "what seats on the wood")
                    .must();
    static final Key FORM =
            Key.word("form", ShapeKeys.words(EndCap.Form.values()), "form of the head").must();
    static final Key CAP_BALANCE =
            Key.length(
                    "balance",
                    -200,
                    60,
                    "centre of mass, mm beyond the seating face, negative towards the wood");
    static final Key CAP =
            Key.map(
                    "cap",
                    Keys.of("cap", SPIGOT, HEAD, FORM, MATERIAL, MASS, CAP_BALANCE),
                    "the end cap; left out where there is none");

    static final Key SEAT =
            Key.length(
                    "seat",
                    0,
                    100,
                    "how far behind the ferrule's front face the tang's seating face lies in mm");
    static final Keys KIT = Keys.of("kit", SEAT, BLADE, TANG, FERRULE, CAP);
    static final Key KITS = Key.namedMaps("kits", KIT, "the kits by name").must();
    static final Key ID = Key.text("batch", "what the maker calls the batch").must();
    static final Keys BATCH = Keys.of("batch", ID, NOTE, MeasuredKeys.RESOLUTION, KITS);
    static final Key BATCHES = Key.maps("batches", BATCH, "measured batches, oldest first").must();

    static final Keys PARTS = Document.keys(KIND, NAME, NOTE, BATCHES);

    private PartsKeys() {}

    private static Key across(String name, String says) {
        return Key.measured(name, Tang.LEAST, Tang.WIDEST, says).must();
    }

    private static Keys tang(String kind, Key... sizes) {
        List<Key> keys = new ArrayList<>();
        keys.add(Key.word("kind", List.of(kind), "kind of tang").must());
        keys.addAll(List.of(sizes));
        keys.addAll(List.of(TANG_LENGTH, MASS, FLARE));
        return new Keys(kind + " tang", List.copyOf(keys));
    }
}
