package haftline.ui.model;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.fair.CurvatureComb;
import haftline.handle.Handle;
import java.util.Optional;

/**
 * What is laid over the piece on the board while no hand moves anything.
 *
 * @param ghost the piece as proposed
 * @param comb the curvature of its line
 * @param doubt what chance makes of it
 * @param isDoubted whether the wall's curve has the room for it, be it there yet or not
 */
public record Overlay(
        Optional<Handle> ghost,
        Optional<CurvatureComb> comb,
        Optional<Doubt> doubt,
        boolean isDoubted) {
    /** Nothing. */
    public static final Overlay NONE =
            new Overlay(Optional.empty(), Optional.empty(), Optional.empty(), false);

    /**
     * What stays while a hand moves something: the share of the room.
     *
     * @return nothing that would have to be worked out
     */
    public Overlay inHand() {
        return new Overlay(Optional.empty(), Optional.empty(), Optional.empty(), isDoubted);
    }
}
