package haftline.figures;

import haftline.handle.Fit;
import haftline.handle.Handle;
import java.util.List;
import java.util.Optional;

/**
 * All figures of one handle.
 *
 * @param handle the handle
 * @param walls walls by zone, as far as a bore lies under the zone
 * @param web wood between the two bores, or empty without a cap's bore
 * @param wood volume of the wood
 * @param adhesive adhesive that is wanted
 * @param balance mass and balance
 * @param splitIndex split index of a pressed tang; empty where it is bonded or the stock lacks a
 *     figure
 * @param seasons movement between shop, dry winter and damp kitchen; empty for plastics and woods
 *     that lack a figure
 * @param rest how the finished piece lies on a table
 * @param grip how it fills the hand
 * @param bends what a cutter and a follower would meet
 */
public record Figures(
        Handle handle,
        List<Wall> walls,
        Optional<Walls.Web> web,
        WoodVolume wood,
        AdhesiveNeed adhesive,
        Balance balance,
        Optional<SplitIndex> splitIndex,
        Optional<Seasons> seasons,
        Rest rest,
        Grip grip,
        Bends bends) {
    /**
     * Moisture at which wood is weighed where nothing else is said: that of the handbook's tables,
     * %.
     */
    public static final double HANDBOOK_MOISTURE = 12;

    /** Copies the list. */
    public Figures {
        walls = List.copyOf(walls);
    }

    /**
     * The figures of a handle.
     *
     * @param handle the handle
     * @return all of them
     */
    public static Figures of(Handle handle) {
        List<Wall> walls = Walls.of(handle);
        WoodVolume wood = WoodVolume.of(handle, walls);
        AdhesiveNeed adhesive = AdhesiveNeed.of(handle);
        Balance balance = Balance.of(handle, wood, adhesive, HANDBOOK_MOISTURE);
        Optional<SplitIndex> split =
                handle.fit().fit() == Fit.PRESSED ? SplitIndex.of(handle) : Optional.empty();
        return new Figures(
                handle,
                walls,
                Walls.web(handle),
                wood,
                adhesive,
                balance,
                split,
                Seasons.of(handle),
                Rest.of(handle, balance),
                Grip.of(handle),
                Bends.of(handle));
    }

    /**
     * The wall of a zone.
     *
     * @param zone the zone
     * @return the wall, or empty where no bore lies under it
     */
    public Optional<Wall> wall(Zone zone) {
        for (Wall wall : walls) {
            if (wall.zone() == zone) {
                return Optional.of(wall);
            }
        }
        return Optional.empty();
    }
}
