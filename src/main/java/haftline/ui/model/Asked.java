package haftline.ui.model;

import haftline.adjust.solve.Band;
import haftline.adjust.solve.Freedom;
import haftline.adjust.solve.Need;
import haftline.adjust.solve.Wish;
import haftline.measure.Checks;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What the maker asks to be worked out.
 *
 * @param whom which pieces may change
 * @param demands what is to be met
 * @param allowed what may move beside the nodes
 * @param balance where the pieces are to balance, or empty for the rules' band
 * @param grip band of the greatest diameter, or empty for the guidance of the piece's use
 * @param fairMm how far a fairing may move a diameter either way, mm, 0.01 to 5
 */
public record Asked(
        Whom whom,
        Set<Need.Group> demands,
        Set<Freedom> allowed,
        Optional<Band> balance,
        Optional<Band> grip,
        double fairMm) {
    /** A band that the finger hardly feels and the eye does (common practice, no source), mm. */
    public static final double USUAL_FAIR_MM = 0.2;

    /** All demands, for the piece at hand, nothing but nodes may move. */
    public static final Asked USUAL =
            new Asked(
                    Whom.THIS_PIECE,
                    EnumSet.allOf(Need.Group.class),
                    Set.of(),
                    Optional.empty(),
                    Optional.empty(),
                    USUAL_FAIR_MM);

    /** Which pieces may change. */
    public enum Whom {
        /** The piece at hand alone, by choices of its own. */
        THIS_PIECE("This piece, by itself"),
        /** All pieces; what they share moves together. */
        FAMILY("The whole set, as one family"),
        /** All pieces, each by choices of its own. */
        EACH("The whole set, each by itself");

        private final String words;

        Whom(String words) {
            this.words = words;
        }

        /**
         * What it is called.
         *
         * @return in plain words
         */
        public String words() {
            return words;
        }
    }

    /** Checks the range and copies the sets. */
    public Asked {
        Checks.within("band of the fairing", fairMm, 0.01, 5);
        demands = Set.copyOf(demands);
        allowed = Set.copyOf(allowed);
    }

    /**
     * The same for other pieces.
     *
     * @param changed which pieces may change
     * @return the changed copy
     */
    public Asked withWhom(Whom changed) {
        return new Asked(changed, demands, allowed, balance, grip, fairMm);
    }

    /**
     * The same with a demand made or dropped.
     *
     * @param demand the demand
     * @param made whether it is to be met
     * @return the changed copy
     */
    public Asked with(Need.Group demand, boolean made) {
        Set<Need.Group> changed = EnumSet.noneOf(Need.Group.class);
        changed.addAll(demands);
        if (made) {
            changed.add(demand);
        } else {
            changed.remove(demand);
        }
        return new Asked(whom, changed, allowed, balance, grip, fairMm);
    }

    /**
     * The same with something free to move or held.
     *
     * @param freedom what
     * @param isFree whether it may move
     * @return the changed copy
     */
    public Asked with(Freedom freedom, boolean isFree) {
        Set<Freedom> changed = EnumSet.noneOf(Freedom.class);
        changed.addAll(allowed);
        if (isFree) {
            changed.add(freedom);
        } else {
            changed.remove(freedom);
        }
        return new Asked(whom, demands, changed, balance, grip, fairMm);
    }

    /**
     * The same with another band of the balance point.
     *
     * @param changed the band, or empty for the rules' band
     * @return the changed copy
     */
    public Asked withBalance(Optional<Band> changed) {
        return new Asked(whom, demands, allowed, changed, grip, fairMm);
    }

    /**
     * The same with another band of the greatest diameter.
     *
     * @param changed the band, or empty for the guidance of the piece's use
     * @return the changed copy
     */
    public Asked withGrip(Optional<Band> changed) {
        return new Asked(whom, demands, allowed, balance, changed, fairMm);
    }

    /**
     * The same with another band of the fairing.
     *
     * @param changed mm, 0.01 to 5
     * @return the changed copy
     */
    public Asked withFairMm(double changed) {
        return new Asked(whom, demands, allowed, balance, grip, changed);
    }

    /**
     * Whether the swell that pieces share can be a demand or move.
     *
     * @return true where pieces move together
     */
    public boolean isOfFamily() {
        return whom == Whom.FAMILY;
    }

    /** As the solver takes it. */
    Wish wish() {
        Set<Need.Group> groups = EnumSet.noneOf(Need.Group.class);
        groups.addAll(demands);
        Set<Freedom> free = EnumSet.noneOf(Freedom.class);
        free.addAll(allowed);
        if (!isOfFamily()) {
            groups.remove(Need.Group.SWELL);
            free.remove(Freedom.SWELL);
        }
        return new Wish(Need.of(groups), free, !isOfFamily(), balance, grip, Wish.USUAL_REACH_MM);
    }
}
