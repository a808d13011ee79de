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
        List<Wall> walls = new ArrayList<>(3);
        add(walls, handle, Zone.TENON, handle.tangBore());
        add(walls, handle, Zone.BODY, handle.tangBore());
        handle.capBore().ifPresent(cap -> add(walls, handle, Zone.CAP, cap));
        return List.copyOf(walls);
    }

    /**
     * How thin the wood or plastic of a zone may be at the worst wander. Under the stop nothing is
     * made, so no zone's limit is lower.
     *
     * @param handle the handle, whose rules and stock decide
     * @param zone where; the body's limit is also the least that is left between the tang's bore
     *     and the butt's face
     * @return mm
     */
    public static double limitMm(Handle handle, Zone zone) {
        Rules.Walls rules = handle.brief().rules().walls();
        boolean isWood = handle.brief().stock() instanceof Wood;
        double own =
                switch (zone) {
                    case TENON -> isWood ? rules.tenonWoodMm() : rules.tenonPlasticMm();
                    case BODY -> isWood ? rules.bodyWoodMm() : rules.bodyPlasticMm();
                    case CAP -> rules.capMm();
                };
        return Math.max(own, rules.stopMm());
    }

    /** Whether no bore breaks out, drilled as it should be: cheaper than all the walls. */
    static boolean stand(Handle handle) {
        Bore tang = handle.tangBore();
        return stands(nominal(handle, Zone.TENON, tang))
                && stands(nominal(handle, Zone.BODY, tang))
                && (handle.capBore().isEmpty()
                        || stands(nominal(handle, Zone.CAP, handle.capBore().get())));
    }

    private static boolean stands(Gap gap) {
        return gap == null || gap.height() >= 0;
    }

    /**
     * Where a zone's wood may begin; its bore says how much of it has a wall.
     *
     * @param handle the handle
     * @param zone the zone
     * @return x, mm from the shoulder
     */
    public static double from(Handle handle, Zone zone) {
        return zone == Zone.TENON ? handle.tenonEndX() : 0;
    }

    /**
     * Where a zone's wood may end.
     *
     * @param handle the handle
     * @param zone the zone
     * @return x, mm from the shoulder
     */
    public static double to(Handle handle, Zone zone) {
        return zone == Zone.TENON ? 0 : handle.buttX();
    }

    private static Gap nominal(Handle handle, Zone zone, Bore bore) {
        List<Edge> edges = BoreProfile.edges(bore, Wander.NONE);
        return least(handle.outline(), edges, from(handle, zone), to(handle, zone));
    }

    private static void add(List<Wall> walls, Handle handle, Zone zone, Bore bore) {
        Gap nominal = nominal(handle, zone, bore);
        if (nominal == null) {
            return;
        }
        double from = from(handle, zone);
        double to = to(handle, zone);
        List<Edge> edges = BoreProfile.edges(bore, handle.wander());
        Gap worst = least(handle.outline(), edges, from, to);
        // The upright wall is itself a distance between the two surfaces.
        double shortest = Math.max(worst.height(), 0);
        double shortestX = worst.x();
        if (shortest > 0) {
            // Every piece of the edge, upright ones too, to the faces of the outline's steps too.
            Nearest nearest = NearestDistance.ofEdges(handle.outline().part(from, to), edges, true);
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
                        limitMm(handle, zone)));
    }

    /**
     * Least outline over the bore's edge within a stretch, or null where the bore does not reach
     * it.
     */
    private static Gap least(Outline outline, List<Edge> edges, double from, double to) {
        Gap best = null;
        for (Edge edge : edges) {
            double low = Math.max(from, edge.lowX());
            double high = Math.min(to, edge.highX());
            if (low < high) {
                double m = (edge.r1() - edge.r0()) / (edge.x1() - edge.x0());
                Gap gap = outline.leastAbove(edge.r0() - m * edge.x0(), m, low, high);
                best = best == null ? gap : best.least(gap);
            }
        }
        return best;
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
        Rules rules = handle.brief().rules();
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
                                    Math.max(
                                            rules.walls().stopMm(),
                                            Math.max(rules.bores().webMm(), wide)));
                        });
    }

    /**
     * The wood between two bores.
     *
     * @param mm between their points, negative where they meet
     * @param atX where the tang's bore ends, mm from the shoulder
     * @param limitMm least that is wanted, mm, never under the stop
     */
    public record Web(double mm, double atX, double limitMm) {}
}
