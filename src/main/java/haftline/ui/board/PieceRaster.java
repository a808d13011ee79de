package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.util.stream.IntStream;

/**
 * Pixels of one piece: its surface as it will look, or surface above the axis and section below.
 * Made pixel by pixel, since shaded grain out of gradients would cost more and look worse.
 */
final class PieceRaster {
    /** What is shown below the axis. */
    enum Below {
        /** The section. */
        SECTION,
        /** The surface, as above. */
        SURFACE
    }

    /** A core is not worth waking for fewer columns. */
    static final int LEAST_STRETCH = 96;

    /** Side of a block that is turned at a time, px. */
    private static final int BLOCK = 16;

    private final Handle handle;
    private final Below below;
    private final Pigments pigments;
    private Columns columns;

    /** Column by column, as they are made: the memory is walked through from end to end. */
    private int[] pixels;

    private int width;
    private int axisRow;
    private int rows;

    /**
     * A painter of one handle.
     *
     * @param handle the handle
     * @param palette colours of the theme
     * @param below what is shown below the axis
     */
    PieceRaster(Handle handle, Palette palette, Below below) {
        this.handle = handle;
        this.below = below;
        pigments = Pigments.of(handle, palette);
    }

    /**
     * Size of a picture.
     *
     * @param width px
     * @param height px
     * @param axisRow first row below the axis
     */
    record Size(int width, int height, int axisRow) {}

    /**
     * Paints columns of pixels from a place on.
     *
     * @param startX place of the first column's middle, mm from the shoulder
     * @param scale px/mm
     * @param size the picture
     * @param density device pixels a logical one, for hatching of one look
     * @param into premultiplied ARGB, row by row; cleared where there is nothing
     */
    void paint(double startX, double scale, Size size, int density, int[] into) {
        width = size.width();
        axisRow = size.axisRow();
        rows = size.height();
        pixels = new int[width * rows];
        columns = new Columns(handle, startX, 1 / scale, width);
        SectionRaster section =
                new SectionRaster(handle, columns, pigments, rows - axisRow, density, true);
        int stretch =
                Math.max(LEAST_STRETCH, width / Runtime.getRuntime().availableProcessors() + 1);
        IntStream.iterate(0, from -> from < width, from -> from + stretch)
                .parallel()
                .forEach(from -> stretch(from, Math.min(width, from + stretch), section, into));
        pixels = null;
    }

    private void stretch(int from, int to, SectionRaster section, int[] into) {
        Grain grain = Grain.of(handle.brief().stock());
        for (int i = from; i < to; i++) {
            surface(i, true, grain, from);
            if (below == Below.SURFACE) {
                surface(i, false, grain, from);
            }
        }
        if (below == Below.SECTION) {
            section.paint(from, to, pixels, axisRow, rows, 1);
        }
        turned(from, to, into);
    }

    /** From column by column to row by row, in blocks that the cache holds. */
    private void turned(int from, int to, int[] into) {
        for (int top = 0; top < rows; top += BLOCK) {
            int bottom = Math.min(rows, top + BLOCK);
            for (int left = from; left < to; left += BLOCK) {
                int right = Math.min(to, left + BLOCK);
                for (int row = top; row < bottom; row++) {
                    for (int i = left, at = left * rows + row; i < right; i++, at += rows) {
                        into[row * width + i] = pixels[at];
                    }
                }
            }
        }
    }

    private void surface(int i, boolean up, Grain grain, int from) {
        float metal = columns.metal[i];
        boolean isMetal = metal > 0;
        float radius = isMetal ? metal : columns.wood[i];
        if (radius <= 0) {
            return;
        }
        float x = columns.x(i);
        boolean isCap = isMetal && x > 0;
        if (isMetal && !isCap && i > from && columns.metal[i - 1] == metal) {
            // One column of a ferrule is as the next.
            int at = i * rows;
            int first = up ? 0 : axisRow;
            System.arraycopy(
                    pixels, at - rows + first, pixels, at + first, up ? axisRow : rows - axisRow);
            return;
        }
        Shade shade =
                new Shade(radius, isMetal ? (isCap ? columns.metalSlope(i) : 0) : columns.slope[i]);
        if (!isMetal) {
            grain.slice(x);
        }
        int room = up ? axisRow : rows - axisRow;
        float height = radius / columns.step;
        int count = Math.min((int) Math.ceil(height), room);
        int sign = up ? 1 : -1;
        for (int k = 0; k < count; k++) {
            float y = sign * (k + 0.5f) * columns.step;
            int colour =
                    isMetal
                            ? shade.metal(y, isCap ? pigments.cap() : pigments.ferrule())
                            : shade.wood(y, grain);
            // The outermost pixel is only partly covered.
            pixels[i * rows + (up ? axisRow - 1 - k : axisRow + k)] =
                    k + 1 <= height ? colour : Tint.covering(colour, height - k);
        }
    }
}
