package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * An outline turned into straight lines and circular arcs, tangent wherever the outline is smooth,
 * with close to the fewest arcs. Straight lines and circular arcs stay as they are. The ends, the
 * steps, the crisp bends and every place where the outline is level (its swells and waists) are
 * kept exactly; elsewhere the fit stays within the tolerance.
 *
 * @param outline the fit, single-valued in x like every outline
 * @param deviationMm greatest distance between the fit and the outline, either way, mm
 * @param arcs how many circular arcs it has
 * @param lines how many straight lines
 */
public record ArcFit(Outline outline, double deviationMm, int arcs, int lines) {
    /** The tolerance that copying cutters are commonly given, mm (common practice). */
    public static final double USUAL_TOLERANCE_MM = 0.01;

    /** Under a hundredth of a micron rounding would count. */
    private static final double LEAST_TOLERANCE_MM = 1e-5;

    /** Two tangents this close, rad, are one: the joint is smooth. */
    private static final double SMOOTH = 1e-9;

    /**
     * Fits an outline.
     *
     * @param outline what to fit
     * @param toleranceMm greatest distance, mm, 0.00001 or more
     * @return the fit
     */
    public static ArcFit of(Outline outline, double toleranceMm) {
        if (!(toleranceMm >= LEAST_TOLERANCE_MM && toleranceMm <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException(
                    "toleranceMm must be " + LEAST_TOLERANCE_MM + " or more, not " + toleranceMm);
        }
        List<Segment> segments = outline.segments();
        List<Segment> fitted = new ArrayList<>();
        double deviation = 0;
        int i = 0;
        while (i < segments.size()) {
            Segment segment = segments.get(i);
            if (isExact(segment)) {
                fitted.add(segment);
                i++;
                continue;
            }
            int end = i + 1;
            while (end < segments.size()
                    && !isExact(segments.get(end))
                    && meetSmoothly(segments.get(end - 1), segments.get(end))) {
                end++;
            }
            boolean tiedBefore = i > 0 && meetSmoothly(segments.get(i - 1), segment);
            boolean tiedAfter =
                    end < segments.size() && meetSmoothly(segments.get(end - 1), segments.get(end));
            ArcRun run = new ArcRun(segments.subList(i, end), toleranceMm, tiedBefore, tiedAfter);
            fitted.addAll(run.arcs());
            deviation = Math.max(deviation, run.deviation());
            i = end;
        }
        int arcs = 0;
        for (Segment segment : fitted) {
            arcs += segment instanceof CircularArc ? 1 : 0;
        }
        return new ArcFit(new Outline(fitted), deviation, arcs, fitted.size() - arcs);
    }

    private static boolean isExact(Segment segment) {
        return segment instanceof StraightLine || segment instanceof CircularArc;
    }

    private static boolean meetSmoothly(Segment before, Segment after) {
        double x = after.startX();
        return before.r(x) == after.r(x)
                && Math.abs(Math.atan(before.slope(x)) - Math.atan(after.slope(x))) <= SMOOTH;
    }
}
