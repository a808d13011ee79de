package haftline.ui.board;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.parts.Ferrule;
import java.util.Arrays;

/** Pixels of a piece cut open, from the axis down: shaft, hole, wood by its wall, ferrule, cap. */
final class SectionRaster {
    /** Distance of hatching lines, px. */
    private static final int HATCH = 9;

    private static final int METAL_HATCH = 5;

    private final Handle handle;
    private final Columns columns;
    private final Pigments pigments;
    private final boolean isFine;
    private final int room;
    private final float mmPerPx;
    private final byte[] wide;
    private final byte[] close;
    private final byte[] metalLines;
    private final int[][] plainWood = new int[4][Pigments.LINE + 1];

    /** A row of plain wood by its wall, one further for each row further down. */
    private final int[][] plain = new int[4][];

    private int[] coarseShaft = {};
    private boolean coarseIsTang;

    /**
     * A painter.
     *
     * @param handle the handle
     * @param columns the handle read off
     * @param pigments what it is painted with
     * @param room rows below the axis
     * @param density device pixels a logical one, for hatching of one look
     * @param isFine whether the cut shows its fibres
     */
    SectionRaster(
            Handle handle,
            Columns columns,
            Pigments pigments,
            int room,
            int density,
            boolean isFine) {
        this.handle = handle;
        this.columns = columns;
        this.pigments = pigments;
        this.room = room;
        this.isFine = isFine;
        mmPerPx = columns.step;
        wide = lines(HATCH * density, density);
        close = lines((HATCH / 2 + 1) * density, density);
        metalLines = lines(METAL_HATCH * density, density);
        for (int wall = -1; wall < plainWood.length - 1; wall++) {
            for (byte ink = 0; ink <= Pigments.LINE; ink++) {
                plainWood[wall + 1][ink] =
                        pigments.inked(pigments.ground(wall), ink, Pigments.strength(wall));
            }
            if (!isFine) {
                plain[wall + 1] = hatched(wall);
            }
        }
    }

    private int[] hatched(int wall) {
        byte[] lines = lines(wall);
        int[] hatched = new int[lines.length];
        for (int i = 0; i < hatched.length; i++) {
            hatched[i] = plainWood[wall + 1][lines[i]];
        }
        return hatched;
    }

    /** Closer hatching tells a thin wall without its colour. */
    private byte[] lines(int wall) {
        return wall == 0 || wall == 1 ? close : wide;
    }

    /** Where along a row lines are, soft beside them; a row further the same is moved by one. */
    private byte[] lines(int distance, int thick) {
        int originX = Math.round(columns.startX / mmPerPx);
        byte[] lines = new byte[columns.count + 2 * room];
        for (int i = 0; i < lines.length; i++) {
            int t = Math.floorMod(originX - room + i, distance);
            lines[i] =
                    t < thick
                            ? Pigments.LINE
                            : t == thick || t == distance - 1 ? Pigments.BESIDE : 0;
        }
        return lines;
    }

    /**
     * Paints some columns; nothing is left as it was.
     *
     * @param from the first column
     * @param to behind the last
     * @param into where to: row k below the axis of column i at {@code first + i * across + k *
     *     down}
     */
    void paint(int from, int to, int[] into, int first, int across, int down) {
        int[] shaft = new int[room];
        float shaftRadius = 0;
        boolean shaftIsTang = false;
        for (int i = from; i < to; i++) {
            int at = first + i * across;
            float radius = columns.shank[i];
            boolean isTang = isTang(i);
            if (radius > 0 && (radius != shaftRadius || isTang != shaftIsTang)) {
                shaftRadius = radius;
                shaftIsTang = isTang;
                shade(shaft, radius, isTang ? pigments.blade() : pigments.cap());
            }
            int count = column(i, into, at, down, shaft);
            for (int k = count; k < room; k++) {
                into[at + k * down] = 0;
            }
        }
    }

    /**
     * Paints some columns in rows, as far as they are alike; nothing is left as it was.
     *
     * @param from the first column
     * @param to behind the last
     * @param into where to, row by row
     * @param axisRow the first row below the axis
     * @param width of a row
     * @param ground what is seen below the piece
     */
    void paint(int from, int to, int[] into, int axisRow, int width, Ground ground) {
        float lowest = 0;
        for (int i = from; i < to; i++) {
            lowest = Math.max(lowest, Math.max(columns.shank[i], outside(i)));
        }
        int depth = rows(lowest);
        int start = from;
        while (start < to) {
            int end = start + 1;
            while (end < to && isAlike(start, end)) {
                end++;
            }
            if (columns.metal[start] > 0 || columns.wall(start) == 0) {
                upright(start, end, depth, into, axisRow, width, ground);
            } else {
                level(start, end, depth, into, axisRow, width, ground);
            }
            start = end;
        }
        for (int k = depth; k < room; k++) {
            ground.fill(axisRow + k, from, to, into, width);
        }
    }

    private float outside(int i) {
        return Math.max(columns.metal[i], columns.wood[i]);
    }

    private boolean isAlike(int one, int other) {
        return columns.metal[one] == 0
                && columns.metal[other] == 0
                && rows(columns.shank[one]) == rows(columns.shank[other])
                && rows(columns.bore[one]) == rows(columns.bore[other])
                && columns.wall(one) == columns.wall(other)
                && isTang(one) == isTang(other)
                && empty(one) == empty(other);
    }

