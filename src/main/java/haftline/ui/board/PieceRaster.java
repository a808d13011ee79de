package haftline.ui.board;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.parts.Ferrule;
import haftline.stock.Wood;
import haftline.ui.theme.Palette;

/**
 * Pixels of one piece: its surface as it will look, or surface above the axis and section below.
 * Made pixel by pixel, since shaded grain out of gradients would cost more and look worse.
 */
public final class PieceRaster {
    /** What is shown below the axis. */
    public enum Below {
        /** The section. */
        SECTION,
        /** The surface, as above. */
        SURFACE
    }

    /** Fresh-cut wood is yellower than its surface will be (for pictures only). */
    private static final int STRAW = 0xE8CE9C;

    /** Distance of hatching lines, px. */
    private static final int HATCH = 9;

    /** Wall left over its limit from which on it is called ample, mm (for colour only). */
    private static final float AMPLE = 0.5f;

    private final Handle handle;
    private final Grain grain;
    private final Below below;
    private final int ferruleColour;
    private final int capColour;
    private final int bladeColour;
    private final int sectionTint;
    private final int steel;
    private final int hollow;
    private final int glue;
    private final int hatchInk;
    private final int[] wallTint;

    private Columns columns;
    private int[] pixels;
    private int width;
    private int axisRow;
    private int rows;
    private float mmPerPx;
    private int originX;
    private int dpi = 1;

    /**
     * A painter of one handle.
     *
     * @param handle the handle
     * @param palette colours of the theme
     * @param below what is shown below the axis
     */
    public PieceRaster(Handle handle, Palette palette, Below below) {
        this.handle = handle;
        this.below = below;
        grain = Grain.of(handle.brief().stock());
        ferruleColour = handle.brief().metals().ferrule().colour();
        capColour = handle.brief().metals().cap().colour();
        bladeColour = handle.brief().metals().blade().colour();
        int paper = Tint.of(palette.paper());
        boolean wood = handle.brief().stock() instanceof Wood;
        int cut = Tint.mix(grain.body, grain.early, 150);
        sectionTint =
                Tint.mix(
                        wood ? Tint.mix(cut, STRAW, 160) : cut,
                        paper,
                        palette == Palette.SLATE ? 120 : 150);
        steel = Tint.of(palette.steel());
        hollow = Tint.of(palette.hollow());
        glue = Tint.of(palette.glue());
        hatchInk = Tint.of(palette.ink());
        wallTint =
                new int[] {
                    Tint.of(palette.stop()), Tint.of(palette.near()), Tint.of(palette.good())
                };
    }

    /**
     * Paints columns of pixels from a place on.
     *
     * @param startX place of the first column's middle, mm from the shoulder
     * @param scale px/mm
     * @param size the picture
     * @param density device pixels a logical one, for hatching of one look
     * @param into premultiplied ARGB, row by row; cleared where there is nothing
     * @return the handle read off at the columns
     */
    Columns paint(double startX, double scale, Size size, int density, int[] into) {
        width = size.width();
        axisRow = size.axisRow();
        rows = size.height();
        mmPerPx = (float) (1 / scale);
        pixels = into;
        dpi = density;
        originX = (int) Math.round(startX * scale);
        columns = new Columns(handle, startX, 1 / scale, width);
        java.util.Arrays.fill(pixels, 0, width * rows, 0);
        for (int i = 0; i < width; i++) {
            surface(i, true);
            if (below == Below.SURFACE) {
                surface(i, false);
            } else {
                section(i);
            }
        }
        return columns;
    }

    /**
     * Size of a picture.
     *
     * @param width px
     * @param height px
     * @param axisRow first row below the axis
     */
    record Size(int width, int height, int axisRow) {}

    private void surface(int i, boolean up) {
        float metal = columns.metal[i];
        boolean isMetal = metal > 0;
        float radius = isMetal ? metal : columns.wood[i];
        if (radius <= 0) {
            return;
        }
        float x = columns.x(i);
        boolean isCap = isMetal && x > 0;
        float slope = isMetal ? (isCap ? capSlope(i) : 0) : columns.slope[i];
        float lean = 1 / (float) Math.sqrt(1 + slope * slope);
        if (!isMetal) {
            grain.slice(x);
        }
        int gloss = grain.gloss();
        int room = up ? axisRow : rows - axisRow;
        float height = radius / mmPerPx;
        int count = Math.min((int) Math.ceil(height), room);
        int sign = up ? 1 : -1;
        for (int k = 0; k < count; k++) {
            float y = sign * (k + 0.5f) * mmPerPx;
            float v = Math.max(-1, Math.min(1, y / radius));
            int colour;
            if (isMetal) {
                colour =
                        Tint.mirrored(
                                isCap ? capColour : ferruleColour, Light.metal(v, slope, lean));
            } else {
                float depth = (float) Math.sqrt(1 - v * v);
                int shine = Light.shine(v, depth, slope, lean) * gloss >> 8;
                colour =
                        Tint.lit(
                                grain.at(y, depth * radius),
                                Light.dull(v, depth, slope, lean),
                                shine);
            }
            // The outermost pixel is only partly covered.
            pixels[(up ? axisRow - 1 - k : axisRow + k) * width + i] =
                    k + 1 <= height ? colour : Tint.covering(colour, height - k);
        }
    }

