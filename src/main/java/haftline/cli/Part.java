package haftline.cli;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/** A part of what {@code make} makes, and the kinds of file that it comes in. */
enum Part {
    /** Sections and half-profiles. */
    DRAWINGS("drawings", EnumSet.of(Format.SVG, Format.DXF, Format.PDF)),
    /** The calliper tables. */
    TABLES("tables", EnumSet.of(Format.CSV)),
    /** The finished wood. */
    SOLIDS("solids", EnumSet.of(Format.STL)),
    /** Pictures of the pieces and of the set. */
    PICTURES("pictures", EnumSet.of(Format.PNG)),
    /** Lathe sheets. */
    SHEET("sheet", EnumSet.of(Format.PDF, Format.HTML)),
    /** Instruction sheets for who buys the kit. */
    INSTRUCTIONS("instructions", EnumSet.of(Format.PDF, Format.HTML)),
    /** Care cards for who buys the finished piece. */
    CARE("care", EnumSet.of(Format.PDF, Format.HTML, Format.TXT)),
    /** Negative half-profiles. */
    PROFILE_GAUGE("profile-gauge", EnumSet.of(Format.SVG, Format.DXF, Format.PDF)),
    /** Sizing slots. */
    SLOTS("slots", EnumSet.of(Format.SVG, Format.DXF, Format.PDF)),
    /** Story rods. */
    STORY_ROD("story-rod", EnumSet.of(Format.SVG, Format.DXF, Format.PDF)),
    /** Copying templates. */
    COPYING("copying", EnumSet.of(Format.SVG, Format.DXF, Format.PDF));

    /** All that is held against the work. */
    static final Set<Part> GAUGES =
            Collections.unmodifiableSet(EnumSet.of(PROFILE_GAUGE, SLOTS, STORY_ROD));

    /** All that is cut out of a sheet. */
    static final Set<Part> TEMPLATES =
            Collections.unmodifiableSet(EnumSet.of(PROFILE_GAUGE, SLOTS, STORY_ROD, COPYING));

    private final String id;
    private final Set<Format> formats;

    Part(String id, Set<Format> formats) {
        this.id = id;
        this.formats = Collections.unmodifiableSet(formats);
    }

    /** As it is typed after {@code --only}. */
    String id() {
        return id;
    }

    Set<Format> formats() {
        return formats;
    }
}
