package haftline.curve;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Battens laid through a list of nodes, split at the crisp ones and at those with a given slope: a
 * given slope at a smooth node lets the two sides bend without regard for each other.
 *
 * @param splines one a run, each beginning at the node where the one before ends
 */
public record BattenRuns(List<BattenSpline> splines) {
    /** Refuses an empty list. */
    public BattenRuns {
        splines = List.copyOf(splines);
        if (splines.isEmpty()) {
            throw new IllegalArgumentException("splines must hold at least one run");
        }
    }

    /**
     * Lays the battens.
     *
     * @param nodes at least two, in rising x
     * @return the runs
     * @throws SlopeOutsideRangeException where a given slope would break the shape; it counts nodes
     *     in the list given here
     * @throws IllegalArgumentException where there are fewer than two nodes or x does not rise
     */
    public static BattenRuns through(List<BattenNode> nodes) {
        double[] pinned = new double[nodes.size()];
        return split(nodes, pinned, pinned, 0);
    }

    /**
     * Lays the battens and lets the turning nodes inside each run slide, see {@link BattenSlide}.
     *
     * @param nodes at least two, in rising x
     * @param slideBelow how far each node may slide towards the ferrule, mm; 0 pins it
     * @param slideAbove how far towards the butt, mm
     * @param minimumGapMm least distance between neighbours that sliding may leave, mm
     * @return the runs; their splines tell where the nodes have gone
     * @throws SlopeOutsideRangeException as for {@link #through}
     */
    public static BattenRuns settled(
            List<BattenNode> nodes, double[] slideBelow, double[] slideAbove, double minimumGapMm) {
        Checks.positive("minimumGapMm", minimumGapMm);
        if (slideBelow.length != nodes.size() || slideAbove.length != nodes.size()) {
            throw new IllegalArgumentException(
                    "slideBelow and slideAbove must hold one figure a node, "
                            + nodes.size()
                            + "; got "
                            + slideBelow.length
                            + " and "
                            + slideAbove.length);
        }
        return split(nodes, slideBelow, slideAbove, minimumGapMm);
    }

    /** Splits at the crisp and the fixed nodes; a gap of 0 means that nothing slides. */
    private static BattenRuns split(
            List<BattenNode> nodes, double[] below, double[] above, double gap) {
        if (nodes.size() < 2) {
            throw new IllegalArgumentException("nodes must hold two or more, not " + nodes.size());
        }
        List<BattenSpline> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < nodes.size(); i++) {
            BattenNode node = nodes.get(i);
            if (i == nodes.size() - 1 || node.crisp() || !node.before().free()) {
                runs.add(run(nodes, start, i, below, above, gap));
                start = i;
            }
        }
        return new BattenRuns(runs);
    }

    private static BattenSpline run(
            List<BattenNode> nodes,
            int start,
            int end,
            double[] below,
            double[] above,
            double gap) {
        double[] x = new double[end - start + 1];
        double[] r = new double[x.length];
        for (int i = start; i <= end; i++) {
            x[i - start] = nodes.get(i).x();
            r[i - start] = nodes.get(i).r();
        }
        EndSlope first = nodes.get(start).after();
        EndSlope last = nodes.get(end).before();
        try {
            if (gap == 0) {
                return BattenSpline.through(x, r, first, last);
            }
            return BattenSlide.settle(
                    x,
                    r,
                    Arrays.copyOfRange(below, start, end + 1),
                    Arrays.copyOfRange(above, start, end + 1),
                    first,
                    last,
                    gap);
        } catch (SlopeOutsideRangeException e) {
            throw new SlopeOutsideRangeException(start + e.node(), e.slope(), e.allowed());
        }
    }

    /**
     * Returns the pieces of all runs, straight ones as lines.
     *
     * @return one fewer than nodes
     */
    public List<Segment> segments() {
        List<Segment> all = new ArrayList<>();
        for (BattenSpline spline : splines) {
            all.addAll(spline.segments());
        }
        return List.copyOf(all);
    }

    /**
     * Returns all runs as one outline.
     *
     * @return the outline
     */
    public Outline outline() {
        return new Outline(segments());
    }
}
