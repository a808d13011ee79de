package haftline.adjust.solve;

import haftline.adjust.solve.Quantity.Kind;
import haftline.curve.Edge;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;

/**
 * Proofs that a demand cannot be met: the parts that nothing moves violate it alone, or it is
 * violated even by the outline that no choice within the bounds can exceed. Between two nodes the
 * batten is monotone, so no outline is anywhere wider than the wider of the two at its upper bound.
 */
final class Certificates {
    /** Radii that differ by less are one, mm: rounding. */
    private static final double SAME = 1e-9;

    private final SetModel model;
    private final List<Quantity> quantities;

    Certificates(SetModel model, List<Quantity> quantities) {
        this.model = model;
        this.quantities = quantities;
    }

    /**
     * A proof against a demand that is not met.
     *
     * @param demand the demand
     * @param handle its piece as it is
     * @param margin the demand's margin as it is, mm
     */
    Optional<Certificate> against(Demand demand, Handle handle, double margin) {
        if (quantities.stream().noneMatch(q -> q.moves(demand.piece()))) {
            return impossible(margin, "nothing of this piece may move");
        }
        return switch (demand.need()) {
            case TENON_WALL ->
                    moves(demand, Kind.TANG_DEPTH)
                            ? Optional.empty()
                            : impossible(margin, "tenon, drill and wander are fixed");
            case BODY_WALL -> bodyWall(demand, handle);
            case CAP_WALL -> capWall(handle);
            case BORE_ENDS -> boreEnds(demand, margin);
            case GRIP -> grip(demand, handle);
            default -> Optional.empty();
        };
    }

    private boolean moves(Demand demand, Kind kind) {
        return quantities.stream().anyMatch(q -> q.kind() == kind && q.moves(demand.piece()));
    }

    private static Optional<Certificate> impossible(double best, String because) {
        return best < -Descent.MET_MM
                ? Optional.of(new Certificate(best, because))
                : Optional.empty();
    }

    /** At the shoulder the ferrule fixes the outline; behind it the upper bounds do. */
    private Optional<Certificate> bodyWall(Demand demand, Handle handle) {
        double limit = Walls.limitMm(handle, Zone.BODY);
        List<Edge> edges = BoreProfile.edges(handle.tangBore(), handle.wander());
        if (moves(demand, Kind.TANG_DEPTH) || hasDetails(handle)) {
            return Optional.empty();
        }
        double shoulder = handle.nodes().get(0).radiusMm();
        Optional<Certificate> fixed =
                impossible(
                        shoulder - radiusAt(edges, 0) - limit,
                        "the ferrule's outside diameter, the drill and the wander leave too"
                                + " little at the shoulder");
        return fixed.isPresent() ? fixed : highest(demand, handle, edges, limit);
    }

    private static Optional<Certificate> capWall(Handle handle) {
        double limit = Walls.limitMm(handle, Zone.CAP);
        List<Edge> edges = BoreProfile.edges(handle.capBore().orElseThrow(), handle.wander());
        if (hasDetails(handle)) {
            return Optional.empty();
        }
        double butt = handle.outline().rBefore(handle.buttX());
        return impossible(
                butt - radiusAt(edges, handle.buttX()) - limit,
                "the butt's diameter, the cap's drill and the wander leave too little there");
    }

    private static boolean hasDetails(Handle handle) {
        for (Detail detail : handle.brief().shape().details()) {
            // Only what stands proud can hold an outline above its nodes.
            if (detail instanceof Detail.Bead || detail instanceof Detail.Fillet) {
                return true;
            }
        }
        return false;
    }

    /** Radius of the wandered edge at a place; the greater where it is upright there. */
    private static double radiusAt(List<Edge> edges, double x) {
        double radius = Double.NEGATIVE_INFINITY;
        for (Edge edge : edges) {
            double low = edge.lowX();
            double high = edge.highX();
            if (x >= low - SAME && x <= high + SAME) {
                double share = high > low ? (x - edge.x0()) / (edge.x1() - edge.x0()) : 0;
                radius = Math.max(radius, edge.r0() + share * (edge.r1() - edge.r0()));
            }
        }
        return radius;
    }

    /**
     * The wall under the outline that nothing can exceed, as far as nodes neither slide nor move.
     */
    private Optional<Certificate> highest(
            Demand demand, Handle handle, List<Edge> edges, double limit) {
        if (moves(demand, Kind.LENGTH)) {
            return Optional.empty();
        }
        double reach =
                handle.brief().rules().lengths().slideShare() * handle.lengths().visibleWoodMm();
        List<PlacedNode> nodes = handle.nodes();
        double[] top = top(demand.piece(), nodes);
        double best = Double.POSITIVE_INFINITY;
        for (int i = 1; i < nodes.size(); i++) {
            // What a sliding node may leave to its neighbours is not certain on either side.
            double from = nodes.get(i - 1).x() + (i > 1 ? 2 * reach : 0);
            double to = nodes.get(i).x() - (i + 1 < nodes.size() ? 2 * reach : 0);
            double under = Double.NEGATIVE_INFINITY;
            for (Edge edge : edges) {
                double low = Math.max(from, edge.lowX());
                double high = Math.min(to, edge.highX());
                if (low < high) {
                    under = Math.max(under, radiusAt(List.of(edge), low));
                    under = Math.max(under, radiusAt(List.of(edge), high));
                }
            }
            best = Math.min(best, Math.max(top[i - 1], top[i]) - under - limit);
        }
        return impossible(best, "with every node at its upper bound the wall is still too thin");
    }

    /** Upper bounds of the nodes' radii, mm. */
    private double[] top(int piece, List<PlacedNode> nodes) {
        double[] all = new double[model.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = model.high(i);
        }
        Handle highest = model.handle(piece, all);
        double[] top = new double[nodes.size()];
        for (int i = 0; i < top.length; i++) {
            top[i] =
                    highest == null
                            ? Double.POSITIVE_INFINITY
                            : Math.max(nodes.get(i).radiusMm(), highest.nodes().get(i).radiusMm());
        }
        return top;
    }

    private Optional<Certificate> boreEnds(Demand demand, double margin) {
        return moves(demand, Kind.LENGTH)
                        || moves(demand, Kind.TANG_DEPTH)
                        || moves(demand, Kind.CAP_DEPTH)
                ? Optional.empty()
                : impossible(margin, "the length and the depths of the bores are fixed");
    }

    private Optional<Certificate> grip(Demand demand, Handle handle) {
        Band band = model.rows(demand.piece()).gripBand(handle);
        List<PlacedNode> nodes = handle.nodes();
        double ends = 2 * Math.max(nodes.get(0).radiusMm(), nodes.get(nodes.size() - 1).radiusMm());
        Optional<Certificate> tooThick =
                impossible(
                        band.highMm() - ends, "the ferrule or the butt alone is thicker than that");
        if (tooThick.isPresent() || hasDetails(handle)) {
            return tooThick;
        }
        double most = ends;
        for (double top : top(demand.piece(), nodes)) {
            most = Math.max(most, 2 * top);
        }
        return impossible(
                most - band.lowMm(), "with every node at its upper bound it is still too slender");
    }
}
