package haftline.ui.app;

import javafx.scene.Node;
import javafx.scene.layout.BorderPane;

/**
 * The list of pieces at the left of the window. Where the window is narrow, pages that show the
 * whole set, most of them with a list of their own, take its room.
 */
final class LeftSide {
    /** A window that is at least so wide has room for the list beside every page, px. */
    private static final double ROOMY = 1200;

    private final BorderPane window;
    private final Node pieces;
    private Showing showing = Showing.BOARD;

    LeftSide(BorderPane window, Node pieces) {
        this.window = window;
        this.pieces = pieces;
        window.setLeft(pieces);
        window.widthProperty().addListener(o -> lay());
    }

    void show(Showing wanted) {
        showing = wanted;
        lay();
    }

    private void lay() {
        boolean hasRoom = showing.isOfOnePiece() || window.getWidth() >= ROOMY;
        Node wanted = hasRoom ? pieces : null;
        if (window.getLeft() != wanted) {
            window.setLeft(wanted);
        }
    }
}
