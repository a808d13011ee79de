package haftline.handle;

import haftline.measure.Checks;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * How far a bore's axis may leave the lathe axis: e(z) = e0 + k z at depth z from the face where
 * the drill went in. The azimuth is taken as the worst.
 *
 * @param startMm e0, mm, 0 to 5: remount error where the piece is turned between cones in its own
 *     bores, else the drill's start error
 * @param slope k, mm of wander a mm of depth, 0 to 0.2
 */
public record Wander(double startMm, double slope) {
    /** A bore on the lathe axis. */
    public static final Wander NONE = new Wander(0, 0);

    /**
     * By how a hole is drilled, truest first; common practice, no source. The 0.1 mm at the face is
     * the error of mounting again between cones.
     */
    public static final Map<String, Wander> PRESETS = presets();

    private static Map<String, Wander> presets() {
        Map<String, Wander> presets = new LinkedHashMap<>();
        presets.put("lathe, centre drill first", new Wander(0.1, 0.005));
        presets.put("lathe", new Wander(0.1, 0.01));
        presets.put("pillar drill", new Wander(0.1, 0.02));
        presets.put("bad day", new Wander(0.1, 0.05));
        return Collections.unmodifiableMap(presets);
    }

    /** Checks the ranges. */
    public Wander {
        Checks.withinMm("wander at the face", startMm, 0, 5);
        Checks.within("wander a mm of depth", slope, 0, 0.2);
    }

    /**
     * The wander at a depth.
     *
     * @param depthMm depth from the face, mm, 0 or more
     * @return mm
     */
    public double at(double depthMm) {
        return startMm + slope * depthMm;
    }

    /**
     * From the maker's own test hole: where the drill went in and where it came out.
     *
     * @param entryMm offset of the hole from the axis at the face, mm
     * @param exitMm offset in the same direction at the far end, mm
     * @param depthMm depth between the two, mm, over 0
     * @return the wander that this hole shows
     */
    public static Wander ofTestHole(double entryMm, double exitMm, double depthMm) {
        Checks.withinMm("test hole depth", depthMm, 1, 1000);
        return new Wander(Math.abs(entryMm), Math.abs(exitMm - entryMm) / depthMm);
    }
}
