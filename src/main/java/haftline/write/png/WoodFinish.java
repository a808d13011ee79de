package haftline.write.png;

import haftline.stock.Colours;
import haftline.stock.Wood;

/**
 * Oiled wood cut from a log whose heart lies beside the handle: growth rings are cylinders about
 * that heart, a little bent and tilted, and the turned surface cuts through them as it really
 * would. Invented for the eye; no botanist would vouch for it.
 */
final class WoodFinish implements Finish {
    /** Heart of the log, mm from the lathe axis. */
    private static final double HEART_Y = -9;

    private static final double HEART_Z = -34;

    /** The log's axis leans against the lathe's by this much. */
    private static final double LEAN = 0.055;

    private final Rgb early;
    private final Rgb late;
    private final Rgb body;
    private final Wood.Grain grain;
    private final double ringMm;
    private final double seed;

    WoodFinish(Colours colours, Wood.Grain grain, double seed) {
        body = Rgb.of(colours.body());
        early = Rgb.of(colours.early());
        late = Rgb.of(colours.late());
        this.grain = grain;
        this.seed = seed;
        ringMm =
                switch (grain) {
                    case RING_POROUS -> 2.6;
                    case BANDED -> 2.2;
                    case DIFFUSE -> 2.9;
                    case FIGURED -> 2.0;
                };
    }

    @Override
    public Rgb light(double x, double y, double z, double nx, double ny, double nz, double open) {
        Rgb wood = colour(x + seed, y, z);
        // Fibres across the grain of light: a satin sheen that the grain breaks up a little.
        double sheen = 0.75 + 0.25 * Noise.at((x + seed) / 9, y * 3.1, z * 3.1);
        double mirror = Light.fresnel(nz, 0.035) * Light.reflected(nx, ny, nz, 0.75) * sheen;
        double glint = 0.13 * Light.glint(nx, ny, nz, 22) * sheen;
        return wood.times(Light.diffuse(nx, ny, nz))
                .plus(Rgb.WHITE.times(mirror * 0.55 + glint))
                .times(open);
    }

    private Rgb colour(double x, double y, double z) {
        double bend = 2.6 * Noise.at(x / 46, y / 17, z / 17) + 0.5 * Noise.at(x / 15, y / 5, z / 5);
        double wave = grain == Wood.Grain.FIGURED ? 1.5 * Noise.at(x / 7, y / 9, z / 9) : 0;
        double dy = y - HEART_Y + LEAN * x + bend + wave;
        double dz = z - HEART_Z + 0.6 * bend;
        double fromHeart = Math.sqrt(dy * dy + dz * dz);
        double year = fromHeart / ringMm + 0.9 * Noise.at(fromHeart / 9, seed, 3.5);
        double season = year - Math.floor(year);
        double lateness = lateness(season);
        double fibre = Noise.at(x / 6, y * 4.3, z * 4.3) + 0.6 * Noise.at(x / 2.2, y * 11, z * 11);
        double drift = Noise.at(x / 70, y / 26, z / 26);
        double share = Math.max(0, Math.min(1, lateness + 0.10 * fibre + 0.12 * drift));
        Rgb wood = early.mix(late, share).mix(body, 0.22);
        double dark = 1 + 0.055 * fibre - pores(x, y, z, season);
        return wood.times(Math.max(0.3, dark));
    }

    /** Share of late wood through the year: slow to come, quick to end. */
    private double lateness(double season) {
        double rise =
                switch (grain) {
                    case BANDED -> Light.smooth(0.35, 0.95, season);
                    case RING_POROUS -> 0.85 * Light.smooth(0.05, 0.75, season);
                    case DIFFUSE -> 0.85 * Light.smooth(0.30, 0.97, season);
                    case FIGURED -> 0.95 * Light.smooth(0.25, 0.9, season);
                };
        return rise * Light.smooth(1.0, 0.955, season);
    }

    /** Cut vessels: dark dashes along the grain, in ring-porous woods crowded into the spring. */
    private double pores(double x, double y, double z, double season) {
        double fleck =
                Noise.at(x / 3.6, y * 6.5, z * 6.5) * 0.6 + Noise.at(x / 2, y * 9, z * 9) * 0.5;
        return switch (grain) {
            case RING_POROUS ->
                    0.34 * Light.smooth(0.28, 0.62, fleck) * Light.smooth(0.42, 0.12, season);
            case DIFFUSE -> 0.13 * Light.smooth(0.42, 0.70, fleck);
            case FIGURED -> 0.20 * Light.smooth(0.36, 0.66, fleck);
            case BANDED -> 0;
        };
    }
}
