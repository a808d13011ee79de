package haftline.ui.board;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;

/**
 * The board's surface in small tiles side by side. A frame paints only those in which something
 * differs from the frame before: in software every pixel that is left alone is time saved.
 */
final class Tiles extends Group {
    /** Whole device pixels at every usual scale of a screen: 1, 1.25, 1.5, 1.75, 2. */
    static final int WIDE = 384;

    static final int TALL = 96;

    private final List<Tile> tiles = new ArrayList<>();
    private final Brush brush = new Brush();
    private final Lettering lettering = new Lettering();
    private int across;
    private double width;
    private double height;
    private int painted;

    Tiles() {
        setMouseTransparent(true);
        setManaged(false);
        setAutoSizeChildren(false);
    }

    /**
     * Shows what is drawn.
     *
     * @param ink the marks
     * @param wide width of the whole, px
     * @param tall height of the whole, px
     * @param density device pixels a pixel: at another everything is painted anew
     */
    void show(Ink ink, double wide, double tall, double density) {
        if (wide != width || tall != height) {
            lay(wide, tall);
        }
        tiles.forEach(Tile::begin);
        for (Mark mark : ink.marks()) {
            if (mark.kind != Mark.Kind.WORDS) {
                note(mark);
            }
        }
        lettering.show(ink.marks(), tall);
        for (Tile tile : tiles) {
            painted += tile.show(brush, density) ? 1 : 0;
        }
    }

    private void note(Mark mark) {
        int x0 = (int) Math.max(0, Math.floor(mark.left / WIDE));
        int x1 = (int) Math.min(across - 1, Math.ceil(mark.right / WIDE) - 1);
        int y0 = (int) Math.max(0, Math.floor(mark.top / TALL));
        int y1 = (int) Math.min(tiles.size() / across - 1, Math.ceil(mark.bottom / TALL) - 1);
        for (int y = y0; y <= y1; y++) {
            for (int x = x0; x <= x1; x++) {
                tiles.get(y * across + x).note(mark);
            }
        }
    }

    /**
     * Whether it covers a rectangle of just this size.
     *
     * @param wide px
     * @param tall px
     */
    boolean cover(double wide, double tall) {
        return wide == width && tall == height;
    }

    private void lay(double wide, double tall) {
        width = wide;
        height = tall;
        across = (int) Math.ceil(wide / WIDE);
        tiles.clear();
        getChildren().clear();
        for (int y = 0; y < tall; y += TALL) {
            // Row by row: of a group with a dozen changed children all is put on the window anew.
            Group row = new Group();
            row.setAutoSizeChildren(false);
            for (int x = 0; x < wide; x += WIDE) {
                Tile tile = new Tile(x, y, Math.min(WIDE, wide - x), Math.min(TALL, tall - y));
                row.getChildren().add(tile.view());
                tiles.add(tile);
            }
            getChildren().add(row);
        }
        getChildren().add(lettering);
    }

    /** How many tiles were painted so far. */
    int painted() {
        return painted;
    }
}
