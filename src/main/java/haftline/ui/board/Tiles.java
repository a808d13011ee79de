package haftline.ui.board;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntConsumer;
import javafx.scene.Group;
import javafx.scene.canvas.Canvas;

/**
 * The board's surface in small canvases side by side. A frame paints only those in which something
 * differs from the frame before: in software every pixel that is left alone is time saved.
 */
final class Tiles extends Group {
    /** Whole device pixels at every usual scale of a screen: 1, 1.25, 1.5, 1.75, 2. */
    static final int WIDE = 192;

    static final int TALL = 96;

    private final List<Canvas> canvases = new ArrayList<>();
    private long[] shown = {};

    /**
     * What is seen of each mark in each of its tiles, in the order in which both are gone through.
     */
    private long[] looks = new long[2048];

    private int count;
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
        long[] wanted = new long[canvases.size()];
        long ground = Mark.mixed(1, Double.doubleToLongBits(density));
        Arrays.fill(wanted, ground);
        // The mark that nothing before it is seen through, by its number; -1 for none.
        int[] lowest = new int[wanted.length];
        Arrays.fill(lowest, -1);
        List<Mark> marks = ink.marks();
        count = 0;
        for (int k = 0; k < marks.size(); k++) {
            Mark mark = marks.get(k);
            int number = k;
            each(
                    mark,
                    i -> {
                        Canvas canvas = canvases.get(i);
                        double x = canvas.getLayoutX();
                        double y = canvas.getLayoutY();
                        double right = x + canvas.getWidth();
                        double bottom = y + canvas.getHeight();
                        if (mark.covers(x, y, right, bottom)) {
                            lowest[i] = number;
                            wanted[i] = ground;
                        }
                        long look = mark.seen(x, y, right, bottom);
                        remember(look);
                        wanted[i] = look == 0 ? wanted[i] : Mark.mixed(wanted[i], look);
                    });
        }
        boolean[] changes = new boolean[wanted.length];
        for (int i = 0; i < wanted.length; i++) {
            changes[i] = wanted[i] != shown[i];
            painted += changes[i] ? 1 : 0;
            if (changes[i] && lowest[i] < 0) {
                clear(canvases.get(i));
            }
        }
        count = 0;
        for (int k = 0; k < marks.size(); k++) {
            Mark mark = marks.get(k);
            int number = k;
            each(
                    mark,
                    i -> {
                        if (looks[count++] != 0 && changes[i] && number >= lowest[i]) {
                            Canvas canvas = canvases.get(i);
                            double x = canvas.getLayoutX();
                            Brush.draw(
                                    mark, canvas.getGraphicsContext2D(), x, x + canvas.getWidth());
                        }
                    });
        }
        shown = wanted;
    }

    private void remember(long look) {
        if (count == looks.length) {
            looks = Arrays.copyOf(looks, 2 * count);
        }
        looks[count++] = look;
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

    private static void clear(Canvas canvas) {
        canvas.getGraphicsContext2D()
                .clearRect(
                        canvas.getLayoutX(),
                        canvas.getLayoutY(),
                        canvas.getWidth(),
                        canvas.getHeight());
    }

    private void lay(double wide, double tall) {
        width = wide;
        height = tall;
        across = (int) Math.ceil(wide / WIDE);
        canvases.clear();
        getChildren().clear();
        for (int y = 0; y < tall; y += TALL) {
            // Row by row: of a group with a dozen changed children all is put on the window anew.
            Group row = new Group();
            row.setAutoSizeChildren(false);
            getChildren().add(row);
            for (int x = 0; x < wide; x += WIDE) {
                Canvas canvas = new Canvas(Math.min(WIDE, wide - x), Math.min(TALL, tall - y));
                canvas.relocate(x, y);
                canvas.getGraphicsContext2D().translate(-x, -y);
                row.getChildren().add(canvas);
                canvases.add(canvas);
            }
        }
        shown = new long[canvases.size()];
    }

    private void each(Mark mark, IntConsumer tile) {
        int x0 = (int) Math.max(0, Math.floor(mark.left / WIDE));
        int x1 = (int) Math.min(across - 1, Math.ceil(mark.right / WIDE) - 1);
        int y0 = (int) Math.max(0, Math.floor(mark.top / TALL));
        int y1 = (int) Math.min(canvases.size() / across - 1, Math.ceil(mark.bottom / TALL) - 1);
        for (int y = y0; y <= y1; y++) {
            for (int x = x0; x <= x1; x++) {
                tile.accept(y * across + x);
            }
        }
    }

    /** How many tiles were painted so far. */
    int painted() {
        return painted;
    }
}
