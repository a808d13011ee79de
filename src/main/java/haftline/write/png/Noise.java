package haftline.write.png;

/**
 * Smooth noise in space: at each whole place a value between -1 and 1 that follows from the place
 * alone, between them blended so that the slope has no jump (value noise, textbook).
 */
final class Noise {
    private Noise() {}

    static double at(double x, double y, double z) {
        double fx = Math.floor(x);
        double fy = Math.floor(y);
        double fz = Math.floor(z);
        int ix = (int) fx;
        int iy = (int) fy;
        int iz = (int) fz;
        double u = blend(x - fx);
        double v = blend(y - fy);
        double w = blend(z - fz);
        double low =
                mix(
                        mix(value(ix, iy, iz), value(ix + 1, iy, iz), u),
                        mix(value(ix, iy + 1, iz), value(ix + 1, iy + 1, iz), u),
                        v);
        double high =
                mix(
                        mix(value(ix, iy, iz + 1), value(ix + 1, iy, iz + 1), u),
                        mix(value(ix, iy + 1, iz + 1), value(ix + 1, iy + 1, iz + 1), u),
                        v);
        return mix(low, high, w);
    }

    private static double blend(double t) {
        return t * t * (3 - 2 * t);
    }

    private static double mix(double a, double b, double t) {
        return a + t * (b - a);
    }

    /** An integer hash with good mixing of all bits. */
    private static double value(int x, int y, int z) {
        int h = x * 0x8DA6B343 ^ y * 0xD8163841 ^ z * 0xCB1AB31F;
        h ^= h >>> 15;
        h *= 0x2C1B3C6D;
        h ^= h >>> 12;
        h *= 0x297A2D39;
        h ^= h >>> 15;
        return h / (double) Integer.MAX_VALUE;
    }
}
