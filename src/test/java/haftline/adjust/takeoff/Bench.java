package haftline.adjust.takeoff;

import haftline.curve.Joint;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.TestBrief;
import haftline.shape.Shape;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.TreeSet;

/** A handle on the bench: a shape resolved with a kit, and a calliper with some noise. */
final class Bench {
    /** A band between two crisp places narrower than this is none of the smooth runs, mm. */
    private static final double NARROW_MM = 2;

    /** Distance from a crisp place within which an outline is not called smooth, mm. */
    private static final double HALF_SPACING = 0.5;

    private static final double LOOK_MM = 0.1;
    private static final double STEP_MM = 0.1;
    private static final double BEND_DEG = 5;

    private final Brief brief;
    private final Outline truth;

    Bench(Shape shape) {
        Brief plain = new TestBrief().brief();
        brief = with(plain, shape);
        truth = visible(brief);
    }

    private static Brief with(Brief brief, Shape shape) {
        return new Brief(
                brief.name(),
                brief.kit(),
                brief.metals(),
                brief.stock(),
                brief.adhesive(),
                shape,
                brief.rules(),
                brief.rack(),
                Choices.builder()
                        .buttMm(shape.seatSlopeDeg().isPresent() ? 24 : 16)
                        .swellMm(24)
                        .build());
    }

    static Outline visible(Brief brief) {
        Resolution resolution = Resolve.of(brief);
        if (resolution instanceof Resolution.Impossible no) {
            throw new AssertionError(no.message());
        }
        Outline all = ((Resolution.Resolved) resolution).handle().outline();
        return all.part(0, all.endX());
    }

    Outline truth() {
        return truth;
    }

    /** Every mm, and at every crisp place; both sides of a step. */
    List<Reading> readings(double spacing, double deviation, SplittableRandom random) {
        TreeSet<Double> places = new TreeSet<>();
        for (int k = 0; k * spacing < truth.endX(); k++) {
            places.add(k * spacing);
        }
        places.add(truth.endX());
        for (Joint joint : truth.joints()) {
            if (isCrisp(joint)) {
                places.removeIf(x -> Math.abs(x - joint.x()) < 1e-6);
                places.add(joint.x());
            }
        }
        List<Reading> readings = new ArrayList<>();
        for (double x : places) {
            double before = 2 * truth.rBefore(x);
            double after = 2 * truth.rAfter(x);
            readings.add(reading(x, before, deviation, random));
            if (Math.abs(after - before) > STEP_MM) {
                readings.add(reading(x, after, deviation, random));
            }
        }
        return readings;
    }

    private static Reading reading(double x, double d, double deviation, SplittableRandom random) {
        return new Reading(x, Math.max(0, d + deviation * random.nextGaussian()), 0);
    }

    static boolean isCrisp(Joint joint) {
        return Math.abs(joint.rAfter() - joint.rBefore()) * 2 > STEP_MM
                || Math.abs(angle(joint.slopeAfter()) - angle(joint.slopeBefore())) > BEND_DEG;
    }

    private static double angle(double slope) {
        return Math.toDegrees(Math.atan(slope));
    }

    /** The shape that was taken off, drawn by the engine with the same kit. */
    Outline drawn(Shape shape) {
        return visible(
                new Brief(
                        brief.name(),
                        brief.kit(),
                        brief.metals(),
                        brief.stock(),
                        brief.adhesive(),
                        shape,
                        brief.rules(),
                        brief.rack(),
                        brief.choices()));
    }

    /**
     * Greatest distance on the diameter, square to the true line, where it runs smooth.
     *
     * @param other the line that was taken off
     */
    double off(Outline other) {
        List<Double> crisp = crisp(truth);
        double most = 0;
        for (double x = 0; x <= Math.min(truth.endX(), other.endX()); x += LOOK_MM) {
            double at = x;
            if (isSmooth(crisp, at)) {
                Segment segment = truth.segmentAt(x);
                double square = 1 / Math.hypot(1, segment.slope(x));
                double off = 2 * Math.abs(other.r(x) - truth.r(x)) * square;
                if (Double.isFinite(off)) {
                    if (off > most && off > 0.1 && Boolean.getBoolean("dbg")) {
                        System.out.printf("   off %.3f at %.2f%n", off, x);
                    }
                    most = Math.max(most, off);
                }
            }
        }
        return most;
    }

    private boolean isSmooth(List<Double> crisp, double x) {
        double before = 0;
        double after = truth.endX();
        for (double one : crisp) {
            before = one <= x ? Math.max(before, one) : before;
            after = one > x ? Math.min(after, one) : after;
        }
        return after - before >= NARROW_MM
                && crisp.stream().noneMatch(c -> Math.abs(c - x) < HALF_SPACING);
    }

    /** The kit's own diameters at the ends, as they are measured on the metal. */
    Ends ends() {
        boolean square = brief.shape().butt().lengthMm() == 0;
        double seat = 2 * truth.rBefore(truth.endX());
        return new Ends(
                OptionalDouble.of(2 * truth.r(0)),
                square ? OptionalDouble.of(seat) : OptionalDouble.empty());
    }

    static List<Double> crisp(Outline outline) {
        return outline.joints().stream().filter(Bench::isCrisp).map(Joint::x).toList();
    }

    /** How far the nearest crisp place of another line is from a crisp place of this, at worst. */
    double crispOff(Outline other) {
        List<Double> found = crisp(other);
        double worst = 0;
        for (double x : crisp(truth)) {
            double nearest = Double.POSITIVE_INFINITY;
            for (double at : found) {
                nearest = Math.min(nearest, Math.abs(at - x));
            }
            worst = Math.max(worst, nearest);
        }
        return worst;
    }
}
