package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.nio.IntBuffer;
import javafx.scene.image.Image;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Small pictures of a finished piece, surface all round. */
public final class PiecePicture {
    private PiecePicture() {}

    /**
     * Paints ferrule, wood and cap, without the blade.
     *
     * @param handle the handle
     * @param palette colours of the theme
     * @param scale device pixels a millimetre
     * @return the picture, as small as holds the piece
     */
    public static Image of(Handle handle, Palette palette, double scale) {
        double from = handle.ferruleFaceX();
        double to = handle.buttX() + handle.lengths().capMm();
        double radius = radius(handle);
        int width = Math.max(1, (int) Math.ceil((to - from) * scale));
        int half = Math.max(1, (int) Math.ceil(radius * scale));
        int[] pixels = new int[width * 2 * half];
        new PieceRaster(handle, palette, PieceRaster.Below.SURFACE)
                .paint(
                        from + 0.5 / scale,
                        scale,
                        new PieceRaster.Size(width, 2 * half, half),
                        1,
                        pixels);
        return new WritableImage(
                new PixelBuffer<>(
                        width,
                        2 * half,
                        IntBuffer.wrap(pixels),
                        PixelFormat.getIntArgbPreInstance()));
    }

    /**
     * Greatest radius of wood and ferrule.
     *
     * @param handle the handle
     * @return mm
     */
    public static double radius(Handle handle) {
        return Math.max(
                handle.outline().greatest().r(),
                handle.brief().kit().ferrule().outside().greatest() / 2);
    }
}
