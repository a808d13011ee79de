package haftline.adjust.solve;

import haftline.measure.Checks;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/**
 * What the maker asks of an adjustment.
 *
 * @param needs what is to be met
 * @param allowed what may move beside the nodes
 * @param eachAlone true to move each piece's nodes as its own; false to move what pieces share
 *     together, so that they stay one family
 * @param balance where the pieces are to balance, behind the ferrule's front face; empty for the
 *     rules' band
 * @param grip band of the greatest diameter; empty for the guidance of the piece's use
 * @param reachMm how far a node's diameter or the swell may move either way, mm, 0.01 to 50
 */
public record Wish(
        Set<Need> needs,
        Set<Freedom> allowed,
        boolean eachAlone,
        Optional<Band> balance,
        Optional<Band> grip,
        double reachMm) {
    /** Farther than this a shape is another shape (common practice, no source), mm. */
    public static final double USUAL_REACH_MM = 8;

    /** All needs, nothing but nodes may move, what is shared stays shared. */
    public static final Wish USUAL =
            new Wish(
                    EnumSet.allOf(Need.class),
                    Set.of(),
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    USUAL_REACH_MM);

    /** Checks the range and copies the sets. */
    public Wish {
        Checks.withinMm("reach", reachMm, 0.01, 50);
        needs = Set.copyOf(needs);
        allowed = Set.copyOf(allowed);
    }

    /**
     * The same with other needs.
     *
     * @param changed what is to be met
     * @return the changed copy
     */
    public Wish withNeeds(Set<Need> changed) {
        return new Wish(changed, allowed, eachAlone, balance, grip, reachMm);
    }

    /**
     * The same with other freedoms.
     *
     * @param changed what may move beside the nodes
     * @return the changed copy
     */
    Wish withAllowed(Set<Freedom> changed) {
        return new Wish(needs, changed, eachAlone, balance, grip, reachMm);
    }

    /**
     * The same with each piece's nodes moved as its own, or what is shared moved together.
     *
     * @param changed true for each piece alone
     * @return the changed copy
     */
    public Wish withEachAlone(boolean changed) {
        return new Wish(needs, allowed, changed, balance, grip, reachMm);
    }
}
