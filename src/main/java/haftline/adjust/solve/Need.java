package haftline.adjust.solve;

import java.util.EnumSet;
import java.util.Set;

/** What a piece may be asked to meet. */
public enum Need {
    /** Wall over the tang's bore in the tenon, at the worst wander. */
    TENON_WALL("tenon wall", Group.WALLS),
    /** Wall over the tang's bore in the body, at the worst wander. */
    BODY_WALL("body wall", Group.WALLS),
    /** Wall over the cap's bore, at the worst wander. */
    CAP_WALL("cap wall", Group.WALLS),
    /** Wood between the two bores, or between the tang's bore and the butt's face. */
    BORE_ENDS("bore's end", Group.WALLS),
    /** Balance point in its band. */
    BALANCE("balance", Group.BALANCE),
    /** Greatest diameter within the band that suits the hand. */
    GRIP("grip", Group.GRIP),
    /** No hollow tighter than the cutter's nose; crisp corners are no hollows. */
    COVES("coves", Group.COVES),
    /** Greatest diameter equal to the set's swell, for pieces that decide none of their own. */
    COMMON_SWELL("common swell", Group.SWELL),
    /** What rises from node to node goes on rising, what falls goes on falling. */
    CHARACTER("character", Group.CHARACTER);

    /** Needs that are asked for together, by one word. */
    public enum Group {
        /** All walls. */
        WALLS,
        /** The balance point. */
        BALANCE,
        /** The greatest diameter. */
        GRIP,
        /** Hollows and the cutter. */
        COVES,
        /** The common swell. */
        SWELL,
        /** The shape's character. */
        CHARACTER;

        /**
         * The word by which it is asked for.
         *
         * @return lower case
         */
        public String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }
    }

    private final String words;
    private final Group group;

    Need(String words, Group group) {
        this.words = words;
        this.group = group;
    }

    /**
     * What it is called.
     *
     * @return in the trade's words
     */
    public String words() {
        return words;
    }

    /**
     * With which others it is asked for.
     *
     * @return the group
     */
    public Group group() {
        return group;
    }

    /**
     * The needs of some groups.
     *
     * @param groups the groups
     * @return all of their needs
     */
    public static Set<Need> of(Set<Group> groups) {
        Set<Need> needs = EnumSet.noneOf(Need.class);
        for (Need need : values()) {
            if (groups.contains(need.group)) {
                needs.add(need);
            }
        }
        return needs;
    }
}
