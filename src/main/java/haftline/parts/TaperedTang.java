package haftline.parts;

import haftline.measure.Checks;
import haftline.measure.Measured;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A round tang that narrows evenly from root to tip.
 *
 * @param rootDiameter diameter at the seating face, mm
 * @param tipDiameter diameter at the tip, mm, not more than at the root
 * @param length mm, from the seating face
 * @param massG g, where weighed
 * @param flare thickening at the root, or empty
 */
public record TaperedTang(
        Measured rootDiameter,
        Measured tipDiameter,
        Measured length,
        OptionalDouble massG,
        Optional<Flare> flare)
        implements Tang {
    /** Checks the ranges. */
    public TaperedTang {
        Checks.withinMm("tang root diameter", rootDiameter, LEAST, WIDEST);
        Checks.withinMm("tang tip diameter", tipDiameter, LEAST, rootDiameter.mean());
        Checks.withinMm("tang length", length, LEAST, LONGEST);
    }

    @Override
    public List<PartSize> ownSizes() {
        return List.of(
                new PartSize(PartSize.Part.TANG, "tang root", rootDiameter),
                new PartSize(PartSize.Part.TANG, "tang tip", tipDiameter));
    }

    @Override
    public String kind() {
        return "tapered";
    }

    @Override
    public double envelopeMm(double fromSeatMm) {
        double root = rootDiameter.greatest();
        return root + (tipDiameter.greatest() - root) * fromSeatMm / length.mean();
    }

    @Override
    public double sectionMm2(double fromSeatMm) {
        double d = rootDiameter.mean() + taper() * fromSeatMm;
        return Math.PI / 4 * d * d;
    }

    @Override
    public double volumeMm3(double toMm) {
        double a = rootDiameter.mean();
        double b = taper();
        return Math.PI / 4 * toMm * (a * a + toMm * (a * b + toMm * b * b / 3));
    }

    @Override
    public double momentMm4(double toMm) {
        double a = rootDiameter.mean();
        double b = taper();
        return Math.PI / 4 * toMm * toMm * (a * a / 2 + toMm * (2 * a * b / 3 + toMm * b * b / 4));
    }

    /** Change of the mean diameter per mm of length, zero or negative. */
    private double taper() {
        return (tipDiameter.mean() - rootDiameter.mean()) / length.mean();
    }
}
