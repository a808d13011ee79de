package haftline.ui.model;

import haftline.adjust.doubt.Doubt;
import haftline.adjust.fair.CurvatureComb;
import haftline.handle.Handle;
import java.util.Optional;

/**
 * What is laid over the piece on the board while no hand moves anything, and what lies under it.
 *
 * @param ghost the piece as proposed
 * @param comb the curvature of its line
 * @param doubt what chance makes of it
 * @param isDoubted whether the wall's curve has the room for it, be it there yet or not
 * @param photograph how strong a photograph under the piece shows, 0 where there is none, to 1; the
 *     board then leaves its paper open and paints the wood so much weaker
 */
public record Overlay(
        Optional<Handle> ghost,
        Optional<CurvatureComb> comb,
        Optional<Doubt> doubt,
        boolean isDoubted,
        double photograph) {
    /** Nothing. */
    public static final Overlay NONE =
            new Overlay(Optional.empty(), Optional.empty(), Optional.empty(), false, 0);

    /**
     * What stays while a hand moves something: the share of the room, and the photograph.
     *
     * @return nothing that would have to be worked out
     */
    public Overlay inHand() {
        return new Overlay(
                Optional.empty(), Optional.empty(), Optional.empty(), isDoubted, photograph);
    }
}
