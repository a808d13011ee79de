package haftline.adjust.doubt;

import haftline.measure.Checks;
import haftline.stock.Stock;
import haftline.stock.Wood;

/**
 * How far a made handle is from the drawn one. Sizes are normal (Gauss) about the drawn ones; a
 * bore's offset is normal in each of two directions square to each other, so that every azimuth is
 * as likely and its size follows Rayleigh's distribution.
 *
 * @param turnedMm standard deviation of a turned diameter at each node, mm, 0 to 2
 * @param tenonMm standard deviation of the tenon's diameter, which is fitted to its ferrule, mm, 0
 *     to 2
 * @param wanderWithin share of bores that keep within the stated wander, over 0 and under 1
 * @param densityShare standard deviation of the stock's density as a share of it, 0 to 0.5
 * @param reckonedShare standard deviation of a mass that was reckoned from rough sizes, as a share
 *     of it, 0 to 0.5
 */
public record Scatter(
        double turnedMm,
        double tenonMm,
        double wanderWithin,
        double densityShare,
        double reckonedShare) {
    /** A careful hand with callipers, common practice, no source. */
    private static final double TURNED_MM = 0.15;

    private static final double TENON_MM = 0.03;

    /** The stated wander is one that few bores pass: common practice, no source. */
    private static final double WITHIN = 0.95;

    /** Coefficient of variation of specific gravity, Wood Handbook (FPL-GTR-190), Table 5-6. */
    private static final double WOOD_DENSITY = 0.10;

    /** Cast and laminated sheets are even, common practice, no source. */
    private static final double PLASTIC_DENSITY = 0.01;

    private static final double RECKONED = 0.10;

    /** Checks the ranges. */
    public Scatter {
        Checks.within("turned", turnedMm, 0, 2);
        Checks.within("tenon", tenonMm, 0, 2);
        Checks.within("wander within", wanderWithin, 0.01, 0.9999);
        Checks.within("density", densityShare, 0, 0.5);
        Checks.within("reckoned mass", reckonedShare, 0, 0.5);
    }

    /**
     * What is usual in a stock.
     *
     * @param stock the stock
     * @return the scatter
     */
    public static Scatter usual(Stock stock) {
        double density = stock instanceof Wood ? WOOD_DENSITY : PLASTIC_DENSITY;
        return new Scatter(TURNED_MM, TENON_MM, WITHIN, density, RECKONED);
    }

    /**
     * Standard deviation in each direction of an offset that the stated share keeps within a size:
     * Rayleigh's P(E &lt; e) = 1 - exp(-e² / 2 s²) solved for s.
     */
    double componentMm(double statedMm) {
        return statedMm / Math.sqrt(-2 * Math.log(1 - wanderWithin));
    }
}
