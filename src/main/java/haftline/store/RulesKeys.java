package haftline.store;

/** Keys of a rules document, in groups. */
final class RulesKeys {
    static final String KIND = "rules";

    static final Key NAME = Key.text("name", "name of the rules");
    static final Key NOTE = Key.note("note", "free text");

    static final Key RATIO =
            Key.number(
                    "ratio",
                    0.1,
                    10,
                    "",
                    "handle length, ferrule's front face to butt with cap, as a multiple of the"
                            + " blade's");
    static final Key SLIDE =
            Key.number("slide", 0, 0.2, "", "how far a node may slide, share of the visible wood");
    static final Key LENGTHS = group("lengths", "how long a handle is", RATIO, SLIDE);

    static final Key PRESSED_UNDER =
            Key.length("pressed_under", 0, 3, "pressed bore under the tang, mm");
    static final Key PRESSED_BARB_UNDER =
            Key.length("pressed_barb_under", 0, 3, "pressed bore under the barbs, mm");
    static final Key PRESSED_FLAT_LEAST =
            Key.number(
                    "pressed_flat_least",
                    0,
                    1,
                    "",
                    "least thickness over width of a flat tang that is pressed");
    static final Key BONDED_OVER =
            Key.length("bonded_over", 0, 3, "bonded bore over the largest reading, mm");
    static final Key GLUE_LINE_THIN =
            Key.length("glue_line_thin", 0, 2, "thinnest good glue line, mm a side");
    static final Key GLUE_LINE_THICK =
            Key.length("glue_line_thick", 0, 2, "thickest good glue line, mm a side");
    static final Key LOOSE =
            Key.length("loose", 0, 5, "clearance above which adhesive alone is a warning, mm");
    static final Key SLEEVE =
            Key.length("sleeve", 0, 5, "clearance above which the tang is packed or sleeved, mm");
    static final Key SPLIT_WARN =
            Key.number("split_warn", 0.1, 20, "", "split index above which there is a warning");
    static final Key FITS =
            group(
                    "fits",
                    "how a tang is held",
                    PRESSED_UNDER,
                    PRESSED_BARB_UNDER,
                    PRESSED_FLAT_LEAST,
                    BONDED_OVER,
                    GLUE_LINE_THIN,
                    GLUE_LINE_THICK,
                    LOOSE,
                    SLEEVE,
                    SPLIT_WARN);

    static final Key DEPTH_ALLOWANCE =
            Key.length("depth_allowance", 0, 20, "bore deeper than the tang's tip, mm");
    static final Key CAP_OVER =
            Key.length("cap_over", 0, 3, "cap's bore over the spigot's largest reading, mm");
    static final Key CAP_ALLOWANCE =
            Key.length("cap_allowance", 0, 20, "cap's bore deeper than the spigot, mm");
    static final Key POINT_ANGLE =
            Key.number(
                    "point_angle",
                    30,
                    180,
                    "degrees",
                    "included angle of a drill's point where it does not say its own");
    static final Key ECCENTRICITY =
            Key.length("eccentricity", 0, 2, "how far a wobbling drill runs out, mm");
    static final Key MOST_STEPS = Key.whole("most_steps", 1, 6, "most drills for a tapered tang");
    static final Key WEB =
            Key.length("web", 0, 50, "least wood between two bores, points included, mm");
    static final Key BORES =
            group(
                    "bores",
                    "how holes are made",
                    DEPTH_ALLOWANCE,
                    CAP_OVER,
                    CAP_ALLOWANCE,
                    POINT_ANGLE,
                    ECCENTRICITY,
                    MOST_STEPS,
                    WEB);

    static final Key BONDED_UNDER =
            Key.length("bonded_under", 0, 2, "bonded tenon in wood under the ferrule's bore, mm");
    static final Key DRIVEN_OVER =
            Key.length("driven_over", 0, 2, "tenon without adhesive over the ferrule's bore, mm");
    static final Key PLASTIC_UNDER =
            Key.length("plastic_under", 0, 2, "tenon in plastics under the ferrule's bore, mm");
    static final Key SHORT =
            Key.length("short", -2, 10, "tenon shorter than the ferrule's inside, mm");
    static final Key DRIVEN =
            Key.yesNo("driven", "whether the ferrule is driven on dry rather than bonded");
    static final Key LOOSE_GAP =
            Key.length("loose_gap", 0, 2, "winter gap above which a ferrule is loose, mm");
    static final Key TENONS =
            group(
                    "tenons",
                    "how the ferrule is held",
                    BONDED_UNDER,
                    DRIVEN_OVER,
                    PLASTIC_UNDER,
                    SHORT,
                    DRIVEN,
                    LOOSE_GAP);

    static final Key TENON_WOOD = wall("tenon_wood", "on the tenon, wood");
    static final Key TENON_PLASTIC = wall("tenon_plastic", "on the tenon, plastics");
    static final Key BODY_WOOD = wall("body_wood", "on the body over the tang's bore, wood");
    static final Key BODY_PLASTIC =
            wall("body_plastic", "on the body over the tang's bore, plastics");
    static final Key CAP = wall("cap", "over the cap's bore");
    static final Key STOP = wall("stop", "under which nothing is made");
    static final Key WALLS =
            group(
                    "walls",
                    "least material over a bore at the worst wander",
                    TENON_WOOD,
                    TENON_PLASTIC,
                    BODY_WOOD,
                    BODY_PLASTIC,
                    CAP,
                    STOP);

