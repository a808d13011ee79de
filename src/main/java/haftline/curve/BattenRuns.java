package haftline.curve;

import java.util.ArrayList;
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
        if (nodes.size() < 2) {
            throw new IllegalArgumentException("nodes must hold two or more, not " + nodes.size());
        }
        List<BattenSpline> runs = new ArrayList<>();
        int start = 0;
        for (int i = 1; i < nodes.size(); i++) {
            BattenNode node = nodes.get(i);
            if (i == nodes.size() - 1 || node.crisp() || !node.before().free()) {
                runs.add(run(nodes, start, i));
                start = i;
            }
        }
        return new BattenRuns(runs);
    }

    private static BattenSpline run(List<BattenNode> nodes, int start, int end) {
        double[] x = new double[end - start + 1];
        double[] r = new double[x.length];
        for (int i = start; i <= end; i++) {
            x[i - start] = nodes.get(i).x();
            r[i - start] = nodes.get(i).r();
        }
        try {
            return BattenSpline.through(x, r, nodes.get(start).after(), nodes.get(end).before());
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
