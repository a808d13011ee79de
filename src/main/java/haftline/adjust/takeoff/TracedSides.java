package haftline.adjust.takeoff;

import haftline.curve.BattenSpline;
import haftline.curve.EndSlope;
import haftline.curve.Outline;
import haftline.curve.Point;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;

/**
 * Readings from points traced along the two sides of a handle that is seen from the side. Where
 * both sides are traced the diameter is the sum of the two radii, so that an axis a little off the
 * middle does no harm; the other side is read between its points by a batten. Where one side is
 * traced alone it is twice the radius.
 */
public final class TracedSides {
    /** Two points of a side that are nearer along x than this share of it stand at one place. */
    private static final double SAME_PLACE = 0.1;

    private final List<Point> leading;
    private final Side other;
    private final double nearMm;

    private TracedSides(List<Point> leading, List<Point> other, double nearMm) {
        this.leading = leading;
        this.other = new Side(other);
        this.nearMm = nearMm;
    }

    /**
     * Readings in order of x.
     *
     * @param points as they were traced: mm from the shoulder and mm over the axis, those below it
     *     negative; two after each other at one place are the two sides of a step
     * @param nearMm steps and ends of the two sides that are no further apart are the same, mm
     * @return one a point of the side that has more, and those of the other where it goes beyond
     * @throws IllegalArgumentException where a place or a diameter is out of a reading's range
     */
    public static List<Reading> of(List<Point> points, double nearMm) {
        List<Point> above = side(points, 1, SAME_PLACE * nearMm);
        List<Point> below = side(points, -1, SAME_PLACE * nearMm);
        boolean aboveLeads = above.size() >= below.size();
        return new TracedSides(aboveLeads ? above : below, aboveLeads ? below : above, nearMm)
                .readings();
    }

    /** One side by x with its radii; the two sides of a step in the order that x has. */
    private static List<Point> side(List<Point> points, int sign, double sameMm) {
        List<Point> side = new ArrayList<>();
        for (Point point : points) {
            if (sign > 0 == point.r() >= 0) {
                side.add(new Point(point.x(), Math.abs(point.r())));
            }
        }
        if (!side.isEmpty() && side.get(side.size() - 1).x() < side.get(0).x()) {
            Collections.reverse(side);
        }
        side.sort(Comparator.comparingDouble(Point::x));
        for (int i = 1; i < side.size(); i++) {
            double before = side.get(i - 1).x();
            if (side.get(i).x() - before < sameMm) {
                side.set(i, new Point(before, side.get(i).r()));
            }
        }
        return side;
    }

    private List<Reading> readings() {
        List<Reading> readings = new ArrayList<>();
        for (int i = 0; i < leading.size(); i++) {
            Point point = leading.get(i);
            double radius = point.r();
            double opposite = other.radius(point.x(), twin(leading, i), nearMm).orElse(radius);
            readings.add(new Reading(point.x(), radius + opposite, 0));
        }
        double from = leading.isEmpty() ? 0 : leading.get(0).x() - nearMm;
        double to = leading.isEmpty() ? 0 : leading.get(leading.size() - 1).x() + nearMm;
        for (Point point : other.points) {
            if (point.x() < from || point.x() > to) {
                readings.add(new Reading(point.x(), 2 * point.r(), 0));
            }
        }
        readings.sort(Comparator.comparingDouble(Reading::x));
        return readings;
    }

    /** -1 for the first of a step's two points, 1 for the second, 0 for a point that is alone. */
    private static int twin(List<Point> side, int i) {
        if (i + 1 < side.size() && isStep(side, i)) {
            return -1;
        }
        return i > 0 && isStep(side, i - 1) ? 1 : 0;
    }

    private static boolean isStep(List<Point> side, int i) {
        return side.get(i + 1).x() == side.get(i).x();
    }

    /** One side that can be read between its points. */
    private static final class Side {
        private final List<Point> points;
        private final List<Point> steps = new ArrayList<>();
        private final List<Outline> runs = new ArrayList<>();

        Side(List<Point> points) {
            this.points = points;
            int start = 0;
            for (int i = 0; i < points.size(); i++) {
                boolean isStep = i + 1 < points.size() && isStep(points, i);
                if (isStep) {
                    steps.add(points.get(i));
                    steps.add(points.get(i + 1));
                }
                if (isStep || i + 1 == points.size()) {
                    run(points.subList(start, i + 1));
                    start = i + 1;
                }
            }
        }

        private void run(List<Point> part) {
            if (part.size() > 1) {
                runs.add(
                        BattenSpline.through(
                                        part.stream().mapToDouble(Point::x).toArray(),
                                        part.stream().mapToDouble(Point::r).toArray(),
                                        EndSlope.FREE,
                                        EndSlope.FREE)
                                .outline());
            }
        }

        /** Radius at a place; empty where it is not known, or not which side of a step is meant. */
        OptionalDouble radius(double x, int twin, double near) {
            for (int i = 0; i < steps.size(); i += 2) {
                if (Math.abs(steps.get(i).x() - x) <= near) {
                    return twin == 0
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(steps.get(twin < 0 ? i : i + 1).r());
                }
            }
            if (twin != 0) {
                return OptionalDouble.empty();
            }
            for (Outline run : runs) {
                if (x >= run.startX() - near && x <= run.endX() + near) {
                    return OptionalDouble.of(
                            run.r(Math.max(run.startX(), Math.min(run.endX(), x))));
                }
            }
            return OptionalDouble.empty();
        }
    }
}
