package haftline.figures;

import haftline.curve.Edge;
import haftline.curve.Gap;
import haftline.curve.Nearest;
import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.handle.Wander;
import haftline.stock.Wood;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The walls of a handle, exactly: each piece of a bore's edge is a straight line in the half-plane,
 * with wander too, so the least wall over it is an extreme of the outline over a line, found in
 * closed form.
 */
public final class Walls {
    private Walls() {}

    /**
     * The walls of a handle, one for each zone that a bore lies under.
     *
     * @param handle the handle
     * @return tenon, body, cap, as far as they exist
     */
    public static List<Wall> of(Handle handle) {
        Rules.Walls limits = handle.brief().rules().walls();
        boolean wood = handle.brief().stock() instanceof Wood;
        List<Wall> walls = new ArrayList<>(3);
        Bore tang = handle.tangBore();
        BoreProfile tangEdge = BoreProfile.of(tang);
        add(
                walls,
                handle,
                Zone.TENON,
                tang,
                tangEdge,
                wood ? limits.tenonWoodMm() : limits.tenonPlasticMm());
        add(
                walls,
                handle,
                Zone.BODY,
                tang,
                tangEdge,
                wood ? limits.bodyWoodMm() : limits.bodyPlasticMm());
        if (handle.capBore().isPresent()) {
            Bore cap = handle.capBore().get();
            add(walls, handle, Zone.CAP, cap, BoreProfile.of(cap), limits.capMm());
        }
        return List.copyOf(walls);
    }

    private static void add(
            List<Wall> walls, Handle handle, Zone zone, Bore bore, BoreProfile edge, double limit) {
        double from = zone == Zone.TENON ? handle.tenonEndX() : 0;
        double to = zone == Zone.TENON ? 0 : handle.buttX();
        Wander wander = handle.wander();
        Gap nominal = least(handle.outline(), bore, edge, 0, 0, from, to);
        if (nominal == null) {
            return;
        }
        Gap worst = least(handle.outline(), bore, edge, wander.startMm(), wander.slope(), from, to);
        // The upright wall is itself a distance between the two surfaces.
        double shortest = Math.max(worst.height(), 0);
        double shortestX = worst.x();
        if (shortest > 0) {
            Nearest nearest = shortest(handle.outline(), bore, edge, wander, from, to);
            if (nearest.distance() < shortest) {
                shortest = nearest.distance();
                shortestX = nearest.onOutline().x();
            }
        }
        if (zone == Zone.BODY && toButtFace(handle, bore) < shortest) {
            shortest = toButtFace(handle, bore);
            shortestX = handle.buttX();
        }
        walls.add(
                new Wall(
                        zone,
                        nominal.height(),
                        worst.height(),
                        worst.x(),
                        shortest,
                        shortestX,
                        limit));
    }

    /**
     * Least outline over the bore's edge within a stretch, or null where the bore does not reach
     * it.
     */
    private static Gap least(
            Outline outline,
            Bore bore,
            BoreProfile edge,
            double e0,
            double k,
            double from,
            double to) {
        Gap best = null;
        for (int i = 1; i < edge.size(); i++) {
            double za = edge.depth(i - 1);
            double zb = edge.depth(i);
            if (zb > za) {
                double xa = bore.xAt(za);
                double xb = bore.xAt(zb);
                double low = Math.max(from, Math.min(xa, xb));
                double high = Math.min(to, Math.max(xa, xb));
                if (low < high) {
                    double ra = edge.radius(i - 1) + e0 + k * za;
                    double rb = edge.radius(i) + e0 + k * zb;
                    double m = (rb - ra) / (xb - xa);
                    Gap gap = outline.leastAbove(ra - m * xa, m, low, high);
                    best = best == null ? gap : best.least(gap);
                }
            }
        }
        return best;
    }

    /**
     * Shortest way from the wandered edge, every piece of it, to the outline of a stretch, its step
     * faces included.
     */
    private static Nearest shortest(
            Outline outline, Bore bore, BoreProfile edge, Wander wander, double from, double to) {
        List<Edge> edges = new ArrayList<>(edge.size());
        for (int i = 1; i < edge.size(); i++) {
            double za = edge.depth(i - 1);
            double zb = edge.depth(i);
            edges.add(
                    new Edge(
                            bore.xAt(za),
                            edge.radius(i - 1) + wander.at(za),
                            bore.xAt(zb),
                            edge.radius(i) + wander.at(zb)));
        }
        return NearestDistance.ofEdges(outline.part(from, to), edges, true);
    }

    /**
     * What stands between the tang's bore and the butt's face, mm; 0 where the bore comes out of
     * it. Under a cap's bore the web is the lesser of the two; a dome has no face but its pole.
     */
    private static double toButtFace(Handle handle, Bore tang) {
        double left = handle.buttX() - tang.xAt(tang.reachMm());
        return handle.capBore().isEmpty() || left <= 0
                ? Math.max(0, left)
                : Double.POSITIVE_INFINITY;
    }

    /**
     * The wood between the two bores' points, on the axis.
     *
     * @param handle the handle
     * @return mm, negative where the bores meet; empty without a cap's bore
     */
    public static Optional<Web> web(Handle handle) {
        return handle.capBore()
                .map(
                        cap -> {
                            Bore tang = handle.tangBore();
                            double tip = tang.xAt(tang.reachMm());
                            double wide =
                                    Math.max(
                                            tang.deepest().diameterMm(),
                                            cap.deepest().diameterMm());
                            return new Web(
                                    cap.xAt(cap.reachMm()) - tip,
                                    tip,
                                    Math.max(handle.brief().rules().bores().webMm(), wide));
                        });
    }

    /**
     * The wood between two bores.
     *
     * @param mm between their points, negative where they meet
     * @param atX where the tang's bore ends, mm from the shoulder
     * @param limitMm least that is wanted, mm
     */
    public record Web(double mm, double atX, double limitMm) {}
}
