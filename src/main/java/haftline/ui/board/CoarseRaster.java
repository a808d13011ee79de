package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.util.stream.IntStream;

/**
 * The picture of a piece while a hand drags it, surface above the axis and section below: one
 * colour for four columns and two rows, since grain runs along the axis, but edges as sharp as
 * ever.
 */
final class CoarseRaster {
    private static final int WIDE = 4;
    private static final int TALL = 2;

    /** So many columns are left as they are where none of them looks different. */
    private static final int BLOCK = 16;

    private final Handle handle;
    private final Pigments pigments;
    private Columns columns;
    private int width;
    private int axisRow;

    /**
     * A painter of one handle.
     *
     * @param handle the handle
     * @param palette colours of the theme
     */
    CoarseRaster(Handle handle, Palette palette) {
        this.handle = handle;
        pigments = Pigments.of(handle, palette);
    }

    /**
     * Paints columns of pixels from a place on, where they differ from what is there.
     *
     * @param startX place of the first column's middle, mm from the shoulder
     * @param scale px/mm
     * @param size the picture
     * @param density device pixels a logical one, for hatching of one look
     * @param setting all that shows beside what can be read off at a column, as a number
     * @param into premultiplied ARGB, row by row
     * @param shown looks of the columns that are in it; empty for none
     * @return looks of the columns that are in it now
     */
    long[] paint(
            double startX,
            double scale,
            PieceRaster.Size size,
            int density,
            long setting,
            int[] into,
            long[] shown) {
        width = size.width();
        axisRow = size.axisRow();
        columns = new Columns(handle, startX, 1 / scale, width);
        long[] looks = columns.looks(setting);
        SectionRaster section =
                new SectionRaster(
                        handle, columns, pigments, size.height() - axisRow, density, false);
        int cores = Runtime.getRuntime().availableProcessors();
        int blocks = Math.max(PieceRaster.LEAST_STRETCH, width / cores) / BLOCK + 1;
        int stretch = blocks * BLOCK;
        IntStream.iterate(0, from -> from < width, from -> from + stretch)
                .parallel()
                .forEach(
                        start -> {
                            Grain grain = Grain.of(handle.brief().stock());
                            int end = Math.min(width, start + stretch);
                            for (int from = start; from < end; from += BLOCK) {
                                int to = Math.min(end, from + BLOCK);
                                if (differs(looks, shown, from, to)) {
                                    surface(from, to, grain, into);
                                    section.paint(from, to, into, axisRow * width, 1, width);
                                }
                            }
                        });
        return looks;
    }

    private static boolean differs(long[] looks, long[] shown, int from, int to) {
        if (shown.length != looks.length) {
            return true;
        }
        for (int i = from; i < to; i++) {
            if (looks[i] != shown[i]) {
                return true;
            }
        }
        return false;
    }

    private void surface(int from, int to, Grain grain, int[] into) {
        int start = from;
        while (start < to) {
            boolean isMetal = columns.metal[start] > 0;
            boolean isCap = isMetal && columns.x(start) > 0;
            int end = start + 1;
            while (end < to
                    && end - start < (isCap ? 1 : WIDE)
                    && columns.metal[end] > 0 == isMetal) {
                end++;
            }
            group(start, end, isMetal, isCap, grain, into);
            start = end;
        }
    }

    private void group(int from, int to, boolean isMetal, boolean isCap, Grain grain, int[] into) {
        float[] radii = isMetal ? columns.metal : columns.wood;
        int middle = (from + to) / 2;
        float least = Float.POSITIVE_INFINITY;
        float most = 0;
        for (int i = from; i < to; i++) {
            least = Math.min(least, radii[i] / columns.step);
            most = Math.max(most, radii[i] / columns.step);
        }
        int count = Math.min(axisRow, (int) Math.ceil(most));
        if (count > 0) {
            Shade shade =
                    new Shade(
                            most * columns.step,
                            isCap
                                    ? columns.metalSlope(middle)
                                    : isMetal ? 0 : columns.slope[middle]);
            grain.slice(columns.x(middle));
            int colour = 0;
            for (int k = 0; k < count; k++) {
                if (k % TALL == 0) {
                    float y = (k + TALL / 2f) * columns.step;
                    colour =
                            isMetal
                                    ? shade.metal(y, isCap ? pigments.cap() : pigments.ferrule())
                                    : shade.wood(y, grain);
                }
                int at = (axisRow - 1 - k) * width;
                for (int i = at + from; i < at + to; i++) {
                    into[i] =
                            k + 1 <= least
                                    ? colour
                                    : edge(colour, radii[i - at] / columns.step - k);
                }
            }
        }
        for (int row = axisRow - 1 - count; row >= 0; row--) {
            for (int i = row * width + from; i < row * width + to; i++) {
                into[i] = 0;
            }
        }
    }

    /** The outermost pixel is only partly covered. */
    private static int edge(int colour, float share) {
        return share >= 1 ? colour : share <= 0 ? 0 : Tint.covering(colour, share);
    }
}
