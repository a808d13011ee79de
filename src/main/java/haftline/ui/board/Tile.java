package haftline.ui.board;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.image.ImageView;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/**
 * A tile of the board: pixels that are painted anew only where something in them looks different
 * from what is shown.
 */
final class Tile {
    private static final long NOTHING = 1;

    private final double x;
    private final double y;
    private final double right;
    private final double bottom;
    private final ImageView view = new ImageView();

    private final List<Mark> drawing = new ArrayList<>();
    private long wanted;
    private long shown;

    private double density;
    private int wide;
    private int tall;

    /** Two in turn: one may still be on its way to the screen. */
    private final int[][] pixels = new int[2][];

    private final List<PixelBuffer<IntBuffer>> buffers = new ArrayList<>();
    private final List<WritableImage> images = new ArrayList<>();
    private int turn;

    /** A tile of the board, px; nothing is shown on it. */
    Tile(double x, double y, double width, double height) {
        this.x = x;
        this.y = y;
        right = x + width;
        bottom = y + height;
        view.relocate(x, y);
        view.setSmooth(false);
    }

    ImageView view() {
        return view;
    }

    /** Begins with nothing to be shown. */
    void begin() {
        drawing.clear();
        wanted = NOTHING;
    }

    /** Takes down a mark that touches it. */
    void note(Mark mark) {
        long look = mark.seen(x, y, right, bottom);
        if (look == 0) {
            return;
        }
        if (mark.covers(x, y, right, bottom)) {
            begin();
        }
        drawing.add(mark);
        wanted = Mark.mixed(wanted, look);
    }

    /**
     * Shows what was taken down.
     *
     * @param brush what is drawn with
     * @param perPx device pixels on one of the board
     * @return whether it looks different now
     */
    boolean show(Brush brush, double perPx) {
        if (perPx == density && wanted == shown) {
            return false;
        }
        if (perPx != density) {
            density = perPx;
            make();
        }
        shown = wanted;
        draw(brush);
        return true;
    }

    private void make() {
        wide = (int) Math.ceil((right - x) * density);
        tall = (int) Math.ceil((bottom - y) * density);
        buffers.clear();
        images.clear();
        for (int i = 0; i < 2; i++) {
            pixels[i] = new int[wide * tall];
            buffers.add(
                    new PixelBuffer<>(
                            wide,
                            tall,
                            IntBuffer.wrap(pixels[i]),
                            PixelFormat.getIntArgbPreInstance()));
            images.add(new WritableImage(buffers.get(i)));
        }
        view.setFitWidth(wide / density);
        view.setFitHeight(tall / density);
    }

    private void draw(Brush brush) {
        turn = 1 - turn;
        brush.setOn(pixels[turn], wide, tall, x, y, density);
        if (drawing.isEmpty() || !drawing.get(0).covers(x, y, right, bottom)) {
            brush.clear();
        }
        drawing.forEach(brush::draw);
        buffers.get(turn).updateBuffer(buffer -> null);
        view.setImage(images.get(turn));
    }
}
