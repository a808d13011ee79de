package haftline.ui.board;

import java.nio.IntBuffer;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Rectangle2D;
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

    private List<Mark> drawing = new ArrayList<>();
    private List<Mark> drawn = new ArrayList<>();
    private final Damage damage;
    private long wanted;
    private long shown;

    private double density;
    private int wide;
    private int tall;

    /** Two in turn: one may still be on its way to the screen. */
    private final List<Plate> plates = new ArrayList<>();

    private int turn;

    /** Pixels, and where they do not show what was drawn on the other ones. */
    private record Plate(
            int[] pixels, PixelBuffer<IntBuffer> buffer, WritableImage image, Damage damage) {
        static Plate of(int wide, int tall, Damage damage) {
            int[] pixels = new int[wide * tall];
            PixelBuffer<IntBuffer> buffer =
                    new PixelBuffer<>(
                            wide,
                            tall,
                            IntBuffer.wrap(pixels),
                            PixelFormat.getIntArgbPreInstance());
            return new Plate(pixels, buffer, new WritableImage(buffer), damage);
        }
    }

    /** A tile of the board, px; nothing is shown on it. */
    Tile(double x, double y, double width, double height) {
        this.x = x;
        this.y = y;
        right = x + width;
        bottom = y + height;
        damage = new Damage(x, y, right, bottom);
        view.relocate(x, y);
        view.setSmooth(false);
    }

    ImageView view() {
        return view;
    }

    /** Begins with nothing to be shown. */
    void begin() {
        List<Mark> before = drawn;
        drawn = drawing;
        drawing = before;
        start();
    }

    private void start() {
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
            start();
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
        damage.mend();
        if (perPx == density) {
            damage.add(drawn, drawing);
        } else {
            density = perPx;
            make();
        }
        if (damage.isEmpty()) {
            damage.addAll();
        }
        plates.forEach(plate -> plate.damage().add(damage));
        shown = wanted;
        draw(brush);
        return true;
    }

    private void make() {
        wide = (int) Math.ceil((right - x) * density);
        tall = (int) Math.ceil((bottom - y) * density);
        plates.clear();
        for (int i = 0; i < 2; i++) {
            plates.add(Plate.of(wide, tall, new Damage(x, y, right, bottom)));
        }
        view.setFitWidth(wide / density);
        view.setFitHeight(tall / density);
    }

    private void draw(Brush brush) {
        turn = 1 - turn;
        Plate plate = plates.get(turn);
        Brush.Clip clip = clip(plate.damage());
        brush.setOn(plate.pixels(), wide, clip, x, y, density);
        // At the board's edges the last pixels may stick out.
        double endX = x + wide / density;
        double endY = y + tall / density;
        if (drawing.isEmpty() || !drawing.get(0).covers(x, y, endX, endY)) {
            brush.clear();
        }
        drawing.forEach(brush::draw);
        plate.damage().mend();
        plate.buffer()
                .updateBuffer(
                        buffer -> new Rectangle2D(clip.x(), clip.y(), clip.width(), clip.height()));
        view.setImage(plate.image());
    }

    /** The pixels of which damage has any part. */
    private Brush.Clip clip(Damage damaged) {
        int x0 = (int) ((damaged.fromX() - x) * density);
        int y0 = (int) ((damaged.fromY() - y) * density);
        int x1 = Math.min(wide, (int) Math.ceil((damaged.toX() - x) * density));
        int y1 = Math.min(tall, (int) Math.ceil((damaged.toY() - y) * density));
        return new Brush.Clip(x0, y0, x1 - x0, y1 - y0);
    }
}
