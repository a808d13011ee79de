package haftline.handle;

import haftline.measure.Checks;

/**
 * How far a made handle is from the drawn one: the maker's own hand, tools and stock, for what
 * chance makes of a piece. Sizes are normal (Gauss) about the drawn ones. A bore's offset is normal
 * in each of two directions square to each other, so that every azimuth is as likely and its size
 * follows Rayleigh's distribution. A hole is never narrower than drawn: what it is wider by follows
 * half of a normal distribution.
 *
 * @param turnedMm standard deviation of a turned diameter at each node, mm, 0 to 2
 * @param tenonMm standard deviation of the tenon's diameter, which is fitted to its ferrule, mm, 0
 *     to 2
 * @param depthMm standard deviation of a bore's depth, mm, 0 to 10
 * @param oversizeMm by how much a hole is wider than drawn, on the diameter: the deviation of the
 *     normal distribution of which it is the positive half, mm, 0 to 2; 68 in 100 holes are within
 *     it, 95 in 100 within twice of it
 * @param wanderWithin share of bores that keep within the stated wander, 0.01 to 0.9999
 * @param densityWood standard deviation of a wood's density as a share of it, 0 to 0.5
 * @param densityPlastic the same of plastics
 * @param reckoned standard deviation of a mass that was reckoned from rough sizes, as a share of
 *     it, 0 to 0.5
 */
public record Spreads(
        double turnedMm,
        double tenonMm,
        double depthMm,
        double oversizeMm,
        double wanderWithin,
        double densityWood,
        double densityPlastic,
        double reckoned) {
    /**
     * Where a maker starts: common practice, no source, but for two. Density: coefficient of
     * variation of specific gravity, Wood Handbook (FPL-GTR-190), Table 5-6. Oversize: AND10387
     * (drilled hole tolerances for general machine work) allows holes of 3.2 to 12.7 mm in metal
     * 0.13 to 0.15 mm over the drill, here taken as what 95 in 100 keep; no published figure for
     * wood was found.
     */
    public static final Spreads COMMON_PRACTICE =
            new Spreads(0.15, 0.03, 0.5, 0.07, 0.95, 0.10, 0.01, 0.10);

    /** Checks the ranges. */
    public Spreads {
        Checks.withinMm("spread of turned diameters", turnedMm, 0, 2);
        Checks.withinMm("spread of the tenon", tenonMm, 0, 2);
        Checks.withinMm("spread of a bore's depth", depthMm, 0, 10);
        Checks.withinMm("spread of a hole's oversize", oversizeMm, 0, 2);
        Checks.within("share within the wander", wanderWithin, 0.01, 0.9999);
        Checks.within("spread of wood's density", densityWood, 0, 0.5);
        Checks.within("spread of plastics' density", densityPlastic, 0, 0.5);
        Checks.within("spread of a reckoned mass", reckoned, 0, 0.5);
    }

    /**
     * Standard deviation in each direction of an offset that the stated share keeps within a size:
     * Rayleigh's P(E &lt; e) = 1 - exp(-e² / 2 s²) solved for s.
     *
     * @param statedMm the size, mm, 0 or more
     * @return mm
     */
    public double componentMm(double statedMm) {
        return statedMm / Math.sqrt(-2 * Math.log(1 - wanderWithin));
    }
}
