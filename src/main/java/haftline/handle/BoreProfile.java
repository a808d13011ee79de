package haftline.handle;

import haftline.curve.Edge;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The edge of a bore in the half-plane: radius over depth as a chain of straight pieces, from the
 * mouth to the deepest point. It is the upper envelope of the bore's steps; a flat drill leaves an
 * upright piece.
 */
public final class BoreProfile {
    private final double[] depth;
    private final double[] radius;

    private BoreProfile(double[] depth, double[] radius) {
        this.depth = depth;
        this.radius = radius;
    }

    /**
     * The profile of a bore.
     *
     * @param bore the bore
     * @return its profile
     */
    public static BoreProfile of(Bore bore) {
        List<BoreStep> steps = bore.steps();
        if (steps.size() == 1) {
            BoreStep step = steps.get(0);
            double r = step.diameterMm() / 2;
            return new BoreProfile(
                    new double[] {0, step.depthMm(), step.depthMm() + step.pointMm()},
                    new double[] {r, r, 0});
        }
        return envelope(steps);
    }

    /**
     * A bore's edge where its axis leaves the lathe axis, on the side of the worst azimuth.
     *
     * @param bore the bore
     * @param wander how far its axis leaves; {@link Wander#NONE} for the bore as drilled true
     * @return the straight pieces of its profile in their order from the mouth, in x and radius
     */
    public static List<Edge> edges(Bore bore, Wander wander) {
        BoreProfile profile = of(bore);
        List<Edge> edges = new ArrayList<>(profile.size() - 1);
        for (int i = 1; i < profile.size(); i++) {
            double from = profile.depth(i - 1);
            double to = profile.depth(i);
            edges.add(
                    new Edge(
                            bore.xAt(from),
                            profile.radius(i - 1) + wander.at(from),
                            bore.xAt(to),
                            profile.radius(i) + wander.at(to)));
        }
        return edges;
    }

    /**
     * Between two neighbouring breaks every step is straight, so the envelope is too once crossings
     * are breaks as well.
     */
    private static BoreProfile envelope(List<BoreStep> steps) {
        double[] breaks = breaks(steps);
        double[] z = new double[2 * breaks.length];
        double[] r = new double[2 * breaks.length];
        int count = 0;
        for (int i = 0; i + 1 < breaks.length; i++) {
            double from = breaks[i];
            double to = breaks[i + 1];
            BoreStep outer = outermost(steps, (from + to) / 2);
            double[] ends = {edge(outer, from, true), edge(outer, to, false)};
            for (int k = 0; k < 2; k++) {
                double at = k == 0 ? from : to;
                if (count > 0 && z[count - 1] == at && r[count - 1] == ends[k]) {
                    continue;
                }
                z[count] = at;
                r[count++] = ends[k];
            }
        }
        if (r[count - 1] > 0) {
            z[count] = z[count - 1];
            r[count++] = 0;
        }
        return new BoreProfile(Arrays.copyOf(z, count), Arrays.copyOf(r, count));
    }

    private static double[] breaks(List<BoreStep> steps) {
        int n = steps.size();
        double[] all = new double[1 + 2 * n + 2 * n * n];
        int count = 1;
        for (BoreStep step : steps) {
            all[count++] = step.depthMm();
            all[count++] = step.depthMm() + step.pointMm();
        }
        for (BoreStep cone : steps) {
            for (BoreStep other : steps) {
                count = crossings(cone, other, all, count);
            }
        }
        double[] sorted = Arrays.copyOf(all, count);
        Arrays.sort(sorted);
        int kept = 1;
        for (int i = 1; i < count; i++) {
            if (sorted[i] > sorted[kept - 1]) {
                sorted[kept++] = sorted[i];
            }
        }
        return Arrays.copyOf(sorted, kept);
    }

    /** Where one step's cone passes another's cylinder or cone. */
    private static int crossings(BoreStep cone, BoreStep other, double[] into, int at) {
        int count = at;
        double point = cone.pointMm();
        if (cone == other || point == 0) {
            return count;
        }
        if (other.diameterMm() < cone.diameterMm()) {
            into[count++] = cone.depthOfRadius(other.diameterMm() / 2);
        }
        double steep = cone.diameterMm() / 2 / point;
        double otherSteep = other.pointMm() == 0 ? steep : other.diameterMm() / 2 / other.pointMm();
        if (steep != otherSteep) {
            double tip = cone.depthMm() + point;
            double otherTip = other.depthMm() + other.pointMm();
            double z = (steep * tip - otherSteep * otherTip) / (steep - otherSteep);
            if (z > Math.max(cone.depthMm(), other.depthMm()) && z < Math.min(tip, otherTip)) {
                into[count++] = z;
            }
        }
        return count;
    }

    private static BoreStep outermost(List<BoreStep> steps, double z) {
        BoreStep outer = steps.get(0);
        for (BoreStep step : steps) {
            if (step.radiusAt(z) > outer.radiusAt(z)) {
                outer = step;
            }
        }
        return outer;
    }

    /** A flat drill's radius drops at its depth; which side is meant decides. */
    private static double edge(BoreStep step, double z, boolean below) {
        if (below && z == step.depthMm() && step.pointMm() == 0) {
            return 0;
        }
        return step.radiusAt(z);
    }

    /**
     * How many corners the chain has.
     *
     * @return 2 or more
     */
    public int size() {
        return depth.length;
    }

    /**
     * Depth of a corner.
     *
     * @param i its number, 0 at the mouth
     * @return mm from the face, never less than the one before
     */
    public double depth(int i) {
        return depth[i];
    }

    /**
     * Radius at a corner.
     *
     * @param i its number, 0 at the mouth
     * @return mm, 0 at the deepest
     */
    public double radius(int i) {
        return radius[i];
    }

    /**
     * Volume inside, by frusta.
     *
     * @return mm³
     */
    public double volumeMm3() {
        double sum = 0;
        for (int i = 1; i < depth.length; i++) {
            double a = radius[i - 1];
            double b = radius[i];
            sum += (depth[i] - depth[i - 1]) * (a * a + a * b + b * b);
        }
        return Math.PI / 3 * sum;
    }

    /**
     * First moment of that volume about the face.
     *
     * @return mm⁴
     */
    public double momentMm4() {
        double sum = 0;
        for (int i = 1; i < depth.length; i++) {
            double a = radius[i - 1];
            double b = radius[i];
            double h = depth[i] - depth[i - 1];
            // Integral of z (a + (b - a) t)^2 over the piece, z = z0 + h t.
            sum +=
                    depth[i - 1] * h * (a * a + a * b + b * b) / 3
                            + h * h * (a * a + 2 * a * b + 3 * b * b) / 12;
        }
        return Math.PI * sum;
    }
}
