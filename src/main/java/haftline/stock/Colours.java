package haftline.stock;

import java.util.Locale;

/**
 * Colours for drawing a stock, as sRGB {@code 0xRRGGBB}.
 *
 * @param body the whole at a glance
 * @param early wood of the spring, or the lighter swirl of a plastic
 * @param late wood of the summer, or the darker swirl
 * @param source whose colours they are; the starter colours are invented for the pictures
 */
public record Colours(int body, int early, int late, Source source) {
    private static final int WHITE = 0xFFFFFF;

    public Colours {
        checkColour("body", body);
        checkColour("early", early);
        checkColour("late", late);
    }

    /**
     * A colour as web pages and pictures write it.
     *
     * @param colour {@code 0xRRGGBB}
     * @return such as {@code #8a4b2f}
     */
    static String hex(int colour) {
        return String.format(Locale.ROOT, "#%06x", colour);
    }

    private static void checkColour(String field, int colour) {
        if (colour < 0 || colour > WHITE) {
            throw new IllegalArgumentException(
                    field + " " + colour + ": expected a colour from #000000 to #ffffff");
        }
    }
}
