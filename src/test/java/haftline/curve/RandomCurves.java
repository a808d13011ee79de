package haftline.curve;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/** Random segments, node lists and outlines of the size of handles; the seed is the caller's. */
final class RandomCurves {
    private final SplittableRandom random;

    RandomCurves(long seed) {
        random = new SplittableRandom(seed);
    }

    double between(double low, double high) {
        return random.nextDouble(low, high);
    }

    int count(int low, int high) {
        return random.nextInt(low, high + 1);
    }

    boolean coin() {
        return random.nextBoolean();
    }

    /**
     * A segment of any kind from the given place on; lengths from a burnt line to half a handle.
     */
    Segment segment(double startX) {
        double length = Math.exp(between(Math.log(0.3), Math.log(60)));
        switch (random.nextInt(5)) {
            case 0:
                return new StraightLine(startX, between(2, 15), startX + length, between(2, 15));
            case 1:
                return arc(startX, length);
            case 2:
                return ellipse(startX, length);
            default:
                return cubic(startX, length);
        }
    }

    GraphCubic cubic(double startX, double length) {
        while (true) {
            double steep = Math.exp(between(-3, 1));
            try {
                return new GraphCubic(
                        startX,
                        startX + length,
                        between(2, 15),
                        between(-steep, steep),
                        between(2, 15),
                        between(-steep, steep));
            } catch (IllegalArgumentException dips) {
                continue;
            }
        }
    }

    Segment arc(double startX, double length) {
        while (true) {
            double bulge = (coin() ? 1 : -1) * Math.exp(between(Math.log(1e-6), 0));
            try {
                return new CircularArc(
                        startX, between(2, 15), startX + length, between(2, 15), bulge);
            } catch (IllegalArgumentException leansOrDips) {
                continue;
            }
        }
    }

    EllipseQuarter ellipse(double startX, double length) {
        while (true) {
            double semiX = length * Math.exp(between(Math.log(0.5), Math.log(3)));
            double centre = startX + between(-semiX, semiX);
            if (coin()) {
                // A pole at one end, as a dome has.
                centre = coin() ? startX + semiX : startX + length - semiX;
            }
            try {
                return new EllipseQuarter(
                        centre,
                        between(0, 12),
                        semiX,
                        between(1, 15),
                        startX,
                        startX + length,
                        coin());
            } catch (IllegalArgumentException leavesTheEllipse) {
                continue;
            }
        }
    }

    Outline outline() {
        List<Segment> segments = new ArrayList<>();
        double x = between(-15, 5);
        for (int i = count(1, 8); i > 0; i--) {
            Segment next = segment(x);
            segments.add(next);
            x = next.endX();
        }
        return new Outline(segments);
    }

    double[] risingPlaces(int count) {
        double[] x = new double[count];
        x[0] = between(-10, 10);
        for (int i = 1; i < count; i++) {
            x[i] = x[i - 1] + Math.exp(between(Math.log(0.5), Math.log(60)));
        }
        return x;
    }

    double[] radii(int count) {
        double[] r = new double[count];
        for (int i = 0; i < count; i++) {
            // Now and then a level stretch.
            r[i] = i > 0 && random.nextInt(12) == 0 ? r[i - 1] : between(3, 16);
        }
        return r;
    }
}
