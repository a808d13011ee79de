package haftline.ui.board;

import haftline.handle.Handle;
import haftline.ui.theme.Palette;
import java.util.Arrays;

/**
 * The picture of a piece while a hand drags it, surface above the axis and section below: one
 * colour for four columns and two rows, since grain runs along the axis, but edges as sharp as
 * ever. Over paper it draws the outline too: it knows where the edges are.
 */
final class CoarseRaster {
    /** Rows of one colour. */
    static final int TALL = 2;

    private static final int WIDE = 4;

    /** So many columns are left as they are where none of them looks different. */
    private static final int BLOCK = 16;

    /** Rise of a column, rows, from which on its line is drawn as an upright stretch. */
    private static final float STEEP = 1.5f;

    private final Handle handle;
    private final Pigments pigments;
    private final CoarseGrain slices;
    private final Ground ground;
    private Columns columns;
    private int width;
    private int axisRow;
    private int gloss;
    private float thick;
    private int[] colours;

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
        gloss = grain.gloss();
        colours = new int[axisRow / TALL + 1];
        thick = (float) LinePainter.WIDE * density;
        for (int from = 0; from < width; from += BLOCK) {
            int to = Math.min(width, from + BLOCK);
            if (differs(looks, shown, from, to)) {
                surface(from, to, grain, into);
                section.paint(from, to, into, axisRow, width, ground);
                if (ground.isOpaque()) {
                    line(from, to, size.height(), into);
                }
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
        int[] shades =
                isMetal
                        ? metal(count, most, isCap, middle)
                        : wood(count, most, slices.of(middle, most * columns.step, grain), middle);
        int whole = Math.min(count, (int) least);
        for (int k = 0; k < whole; k++) {
            int at = (axisRow - 1 - k) * width;
            int colour = shades[k / TALL];
            for (int i = at + from; i < at + to; i++) {
                into[i] = colour;
            }
        }
        for (int k = whole; k < count; k++) {
            int row = axisRow - 1 - k;
            for (int i = from; i < to; i++) {
                // The outermost pixel is only partly covered.
                float share = Math.max(0, Math.min(1, radii[i] / columns.step - k));
                into[row * width + i] = ground.under(shades[k / TALL], share, row, i);
            }
        }
    }

    private int[] metal(int count, float radius, boolean isCap, int column) {
        Shade shade = new Shade(radius, isCap ? columns.metalSlope(column) : 0);
        int colour = isCap ? pigments.cap() : pigments.ferrule();
        for (int k = 0; k < count; k += TALL) {
            colours[k / TALL] = shade.metal(Math.min(radius, k + TALL / 2f), colour);
        }
        return colours;
    }

    private int[] wood(int count, float radius, int[] slice, int column) {
        int[] light = Light.coarse(columns.slope[column]);
        for (int k = 0; k < count; k += TALL) {
            float share = Math.min(1, (k + TALL / 2f) / radius);
            int lit = light[Math.min(light.length - 1, (int) (share * light.length))];
            int plain = slice[Math.min(slice.length - 1, (int) (share * slice.length))];
            colours[k / TALL] = Tint.lit(plain, lit >> 8, (lit & 255) * gloss >> 8);
        }
        return colours;
    }

    /** The outline's line, over the axis and under it, where there is paper to draw it on. */
    private void line(int from, int to, int rows, int[] into) {
        for (int i = from; i < to; i++) {
            if (columns.x(i) <= 0 || columns.wood[i] <= 0 || columns.metal[i] > 0) {
                continue;
            }
            float before = half(i, i - 1);
            float behind = half(i, i + 1);
            float rise = behind - before;
            float middle = columns.wood[i] / columns.step;
            float reach = thick / 2 * (float) Math.sqrt(1 + rise * rise);
            if (Math.abs(rise) > STEEP) {
                middle = (before + behind) / 2;
                reach = (Math.abs(rise) + thick) / 2;
            }
            int last = (int) (middle + reach + 1);
            for (int k = Math.max(0, (int) (middle - reach)); k <= last; k++) {
                float share = Math.min(1, reach + 0.5f - Math.abs(k + 0.5f - middle));
                if (share > 0 && k < axisRow) {
                    ink((axisRow - 1 - k) * width + i, share, into);
                }
                if (share > 0 && k < rows - axisRow) {
                    ink((axisRow + k) * width + i, share, into);
                }
            }
        }
    }

    /** The radius half way to a neighbour, px. */
    private float half(int i, int beside) {
        boolean isWood =
                beside >= 0
                        && beside < width
                        && columns.x(beside) > 0
                        && columns.wood[beside] > 0
                        && columns.metal[beside] == 0;
        return (columns.wood[i] + columns.wood[isWood ? beside : i]) / 2 / columns.step;
    }

    private void ink(int at, float share, int[] into) {
        into[at] = Tint.mix(into[at], pigments.ink(), (int) (256 * share));
    }
}
