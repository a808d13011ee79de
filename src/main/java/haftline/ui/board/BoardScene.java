package haftline.ui.board;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
import haftline.ui.model.Overlay;
import haftline.ui.model.View;
import haftline.ui.theme.Palette;
import haftline.ui.words.Shown;
import java.util.Optional;

/**
 * All that the board shows, apart from where it stands on the screen.
 *
 * @param figures the handle with its figures
 * @param selected name of the node that the keys act on
 * @param hovered name of the node under the pointer
 * @param chosen the finding whose place is shown
 * @param units unit of the dimensions
 * @param palette colours of the theme
 * @param inHand whether something is being dragged
 * @param heldRoom half the height that is kept for the piece at least, px: while a hand drags, none
 *     is given back
 * @param overlay what is laid over the piece; nothing of it is shown in the middle of a drag
 */
public record BoardScene(
        Figures figures,
        Optional<String> selected,
        Optional<String> hovered,
        Optional<Finding> chosen,
        Units units,
        Palette palette,
        boolean inHand,
        double heldRoom,
        Overlay overlay) {
    private static final double ROOM_STEP = 16;

    /**
     * The handle.
     *
     * @return the handle
     */
    public Handle handle() {
        return figures.handle();
    }

    /**
     * Half the height that is kept for the piece, px. It grows in steps: what stands round the
     * piece rests while a hand drags, and is not painted anew.
     *
     * @param view where the piece stands
     */
    double room(View view) {
        double radius = PiecePicture.radius(handle()) * view.scale();
        return Math.max(heldRoom, Math.ceil(radius / ROOM_STEP) * ROOM_STEP);
    }

    Shown shown() {
        return new Shown(units);
    }

    /**
     * A node of the handle.
     *
     * @param name its name
     * @return the node, or empty
     */
    public Optional<PlacedNode> node(String name) {
        return handle().nodes().stream().filter(n -> n.name().equals(name)).findFirst();
    }
}
