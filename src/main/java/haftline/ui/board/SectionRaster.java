package haftline.ui.board;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.parts.Ferrule;

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
        }
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
            boolean isTang = columns.x(i) <= handle.fit().tipX();
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

    /** Shafts are drawn whole in a section, as drawing practice has it (ISO 128-3, from memory). */
    private void shade(int[] shaft, float radius, int metal) {
        int count = Math.min(room, rows(radius) + 1);
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
        boolean isBonded = x > 0 && x > handle.fit().tipX() + 4 || handle.fit().fit() == Fit.BONDED;
        int empty = isBonded ? pigments.glue() : pigments.hollow();
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
        // Closer hatching tells a thin wall without its colour; a broken limit is crossed as well.
        byte line = (wall == 0 || wall == 1 ? close : wide)[room + i + k];
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
        return wall == 0
                ? pigments.inked(colour, close[room + i - k], Pigments.strength(wall))
                : colour;
    }
}
