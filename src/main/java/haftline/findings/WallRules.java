package haftline.findings;

import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.Bore;
import haftline.handle.Handle;
import haftline.shape.Detail;
import java.util.List;

/** Walls over the bores, the bores' bottoms and the web between them. */
final class WallRules {
    private WallRules() {}

    static void add(Figures figures, List<Finding> found) {
        double stop = figures.handle().brief().rules().walls().stopMm();
        for (Wall wall : figures.walls()) {
            addWall(figures.handle(), wall, stop, found);
        }
        addEnds(figures, stop, found);
    }

    private static void addWall(Handle handle, Wall wall, double stop, List<Finding> found) {
        Place place =
                switch (wall.zone()) {
                    case TENON -> Place.TENON;
                    case BODY -> Place.BODY;
                    case CAP -> Place.CAP;
                };
        if (wall.worstMm() < wall.limitMm()) {
            Gravity gravity = wall.worstMm() < stop ? Gravity.STOP : Gravity.WARN;
            double limit = gravity == Gravity.STOP ? stop : wall.limitMm();
            String detail = wall.zone() == Zone.TENON ? "" : detailAt(handle, wall.atX());
            Code code = detail.isEmpty() ? Code.WALL_TOO_THIN : Code.BORE_THROUGH_DETAIL;
            found.add(Finding.mm(code, gravity, place, wall.atX(), wall.worstMm(), limit, detail));
        }
        // A bottom that stops is told beside a wall that only warns.
        double bottom = wall.worstMm() < wall.limitMm() ? stop : wall.limitMm();
        if (wall.worstMm() >= stop && wall.shortestWorstMm() < bottom && !isAtButt(handle, wall)) {
            Gravity gravity = wall.shortestWorstMm() < stop ? Gravity.STOP : Gravity.WARN;
            found.add(
                    Finding.mm(
                            Code.BORE_BOTTOM_TOO_NEAR,
                            gravity,
                            place,
                            wall.shortestAtX(),
                            wall.shortestWorstMm(),
                            gravity == Gravity.STOP ? stop : wall.limitMm(),
                            ""));
        }
    }

    /** Whether what is nearest is the butt's face, of which {@link #addEnds} tells. */
    private static boolean isAtButt(Handle handle, Wall wall) {
        Bore tang = handle.tangBore();
        double left = handle.buttX() - tang.xAt(tang.reachMm());
        return wall.zone() == Zone.BODY
                && handle.capBore().isEmpty()
                && wall.shortestWorstMm() == Math.max(0, left);
    }

    /** The word for a detail that is cut into the body at a place; empty where there is none. */
    private static String detailAt(Handle handle, double x) {
        double wood = handle.lengths().visibleWoodMm();
        for (Detail detail : handle.brief().shape().details()) {
            boolean sunk =
                    !(detail instanceof Detail.Bead)
                            && !(detail instanceof Detail.Flat)
                            && !(detail instanceof Detail.Fillet fillet && fillet.heightMm() > 0);
            if (sunk && Math.abs(x - detail.place().x(wood)) <= detail.widthMm() / 2) {
                return detail.kind();
            }
        }
        return "";
    }

    private static void addEnds(Figures figures, double stop, List<Finding> found) {
        Handle handle = figures.handle();
        Bore tang = handle.tangBore();
        double tip = tang.xAt(tang.reachMm());
        if (handle.fit().tipX() > handle.buttX()) {
            found.add(
                    Finding.mm(
                            Code.TANG_LONGER_THAN_WOOD,
                            Gravity.STOP,
                            Place.TANG,
                            handle.buttX(),
                            handle.fit().tipX(),
                            handle.buttX(),
                            ""));
        }
        if (figures.web().isPresent()) {
            var web = figures.web().get();
            if (web.mm() < web.limitMm()) {
                Gravity gravity = web.mm() < stop ? Gravity.STOP : Gravity.WARN;
                double limit = gravity == Gravity.STOP ? stop : web.limitMm();
                found.add(
                        Finding.mm(
                                Code.BORES_MEET,
                                gravity,
                                Place.BORE,
                                web.atX(),
                                web.mm(),
                                limit,
                                ""));
            }
        } else {
            double limit = Walls.limitMm(handle, Zone.BODY);
            double left = handle.buttX() - tip;
            if (left < limit) {
                Gravity gravity = left < stop ? Gravity.STOP : Gravity.WARN;
                found.add(
                        Finding.mm(
                                Code.BORE_BOTTOM_TOO_NEAR,
                                gravity,
                                Place.BODY,
                                tip,
                                left,
                                gravity == Gravity.STOP ? stop : limit,
                                "butt"));
            }
        }
    }
}
