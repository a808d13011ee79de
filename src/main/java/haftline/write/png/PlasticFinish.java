package haftline.write.png;

import haftline.stock.Colours;

/** Polished plastic: swirls of two colours, light that shines through its far rim, a gloss. */
final class PlasticFinish implements Finish {
    private final Rgb body;
    private final Rgb light;
    private final Rgb dark;
    private final double seed;

    PlasticFinish(Colours colours, double seed) {
        body = Rgb.of(colours.body());
        light = Rgb.of(colours.early());
        dark = Rgb.of(colours.late());
        this.seed = seed;
    }

    @Override
    public Rgb light(double x, double y, double z, double nx, double ny, double nz, double open) {
        Rgb swirl = colour(x + seed, y, z);
        // What enters from above leaves at the lower rim.
        double through = 0.55 * Light.smooth(0.3, -0.95, ny) * (0.35 + 0.65 * (1 - nz));
        double mirror = Light.fresnel(nz, 0.045) * Light.reflected(nx, ny, nz, 0.05);
        double glint = 0.55 * Light.glint(nx, ny, nz, 160);
        return swirl.times(Light.diffuse(nx, ny, nz))
                .plus(light.times(through))
                .plus(Rgb.WHITE.times(1.25 * mirror + glint))
                .times(open);
    }

    private Rgb colour(double x, double y, double z) {
        double wx = x / 24 + 1.1 * Noise.at(x / 19, y / 9, z / 9);
        double wy = y / 11 + 1.1 * Noise.at(x / 15 + 7, y / 8, z / 8);
        double swirl =
                0.65 * Noise.at(wx * 2, wy * 2, z / 9) + 0.35 * Noise.at(wx * 5, wy * 5, z / 5);
        Rgb base = body.mix(light, 0.85 * Light.smooth(0.05, 0.65, swirl));
        return base.mix(dark, 0.8 * Light.smooth(-0.05, -0.6, swirl));
    }
}
