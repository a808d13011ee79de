package haftline.findings;

import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.stock.Caution;
import haftline.stock.Stock;

/**
 * The words of a finding, made on demand: what is so and against what; {@link WhoseRule} has the
 * rest.
 */
public final class Words {
    private final Finding finding;
    private final Stock stock;
    private final Units units;

    private Words(Finding finding, Stock stock, Units units) {
        this.finding = finding;
        this.stock = stock;
        this.units = units;
    }

    /**
     * A finding as a sentence.
     *
     * @param finding the finding
     * @param stock the stock of the handle, whose cautions it may tell
     * @param units unit of the lengths in it
     * @return a sentence without a full stop
     */
    public static String message(Finding finding, Stock stock, Units units) {
        return new Words(finding, stock, units).message();
    }

    private String message() {
        return switch (finding.code()) {
            case WALL_TOO_THIN ->
                    finding.figure() < 0
                            ? breaksOut()
                            : "Wall "
                                    + wall()
                                    + " "
                                    + where()
                                    + at()
                                    + " at the worst wander, limit "
                                    + limit();
            case BORE_THROUGH_DETAIL ->
                    "The "
                            + finding.subject()
                            + at()
                            + " is cut "
                            + (finding.figure() < 0
                                    ? "into the bore by " + broken()
                                    : "over the bore: wall " + wall())
                            + " at the worst wander, limit "
                            + limit();
            case BORE_TOO_SHALLOW ->
                    "The bore is "
                            + figure()
                            + " deep and "
                            + against()
                            + " of tang goes into it: the blade will not come home";
            case BORE_BOTTOM_TOO_NEAR ->
                    finding.subject().equals("butt")
                            ? finding.figure() < 0
                                    ? "The bore comes out of the butt by " + broken()
                                    : "The bore's point comes within "
                                            + wall()
                                            + " of the butt, limit "
                                            + limit()
                            : "The bore comes within "
                                    + wall()
                                    + " of the surface "
                                    + where()
                                    + ", limit "
                                    + limit();
            case BORES_MEET ->
                    finding.figure() < 0
                            ? "The two bores meet: their points overlap by "
                                    + length(-finding.figure(), 1)
                            : "Only "
                                    + wall()
                                    + " of wood stands between the two bores, limit "
                                    + limit();
            case TANG_LONGER_THAN_WOOD ->
                    "The tang is longer than the wood by "
                            + length(finding.figure() - finding.limit(), 1);
            case TANG_SHORT_OF_WOOD ->
                    "The tang ends "
                            + length(-finding.figure(), 1)
                            + " in front of the wood: nothing holds the blade";
            case SHOULDER_GAP -> new FitWords(finding, units).shoulderGap();
            case FERRULE_LOOSE_IN_WINTER ->
                    finding.subject().equals("driven")
                            ? "In a dry winter the ferrule has "
                                    + length(finding.figure(), 2)
                                    + " of play: bond it"
                            : "In a dry winter the tenon shrinks "
                                    + length(finding.figure(), 2)
                                    + " inside its ferrule, limit "
                                    + length(finding.limit(), 2)
                                    + ": the adhesive must hold it";
            case FERRULE_OVAL ->
                    "The ferrule is oval by "
                            + length(finding.figure(), 2)
                            + ": the shoulder follows its greater axis; blend the lesser by hand";
            case TENON_FIT -> new FitWords(finding, units).tenonFit();
            case PRESSED_IN_PLASTIC ->
                    "A tang is not pressed into "
                            + finding.subject()
                            + ": it has no fibres to part, and cracks; bond it";
            case PRESSED_WHERE_BONDED ->
                    capital(finding.subject())
                            + " is bonded, not pressed in a round bore"
                            + (finding.subject().startsWith("a flat")
                                    ? ": bond it, cut a slot, or drill two holes side by side"
                                    : "");
            case SPLIT_INDEX ->
                    "Split index "
                            + NumberText.fixed(finding.figure(), 1)
                            + (finding.subject().isEmpty() ? "" : " (from estimated strengths)")
                            + at()
                            + ", limit "
                            + NumberText.fixed(finding.limit(), 1)
                            + "; cherry with a "
                            + length(6, 1)
                            + " tang in "
                            + length(5.5, 1)
                            + " and a "
                            + length(3, 1)
                            + " wall is 1";
            case DRILL_NOT_ON_RACK -> new FitWords(finding, units).drillNotOnRack();
            case DRILL_TOO_SHORT ->
                    "The flutes of drill "
                            + finding.subject()
                            + " are "
                            + length(finding.figure(), 0)
                            + " long and the bore is "
                            + figureOf(finding.limit())
                            + " deep: clear chips often, or take a long drill";
            case BORE_DEEP_FOR_DRILL ->
                    "The "
                            + (finding.place() == Place.CAP ? "cap's" : "tang's")
                            + " bore is "
                            + NumberText.fixed(finding.figure(), 1)
                            + " times as deep as its drill is wide: centre drill first, then a short drill, clear chips often";
            case BORE_LOOSE -> new FitWords(finding, units).boreLoose();
            case BORE_TIGHT -> new FitWords(finding, units).boreTight();
            case TANG_WILL_NOT_PASS ->
                    "The tang, "
                            + length(finding.figure(), 2)
                            + (finding.subject().equals(FerruleRules.BORE)
                                    ? " across, does not go into the ferrule's bore of "
                                            + length(finding.limit(), 2)
                                    : " across, does not pass the hole of "
                                            + length(finding.limit(), 2)
                                            + " in the ferrule's lip");
            case FLARE_WANTS_COUNTERSINK ->
                    "The tang's root flares to "
                            + length(finding.figure(), 2)
                            + ", wider than the bore of "
                            + length(finding.limit(), 2)
                            + ": the bore's mouth is opened for it";
            case CAP_PROUD ->
                    finding.subject().equals("spigot")
                            ? "The cap's spigot is "
                                    + length(finding.limit(), 1)
                                    + " long and its bore "
                                    + figure()
                                    + " deep: the cap will stand proud"
                            : "The butt is not square: the cap's head will not seat all round";
            case NO_AIR_PATH ->
                    "Glue at the bottom of a blind bore holds air: cut a fine flat along the tang and push slowly";
            case NOT_MONOTONE ->
                    "The outline turns at \""
                            + finding.subject()
                            + "\", where a run without a turn was asked: diameter "
                            + figure()
                            + " after "
                            + against();
            case FLAT_SPOT ->
                    "The curvature jumps at \""
                            + finding.subject()
                            + "\": the eye may see a flat spot; move the node along";
            case TOO_STEEP_TO_COPY ->
                    "Slope "
                            + NumberText.fixed(finding.figure(), 0)
                            + "°"
                            + at()
                            + ", limit "
                            + NumberText.fixed(finding.limit(), 0)
                            + "°: a follower cannot climb it; cut it by hand";
            case HOLLOW_TIGHTER_THAN_CUTTER ->
                    (finding.figure() == 0
                                    ? "Crisp inside corner"
                                    : "Hollow of radius " + length(finding.figure(), 1))
                            + at()
                            + ", the cutter's nose is "
                            + length(finding.limit(), 1)
                            + ": cut it by hand";
            case TOO_SLENDER ->
                    "Greatest diameter "
                            + figure()
                            + at()
                            + " is slender for its use, at least "
                            + against();
            case TOO_THICK ->
                    "Greatest diameter "
                            + figure()
                            + at()
                            + " is thick for its use, at most "
                            + against();
            case LENGTH_FOR_THE_HAND ->
                    "The hand finds "
                            + length(finding.figure(), apart(0))
                            + " to hold; for its use "
                            + (finding.figure() < finding.limit() ? "at least " : "at most ")
                            + length(finding.limit(), apart(0))
                            + " is usual";
            case BALANCE_OFF_TARGET -> balance();
            case BLANK_TOO_SMALL ->
                    "The blank's "
                            + finding.subject()
                            + " is "
                            + figure()
                            + ", the piece wants "
                            + against()
                            + (finding.gravity() == Gravity.STOP
                                    ? " finished"
                                    : " with its allowances");
            case READINGS_DISAGREE ->
                    "Readings of the "
                            + finding.subject()
                            + " differ by "
                            + length(finding.figure(), 2)
                            + ", more than "
                            + length(finding.limit(), 2)
                            + ": measure every part";
            case READING_STANDS_APART ->
                    capital(finding.subject())
                            + ", "
                            + length(finding.figure(), 2)
                            + ", stands apart from the others, which are "
                            + length(finding.limit(), 2)
                            + " on the mean: take it again, or measure every part";
            case STOCK_IRRITATES -> cautions();
            case NO_FOOD_CLAIM ->
                    "Nothing is claimed about contact with food: follow local rules, the kit's and the finish's data sheets";
            case WILL_ROLL -> "Round all over, it will roll off a table";
            case FIGURE_MISSING ->
                    "Not known: "
                            + finding.subject()
                            + "; what depends on it is left out or estimated";
            case OUT_OF_FAMILY -> outOfFamily();
            case CANNOT_BE_DRAWN -> finding.subject() + room();
        };
    }

