package haftline.figures;

import haftline.curve.BendRadius;
import haftline.curve.GraphCubic;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Handle;
import java.util.List;

/**
 * What a cutter and a follower meet on the visible wood, details included, butt form excluded. The
 * two ends, where ferrule and cap or butt form join, do not count as corners.
 *
 * @param steepestDeg steepest slope, degrees from the axis; 90 where the outline steps
 * @param steepestX where, mm from the shoulder
 * @param hollowMm tightest radius of a hollow, mm; 0 at a crisp inside corner, infinite without a
 *     hollow
 * @param hollowX where, mm from the shoulder; 0 without a hollow
 * @param roundMm tightest radius of a round, mm; 0 at a crisp outside corner, infinite without a
 *     round
 * @param roundX where, mm from the shoulder; 0 without a round
 */
public record Bends(
        double steepestDeg,
        double steepestX,
        double hollowMm,
        double hollowX,
        double roundMm,
        double roundX) {
    /** Radii that differ by less at a joint differ by rounding only, mm. */
    private static final double STEP = 1e-9;

    /** Slopes that differ by less at a joint differ by rounding only. */
    private static final double CORNER = 1e-7;

    /**
     * Bends of a handle.
     *
     * @param handle the handle
     * @return the figures
     */
    public static Bends of(Handle handle) {
        Search search = new Search();
        search.along(
                handle.outline(), 0, handle.buttX() - handle.brief().shape().butt().lengthMm());
        return search.bends();
    }

    /** Keeps the worst so far; of equal ones the first. */
    private static final class Search {
        private double slope;
        private double slopeX;
        private double hollow = Double.POSITIVE_INFINITY;
        private double hollowX;
        private double round = Double.POSITIVE_INFINITY;
        private double roundX;

        Bends bends() {
            return new Bends(
                    Math.toDegrees(Math.atan(slope)), slopeX, hollow, hollowX, round, roundX);
        }

        void along(Outline outline, double from, double to) {
            List<Segment> segments = outline.segments();
            int first = outline.indexAt(from);
            // Slopes and corners first: a crisp corner spares the search for the tightest curve.
            for (int i = first; i < segments.size() && segments.get(i).startX() < to; i++) {
                Segment segment = segments.get(i);
                if (i > first) {
                    joint(segments.get(i - 1), segment);
                }
                slopes(segment, Math.max(from, segment.startX()), Math.min(to, segment.endX()));
            }
            for (int i = first; i < segments.size() && segments.get(i).startX() < to; i++) {
                curves(segments.get(i), from, to);
            }
        }

        private void joint(Segment before, Segment after) {
            double x = after.startX();
            if (Math.abs(after.r(x) - before.r(x)) > STEP) {
                steeper(Double.POSITIVE_INFINITY, x);
                hollow(0, x);
                round(0, x);
                return;
            }
            double turn = after.slope(x) - before.slope(x);
            if (turn > CORNER) {
                hollow(0, x);
            } else if (turn < -CORNER) {
                round(0, x);
            }
        }

        /** A slope is steepest at an end or, of a cubic, where it turns from hollow to round. */
        private void slopes(Segment segment, double from, double to) {
            steeper(Math.abs(segment.slope(from)), from);
            steeper(Math.abs(segment.slope(to)), to);
            if (segment instanceof GraphCubic cubic) {
                double start = cubic.startSecond();
                double end = cubic.endSecond();
                double x = cubic.x0() + (cubic.x1() - cubic.x0()) * (start / (start - end));
                if (x > from && x < to) {
                    steeper(Math.abs(cubic.slope(x)), x);
                }
            }
        }

        private void curves(Segment segment, double from, double to) {
            if (hollow > 0 && hollow > leastRadius(segment, 1)) {
                BendRadius bend = segment.tightestConcave(from, to);
                hollow(bend.radius(), bend.x());
            }
            if (round > 0 && round > leastRadius(segment, -1)) {
                BendRadius bend = segment.tightestConvex(from, to);
                round(bend.radius(), bend.x());
            }
        }

        /**
         * No cubic bends tighter than its second derivative, which is greatest at an end; cheap to
         * know beforehand.
         */
        private static double leastRadius(Segment segment, int sign) {
            return segment instanceof GraphCubic cubic
                    ? 1
                            / Math.max(
                                    0,
                                    Math.max(sign * cubic.startSecond(), sign * cubic.endSecond()))
                    : 0;
        }

        private void steeper(double candidate, double x) {
            if (candidate > slope) {
                slope = candidate;
                slopeX = x;
            }
        }

        private void hollow(double radius, double x) {
            if (radius < hollow) {
                hollow = radius;
                hollowX = x;
            }
        }

        private void round(double radius, double x) {
            if (radius < round) {
                round = radius;
                roundX = x;
            }
        }
    }
}
