package haftline.write.png;

/**
 * A colour in linear light, so that it can be mixed and lit.
 *
 * @param red 0 dark to 1 full
 * @param green 0 dark to 1 full
 * @param blue 0 dark to 1 full
 */
record Rgb(double red, double green, double blue) {
    static final Rgb WHITE = new Rgb(1, 1, 1);

    /** From here on light is held back, so that it never quite reaches white. */
    private static final double SHOULDER = 0.82;

    private static final double ROOM = 1 - SHOULDER;

    /** Levels of sRGB by linear light; so many steps that no dark level is left out. */
    private static final int[] LEVELS = levels();

    private static int[] levels() {
        int[] levels = new int[1 << 14];
        for (int i = 0; i < levels.length; i++) {
            double v = i / (levels.length - 1.0);
            double s = v <= 0.0031308 ? 12.92 * v : 1.055 * Math.pow(v, 1 / 2.4) - 0.055;
            levels[i] = (int) Math.round(255 * s);
        }
        return levels;
    }

    /** From sRGB {@code 0xRRGGBB} (IEC 61966-2-1). */
    static Rgb of(int srgb) {
        return new Rgb(linear(srgb >> 16 & 0xFF), linear(srgb >> 8 & 0xFF), linear(srgb & 0xFF));
    }

    private static double linear(int level) {
        double v = level / 255.0;
        return v <= 0.04045 ? v / 12.92 : Math.pow((v + 0.055) / 1.055, 2.4);
    }

    /** Held back near white; what is brighter than white loses its colour first, as on film. */
    Rgb toned() {
        double most = Math.max(red, Math.max(green, blue));
        if (most <= SHOULDER) {
            return this;
        }
        double over = most - SHOULDER;
        double scale = (SHOULDER + ROOM * (1 - Math.exp(-over / ROOM))) / most;
        return times(scale).mix(WHITE, 0.55 * (1 - Math.exp(-over)));
    }

    int srgb() {
        return level(red) << 16 | level(green) << 8 | level(blue);
    }

    private static int level(double linear) {
        double v = Math.max(0, Math.min(1, linear));
        return LEVELS[(int) (v * (LEVELS.length - 1) + 0.5)];
    }

    Rgb mix(Rgb other, double share) {
        return new Rgb(
                red + share * (other.red - red),
                green + share * (other.green - green),
                blue + share * (other.blue - blue));
    }

    Rgb times(double factor) {
        return new Rgb(red * factor, green * factor, blue * factor);
    }

    Rgb times(Rgb other) {
        return new Rgb(red * other.red, green * other.green, blue * other.blue);
    }

    Rgb plus(Rgb other) {
        return new Rgb(red + other.red, green + other.green, blue + other.blue);
    }
}
