package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A round tang with barbs or rings raised on it.
 *
 * @param coreDiameter diameter between the barbs, mm
 * @param barbDiameter diameter over the barbs, mm, not less than the core
 * @param length mm, from the seating face
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record BarbedTang(
        Measured coreDiameter,
        Measured barbDiameter,
        Measured length,
        OptionalDouble massG,
        Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges. */
    public BarbedTang {
        Checks.withinMm("tang core diameter", coreDiameter, LEAST, WIDEST);
        Checks.withinMm("tang barb diameter", barbDiameter, coreDiameter.mean(), WIDEST);
        Checks.withinMm("tang length", length, LEAST, LONGEST);
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(
                new PartSize(PartSize.Part.TANG, "tang core", coreDiameter),
                new PartSize(PartSize.Part.TANG, "tang barbs", barbDiameter));
    }

    @Override
    public String kind() {
        return "barbed";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        return barbDiameter.greatest();
    }

    /** Sawtooth barbs fill half of the ring between core and barb (common practice, no source). */
    @Override
    public double sectionMm2(double fromSeatMm) {
        double core = coreDiameter.mean();
        double barb = barbDiameter.mean();
        return Math.PI / 8 * (core * core + barb * barb);
    }
}
