package haftline.adjust.takeoff;

import haftline.curve.BattenNode;
import haftline.curve.BattenRuns;
import haftline.curve.EndSlope;
import haftline.curve.Outline;
import haftline.handle.Dressing;
import haftline.handle.PlacedNode;
import haftline.shape.Butt;
import haftline.shape.Detail;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A shape that is being fitted, in mm.
 *
 * @param woodMm shoulder to butt
 * @param shoulderMm diameter at the shoulder
 * @param seatMm diameter at the seat
 * @param nodes between the two, in order
 * @param first what is asked of the slope at the shoulder
 * @param last what is asked of the slope at the seat
 * @param details laid over the body
 * @param butt its form
 */
record Draft(
        double woodMm,
        double shoulderMm,
        double seatMm,
        List<DraftNode> nodes,
        EndSlope first,
        EndSlope last,
        List<LaidDetail> details,
        Butt butt) {
    /** Nodes are kept this far apart, so that they are apart when their places are rounded, mm. */
    static final double SPACING_MM = PlacedNode.LEAST_SPACING_MM + 0.02;

    /** Thinnest that is tried, mm. */
    private static final double THINNEST_MM = 1;

    Draft {
        nodes = List.copyOf(nodes);
        details = List.copyOf(details);
    }

    double seatX() {
        return woodMm - butt.lengthMm();
    }

    Draft withNodes(List<DraftNode> newNodes) {
        return new Draft(woodMm, shoulderMm, seatMm, newNodes, first, last, details, butt);
    }

    Draft withSlopes(EndSlope newFirst, EndSlope newLast) {
        return new Draft(woodMm, shoulderMm, seatMm, nodes, newFirst, newLast, details, butt);
    }

    Draft withDetails(List<LaidDetail> newDetails) {
        return new Draft(woodMm, shoulderMm, seatMm, nodes, first, last, newDetails, butt);
    }

    Draft withButt(Butt newButt) {
        return new Draft(woodMm, shoulderMm, seatMm, nodes, first, last, details, newButt);
    }

    /** The outline, as the engine draws it; empty where there is none. */
    Optional<Outline> outline() {
        List<BattenNode> batten = new ArrayList<>(nodes.size() + 2);
        batten.add(BattenNode.smooth(0, shoulderMm / 2, first));
        double before = 0;
        for (DraftNode node : nodes) {
            if (node.x() - before < SPACING_MM || node.diameterMm() < THINNEST_MM) {
                return Optional.empty();
            }
            before = node.x();
            batten.add(
                    node.crisp()
                            ? BattenNode.crisp(node.x(), node.diameterMm() / 2)
                            : BattenNode.smooth(node.x(), node.diameterMm() / 2));
        }
        if (seatX() - before < SPACING_MM || Math.min(shoulderMm, seatMm) < THINNEST_MM) {
            return Optional.empty();
        }
        batten.add(BattenNode.smooth(seatX(), seatMm / 2, last));
        List<Detail> laid = new ArrayList<>(details.size());
        for (LaidDetail detail : details) {
            Optional<Detail> one = detail.detail();
            if (one.isEmpty()) {
                return Optional.empty();
            }
            laid.add(one.get());
        }
        try {
            return Dressing.of(BattenRuns.through(batten).outline(), laid, butt, woodMm);
        } catch (IllegalArgumentException none) {
            return Optional.empty();
        }
    }
}