    static final Key FROM =
            Key.length("from", -500, 500, "mm behind the ferrule's front face, negative before it");
    static final Key TO =
            Key.length("to", -500, 500, "mm behind the ferrule's front face, negative before it");
    static final Key BALANCE = group("balance", "where the finished piece balances", FROM, TO);

    static final Key CENTRE_ERROR =
            Key.length("centre_error", 0, 20, "how far the blank's centre is missed, mm");
    static final Key MOUTH_ERROR =
            Key.length("mouth_error", 0, 20, "how far a bore's mouth is off the centre, mm");
    static final Key CLEAN_UP =
            Key.length("clean_up", 0, 20, "depth of the cut that cleans up a blank, mm");
    static final Key FACING = Key.length("facing", 0, 50, "faced off a bored end, mm");
    static final Key PARTING =
            Key.length("parting", 0, 100, "waste at a butt that is parted off, mm");
    static final Key SANDING = Key.length("sanding", 0, 5, "left on the diameter for sanding, mm");
    static final Key BLANKS =
            group(
                    "blanks",
                    "what is cut to waste",
                    CENTRE_ERROR,
                    MOUTH_ERROR,
                    CLEAN_UP,
                    FACING,
                    PARTING,
                    SANDING);

    static final Key TEMPERATURE =
            Key.number("temperature", -1, 60, "°C", "temperature of the air");
    static final Key HUMIDITY = Key.number("humidity", 5, 95, "%", "relative humidity of the air");
    static final Key SHOP = group("shop", "the workshop", TEMPERATURE, HUMIDITY);
    static final Key DRY = group("dry", "a heated room in winter", TEMPERATURE, HUMIDITY);
    static final Key DAMP = group("damp", "a damp kitchen", TEMPERATURE, HUMIDITY);
    static final Key CLIMATE =
            group("climate", "where the piece is made and lives", SHOP, DRY, DAMP);

    static final Key NOSE = Key.length("nose", 0, 30, "radius of the cutter's nose, mm");
    static final Key FOLLOWER = Key.length("follower", 0, 30, "radius of the follower, mm");
    static final Key STEEPEST =
            Key.number("steepest", 5, 89, "degrees", "steepest slope that is copied");
    static final Key COPYING =
            group("copying", "what a copying attachment can follow", NOSE, FOLLOWER, STEEPEST);

    static final Key SPREAD =
            Key.length("spread", 0, 10, "spread above which to measure again, mm");
    static final Key OVAL =
            Key.length("oval", 0, 10, "difference of axes above which a ferrule is oval, mm");
    static final Key READINGS = group("readings", "when readings disagree", SPREAD, OVAL);

    static final Key TURNED =
            Key.length("turned", 0, 2, "deviation of a turned diameter at each node, mm");
    static final Key TENON =
            Key.length("tenon", 0, 2, "deviation of the tenon's diameter, fitted to a ferrule, mm");
    static final Key DEPTH = Key.length("depth", 0, 10, "deviation of a bore's depth, mm");
    static final Key OVERSIZE =
            Key.length(
                    "oversize",
                    0,
                    2,
                    "how much wider than drawn a hole is, on the diameter; 95 in 100 are within"
                            + " twice of it, mm");
    static final Key WANDER_WITHIN =
            Key.number(
                    "wander_within",
                    0.01,
                    0.9999,
                    "",
                    "share of bores that keep within the stated wander");
    static final Key DENSITY_WOOD = share("density_wood", "a wood's density");
    static final Key DENSITY_PLASTIC = share("density_plastic", "plastics' density");
    static final Key RECKONED = share("reckoned", "a mass that was not weighed");
    static final Key SPREADS =
            group(
                    "spreads",
                    "how far a made handle is from the drawn one, standard deviations",
                    TURNED,
                    TENON,
                    DEPTH,
                    OVERSIZE,
                    WANDER_WITHIN,
                    DENSITY_WOOD,
                    DENSITY_PLASTIC,
                    RECKONED);

    static final Keys RULES =
            Document.keys(
                    KIND,
                    NAME,
                    NOTE,
                    LENGTHS,
                    FITS,
                    BORES,
                    TENONS,
                    WALLS,
                    WanderReader.WANDER,
                    BALANCE,
                    BLANKS,
                    CLIMATE,
                    COPYING,
                    READINGS,
                    SPREADS);

    private RulesKeys() {}

    private static Key group(String name, String says, Key... keys) {
        return Key.map(name, Keys.of("group of rules", keys), says);
    }

    private static Key share(String name, String of) {
        return Key.number(name, 0, 0.5, "", "deviation of " + of + ", as a share of it");
    }

    private static Key wall(String name, String where) {
        return Key.length(name, 0, 30, where + ", mm");
    }
}
