package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A square tang.
 *
 * @param width across the flats, mm
 * @param length mm, from the seating face
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record SquareTang(
        Measured width, Measured length, OptionalDouble massG, Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges. */
    public SquareTang {
        Checks.withinMm("tang width", width, LEAST, WIDEST);
        Checks.withinMm("tang length", length, LEAST, LONGEST);
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(new PartSize(PartSize.Part.TANG, "tang width", width));
    }

    @Override
    public String kind() {
        return "square";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        return Math.sqrt(2) * width.greatest();
    }

    @Override
    public double sectionMm2(double fromSeatMm) {
        return width.mean() * width.mean();
    }
}
