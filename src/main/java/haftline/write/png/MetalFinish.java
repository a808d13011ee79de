package haftline.write.png;

/** Turned and polished metal: the room in its mirror, with the fine marks of the lathe. */
final class MetalFinish implements Finish {
    private final Rgb tint;

    MetalFinish(int srgb) {
        Rgb base = Rgb.of(srgb);
        // A metal's colour as drawn is what it mirrors of a grey room: the mirror itself is
        // lighter.
        double most = Math.max(base.red(), Math.max(base.green(), base.blue()));
        tint = base.times(0.90 / most).mix(base, 0.45);
    }

    @Override
    public Rgb light(double x, double y, double z, double nx, double ny, double nz, double open) {
        double marks = 0.035 * Noise.at(x * 7, 0.5, 0.5) + 0.02 * Noise.at(x * 19, 4.5, 0.5);
        double seen = Light.reflected(nx + marks, ny, nz, 0.22);
        double rim = Light.fresnel(nz, 0) + 0.5 * Light.smooth(1.0, 2.4, seen);
        return tint.mix(Rgb.WHITE, 0.6 * rim)
                .times(seen * (1 + 0.8 * marks))
                .plus(tint.times(Light.diffuse(nx, ny, nz)).times(0.16))
                .times(open);
    }
}
