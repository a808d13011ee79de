package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A flat tang of rectangular section.
 *
 * @param width the larger cross size, mm
 * @param thickness the smaller cross size, mm
 * @param length mm, from the seating face
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record FlatTang(
        Measured width,
        Measured thickness,
        Measured length,
        OptionalDouble massG,
        Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges; the thickness may not exceed the width. */
    public FlatTang {
        Checks.withinMm("tang width", width, LEAST, WIDEST);
        Checks.withinMm("tang thickness", thickness, LEAST, width.mean());
        Checks.withinMm("tang length", length, LEAST, LONGEST);
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(
                new PartSize(PartSize.Part.TANG, "tang width", width),
                new PartSize(PartSize.Part.TANG, "tang thickness", thickness));
    }

    @Override
    public String kind() {
        return "flat";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        return Math.hypot(width.greatest(), thickness.greatest());
    }

    @Override
    public double sectionMm2(double fromSeatMm) {
        return width.mean() * thickness.mean();
    }
}