    private String outOfFamily() {
        int comma = finding.subject().indexOf(", ");
        String trait = comma < 0 ? finding.subject() : finding.subject().substring(0, comma);
        String why = comma < 0 ? "" : finding.subject().substring(comma);
        return capital(trait)
                + (trait.endsWith("place") ? " at " : " ")
                + inItsUnit(finding.figure())
                + why
                + (why.isEmpty() ? "" : ",")
                + " reads as another pattern: the family ends at "
                + inItsUnit(finding.limit());
    }

    private String inItsUnit(double value) {
        return switch (finding.unit()) {
            case MM -> length(value, apart(1));
            case DEG -> NumberText.said(NumberText.fixed(value, 1)) + "°";
            default -> NumberText.said(NumberText.fixed(value, 3));
        };
    }

    private String cautions() {
        StringBuilder text = new StringBuilder(capital(stock.name())).append(":");
        for (Caution caution : stock.cautions()) {
            text.append(' ').append(caution.text());
        }
        return text.append(" Collect the dust, wear a mask, cover the skin").toString();
    }

    /** What there is and what is the least, where the reason is too little of something. */
    private String room() {
        boolean tooLittle =
                finding.unit() == Finding.Unit.MM
                        && finding.limit() > 0
                        && finding.figure() < finding.limit();
        return tooLittle ? ": " + figure() + ", at least " + against() : "";
    }

