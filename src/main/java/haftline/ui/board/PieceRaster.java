package haftline.ui.board;

import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.parts.Ferrule;
import haftline.stock.Wood;
import haftline.ui.theme.Palette;
import java.util.Arrays;
import java.util.stream.IntStream;

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

    private static final int METAL_HATCH = 5;

    private final Handle handle;
    private final Below below;
    private final int ferruleColour;
    private final int capColour;
    private final int bladeColour;
    private final int sectionTint;
    private final int steel;
    private final int hollow;
    private final int glue;
    private final int hatchInk;
    private final int[] wallGround;

    /** Wood in section without its fibres, by wall and by hatching line. */
    private final int[][] quickWood = new int[4][LINE + 1];

    /** A core is not worth waking for fewer columns. */
    private static final int LEAST_STRETCH = 96;

    /** So many columns are one in a hurry. */
    private static final int QUICK_WIDE = 4;

    /** Side of a block that is turned at a time, px. */
    private static final int BLOCK = 16;

    private static final byte LINE = 2;
    private static final byte BESIDE = 1;

    private byte[] wide;
    private byte[] close;
    private byte[] metalLines;
    private Columns columns;

    /** Column by column, as they are made: the memory is walked through from end to end. */
    private int[] pixels;

    private int width;
    private int axisRow;
    private int rows;
    private float mmPerPx;
    private int originX;
    private int dpi = 1;
    private boolean isQuick;

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
        Grain grain = Grain.of(handle.brief().stock());
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
        wallGround =
                new int[] {
                    Tint.mix(sectionTint, Tint.of(palette.stop()), 96),
                    Tint.mix(sectionTint, Tint.of(palette.near()), 84),
                    Tint.mix(sectionTint, Tint.of(palette.good()), 60)
                };
        for (int wall = -1; wall < wallGround.length; wall++) {
            int ground = wall < 0 ? sectionTint : wallGround[wall];
            for (byte ink = 0; ink <= LINE; ink++) {
                quickWood[wall + 1][ink] = inked(ground, ink, strength(wall));
            }
        }
    }

    /**
     * Paints coarser and faster, as in the middle of a drag.
     *
     * @return this
     */
    PieceRaster quick() {
        isQuick = true;
        return this;
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
        pixels = new int[width * rows];
        dpi = density;
        originX = (int) Math.round(startX * scale);
        columns = new Columns(handle, startX, 1 / scale, width);
        if (below == Below.SECTION) {
            wide = lines(HATCH);
            close = lines(HATCH / 2 + 1);
            metalLines = lines(METAL_HATCH);
        }
        // A drag is painted in the time between two frames: every core takes a stretch.
        int stretch =
                Math.max(LEAST_STRETCH, width / Runtime.getRuntime().availableProcessors() + 1);
        IntStream.iterate(0, from -> from < width, from -> from + stretch)
                .parallel()
                .forEach(from -> stretch(from, Math.min(width, from + stretch), into));
        pixels = null;
        return columns;
    }

    private void stretch(int from, int to, int[] into) {
        Grain grain = Grain.of(handle.brief().stock());
        for (int i = from; i < to; i++) {
            surface(i, true, grain, from);
            if (below == Below.SURFACE) {
                surface(i, false, grain, from);
            } else {
                section(i, from);
            }
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
                    for (int i = left, at = i * rows + row; i < right; i++, at += rows) {
                        into[row * width + i] = pixels[at];
                    }
                }
            }
        }
    }

    /**
     * Size of a picture.
     *
     * @param width px
     * @param height px
     * @param axisRow first row below the axis
     */
    record Size(int width, int height, int axisRow) {}

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
        float slope = isMetal ? (isCap ? capSlope(i) : 0) : columns.slope[i];
        float lean = 1 / (float) Math.sqrt(1 + slope * slope);
        if (!isMetal) {
            grain.slice(x);
        }
        int gloss = grain.gloss();
        float inverse = 1 / radius;
        int room = up ? axisRow : rows - axisRow;
        float height = radius / mmPerPx;
        int count = Math.min((int) Math.ceil(height), room);
        int sign = up ? 1 : -1;
        int first = isQuick && (i - from) % QUICK_WIDE != 0 && !isMetal ? copied(i, up, height) : 0;
        for (int k = first; k < count; k++) {
            if (isQuick && (k & 1) == 1 && k + 1 <= height) {
                int at = i * rows + (up ? axisRow - 1 - k : axisRow + k);
                pixels[at] = pixels[up ? at + 1 : at - 1];
                continue;
            }
            float y = sign * (k + 0.5f) * mmPerPx;
            float v = Math.max(-1, Math.min(1, y * inverse));
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
            pixels[i * rows + (up ? axisRow - 1 - k : axisRow + k)] =
                    k + 1 <= height ? colour : Tint.covering(colour, height - k);
        }
    }

    /** In a hurry most columns are their neighbour's: grain runs along the axis. */
    private int copied(int i, boolean up, float height) {
        if (columns.metal[i - 1] > 0) {
            return 0;
        }
        float beside = columns.wood[i - 1] / mmPerPx;
        int count = Math.max(0, (int) Math.min(height, beside) - 1);
        int room = Math.min(count, up ? axisRow : rows - axisRow);
        int at = i * rows + (up ? axisRow - room : axisRow);
        System.arraycopy(pixels, at - rows, pixels, at, room);
        return room;
    }

    private float capSlope(int i) {
        if (i + 1 >= columns.count || columns.metal[i + 1] <= 0) {
            return -3;
        }
        return (columns.metal[i + 1] - columns.metal[i]) / mmPerPx;
    }

    private void section(int i, int from) {
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
        int tint = columns.wall(i);
        int plain = 0;
        if (columns.shank[i] > 0 && !inCap) {
            plain = sameShank(i, from, count);
        } else if (metal <= 0) {
            plain = woodAlone(i, count, bonded ? glue : hollow);
        }
        for (int k = plain; k < count; k++) {
            float d = (k + 0.5f) * mmPerPx;
            int colour;
            if (inCap) {
                colour = Tint.mirrored(capColour, Light.metal(-d / outside, capSlope(i), 0.8f));
            } else if (d < columns.shank[i]) {
                colour = shank(i, x, d);
            } else if (inFerrule && d >= ring) {
                colour = inked(steel, metalLines[rows + i - k], 70);
            } else if (d < columns.bore[i]) {
                colour = bonded ? glue : hollow;
            } else if (d < columns.wood[i]) {
                colour = woodSection(i, k, d, tint);
            } else {
                colour = inFerrule && x >= handle.tenonEndX() ? glue : hollow;
            }
            pixels[i * rows + axisRow + k] = colour;
        }
        if (!inFerrule && !inCap && columns.wood[i] == 0 && columns.shank[i] > 0) {
            int bare = Math.min(Math.round(columns.shank[i] / mmPerPx), rows - axisRow);
            for (int k = 0; k < bare; k++) {
                pixels[i * rows + axisRow + k] = shank(i, x, (k + 0.5f) * mmPerPx);
            }
        }
    }

    /** A straight shank is in one column as in the one before. */
    private int sameShank(int i, int from, int count) {
        boolean isSame =
                i > from
                        && columns.shank[i] == columns.shank[i - 1]
                        && (columns.metal[i - 1] <= 0 || columns.x(i - 1) < 0)
                        && columns.x(i) <= handle.fit().tipX()
                                == columns.x(i - 1) <= handle.fit().tipX();
        if (!isSame) {
            return 0;
        }
        int rowsOfIt = Math.min(count, (int) Math.floor(columns.shank[i] / mmPerPx - 0.5f));
        int at = i * rows + axisRow;
        System.arraycopy(pixels, at - rows, pixels, at, Math.max(0, rowsOfIt));
        return Math.max(0, rowsOfIt);
    }

    /** Most of a section: the hole, then wood. */
    private int woodAlone(int i, int count, int inHole) {
        int tint = columns.wall(i);
        int hole = Math.min(count, Math.round(columns.bore[i] / mmPerPx));
        int wood = Math.min(count, Math.round(columns.wood[i] / mmPerPx));
        int at = i * rows + axisRow;
        Arrays.fill(pixels, at, at + hole, inHole);
        for (int k = hole; k < wood; k++) {
            pixels[at + k] = woodSection(i, k, (k + 0.5f) * mmPerPx, tint);
        }
        return Math.max(hole, wood);
    }

    /** Shafts are drawn whole in a section, as drawing practice has it (ISO 128-3, from memory). */
    private int shank(int i, float x, float d) {
        boolean tang = x <= handle.fit().tipX();
        return Tint.mirrored(
                tang ? bladeColour : capColour, Light.metal(-d / columns.shank[i], 0, 1) - 14);
    }

    private int woodSection(int i, int k, float d, int tint) {
        // Closer hatching tells a thin wall without its colour; a broken limit is crossed as well.
        byte[] hatching = tint == 0 || tint == 1 ? close : wide;
        byte ink = hatching[rows + i + k];
        int lines;
        if (isQuick) {
            lines = quickWood[tint + 1][ink];
        } else {
            // The cut along the grain shows its fibres, no more.
            int fibre = (int) (7 * Noise.streak(columns.x(i) * 0.11f, d * 5.5f));
            int ground = tint < 0 ? sectionTint : wallGround[tint];
            lines = inked(Tint.lit(ground, 256 + fibre, 0), ink, strength(tint));
        }
        return tint == 0 ? inked(lines, close[rows + i - k], strength(tint)) : lines;
    }

    private static int strength(int wall) {
        return wall < 0 ? 60 : wall == 2 ? 72 : 104;
    }

    private int inked(int colour, byte ink, int strength) {
        if (ink == 0) {
            return colour;
        }
        return Tint.mix(colour, hatchInk, ink == LINE ? strength : strength / 4);
    }

    /** Where along a row lines are, soft beside them; a row further the same is moved by one. */
    private byte[] lines(int distance) {
        int step = distance * dpi;
        byte[] lines = new byte[width + 2 * rows];
        for (int i = 0; i < lines.length; i++) {
            int t = Math.floorMod(originX - rows + i, step);
            lines[i] = t < dpi ? LINE : t == dpi || t == step - 1 ? BESIDE : 0;
        }
        return lines;
    }
}
