package haftline.adjust.solve;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.figures.Walls;
import haftline.figures.Zone;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.PlacedNode;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.set.HandleSet;
import haftline.set.Piece;
import haftline.shape.Shape;

/** Holds an answer against the figures of the engine, by other ways than the solver's own. */
final class EngineCheck {
    /** What an answer is checked to, mm. */
    static final double TO = 1e-6;

    private EngineCheck() {}

    /** Every need that is told as met is met. */
    static void holds(Adjustment adjustment, HandleSet before, String as) {
        HandleSet after = adjustment.in(before);
        for (Answer answer : adjustment.answers()) {
            if (answer.standing() == Standing.MET) {
                double margin =
                        margin(
                                answer.need(),
                                figures(before, answer.piece()),
                                figures(after, answer.piece()),
                                answer);
                assertThat(margin).as(as + " " + answer).isGreaterThanOrEqualTo(-TO);
            }
        }
    }

    static Figures figures(HandleSet set, String piece) {
        Piece named = set.piece(piece).orElseThrow();
        Brief brief = set.brief(named, RandomDesigns.MATERIALS);
        return Figures.of(((Resolution.Resolved) Resolve.of(brief)).handle());
    }

    private static double margin(Need need, Figures before, Figures after, Answer answer) {
        Handle handle = after.handle();
        double figure =
                switch (need) {
                    case TENON_WALL -> wall(after, Zone.TENON);
                    case BODY_WALL -> wall(after, Zone.BODY);
                    case CAP_WALL -> wall(after, Zone.CAP);
                    case BORE_ENDS ->
                            after.web()
                                    .map(Walls.Web::mm)
                                    .orElse(
                                            handle.buttX()
                                                    - handle.tangBore()
                                                            .xAt(handle.tangBore().reachMm()));
                    case BALANCE -> after.balance().fromFerruleFaceMm();
                    case GRIP, COMMON_SWELL -> after.grip().greatestMm();
                    case COVES -> hollow(handle);
                    case CHARACTER -> character(before.handle(), handle);
                };
        double over = figure - answer.lowMm();
        return Double.isInfinite(answer.highMm()) ? over : Math.min(over, answer.highMm() - figure);
    }

    /** The upright wall, and the shortest unless that is the way to the butt's face. */
    private static double wall(Figures figures, Zone zone) {
        Wall wall = figures.wall(zone).orElse(null);
        if (wall == null) {
            return Double.POSITIVE_INFINITY;
        }
        Handle handle = figures.handle();
        double left = handle.buttX() - handle.tangBore().xAt(handle.tangBore().reachMm());
        boolean toButt = zone == Zone.BODY && wall.shortestWorstMm() == Math.max(0, left);
        return toButt ? wall.worstMm() : wall.shortestWorstMm();
    }

    /** By looking at many places: the tightest hollow is nowhere tighter than the answer. */
    private static double hollow(Handle handle) {
        double seat = handle.buttX() - handle.brief().shape().butt().lengthMm();
        double tightest = Double.POSITIVE_INFINITY;
        for (var segment : handle.outline().segments()) {
            for (int i = 0; i <= 200; i++) {
                double x = segment.startX() + (segment.endX() - segment.startX()) * i / 200.0;
                if (x >= 0 && x <= seat && segment.curvature(x) > 0) {
                    tightest = Math.min(tightest, 1 / segment.curvature(x));
                }
            }
        }
        return tightest;
    }

    private static double character(Handle before, Handle after) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < before.nodes().size(); i++) {
            double was = step(before, i);
            if (Math.abs(was) > 1e-9) {
                least = Math.min(least, Math.signum(was) * step(after, i));
            }
        }
        for (Shape.Run run : after.brief().shape().monotone()) {
            double way = radius(after, run.to()) - radius(after, run.from());
            boolean inside = false;
            for (int i = 1; i < after.nodes().size(); i++) {
                inside |= after.nodes().get(i - 1).name().equals(run.from());
                if (inside) {
                    least = Math.min(least, Math.signum(way) * step(after, i));
                }
                inside &= !after.nodes().get(i).name().equals(run.to());
            }
        }
        return least;
    }

    private static double step(Handle handle, int i) {
        return 2 * (handle.nodes().get(i).radiusMm() - handle.nodes().get(i - 1).radiusMm());
    }

    private static double radius(Handle handle, String node) {
        return handle.nodes().stream()
                .filter(each -> each.name().equals(node))
                .mapToDouble(PlacedNode::radiusMm)
                .findFirst()
                .orElseThrow();
    }
}
