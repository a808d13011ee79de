package haftline.ui.photo;

import haftline.ui.board.BoardArea;
import haftline.ui.board.BoardPane;
import haftline.ui.model.EditorModel;
import haftline.ui.model.PhotoHand.Tool;
import haftline.ui.model.PhotoModel;
import haftline.ui.model.Viewpoint;
import haftline.ui.model.Watched;
import haftline.ui.theme.Palette;
import javafx.geometry.Rectangle2D;
import javafx.scene.layout.Region;

/**
 * The board with a photograph under it and the layer over it on which points are set. Where there
 * is no photograph neither is there, and the board costs what it costs alone.
 */
public final class PhotoBoard extends Region {
    private final PhotoModel model;
    private final BoardPane board;
    private final PhotoPane photo;
    private final TraceLayer layer;
    private boolean isTracing;

    /**
     * A board and what belongs to a photograph.
     *
     * @param editor what all views share
     * @param model the photograph
     * @param board the board
     * @param viewpoint where the piece stands on the screen
     * @param palette colours of the theme
     */
    public PhotoBoard(
            EditorModel editor,
            PhotoModel model,
            BoardPane board,
            Viewpoint viewpoint,
            Watched<Palette> palette) {
        this.model = model;
        this.board = board;
        photo = new PhotoPane(model, viewpoint.view());
        layer = new TraceLayer(editor, model, viewpoint, palette, board::requestFocus);
        getChildren().add(board);
        setMinSize(board.getMinWidth(), board.getMinHeight());
        model.state().watch(state -> show());
        model.isShown().watch(shown -> show());
    }

    /**
     * Shows or hides points and trace.
     *
     * @param is whether they are worked on
     */
    public void tracing(boolean is) {
        isTracing = is;
        show();
    }

    /** Gives the keyboard to what the tool works on. */
    public void focusTool() {
        if (model.hand().tool().value() == Tool.BOARD) {
            board.requestFocus();
        } else {
            layer.requestFocus();
        }
    }

    private void show() {
        boolean isThere = model.strength() > 0;
        if (getChildren().contains(photo) != isThere) {
            if (isThere) {
                getChildren().add(0, photo);
            } else {
                getChildren().remove(photo);
            }
        }
        boolean hasLayer = isThere && isTracing;
        if (getChildren().contains(layer) != hasLayer) {
            if (hasLayer) {
                getChildren().add(layer);
            } else {
                getChildren().remove(layer);
            }
        }
    }

    @Override
    protected void layoutChildren() {
        double width = getWidth();
        double height = getHeight();
        photo.resizeRelocate(0, 0, width, height);
        board.resizeRelocate(0, 0, width, height);
        Rectangle2D piece = BoardArea.of(width, height);
        layer.top(piece.getMinY());
        layer.resizeRelocate(0, piece.getMinY(), piece.getWidth(), piece.getHeight());
    }
}
