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
    private final List<Plate> plates = new ArrayList<>();

    private int turn;

    private record Plate(int[] pixels, PixelBuffer<IntBuffer> buffer, WritableImage image) {
        static Plate of(int wide, int tall) {
            int[] pixels = new int[wide * tall];
            PixelBuffer<IntBuffer> buffer =
                    new PixelBuffer<>(
                            wide,
                            tall,
                            IntBuffer.wrap(pixels),
                            PixelFormat.getIntArgbPreInstance());
            return new Plate(pixels, buffer, new WritableImage(buffer));
        }
    }

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
        plates.clear();
        plates.add(Plate.of(wide, tall));
        plates.add(Plate.of(wide, tall));
        view.setFitWidth(wide / density);
        view.setFitHeight(tall / density);
    }

    private void draw(Brush brush) {
        turn = 1 - turn;
        Plate plate = plates.get(turn);
        brush.setOn(plate.pixels(), wide, tall, x, y, density);
        // At the board's edges the last pixels may stick out.
        double endX = x + wide / density;
        double endY = y + tall / density;
        if (drawing.isEmpty() || !drawing.get(0).covers(x, y, endX, endY)) {
            brush.clear();
        }
        drawing.forEach(brush::draw);
        plate.buffer().updateBuffer(buffer -> null);
        view.setImage(plate.image());
    }
}
