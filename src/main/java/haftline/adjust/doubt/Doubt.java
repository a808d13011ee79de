package haftline.adjust.doubt;

import haftline.handle.Wander;
import java.util.Comparator;
import java.util.List;

/**
 * What a Monte-Carlo run says of one piece.
 *
 * @param handles how many handles were made in figures
 * @param seed what the run began with; the same gives the same answer
 * @param wander the wander that was stated
 * @param under share of handles with a wall under its limit in any zone
 * @param stopped share with a wall under the least that is made at all
 * @param zones the same by zone
 * @param end the wood left beyond the end of the tang's bore
 * @param leastWall least wall less its limit, of all zones, mm
 * @param balance balance point behind the ferrule's front face, mm
 * @param mass g
 * @param weights which input matters, most for the wall first
 * @param bands how the wall spreads along the bores
 */
public record Doubt(
        int handles,
        long seed,
        Wander wander,
        Proportion under,
        Proportion stopped,
        List<ZoneDoubt> zones,
        EndDoubt end,
        Spread leastWall,
        Spread balance,
        Spread mass,
        List<Weight> weights,
        List<Band> bands) {
    /** Copies the lists. */
    public Doubt {
        zones = List.copyOf(zones);
        weights = List.copyOf(weights);
        bands = List.copyOf(bands);
    }

    /**
     * The zone whose rule is broken most often.
     *
     * @return the first of them
     */
    public ZoneDoubt worst() {
        return zones.stream()
                .max(Comparator.comparingInt(zone -> zone.under().count()))
                .orElseThrow();
    }
}
