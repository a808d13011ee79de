package haftline.findings;

import java.util.Locale;

/** What can be found; the text of each is stable, since other programs may read it. */
public enum Code {
    /** A wall is thinner than the limit at the worst wander. */
    WALL_TOO_THIN,
    /** A detail is cut over a bore and leaves the wall too thin. */
    BORE_THROUGH_DETAIL,
    /** The bottom or point of a bore comes too near the surface. */
    BORE_BOTTOM_TOO_NEAR,
    /** The bore is shallower than the tang is long in it, so that the blade stands proud. */
    BORE_TOO_SHALLOW,
    /** The two bores meet, or the web between them is thin. */
    BORES_MEET,
    /** The tang is longer than the wood. */
    TANG_LONGER_THAN_WOOD,
    /** The tang ends within the ferrule and does not reach the wood. */
    TANG_SHORT_OF_WOOD,
    /** Wood stands away from the ferrule at the shoulder, or the ferrule overhangs it. */
    SHOULDER_GAP,
    /** The ferrule comes loose in a dry winter. */
    FERRULE_LOOSE_IN_WINTER,
    /** The ferrule is oval. */
    FERRULE_OVAL,
    /** The tenon leaves no room for adhesive, or too much. */
    TENON_FIT,
    /** A pressed fit in stock without fibres. */
    PRESSED_IN_PLASTIC,
    /** A pressed fit where it must be bonded. */
    PRESSED_WHERE_BONDED,
    /** The split index is high. */
    SPLIT_INDEX,
    /** The drill that the tang or spigot wants is not on the rack. */
    DRILL_NOT_ON_RACK,
    /** The drill's flutes are shorter than the hole is deep. */
    DRILL_TOO_SHORT,
    /** The bore is deep for its diameter, so that it wanders. */
    BORE_DEEP_FOR_DRILL,
    /** The bore is so wide that adhesive alone does not hold. */
    BORE_LOOSE,
    /** The bore is too tight for a glue line, or for the tang. */
    BORE_TIGHT,
    /** The tang does not pass the hole in the ferrule's lip, or its bore. */
    TANG_WILL_NOT_PASS,
    /** A flared root wants a countersink. */
    FLARE_WANTS_COUNTERSINK,
    /** The cap stands proud of the wood, or its spigot bottoms. */
    CAP_PROUD,
    /** No way for air to leave a glued blind bore. */
    NO_AIR_PATH,
    /** The shape is not monotone where that was asked. */
    NOT_MONOTONE,
    /** The curvature jumps at a node: a flat spot that the eye may see. */
    FLAT_SPOT,
    /** A slope is too steep to copy. */
    TOO_STEEP_TO_COPY,
    /** A hollow is tighter than the cutter's nose. */
    HOLLOW_TIGHTER_THAN_CUTTER,
    /** Too slender to grip. */
    TOO_SLENDER,
    /** Too thick to grip. */
    TOO_THICK,
    /** The length is outside what the hand wants for its use. */
    LENGTH_FOR_THE_HAND,
    /** The balance is off its target. */
    BALANCE_OFF_TARGET,
    /** The blank is too small. */
    BLANK_TOO_SMALL,
    /** Readings of one part disagree. */
    READINGS_DISAGREE,
    /** One reading of a part stands apart from the others. */
    READING_STANDS_APART,
    /** The stock is known to irritate or to poison. */
    STOCK_IRRITATES,
    /** Nothing is claimed about food contact. */
    NO_FOOD_CLAIM,
    /** It will roll off the table. */
    WILL_ROLL,
    /** The catalogue lacks a figure of this stock. */
    FIGURE_MISSING,
    /** The piece falls out of the family of its set. */
    OUT_OF_FAMILY,
    /** The handle cannot be drawn at all. */
    CANNOT_BE_DRAWN;

    /**
     * The stable text.
     *
     * @return lower-case words joined by hyphens
     */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
