package haftline.handle;

import haftline.curve.CircularArc;
import haftline.curve.EllipseQuarter;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.shape.Butt;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;

/** Lays a shape's details and its butt over a body that is drawn already. */
public final class Dressing {
    private Dressing() {}

    /**
     * The visible wood: the body, its details, its butt.
     *
     * @param body from the shoulder to the seat
     * @param details laid over it in this order
     * @param butt the form behind the seat
     * @param visibleWoodMm shoulder to the butt's face, mm; the body ends the butt's length before
     * @return the outline; empty where a detail or the butt does not fit the body
     */
    public static Optional<Outline> of(
            Outline body, List<Detail> details, Butt butt, double visibleWoodMm) {
        Details.Laid laid = Details.lay(body, details, visibleWoodMm);
        double x = laid.body().endX();
        double r = laid.body().rBefore(x);
        boolean tooSmall = !(butt instanceof Butt.Domed) && butt.lengthMm() >= r;
        if (laid.problem().isPresent() || tooSmall) {
            return Optional.empty();
        }
        List<Segment> end = buttSegments(butt, x, r, visibleWoodMm);
        return Optional.of(end.isEmpty() ? laid.body() : laid.body().followedBy(new Outline(end)));
    }

    /** The form of the butt, from the seat node to the wood's end. */
    static List<Segment> buttSegments(Butt butt, double x, double r, double visibleWoodMm) {
        double length = butt.lengthMm();
        if (butt instanceof Butt.Chamfered) {
            return List.of(new StraightLine(x, r, visibleWoodMm, r - length));
        }
        if (butt instanceof Butt.Rounded) {
            // A quarter turn clockwise: bulge -tan(90 / 4 degrees), from level to square to the
            // axis.
            return List.of(
                    new CircularArc(x, r, visibleWoodMm, r - length, -Math.tan(Math.PI / 8)));
        }
        if (butt instanceof Butt.Domed) {
            return List.of(new EllipseQuarter(x, 0, length, r, x, visibleWoodMm, true));
        }
        return List.of();
    }
}
