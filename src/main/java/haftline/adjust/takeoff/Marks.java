package haftline.adjust.takeoff;

import haftline.shape.Butt;
import java.util.ArrayList;
import java.util.List;

/** Readings that were taken for the sake of an edge say where it is. */
final class Marks {
    /** Squares over the variance that a marked edge may cost: four standard deviations. */
    private static final double COSTS = 16;

    private final Fitting fitting;

    Marks(Fitting fitting) {
        this.fitting = fitting;
    }

    /**
     * Puts each edge of a detail where a reading marks it, unless the readings speak against it.
     */
    Draft of(Draft fitted, boolean[] counts) {
        Draft now = fitted;
        double sum = fitting.fit(now, counts).sum();
        double seat = fitting.table().markNear(now.seatX());
        if (now.butt().lengthMm() > 0 && !Double.isNaN(seat)) {
            Butt butt = DraftFit.butt(now.butt(), now.woodMm() - seat);
            DraftFit.Fitted moved = fitting.fit(now.withButt(butt), counts);
            if (moved.sum() < sum + COSTS) {
                now = moved.draft();
                sum = moved.sum();
            }
        }
        for (int i = 0; i < now.nodes().size(); i++) {
            DraftNode node = now.nodes().get(i);
            double mark = fitting.table().markNear(node.x());
            if (!node.crisp() || Double.isNaN(mark)) {
                continue;
            }
            List<DraftNode> nodes = new ArrayList<>(now.nodes());
            nodes.set(i, new DraftNode(mark, node.diameterMm(), true));
            DraftFit.Fitted moved = fitting.fit(now.withNodes(nodes), counts);
            if (moved.sum() < sum + COSTS) {
                now = moved.draft();
                sum = moved.sum();
            }
        }
        for (int i = 0; i < fitted.details().size(); i++) {
            for (boolean left : new boolean[] {true, false}) {
                LaidDetail detail = now.details().get(i);
                Cut edge = left ? detail.left() : detail.right();
                double near = fitting.table().markNear(left ? detail.from() : detail.to());
                DraftFit.Fitted best = null;
                for (double mark : new double[] {edge.x(), near}) {
                    boolean step = edge.kind() == Cut.Kind.STEP || mark == near;
                    if (!detail.isOnChord() || Double.isNaN(mark) || !step) {
                        continue;
                    }
                    List<LaidDetail> details = new ArrayList<>(now.details());
                    details.set(i, detail.markedAt(left, mark));
                    DraftFit.Fitted moved = fitting.fit(now.withDetails(details), counts);
                    best = best == null || moved.sum() < best.sum() ? moved : best;
                }
                if (best != null && best.sum() < sum + COSTS) {
                    now = best.draft();
                    sum = best.sum();
                }
            }
        }
        return now;
    }
}