    private float capSlope(int i) {
        if (i + 1 >= columns.count || columns.metal[i + 1] <= 0) {
            return -3;
        }
        return (columns.metal[i + 1] - columns.metal[i]) / mmPerPx;
    }

    private void section(int i) {
        float x = columns.x(i);
        Ferrule ferrule = handle.brief().kit().ferrule();
        float metal = columns.metal[i];
        boolean inFerrule = metal > 0 && x < 0;
        boolean inCap = metal > 0 && !inFerrule;
        float outside = Math.max(metal, columns.wood[i]);
        float ring = inFerrule ? (float) ferrule.bore().mean() / 2 : 0;
        if (inFerrule && x < handle.ferruleFaceX() + ferrule.lipMm()) {
            ring = (float) ferrule.lipHoleMm().orElse(0) / 2;
        }
        boolean bonded = x > 0 && x > handle.fit().tipX() + 4 || handle.fit().fit() == Fit.BONDED;
        int count = Math.min(Math.round(outside / mmPerPx), rows - axisRow);
        if (columns.wood[i] > 0) {
            grain.slice(x);
        }
        int tint = wall(i);
        for (int k = 0; k < count; k++) {
            float d = (k + 0.5f) * mmPerPx;
            int colour;
            if (inCap) {
                colour = Tint.mirrored(capColour, Light.metal(-d / outside, capSlope(i), 0.8f));
            } else if (d < columns.shank[i]) {
                colour = shank(i, x, d);
            } else if (inFerrule && d >= ring) {
                colour = hatched(steel, i, k, true, 5, 70);
            } else if (d < columns.bore[i]) {
                colour = bonded ? glue : hollow;
            } else if (d < columns.wood[i]) {
                colour = woodSection(i, k, d, tint);
            } else {
                colour = inFerrule && x >= handle.tenonEndX() ? glue : hollow;
            }
            pixels[(axisRow + k) * width + i] = colour;
        }
        if (!inFerrule && !inCap && columns.wood[i] == 0 && columns.shank[i] > 0) {
            int bare = Math.min(Math.round(columns.shank[i] / mmPerPx), rows - axisRow);
            for (int k = 0; k < bare; k++) {
                pixels[(axisRow + k) * width + i] = shank(i, x, (k + 0.5f) * mmPerPx);
            }
        }
    }

    /** Shafts are drawn whole in a section, as drawing practice has it (ISO 128-3, from memory). */
    private int shank(int i, float x, float d) {
        boolean tang = x <= handle.fit().tipX();
        return Tint.mirrored(
                tang ? bladeColour : capColour, Light.metal(-d / columns.shank[i], 0, 1) - 14);
    }

    private int woodSection(int i, int k, float d, int tint) {
        int colour = Tint.mix(sectionTint, grain.at(-d, 0), 46);
        if (tint < 0) {
            return hatched(colour, i, k, false, HATCH, 60);
        }
        int tinted = Tint.mix(colour, wallTint[tint], tint == 2 ? 60 : tint == 1 ? 84 : 96);
        // Closer hatching tells a thin wall without its colour; a broken limit is crossed as well.
        int lines =
                hatched(
                        tinted,
                        i,
                        k,
                        false,
                        tint == 2 ? HATCH : HATCH / 2 + 1,
                        tint == 2 ? 72 : 104);
        return tint == 0 ? hatched(lines, i, k, true, HATCH / 2 + 1, 104) : lines;
    }

    /** 0 broken, 1 close, 2 ample, -1 where no bore lies under the wood. */
    private int wall(int i) {
        if (columns.worst[i] == Columns.NO_WALL) {
            return -1;
        }
        float margin = columns.worst[i] - columns.limit[i];
        return margin < 0 ? 0 : margin < AMPLE ? 1 : 2;
    }

    private int hatched(int colour, int i, int k, boolean falling, int distance, int strength) {
        int step = distance * dpi;
        int t = Math.floorMod(falling ? originX + i - k : originX + i + k, step);
        if (t < dpi) {
            return Tint.mix(colour, hatchInk, strength);
        }
        return t == dpi || t == step - 1 ? Tint.mix(colour, hatchInk, strength / 4) : colour;
    }
}