    /** Column by column: metal, and wood that is crossed with lines. */
    private void upright(
            int from, int to, int depth, int[] into, int axisRow, int width, Ground ground) {
        for (int i = from; i < to; i++) {
            int count = column(i, into, axisRow * width + i, width, shaft(i));
            for (int k = count; k < depth; k++) {
                ground.fill(axisRow + k, i, i + 1, into, width);
            }
        }
    }

    /** Row by row: wood over one hole, with one shaft in it. */
    private void level(
            int from, int to, int depth, int[] into, int axisRow, int width, Ground ground) {
        int[] hatched = plain[columns.wall(from) + 1];
        int[] shaft = shaft(from);
        int shank = rows(columns.shank[from]);
        int hole = rows(columns.bore[from]);
        int empty = empty(from);
        int least = room;
        for (int i = from; i < to; i++) {
            least = Math.min(least, rows(columns.wood[i]));
        }
        for (int k = 0; k < depth; k++) {
            int at = (axisRow + k) * width;
            if (k < shank) {
                Arrays.fill(into, at + from, at + to, shaft[k]);
            } else if (k >= least) {
                for (int i = from; i < to; i++) {
                    if (k < rows(columns.wood[i])) {
                        into[at + i] = k < hole ? empty : hatched[room + i + k];
                    } else {
                        ground.fill(axisRow + k, i, i + 1, into, width);
                    }
                }
            } else if (k < hole) {
                Arrays.fill(into, at + from, at + to, empty);
            } else {
                System.arraycopy(hatched, room + from + k, into, at + from, to - from);
            }
        }
    }

    private boolean isTang(int i) {
        return columns.x(i) <= handle.fit().tipX();
    }

    /** What fills the hole beside tang or spigot. */
    private int empty(int i) {
        float x = columns.x(i);
        boolean isBonded = x > 0 && x > handle.fit().tipX() + 4 || handle.fit().fit() == Fit.BONDED;
        return isBonded ? pigments.glue() : pigments.hollow();
    }

    /** The shaft in a column, as it was in the last one if it is as thick. */
    private int[] shaft(int i) {
        int rows = rows(columns.shank[i]) + 1;
        if (rows != coarseShaft.length || isTang(i) != coarseIsTang) {
            coarseShaft = new int[rows];
            coarseIsTang = isTang(i);
            shade(coarseShaft, columns.shank[i], coarseIsTang ? pigments.blade() : pigments.cap());
        }
        return coarseShaft;
    }

    /** Shafts are drawn whole in a section, as drawing practice has it (ISO 128-3, from memory). */
    private void shade(int[] shaft, float radius, int metal) {
        int count = Math.min(Math.min(room, shaft.length), rows(radius) + 1);
        for (int k = 0; k < count; k++) {
            float v = -Math.min(1, (k + 0.5f) * mmPerPx / radius);
            shaft[k] = Tint.mirrored(metal, Light.metal(v, 0, 1) - 14);
        }
    }

    private int rows(float mm) {
        return Math.min(Math.round(mm / mmPerPx), room);
    }

    /** One column; how many rows it fills. */
    private int column(int i, int[] into, int at, int down, int[] shaft) {
        float x = columns.x(i);
        Ferrule ferrule = handle.brief().kit().ferrule();
        float metal = columns.metal[i];
        boolean inFerrule = metal > 0 && x < 0;
        boolean inCap = metal > 0 && !inFerrule;
        int outside = rows(Math.max(metal, columns.wood[i]));
        if (inCap) {
            for (int k = 0; k < outside; k++) {
                float v = -(k + 0.5f) * mmPerPx / metal;
                into[at + k * down] =
                        Tint.mirrored(pigments.cap(), Light.metal(v, columns.metalSlope(i), 0.8f));
            }
            return outside;
        }
        int shank = rows(columns.shank[i]);
        for (int k = 0; k < shank; k++) {
            into[at + k * down] = shaft[k];
        }
        int empty = empty(i);
        int hole = rows(columns.bore[i]);
        int wood = rows(columns.wood[i]);
        for (int k = shank; k < hole; k++) {
            into[at + k * down] = empty;
        }
        int wall = columns.wall(i);
        for (int k = Math.max(shank, hole); k < wood; k++) {
            into[at + k * down] = wood(i, k, wall);
        }
        if (!inFerrule) {
            return Math.max(wood, shank);
        }
        float ring = (float) ferrule.bore().mean() / 2;
        if (x < handle.ferruleFaceX() + ferrule.lipMm()) {
            ring = (float) ferrule.lipHoleMm().orElse(0) / 2;
        }
        int inside = Math.max(shank, rows(ring));
        int between = x >= handle.tenonEndX() ? pigments.glue() : pigments.hollow();
        for (int k = Math.max(Math.max(shank, hole), wood); k < inside; k++) {
            into[at + k * down] = between;
        }
        for (int k = inside; k < outside; k++) {
            into[at + k * down] = pigments.inked(pigments.steel(), metalLines[room + i - k], 70);
        }
        return Math.max(outside, shank);
    }

    private int wood(int i, int k, int wall) {
        byte line = lines(wall)[room + i + k];
        int colour;
        if (isFine) {
            // The cut along the grain shows its fibres, no more.
            int fibre = (int) (7 * Noise.streak(columns.x(i) * 0.11f, (k + 0.5f) * mmPerPx * 5.5f));
            colour =
                    pigments.inked(
                            Tint.lit(pigments.ground(wall), 256 + fibre, 0),
                            line,
                            Pigments.strength(wall));
        } else {
            colour = plainWood[wall + 1][line];
        }
        // A broken limit is crossed as well.
        return wall == 0
                ? pigments.inked(colour, close[room + i - k], Pigments.strength(wall))
                : colour;
    }
}
