package haftline.ui.model;

import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What keys can choose on the board.
 *
 * @param x where it stands, mm from the shoulder
 * @param node name of a node, or empty
 * @param detail a detail's place in the shape's list, or empty
 */
record Target(double x, Optional<String> node, Optional<Integer> detail) {
    /** All of them, from the shoulder to the butt. */
    static List<Target> all(Optional<Handle> handle) {
        List<Target> all = new ArrayList<>();
        handle.ifPresent(
                there -> {
                    for (PlacedNode node : there.nodes()) {
                        all.add(new Target(node.x(), Optional.of(node.name()), Optional.empty()));
                    }
                    List<Detail> details = there.brief().shape().details();
                    for (int i = 0; i < details.size(); i++) {
                        double x = details.get(i).place().x(there.lengths().visibleWoodMm());
                        all.add(new Target(x, Optional.empty(), Optional.of(i)));
                    }
                });
        all.sort(Comparator.comparingDouble(Target::x));
        return all;
    }

    boolean isChosen(BoardModel board) {
        return node.isPresent()
                ? node.equals(board.selected().value())
                : detail.equals(board.details().chosen().value());
    }
}
