package haftline.figures;

import haftline.curve.Moments;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import java.util.ArrayList;
import java.util.List;

/**
 * The union of bores that meet or break out, cut to the solid. Such a handle is never made, but its
 * figures must still be true: what is removed at x is the lesser of the outline and the wider bore.
 */
final class ClippedBores {
    /**
     * Looks between two breaks for places where bore and outline cross; a crossing pair closer than
     * a share of this is missed.
     */
    private static final int LOOKS = 64;

    private ClippedBores() {}

    /** Volume, mm³, and first moment about the shoulder, mm⁴. */
    static double[] volumeAndMoment(Handle handle) {
        List<Bore> bores = new ArrayList<>(List.of(handle.tangBore()));
        handle.capBore().ifPresent(bores::add);
        double[] breaks = breaks(handle.outline(), bores);
        double volume = 0;
        double moment = 0;
        for (int i = 1; i < breaks.length; i++) {
            double from = breaks[i - 1];
            double to = breaks[i];
            if (to > from) {
                Segment segment = handle.outline().segmentAt((from + to) / 2);
                for (int k = 0; k < LOOKS; k++) {
                    double[] part = piece(segment, bores, look(from, to, k), look(from, to, k + 1));
                    volume += part[0];
                    moment += part[1];
                }
            }
        }
        return new double[] {volume, moment};
    }

    /** Where a look begins; the last one ends where the stretch ends, to the last bit. */
    private static double look(double from, double to, int k) {
        return k == LOOKS ? to : from + (to - from) * k / LOOKS;
    }

    private static double[] breaks(Outline outline, List<Bore> bores) {
        List<Double> all = new ArrayList<>();
        for (Segment segment : outline.segments()) {
            all.add(segment.startX());
        }
        all.add(outline.endX());
        for (Bore bore : bores) {
            BoreProfile edge = BoreProfile.of(bore);
            for (int i = 0; i < edge.size(); i++) {
                double x = bore.xAt(edge.depth(i));
                if (x > outline.startX() && x < outline.endX()) {
                    all.add(x);
                }
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).sorted().toArray();
    }

    /**
     * One look: where what governs differs at its two ends, the place of the change is found by
     * bisection to rounding.
     */
    private static double[] piece(Segment segment, List<Bore> bores, double from, double to) {
        int first = governs(segment, bores, Math.nextUp(from));
        int last = governs(segment, bores, Math.nextDown(to));
        double low = from;
        double high = to;
        while (first != last) {
            double middle = (low + high) / 2;
            if (middle <= low || middle >= high) {
                double[] left = integral(first, segment, bores, from, low);
                double[] right = integral(last, segment, bores, low, to);
                return new double[] {left[0] + right[0], left[1] + right[1]};
            }
            if (governs(segment, bores, middle) == first) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return integral(first, segment, bores, from, to);
    }

    /**
     * Which bore's edge bounds what is removed at x; -1 where the outline does, being nearer the
     * axis.
     */
    private static int governs(Segment segment, List<Bore> bores, double x) {
        int widest = 0;
        for (int i = 1; i < bores.size(); i++) {
            if (bores.get(i).radiusAt(x) > bores.get(widest).radiusAt(x)) {
                widest = i;
            }
        }
        return segment.r(x) < bores.get(widest).radiusAt(x) ? -1 : widest;
    }

    /** Volume and first moment where one edge governs: the outline's own moments, or a frustum. */
    private static double[] integral(
            int governs, Segment segment, List<Bore> bores, double from, double to) {
        if (!(to > from)) {
            return new double[2];
        }
        if (governs < 0) {
            Moments moments = segment.part(from, to).moments();
            return new double[] {moments.volume(), moments.firstX()};
        }
        double middle = bores.get(governs).radiusAt((from + to) / 2);
        double near = bores.get(governs).radiusAt(from + (to - from) / 4);
        // Straight between breaks; taken from inside, since a flat drill's edge drops at the break
        // itself.
        double a = middle - 2 * (middle - near);
        double b = middle + 2 * (middle - near);
        double h = to - from;
        double volume = Math.PI / 3 * h * (a * a + a * b + b * b);
        double moment = volume * from + Math.PI / 12 * h * h * (a * a + 2 * a * b + 3 * b * b);
        return new double[] {volume, moment};
    }
}
