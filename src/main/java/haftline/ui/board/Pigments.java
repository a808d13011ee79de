package haftline.ui.board;

import haftline.handle.Handle;
import haftline.stock.Wood;
import haftline.ui.theme.Palette;

/**
 * What a piece is painted with beside its grain, packed as in {@link Tint}.
 *
 * @param ferrule the ferrule's metal
 * @param cap the cap's metal
 * @param blade the blade's metal
 * @param section stock where it is cut open, no bore near
 * @param walls the same over a bore: limit broken, close to it, ample
 * @param steel metal cut open
 * @param hollow empty hole
 * @param glue hole that adhesive fills
 * @param ink hatching
 */
record Pigments(
        int ferrule,
        int cap,
        int blade,
        int section,
        int[] walls,
        int steel,
        int hollow,
        int glue,
        int ink) {
    /** How much ink a hatching line carries, in its middle and beside it. */
    static final byte LINE = 2;

    static final byte BESIDE = 1;

    /** Fresh-cut wood is yellower than its surface will be (for pictures only). */
    private static final int STRAW = 0xE8CE9C;

    static Pigments of(Handle handle, Palette palette) {
        Grain grain = Grain.of(handle.brief().stock());
        boolean isWood = handle.brief().stock() instanceof Wood;
        int cut = Tint.mix(grain.body, grain.early, 150);
        int section =
                Tint.mix(
                        isWood ? Tint.mix(cut, STRAW, 160) : cut,
                        Tint.of(palette.paper()),
                        palette == Palette.SLATE ? 120 : 150);
        return new Pigments(
                handle.brief().metals().ferrule().colour(),
                handle.brief().metals().cap().colour(),
                handle.brief().metals().blade().colour(),
                section,
                new int[] {
                    Tint.mix(section, Tint.of(palette.stop()), 96),
                    Tint.mix(section, Tint.of(palette.near()), 84),
                    Tint.mix(section, Tint.of(palette.good()), 60)
                },
                Tint.of(palette.steel()),
                Tint.of(palette.hollow()),
                Tint.of(palette.glue()),
                Tint.of(palette.ink()));
    }

    /**
     * Stock cut open, before it is hatched.
     *
     * @param wall as {@link Columns#wall} has it
     */
    int ground(int wall) {
        return wall < 0 ? section : walls[wall];
    }

    /** How dark its hatching is. */
    static int strength(int wall) {
        return wall < 0 ? 60 : wall == 2 ? 72 : 104;
    }

    /** A colour under a hatching line. */
    int inked(int colour, byte line, int strength) {
        if (line == 0) {
            return colour;
        }
        return Tint.mix(colour, ink, line == LINE ? strength : strength / 4);
    }
}
