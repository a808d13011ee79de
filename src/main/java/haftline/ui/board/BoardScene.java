package haftline.ui.board;

import haftline.figures.Figures;
import haftline.findings.Finding;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.measure.Units;
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
 */
public record BoardScene(
        Figures figures,
        Optional<String> selected,
        Optional<String> hovered,
        Optional<Finding> chosen,
        Units units,
        Palette palette) {
    /**
     * The handle.
     *
     * @return the handle
     */
    public Handle handle() {
        return figures.handle();
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

    /**
     * The same with another node under the pointer.
     *
     * @param name the node, or empty
     * @return the changed copy
     */
    public BoardScene withHovered(Optional<String> name) {
        return new BoardScene(figures, selected, name, chosen, units, palette);
    }
}