    private String balance() {
        return "It balances "
                + Say.fromFace(finding.figure(), apart(1), units)
                + "; the target "
                + (finding.figure() < finding.limit() ? "begins" : "ends")
                + " at "
                + against();
    }

    private String breaksOut() {
        return (finding.place() == Place.CAP ? "The cap's bore" : "The tang's bore")
                + " breaks out of the "
                + (finding.place() == Place.TENON ? "tenon" : "wood")
                + at()
                + " by "
                + broken()
                + " at the worst wander, limit "
                + limit()
                + " of wall";
    }

    /** A wall that is less than none, by how much. */
    private String broken() {
        String wall = Say.wall(finding.figure(), units);
        return wall.startsWith("\u2212") ? wall.substring(1) : wall;
    }

    private String where() {
        return switch (finding.place()) {
            case TENON -> "on the tenon";
            case CAP -> "over the cap's bore";
            default -> "on the body";
        };
    }

    private String at() {
        if (finding.knownX().isEmpty()) {
            return "";
        }
        // Nearer than a turner's pencil line it is the shoulder itself.
        if (Math.abs(finding.atX()) < 0.05) {
            return " at the shoulder";
        }
        return finding.atX() < 0
                ? " " + length(-finding.atX(), 1) + " in front of the shoulder"
                : " at " + length(finding.atX(), 1);
    }

    private String figure() {
        return length(finding.figure(), apart(1));
    }

    private String against() {
        return length(finding.limit(), apart(1));
    }

    /** The limit of a wall, which is itself rounded down. */
    private String limit() {
        return figureOf(finding.limit());
    }

    private int apart(int decimals) {
        return Say.apart(finding, decimals, units);
    }

    private String wall() {
        return Say.wall(finding.figure(), units);
    }

    private String figureOf(double mm) {
        return length(mm, 1);
    }

    private String length(double mm, int decimals) {
        return Say.length(mm, decimals, units);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
