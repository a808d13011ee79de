package haftline.write.png;

/**
 * The light of the pictures: a large soft lamp above and in front, a bright room, a pale bench
 * below. x runs to the right, y up, z towards the eye, which looks straight along z.
 */
final class Light {
    /** Towards the lamp, a unit vector. */
    private static final double LAMP_X = -0.32;

    private static final double LAMP_Y = 0.74;
    private static final double LAMP_Z = 0.592;

    private static final Rgb LAMP = new Rgb(1.0, 0.965, 0.90).times(0.92);
    private static final Rgb SKY = new Rgb(0.86, 0.93, 1.0).times(0.42);
    private static final Rgb BENCH = new Rgb(1.0, 0.90, 0.76).times(0.24);

    private Light() {}

    /** What a dull surface of white would show. */
    static Rgb diffuse(double nx, double ny, double nz) {
        double lamp = nx * LAMP_X + ny * LAMP_Y + nz * LAMP_Z;
        // A lamp of some size lights a little beyond the edge of the shadow.
        double lit = Math.max(0, (lamp + 0.12) / 1.12);
        return BENCH.mix(SKY, 0.5 + 0.5 * ny).plus(LAMP.times(lit));
    }

    /**
     * How bright the room is in the mirror of a surface.
     *
     * @param blur 0 for a mirror, towards 1 for a satin surface
     */
    static double reflected(double nx, double ny, double nz, double blur) {
        // The eye's ray turned at the surface: r = 2 (n.v) n - v with v along z.
        double rx = 2 * nz * nx;
        double ry = 2 * nz * ny;
        double rz = 2 * nz * nz - 1;
        double soft = 0.06 + 0.5 * blur;
        double window = band(ry, 0.66, 0.17, soft) * band(rx, -0.1, 0.85, soft + 0.3);
        double strip = band(ry, -0.42, 0.05, soft) * (0.4 + 0.6 * Math.max(0, rz));
        double room = 0.20 + 0.30 * smooth(-0.25, 0.9, ry);
        double bench = 0.40 * smooth(0.02, -0.5, ry) * (1 - 0.85 * smooth(-0.5, -1.0, ry));
        double horizon = -0.13 * band(ry, -0.06, 0.10, soft * 0.6);
        return room + bench + horizon + (2.3 - 1.2 * blur) * window + 0.35 * strip;
    }

    /** The lamp's own glint on a polished surface. */
    static double glint(double nx, double ny, double nz, double sharpness) {
        double hx = LAMP_X;
        double hy = LAMP_Y;
        double hz = LAMP_Z + 1;
        double length = Math.sqrt(hx * hx + hy * hy + hz * hz);
        double facing = (nx * hx + ny * hy + nz * hz) / length;
        return Math.pow(Math.max(0, facing), sharpness);
    }

    /** How much more a surface mirrors at its rim (Schlick's approximation). */
    static double fresnel(double nz, double headOn) {
        double rest = 1 - Math.max(0, Math.min(1, nz));
        return headOn + (1 - headOn) * rest * rest * rest * rest * rest;
    }

    private static double band(double value, double middle, double half, double soft) {
        return smooth(middle - half - soft, middle - half + soft, value)
                * smooth(middle + half + soft, middle + half - soft, value);
    }

    /** 0 before the first edge, 1 after the second, smooth between; the edges may fall. */
    static double smooth(double from, double to, double value) {
        double t = Math.max(0, Math.min(1, (value - from) / (to - from)));
        return t * t * (3 - 2 * t);
    }
}
