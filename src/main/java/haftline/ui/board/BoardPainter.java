package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.model.View;
import java.nio.IntBuffer;
import java.util.Arrays;
import java.util.Objects;
import javafx.geometry.Rectangle2D;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Draws a scene: the ground first, the ruler last. */
final class BoardPainter {
    /** Room beside the wood in the picture of pixels, mm. */
    private static final double BESIDE = 0.5;

    /** Two pictures in turn: one may still be on its way to the screen. */
    private final WritableImage[] pictures = new WritableImage[2];

    private final int[][] pixels = new int[2][];
    private final PixelBuffer<?>[] buffers = new PixelBuffer<?>[2];
    private int turn;
    private long made;
    private final long[][] looks = {{}, {}};
    private Drawn drawn;

    /** What the pixels show, so that they are made anew only where they must. */
    private record Drawn(
            Handle handle,
            Object palette,
            double scale,
            double startX,
            int width,
            int height,
            int axisRow,
            boolean isQuick) {
        /** All that a column shows beside what the outline gives, as a number. */
        int setting() {
            return Objects.hash(
                    handle.brief().kit(),
                    handle.brief().metals(),
                    handle.brief().stock(),
                    handle.fit(),
                    handle.tenonEndX(),
                    palette,
                    scale,
                    startX,
                    width,
                    height,
                    axisRow);
        }
    }

    /**
     * Draws everything.
     *
     * @param ink what is drawn with
     * @param scene what is shown
     * @param width width of the board, px
     * @param height its height, px
     * @param view where the piece stands
     * @param density device pixels a pixel
     */
    void paint(Ink ink, BoardScene scene, double width, double height, View view, double density) {
        Sheet sheet = new Sheet(width, height);
        Pen pen = new Pen(ink);
        RulerPainter.ground(pen, scene, sheet, view);
        NodePainter.place(pen, scene, view, Sheet.RULER, sheet.curvesTop());
        surface(ink, scene, sheet, view, density);
        new LinePainter(pen, scene, view).paint();
        OverlayPainter overlay = new OverlayPainter(pen, scene, view);
        overlay.comb();
        new DimensionPainter(pen, scene, sheet, view).paint();
        overlay.ghost();
        new CurvePainter(pen, scene, sheet, view).paint();
        NodePainter.paint(pen, scene, view);
        RulerPainter.ruler(pen, scene, sheet, view);
    }

    private void surface(Ink ink, BoardScene scene, Sheet sheet, View view, double density) {
        Handle handle = scene.handle();
        double left = Math.max(0, Math.floor(view.px(handle.ferruleFaceX() - BESIDE)));
        double end = handle.buttX() + handle.lengths().capMm() + BESIDE;
        double right = Math.min(sheet.width(), Math.ceil(view.px(end)));
        double room = scene.room(view) + Math.ceil(BESIDE * view.scale());
        double axis = Math.round(view.axisY());
        double top = Math.max(0, axis - room);
        double bottom = Math.min(sheet.curvesTop(), axis + room);
        int width = (int) Math.ceil((right - left) * density);
        int height = (int) Math.ceil((bottom - top) * density);
        int axisRow = (int) Math.round((axis - top) * density);
        if (width <= 0 || height <= 0 || axisRow < 0 || axisRow > height) {
            return;
        }
        double startX = view.mm(left + 0.5 / density);
        Drawn wanted =
                new Drawn(
                        handle,
                        scene.palette(),
                        view.scale() * density,
                        startX,
                        width,
                        height,
                        axisRow,
                        scene.inHand());
        if (!wanted.equals(drawn)) {
            turn = 1 - turn;
            PixelBuffer<IntBuffer> buffer = buffer(width, height);
            PieceRaster.Size size = new PieceRaster.Size(width, height, axisRow);
            int hatched = (int) Math.max(1, Math.round(density));
            double devicePx = view.scale() * density;
            if (scene.inHand()) {
                looks[turn] =
                        new CoarseRaster(handle, scene.palette())
                                .paint(
                                        startX,
                                        devicePx,
                                        size,
                                        hatched,
                                        wanted.setting(),
                                        pixels[turn],
                                        looks[turn]);
            } else {
                new PieceRaster(handle, scene.palette(), PieceRaster.Below.SECTION)
                        .paint(startX, devicePx, size, hatched, pixels[turn]);
                looks[turn] = new long[width];
                Arrays.fill(looks[turn], ++made);
            }
            buffer.updateBuffer(b -> new Rectangle2D(0, 0, width, height));
            drawn = wanted;
        }
        ink.drawImage(
                pictures[turn],
                looks[turn],
                1 - scene.overlay().photograph(),
                left,
                top,
                width / density,
                height / density);
    }

    @SuppressWarnings("unchecked")
    private PixelBuffer<IntBuffer> buffer(int width, int height) {
        WritableImage picture = pictures[turn];
        if (picture == null || picture.getWidth() != width || picture.getHeight() != height) {
            pixels[turn] = new int[width * height];
            looks[turn] = new long[0];
            PixelBuffer<IntBuffer> made =
                    new PixelBuffer<>(
                            width,
                            height,
                            IntBuffer.wrap(pixels[turn]),
                            PixelFormat.getIntArgbPreInstance());
            buffers[turn] = made;
            pictures[turn] = new WritableImage(made);
            return made;
        }
        return (PixelBuffer<IntBuffer>) buffers[turn];
    }
}
