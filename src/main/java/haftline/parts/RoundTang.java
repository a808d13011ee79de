package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A plain round tang.
 *
 * @param diameter mm
 * @param length mm, from the seating face
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record RoundTang(
        Measured diameter, Measured length, OptionalDouble massG, Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges. */
    public RoundTang {
        Checks.withinMm("tang diameter", diameter, LEAST, WIDEST);
        Checks.withinMm("tang length", length, LEAST, LONGEST);
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(new PartSize(PartSize.Part.TANG, "tang diameter", diameter));
    }

    @Override
    public String kind() {
        return "round";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        return diameter.greatest();
    }

    @Override
    public double sectionMm2(double fromSeatMm) {
        return Math.PI / 4 * diameter.mean() * diameter.mean();
    }
}
