package haftline.ui.board;

import haftline.handle.PlacedNode;
import haftline.ui.model.View;
import haftline.ui.words.Shown;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;

/**
 * The words of one diameter.
 *
 * @param node where it is taken
 * @param text the words
 * @param box where they stand, px
 * @param rest the line on which they would stand over their node alone, px
 */
record Diameter(PlacedNode node, String text, Rectangle2D box, double rest) {
    /** How far a diameter stands over its node, and over another diameter, px. */
    static final double LIFT = 14;

    /** From the upper edge of the words to the line they stand on, px. */
    private static final double LETTERS = 11;

    /** Words are moved aside by such steps, and by no more of them, px. */
    private static final double ASIDE = 8;

    private static final int STEPS = 24;

    /** The line on which the letters stand. */
    double line() {
        return box.getMinY() + LETTERS;
    }

    /** Whether a line leads from the words to the node. */
    boolean isLed() {
        return line() < rest;
    }

    /** What is to be kept off, and where the words over the piece may begin. */
    record Room(Sheet sheet, List<Rectangle2D> taken, List<Diameter> placed) {
        boolean isFree(Rectangle2D box) {
            return placed.stream().map(Diameter::box).noneMatch(box::intersects)
                    && taken.stream().noneMatch(box::intersects);
        }

        boolean isUnderTheRuler(Rectangle2D box) {
            return box.getMinY() + LETTERS >= Sheet.RULER + 12;
        }
    }

    /**
     * The diameters over their nodes. Each is lifted until it lies on none before it, and on
     * nothing that is to be kept off; where it would come under the ruler so, it stands aside. None
     * whose node is in sight is left out.
     *
     * @param nodes from the ferrule to the butt
     * @param view where the piece stands
     * @param sheet the board
     * @param taken what is to be kept off, px
     * @param shown how lengths are told
     * @return those that are seen
     */
    static List<Diameter> placed(
            List<PlacedNode> nodes, View view, Sheet sheet, List<Rectangle2D> taken, Shown shown) {
        Room room = new Room(sheet, taken, new ArrayList<>());
        for (PlacedNode node : nodes) {
            double x = view.px(node.x());
            double rest = view.py(node.radiusMm()) - LIFT;
            String text = "⌀ " + shown.length(2 * node.radiusMm());
            double wide = Pen.width(text) + 8;
            double shift = node.isFree() ? 0 : node.x() <= 0 ? -22 : 24;
            // At the edge of the board it is still read whole.
            double middle =
                    x < sheet.width()
                            ? Math.min(sheet.width() - wide / 2 - 2, x + shift)
                            : x + shift;
            Rectangle2D over = new Rectangle2D(middle - wide / 2, rest - LETTERS, wide, LIFT);
            Optional<Rectangle2D> box = lifted(over, room);
            boolean isSeen = x >= 0 && x <= sheet.width() && view.py(node.radiusMm()) > Sheet.RULER;
            if (box.isEmpty() && isSeen) {
                box = Optional.of(aside(over, room));
            }
            box.ifPresent(at -> room.placed().add(new Diameter(node, text, at, rest)));
        }
        return List.copyOf(room.placed());
    }

    /** The lowest free place from there upwards. */
    private static Optional<Rectangle2D> lifted(Rectangle2D from, Room room) {
        Rectangle2D box = from;
        while (room.isUnderTheRuler(box)) {
            if (room.isFree(box)) {
                return Optional.of(box);
            }
            box = moved(box, 0, -LIFT);
        }
        return Optional.empty();
    }

    /**
     * The nearest free place to the right or the left; where there is none, right under the ruler.
     */
    private static Rectangle2D aside(Rectangle2D from, Room room) {
        double down = Math.max(0, Sheet.RULER + 12 - LETTERS - from.getMinY());
        Rectangle2D start = moved(from, 0, down);
        for (int i = 1; i <= STEPS; i++) {
            for (int way : new int[] {1, -1}) {
                Rectangle2D box = moved(start, way * i * ASIDE, 0);
                boolean isOnBoard = box.getMinX() >= 0 && box.getMaxX() <= room.sheet().width();
                Optional<Rectangle2D> free = isOnBoard ? lifted(box, room) : Optional.empty();
                if (free.isPresent()) {
                    return free.get();
                }
            }
        }
        return start;
    }

    private static Rectangle2D moved(Rectangle2D box, double along, double down) {
        return new Rectangle2D(
                box.getMinX() + along, box.getMinY() + down, box.getWidth(), box.getHeight());
    }
}
