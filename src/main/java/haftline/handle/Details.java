package haftline.handle;

import haftline.curve.CircularArc;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import haftline.shape.Detail;
import java.util.List;
import java.util.Optional;

/** Lays details over a body. */
final class Details {
    /** A groove that reaches the axis cannot be turned, mm. */
    private static final double LEAST_RADIUS = 0.5;

    /** Places nearer than this are one, mm; rounding of a place on a handle is far finer. */
    private static final double SAME_PLACE = 1e-9;

    private Details() {}

    /** What laying a detail comes to: the body with it, or what is wrong. */
    record Laid(Outline body, Optional<Resolution.Impossible> problem) {}

    static Laid lay(Outline body, List<Detail> details, double visibleWood) {
        Outline laid = body;
        for (Detail detail : details) {
            double centre = detail.place().x(visibleWood);
            double from = snapped(laid, centre - detail.widthMm() / 2);
            double to = snapped(laid, centre + detail.widthMm() / 2);
            if (from < laid.startX() || to > laid.endX()) {
                double over = Math.max(laid.startX() - from, to - laid.endX());
                return new Laid(
                        laid,
                        Optional.of(
                                problem(
                                        detail,
                                        over,
                                        0,
                                        "reaches past the end of the wood; move or narrow it")));
            }
            double bottom = Math.min(laid.rAfter(from), laid.rBefore(to)) - depth(detail);
            if (bottom < LEAST_RADIUS) {
                return new Laid(
                        laid,
                        Optional.of(
                                problem(
                                        detail,
                                        bottom,
                                        LEAST_RADIUS,
                                        "cuts through to the axis; make it shallower")));
            }
            try {
                laid = laid.replaced(from, to, segments(laid, detail, from, to));
            } catch (IllegalArgumentException leansBack) {
                // A round as deep as half its width on a steep slope would overhang, which cannot
                // be turned.
                return new Laid(
                        laid,
                        Optional.of(
                                problem(
                                        detail,
                                        depth(detail),
                                        0,
                                        "overhangs on a slope as steep as this; make it lower or shallower")));
            }
        }
        return new Laid(laid, Optional.empty());
    }

    /** Two details side by side meet in one place, not with a sliver of rounding between them. */
    private static double snapped(Outline body, double x) {
        for (Segment segment : body.segments()) {
            if (Math.abs(segment.startX() - x) < SAME_PLACE) {
                return segment.startX();
            }
        }
        return Math.abs(body.endX() - x) < SAME_PLACE ? body.endX() : x;
    }

    private static Resolution.Impossible problem(
            Detail detail, double figure, double limit, String what) {
        return new Resolution.Impossible(
                "detail-does-not-fit", figure, limit, "mm", "The " + detail.kind() + " " + what);
    }

    /** How far a detail cuts below its edges, mm; negative for one that stands proud. */
    private static double depth(Detail detail) {
        return -detail.proudMm();
    }

    private static List<Segment> segments(Outline body, Detail detail, double from, double to) {
        double a = body.rAfter(from);
        double b = body.rBefore(to);
        double centre = (from + to) / 2;
        if (detail instanceof Detail.Bead bead) {
            return List.of(arc(from, a, to, b, bead.heightMm()));
        }
        if (detail instanceof Detail.Cove cove) {
            return List.of(arc(from, a, to, b, -cove.depthMm()));
        }
        if (detail instanceof Detail.Fillet fillet) {
            double level = body.r(centre) + fillet.heightMm();
            return List.of(new StraightLine(from, level, to, level));
        }
        if (detail instanceof Detail.Flat) {
            return List.of(new StraightLine(from, a, to, b));
        }
        double bottom = (a + b) / 2 - depth(detail);
        return List.of(
                new StraightLine(from, a, centre, bottom), new StraightLine(centre, bottom, to, b));
    }

    /**
     * The arc over a chord whose sagitta, measured along the chord's normal, is the height: the
     * bulge is 2 h / chord.
     */
    private static Segment arc(double from, double a, double to, double b, double height) {
        double chord = Math.hypot(to - from, b - a);
        return new CircularArc(from, a, to, b, Math.max(-1, Math.min(1, -2 * height / chord)));
    }
}
