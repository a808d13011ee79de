package haftline.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * A copying attachment played through on a flattened template: the follower is let down on the
 * chords from above, the cutter carried along. Knows nothing of offsets or envelopes.
 */
final class RolledFollower {
    private static final double STEP_MM = 0.05;
    private static final double GOLDEN = (Math.sqrt(5) - 1) / 2;

    private final List<Spot> chords = new ArrayList<>();
    private final double follower;
    private final double nose;
    private final double ratio;
    private final double startX;
    private final double[] centres;

    RolledFollower(CopyingTemplate template) {
        List<Stroke> strokes = template.edge().strokes();
        chords.add(strokes.get(0).start());
        strokes.forEach(stroke -> chords.addAll(stroke.chords(1e-4)));
        follower = template.copier().followerMm();
        nose = template.copier().noseMm();
        ratio = template.copier().radialRatio();
        startX = template.edge().startX();
        int count = (int) Math.ceil((template.edge().endX() - startX) / STEP_MM) + 1;
        centres = new double[count];
        java.util.Arrays.fill(centres, Double.NEGATIVE_INFINITY);
        for (int k = 1; k < chords.size(); k++) {
            Spot a = chords.get(k - 1);
            Spot b = chords.get(k);
            int from = Math.max(0, (int) Math.floor((a.x() - follower - startX) / STEP_MM));
            int to = Math.min(count - 1, (int) Math.ceil((b.x() + follower - startX) / STEP_MM));
            for (int i = from; i <= to; i++) {
                centres[i] = Math.max(centres[i], rest(a, b, startX + i * STEP_MM) / ratio);
            }
        }
    }

    /** Height of the cutter's centre at an x. */
    private double centre(double x) {
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 1; k < chords.size(); k++) {
            Spot a = chords.get(k - 1);
            Spot b = chords.get(k);
            if (a.x() <= x + follower && b.x() >= x - follower) {
                most = Math.max(most, rest(a, b, x));
            }
        }
        return most / ratio;
    }

    /** Where the follower's centre comes to rest on one chord. */
    private double rest(Spot a, Spot b, double x) {
        double rest = Math.max(onCorner(a, x), onCorner(b, x));
        double length = a.distance(b);
        double cos = (b.x() - a.x()) / length;
        double sin = (b.y() - a.y()) / length;
        double foot = x + follower * sin;
        return cos > 1e-9 && foot >= a.x() && foot <= b.x()
                ? Math.max(rest, a.y() + (foot - a.x()) * sin / cos + follower * cos)
                : rest;
    }

    private double onCorner(Spot corner, double x) {
        double across = x - corner.x();
        return Math.abs(across) <= follower
                ? corner.y() + Math.sqrt(follower * follower - across * across)
                : Double.NEGATIVE_INFINITY;
    }

    /** Least distance from a place to the cutter's nose over the whole pass; negative inside it. */
    double clearance(Spot spot) {
        return least(
                        spot.x() - nose - 1,
                        spot.x() + nose + 1,
                        i ->
                                Math.hypot(
                                        startX + i * STEP_MM - spot.x(),
                                        centres[(int) i] - spot.y()),
                        x -> Math.hypot(x - spot.x(), centre(x) - spot.y()))
                - nose;
    }

    /** Height of the surface that is left at a place. */
    double left(double x) {
        return least(
                x - nose,
                x + nose,
                i -> centres[(int) i] - above(startX + i * STEP_MM - x),
                at -> centre(at) - above(at - x));
    }

    private double above(double across) {
        return Math.sqrt(Math.max(0, nose * nose - across * across));
    }

    /** Least value over a stretch: the least on the grid, narrowed down between its neighbours. */
    private double least(
            double from, double to, DoubleUnaryOperator onGrid, DoubleUnaryOperator exactly) {
        int first = Math.max(1, (int) Math.ceil((from - startX) / STEP_MM));
        int last = Math.min(centres.length - 2, (int) Math.floor((to - startX) / STEP_MM));
        int best = first;
        for (int i = first; i <= last; i++) {
            best = onGrid.applyAsDouble(i) < onGrid.applyAsDouble(best) ? i : best;
        }
        double a = startX + (best - 1) * STEP_MM;
        double b = startX + (best + 1) * STEP_MM;
        for (int step = 0; step < 18; step++) {
            double p = b - GOLDEN * (b - a);
            double q = a + GOLDEN * (b - a);
            if (exactly.applyAsDouble(p) < exactly.applyAsDouble(q)) {
                b = q;
            } else {
                a = p;
            }
        }
        return Math.min(onGrid.applyAsDouble(best), exactly.applyAsDouble((a + b) / 2));
    }
}
