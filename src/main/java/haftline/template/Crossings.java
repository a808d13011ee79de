package haftline.template;

import java.util.ArrayList;
import java.util.List;

/** Where two strokes meet, in closed form. */
final class Crossings {
    /**
     * A meeting of two strokes.
     *
     * @param spot where
     * @param shareOfA share of the first's length
     * @param shareOfB share of the second's length
     */
    record Crossing(Spot spot, double shareOfA, double shareOfB) {}

    /** Two circles or a line and a circle that miss each other by less than this touch, mm. */
    private static final double TOUCH_MM = 1e-9;

    /** Sine of the angle under which two lines count as parallel: they then meet nowhere near. */
    private static final double PARALLEL = 1e-12;

    /** Two steps square the error twice. */
    private static final int POLISHING = 2;

    /** Sine of the angle under which two strokes touch rather than cross. */
    private static final double TANGENT = 1e-8;

    private Crossings() {}

    /** Every place that two strokes share, ends included; none for two that lie on each other. */
    static List<Crossing> of(Stroke a, Stroke b) {
        List<Crossing> found = new ArrayList<>(2);
        if (a.isStraight() && b.isStraight()) {
            lines(a, b, found);
        } else if (a.isStraight()) {
            lineAndCircle(a, b, a, b, found);
        } else if (b.isStraight()) {
            lineAndCircle(b, a, a, b, found);
        } else {
            circles(a, b, found);
        }
        return found;
    }

    private static void lines(Stroke a, Stroke b, List<Crossing> found) {
        double ax = a.end().x() - a.start().x();
        double ay = a.end().y() - a.start().y();
        double bx = b.end().x() - b.start().x();
        double by = b.end().y() - b.start().y();
        double cross = ax * by - ay * bx;
        if (Math.abs(cross) <= PARALLEL * a.chord() * b.chord()) {
            return;
        }
        double dx = b.start().x() - a.start().x();
        double dy = b.start().y() - a.start().y();
        double share = (dx * by - dy * bx) / cross;
        add(a.start().x() + share * ax, a.start().y() + share * ay, a, b, found);
    }

    private static void lineAndCircle(
            Stroke line, Stroke arc, Stroke a, Stroke b, List<Crossing> found) {
        double length = line.chord();
        double ux = (line.end().x() - line.start().x()) / length;
        double uy = (line.end().y() - line.start().y()) / length;
        double cx = arc.centreX() - line.start().x();
        double cy = arc.centreY() - line.start().y();
        double along = cx * ux + cy * uy;
        double off = cx * uy - cy * ux;
        double radius = arc.radius();
        double rest = radius - Math.abs(off);
        if (rest < -TOUCH_MM) {
            return;
        }
        double half = Math.sqrt(Math.max(0, rest * (radius + Math.abs(off))));
        add(
                line.start().x() + (along - half) * ux,
                line.start().y() + (along - half) * uy,
                a,
                b,
                found);
        if (half > 0) {
            add(
                    line.start().x() + (along + half) * ux,
                    line.start().y() + (along + half) * uy,
                    a,
                    b,
                    found);
        }
    }

    private static void circles(Stroke a, Stroke b, List<Crossing> found) {
        double dx = b.centreX() - a.centreX();
        double dy = b.centreY() - a.centreY();
        double between = Math.hypot(dx, dy);
        double ra = a.radius();
        double rb = b.radius();
        if (between < TOUCH_MM
                || between > ra + rb + TOUCH_MM
                || between < Math.abs(ra - rb) - TOUCH_MM) {
            return;
        }
        double along = (between + (ra - rb) * ((ra + rb) / between)) / 2;
        double half = Math.sqrt(Math.max(0, (ra - along) * (ra + along)));
        double ux = dx / between;
        double uy = dy / between;
        double mx = a.centreX() + along * ux;
        double my = a.centreY() + along * uy;
        add(mx - half * uy, my + half * ux, a, b, found);
        if (half > 0) {
            add(mx + half * uy, my - half * ux, a, b, found);
        }
    }

    private static void add(double x, double y, Stroke a, Stroke b, List<Crossing> found) {
        if (!(Math.abs(x) <= Spot.LIMIT_MM && Math.abs(y) <= Spot.LIMIT_MM)) {
            return;
        }
        Spot spot = new Spot(x, y);
        Crossing crossing = polished(a, a.shareOf(spot), b, b.shareOf(spot));
        if (a.holds(crossing.shareOfA) && b.holds(crossing.shareOfB)) {
            found.add(crossing);
        }
    }

    /** Newton's steps on the two shares: the closed form loses digits to a far centre. */
    private static Crossing polished(Stroke a, double startA, Stroke b, double startB) {
        double s = startA;
        double t = startB;
        for (int step = 0; step < POLISHING && a.holds(s) && b.holds(t); step++) {
            Spot onA = a.at(s);
            Spot onB = b.at(t);
            double dx = onB.x() - onA.x();
            double dy = onB.y() - onA.y();
            double angleA = a.startRad() + s * a.sweepRad();
            double angleB = b.startRad() + t * b.sweepRad();
            double cross = Math.sin(angleB - angleA);
            if (Math.abs(cross) < TANGENT) {
                break;
            }
            s += (dx * Math.sin(angleB) - dy * Math.cos(angleB)) / cross / a.length();
            t += (dx * Math.sin(angleA) - dy * Math.cos(angleA)) / cross / b.length();
        }
        return new Crossing(a.holds(s) ? a.at(s) : a.start(), s, t);
    }
}
