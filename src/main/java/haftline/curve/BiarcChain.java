package haftline.curve;

import java.util.ArrayList;
import java.util.List;

/**
 * A chain of arcs that keeps the curve's tangent at every other joint: more arcs than needed, but
 * there is one for every smooth curve, however sharply it turns. It stands in where the search for
 * the shortest chain finds none.
 *
 * <p>Between two places with the curve's tangents two tangent arcs meet on the curve itself: with
 * c(i, j) twice the chord's angle less the tangents' at i and j, the joint m must have c(i, m) =
 * c(m, j); the difference goes from c(i, j) to -c(i, j) as m goes from i to j.
 */
final class BiarcChain {
    /** Halvings after which a place is known to the last bit. */
    private static final int MOST_HALVINGS = 80;

    private static final int DEEPEST = 40;

    private final FitStretch grid;
    private final double tolerance;
    private final List<Segment> arcs = new ArrayList<>();

    private BiarcChain(FitStretch grid, double tolerance) {
        this.grid = grid;
        this.tolerance = tolerance;
    }

    /** The arcs; none where even tiny ones leave the tolerance. */
    static List<Segment> over(FitStretch grid, double toleranceMm) {
        BiarcChain chain = new BiarcChain(grid, toleranceMm);
        return chain.add(0, grid.last(), 0) ? chain.arcs : List.of();
    }

    private boolean add(double from, double to, int depth) {
        double low = from;
        double high = to;
        boolean positive = sum(from, to) > 0;
        for (int i = 0; i < MOST_HALVINGS; i++) {
            double mid = 0.5 * (low + high);
            if (mid <= low || mid >= high) {
                break;
            }
            if (sum(mid, to) - sum(from, mid) > 0 == positive) {
                low = mid;
            } else {
                high = mid;
            }
        }
        double joint = 0.5 * (low + high);
        double tangent = grid.angleAt(from);
        Segment first = grid.arc(from, joint, tangent);
        Segment second =
                first == null
                        ? null
                        : grid.arc(joint, to, 2 * grid.chordAngle(from, joint) - tangent);
        if (second != null
                && grid.departure(first) <= tolerance
                && grid.departure(second) <= tolerance) {
            arcs.add(first);
            arcs.add(second);
            return true;
        }
        double mid = 0.5 * (from + to);
        return depth < DEEPEST && add(from, mid, depth + 1) && add(mid, to, depth + 1);
    }

    private double sum(double from, double to) {
        return 2 * grid.chordAngle(from, to) - grid.angleAt(from) - grid.angleAt(to);
    }
}
