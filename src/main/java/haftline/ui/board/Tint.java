package haftline.ui.board;

import javafx.scene.paint.Color;

/** Colours as packed {@code 0xAARRGGBB}, for pictures that are made pixel by pixel. */
final class Tint {
    static final int OPAQUE = 0xFF000000;

    private Tint() {}

    static int of(Color colour) {
        return OPAQUE
                | (int) Math.round(colour.getRed() * 255) << 16
                | (int) Math.round(colour.getGreen() * 255) << 8
                | (int) Math.round(colour.getBlue() * 255);
    }

    /**
     * From one colour towards another.
     *
     * @param share how far, 0 to 256
     */
    static int mix(int from, int to, int share) {
        int keep = 256 - share;
        int r = ((from >> 16 & 255) * keep + (to >> 16 & 255) * share) >> 8;
        int g = ((from >> 8 & 255) * keep + (to >> 8 & 255) * share) >> 8;
        int b = ((from & 255) * keep + (to & 255) * share) >> 8;
        return OPAQUE | r << 16 | g << 8 | b;
    }

    /**
     * A colour over pixels that may be seen through.
     *
     * @param under premultiplied
     * @param colour opaque
     * @param share of the pixel that it covers, 0 to 256
     * @return premultiplied
     */
    static int over(int under, int colour, int share) {
        int keep = 256 - share;
        // Two parts of the colour at once: their products do not reach each other.
        int odd = (under >>> 8 & 0xFF00FF) * keep + ((colour | OPAQUE) >>> 8 & 0xFF00FF) * share;
        int even = (under & 0xFF00FF) * keep + (colour & 0xFF00FF) * share;
        return odd & 0xFF00FF00 | even >>> 8 & 0xFF00FF;
    }

    /**
     * One pixel over another, both premultiplied.
     *
     * @param share how much of the upper one there is, 0 to 256
     */
    static int laid(int under, int upper, int share) {
        int alpha = upper >>> 24;
        if (alpha == 0) {
            return under;
        }
        if (alpha == 255 && share == 256) {
            return upper;
        }
        int keep = 256 - (alpha + (alpha >> 7)) * share / 256;
        int odd = (under >>> 8 & 0xFF00FF) * keep + (upper >>> 8 & 0xFF00FF) * share;
        int even = (under & 0xFF00FF) * keep + (upper & 0xFF00FF) * share;
        return odd & 0xFF00FF00 | even >>> 8 & 0xFF00FF;
    }

    /**
     * A colour in a light.
     *
     * @param light 256 leaves it as it is
     * @param shine added to all three, 0 to 255
     */
    static int lit(int colour, int light, int shine) {
        int r = Math.min(255, ((colour >> 16 & 255) * light >> 8) + shine);
        int g = Math.min(255, ((colour >> 8 & 255) * light >> 8) + shine);
        int b = Math.min(255, ((colour & 255) * light >> 8) + shine);
        return OPAQUE | r << 16 | g << 8 | b;
    }

    /** A colour that covers a pixel by a share of 0 to 1, premultiplied. */
    static int covering(int colour, float share) {
        int a = (int) (255 * share);
        int r = (colour >> 16 & 255) * a / 255;
        int g = (colour >> 8 & 255) * a / 255;
        int b = (colour & 255) * a / 255;
        return a << 24 | r << 16 | g << 8 | b;
    }

    /** Polished metal: what is brighter than its colour is the window's white. */
    static int mirrored(int colour, int light) {
        int over = Math.max(0, light - 256);
        int lit = lit(colour, Math.min(256, light), 0);
        return over == 0 ? lit : mix(lit, 0xFFFFFF, Math.min(200, over));
    }
}
