package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.util.Arrays;

/**
 * The picture of a piece while a hand drags it, surface above the axis and section below: one
 * colour for four columns and two rows, since grain runs along the axis, but edges as sharp as
 * ever.
 */
final class CoarseRaster {
    /** Rows of one colour. */
    static final int TALL = 2;

    private static final int WIDE = 4;

    /** So many columns are left as they are where none of them looks different. */
    private static final int BLOCK = 16;

    private final Handle handle;
    private final Pigments pigments;
    private final CoarseGrain slices;
    private final Ground ground;
    private Columns columns;
    private int width;
    private int axisRow;

    /**
     * A painter of one handle.
     *
     * @param handle the handle
     * @param palette colours of the theme
     * @param slices the grain as far as it is worked out
     * @param ground what is seen beside the piece
     */
    CoarseRaster(Handle handle, Palette palette, CoarseGrain slices, Ground ground) {
        this.handle = handle;
        this.slices = slices;
        this.ground = ground;
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
        slices.keepTo(handle.brief().stock(), columns);
        long[] looks = columns.looks(setting);
        SectionRaster section =
                new SectionRaster(
                        handle, columns, pigments, size.height() - axisRow, density, false);
        Grain grain = Grain.of(handle.brief().stock());
        for (int from = 0; from < width; from += BLOCK) {
            int to = Math.min(width, from + BLOCK);
            if (differs(looks, shown, from, to)) {
                surface(from, to, grain, into);
                section.paint(from, to, into, axisRow, width, ground);
            }
        }
        return looks;
    }

    private static boolean differs(long[] looks, long[] shown, int from, int to) {
        return shown.length != looks.length || !Arrays.equals(looks, from, to, shown, from, to);
    }

    private void surface(int from, int to, Grain grain, int[] into) {
        float highest = 0;
        for (int i = from; i < to; i++) {
            highest = Math.max(highest, columns.metal[i] > 0 ? columns.metal[i] : columns.wood[i]);
        }
        int top = axisRow - rows(highest / columns.step);
        for (int row = 0; row < top; row++) {
            ground.fill(row, from, to, into, width);
        }
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
            group(start, end, top, isMetal, isCap, grain, into);
            start = end;
        }
    }

    private int rows(float px) {
        return Math.min(axisRow, (int) Math.ceil(px));
    }

    /** Some columns of one colour, from a row on down to the axis. */
    private void group(
            int from, int to, int top, boolean isMetal, boolean isCap, Grain grain, int[] into) {
        float[] radii = isMetal ? columns.metal : columns.wood;
        int middle = (from + to) / 2;
        float least = Float.POSITIVE_INFINITY;
        float most = 0;
        for (int i = from; i < to; i++) {
            least = Math.min(least, radii[i] / columns.step);
            most = Math.max(most, radii[i] / columns.step);
        }
        int count = rows(most);
        for (int row = top; row < axisRow - count; row++) {
            ground.fill(row, from, to, into, width);
        }
        if (count == 0) {
            return;
        }
        float radius = most * columns.step;
        Shade shade =
                new Shade(
                        radius,
                        isCap ? columns.metalSlope(middle) : isMetal ? 0 : columns.slope[middle]);
        int[] slice = isMetal ? null : slices.of(middle, radius, grain);
        float cells = isMetal ? 0 : slice.length / most;
        int metal = isCap ? pigments.cap() : pigments.ferrule();
        for (int k = 0; k < count; k += TALL) {
            float y = Math.min(most, k + TALL / 2f);
            int colour =
                    isMetal
                            ? shade.metal(y * columns.step, metal)
                            : shade.quick(
                                    y * columns.step,
                                    slice[Math.min(slice.length - 1, (int) (y * cells))],
                                    grain.gloss());
            for (int row = k; row < Math.min(count, k + TALL); row++) {
                row(axisRow - 1 - row, row, from, to, radii, colour, row + 1 <= least, into);
            }
        }
    }

    private void row(
            int row,
            int over,
            int from,
            int to,
            float[] radii,
            int colour,
            boolean isWhole,
            int[] into) {
        int at = row * width;
        for (int i = from; i < to; i++) {
            // The outermost pixel is only partly covered.
            float share = isWhole ? 1 : radii[i] / columns.step - over;
            into[at + i] = share >= 1 ? colour : ground.under(colour, Math.max(0, share), row, i);
        }
    }
}
