package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A threaded shank, or an insert with an outside thread, which screws into the wood or into a bore
 * with adhesive. Its plain part, if any, is next to the seating face.
 *
 * @param crestDiameter diameter over the thread, mm
 * @param threadBoreMm bore that the thread cuts into or is bonded in, as its supplier gives it, mm
 * @param clearanceBoreMm bore that the plain part passes, mm
 * @param plainLength length of the plain part from the seating face, mm, 0 or more
 * @param length whole length from the seating face, mm
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record ThreadedTang(
        Measured crestDiameter,
        double threadBoreMm,
        double clearanceBoreMm,
        Measured plainLength,
        Measured length,
        OptionalDouble massG,
        Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges. */
    public ThreadedTang {
        Checks.withinMm("tang crest diameter", crestDiameter, LEAST, WIDEST);
        Checks.withinMm("thread bore", threadBoreMm, LEAST, WIDEST);
        Checks.withinMm("clearance bore", clearanceBoreMm, threadBoreMm, WIDEST);
        Checks.withinMm("tang length", length, LEAST, LONGEST);
        Checks.withinMm("plain length", plainLength, 0, length.mean());
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(
                new PartSize(PartSize.Part.TANG, "thread crest", crestDiameter),
                new PartSize(PartSize.Part.TANG, "plain part of the tang", plainLength));
    }

    @Override
    public String kind() {
        return "threaded";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        return crestDiameter.greatest();
    }

    /**
     * A thread's mean section lies near the middle of crest and thread bore (common practice, no
     * source).
     */
    @Override
    public double sectionMm2(double fromSeatMm) {
        double middle = (crestDiameter.mean() + Math.min(threadBoreMm, crestDiameter.mean())) / 2;
        return Math.PI / 4 * middle * middle;
    }
}
