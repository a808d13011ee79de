package haftline.template;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * One straight line or circular arc between two places. Kept by its ends and its bulge, the tangent
 * of a quarter of the angle swept as in the published DXF reference (group 42): 0 is straight, 1 a
 * half circle, positive anticlockwise. Ends that are shared stay shared to the last bit.
 *
 * @param start where it starts
 * @param end where it ends, another place
 * @param bulge tan(sweep / 4), -1 to 1
 */
public record Stroke(Spot start, Spot end, double bulge) {
    /** Rounding by which a place may lie past the end of an arc and still be on it, radians. */
    private static final double END_ROUNDING = 1e-9;

    /** A turn this near to straight back needs a closer look, radians. */
    private static final double BACK_RAD = 1e-6;

    /** With less bulge the centre is so far that a distance from it loses digits. */
    private static final double SHALLOW = 1e-3;

    private static final double[] QUARTER_COS = {1, 0, -1, 0};
    private static final double[] QUARTER_SIN = {0, 1, 0, -1};

    /** Checks that it goes somewhere and is at most a half circle. */
    public Stroke {
        if (start.equals(end)) {
            throw new IllegalArgumentException(
                    "stroke from and to " + start + ": expected two different places");
        }
        Checks.within("bulge", bulge, -1, 1);
    }

    /**
     * A straight line.
     *
     * @param start where it starts
     * @param end where it ends
     * @return the line
     */
    public static Stroke line(Spot start, Spot end) {
        return new Stroke(start, end, 0);
    }

    /**
     * An arc about a centre between two directions.
     *
     * @param centre the centre
     * @param radiusMm radius, over 0
     * @param fromRad direction of the start seen from the centre
     * @param sweepRad angle swept, positive anticlockwise, at most half a turn
     * @return the arc
     */
    static Stroke arc(Spot centre, double radiusMm, double fromRad, double sweepRad) {
        double to = fromRad + sweepRad;
        return new Stroke(
                centre.moved(radiusMm * Math.cos(fromRad), radiusMm * Math.sin(fromRad)),
                centre.moved(radiusMm * Math.cos(to), radiusMm * Math.sin(to)),
                Math.tan(sweepRad / 4));
    }

    /**
     * Whether it is a line.
     *
     * @return true for a bulge of 0
     */
    public boolean isStraight() {
        return bulge == 0;
    }

    /** Length of the straight way between the ends, mm. */
    double chord() {
        return start.distance(end);
    }

    /**
     * Length along it.
     *
     * @return mm
     */
    public double length() {
        return isStraight() ? chord() : Math.abs(sweepRad()) * radius();
    }

    /** Angle swept, radians, positive anticlockwise. */
    double sweepRad() {
        return 4 * Math.atan(bulge);
    }

    /**
     * Radius.
     *
     * @return mm, infinite for a line
     */
    public double radius() {
        return chord() * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    }

    /** The centre's x; of a shallow arc it may lie far beyond any sheet. */
    double centreX() {
        return (start.x() + end.x()) / 2
                - (end.y() - start.y()) * (1 - bulge * bulge) / (4 * bulge);
    }

    /** The centre's y. */
    double centreY() {
        return (start.y() + end.y()) / 2
                + (end.x() - start.x()) * (1 - bulge * bulge) / (4 * bulge);
    }

    /** Direction of travel at the start, radians. */
    double startRad() {
        return Math.atan2(end.y() - start.y(), end.x() - start.x()) - sweepRad() / 2;
    }

    /** Direction of travel at the end, radians. */
    double endRad() {
        return Math.atan2(end.y() - start.y(), end.x() - start.x()) + sweepRad() / 2;
    }

    /**
     * The turn from this stroke to the one that follows, radians, positive anticlockwise. A turn
     * straight back at the point of a cusp is told from its opposite by where the two lie.
     */
    double turnTo(Stroke next) {
        double turn = Math.IEEEremainder(next.startRad() - endRad(), 2 * Math.PI);
        if (Math.PI - Math.abs(turn) > BACK_RAD) {
            return turn;
        }
        double near = Math.min(length(), next.length()) / 4;
        Spot in = at(1 - near / length());
        Spot out = next.at(near / next.length());
        double left =
                Math.cos(endRad()) * (out.y() - in.y()) - Math.sin(endRad()) * (out.x() - in.x());
        return left > 0 ? Math.PI : -Math.PI;
    }

    /**
     * The place at a share of its length, without the centre, so that a shallow arc loses nothing.
     */
    Spot at(double share) {
        if (share <= 0) {
            return start;
        }
        if (share >= 1) {
            return end;
        }
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        if (isStraight()) {
            return start.moved(share * dx, share * dy);
        }
        double half = sweepRad() / 2;
        // The chord to the share of the arc: length sin(share h) / sin(h), turned by (share - 1) h.
        double scale = Math.sin(share * half) / Math.sin(half);
        double turn = (share - 1) * half;
        double cos = scale * Math.cos(turn);
        double sin = scale * Math.sin(turn);
        return start.moved(cos * dx - sin * dy, sin * dx + cos * dy);
    }

    /** The share of its length at which the foot of a place on its line or circle lies. */
    double shareOf(Spot spot) {
        double dx = end.x() - start.x();
        double dy = end.y() - start.y();
        double ux = spot.x() - start.x();
        double uy = spot.y() - start.y();
        if (isStraight()) {
            return (ux * dx + uy * dy) / (dx * dx + dy * dy);
        }
        double cx = centreX();
        double cy = centreY();
        double ax = start.x() - cx;
        double ay = start.y() - cy;
        double bx = spot.x() - cx;
        double by = spot.y() - cy;
        double sweep = sweepRad();
        double angle = Math.atan2(ax * by - ay * bx, ax * bx + ay * by) * Math.signum(sweep);
        double size = Math.abs(sweep);
        // The angle is known up to a turn: take the one nearer to the arc's middle.
        if (angle < size / 2 - Math.PI) {
            angle += 2 * Math.PI;
        }
        return angle / size;
    }

    /** Shortest distance from a place, mm. */
    double distance(Spot spot) {
        double ends = Math.min(spot.distance(start), spot.distance(end));
        double share = shareOf(spot);
        if (!(share > 0 && share < 1)) {
            return ends;
        }
        double across;
        if (isStraight()) {
            double dx = end.x() - start.x();
            double dy = end.y() - start.y();
            across =
                    Math.abs(((spot.x() - start.x()) * dy - (spot.y() - start.y()) * dx) / chord());
        } else if (Math.abs(bulge) < SHALLOW) {
            across = spot.distance(at(share));
        } else {
            across = Math.abs(Math.hypot(spot.x() - centreX(), spot.y() - centreY()) - radius());
        }
        return Math.min(ends, across);
    }

    /** The part between two shares, 0 &lt;= from &lt; to &lt;= 1. */
    Stroke between(double from, double to) {
        return from == 0 && to == 1 ? this : between(from, at(from), to, at(to));
    }

    /** The part between two shares whose places are known already. */
    Stroke between(double from, Spot fromSpot, double to, Spot toSpot) {
        boolean whole = isStraight() || (from == 0 && to == 1);
        return new Stroke(fromSpot, toSpot, whole ? bulge : Math.tan(sweepRad() * (to - from) / 4));
    }

    /**
     * The same walked the other way.
     *
     * @return the reversed stroke
     */
    public Stroke reversed() {
        return new Stroke(end, start, -bulge);
    }

    /**
     * The stroke moved.
     *
     * @param dx along x, mm
     * @param dy along y, mm
     * @return the moved stroke
     */
    public Stroke moved(double dx, double dy) {
        return new Stroke(start.moved(dx, dy), end.moved(dx, dy), bulge);
    }

    /**
     * The stroke turned by half a turn about the origin.
     *
     * @return the turned stroke
     */
    public Stroke turned() {
        return new Stroke(start.turned(), end.turned(), bulge);
    }

    /** The stroke on the other side of the axis y = 0, walked the same way along x. */
    Stroke mirrored() {
        return new Stroke(new Spot(start.x(), -start.y()), new Spot(end.x(), -end.y()), -bulge);
    }

    /** Area between it and the origin, mm2, for the area of a loop (Green's theorem). */
    double sweptArea() {
        double flat = (start.x() * end.y() - end.x() * start.y()) / 2;
        if (isStraight()) {
            return flat;
        }
        double sweep = sweepRad();
        double radius = radius();
        return flat + radius * radius * (sweep - Math.sin(sweep)) / 2;
    }

    /** Least and greatest x and y. */
    Box box() {
        Box box = Box.of(start, end);
        if (isStraight()) {
            return box;
        }
        double radius = radius();
        double from = Math.atan2(start.y() - centreY(), start.x() - centreX());
        double sweep = sweepRad();
        for (int quarter = 0; quarter < 4; quarter++) {
            double turn = quarter * Math.PI / 2 - from;
            double along = sweep > 0 ? turn : -turn;
            along -= 2 * Math.PI * Math.floor(along / (2 * Math.PI));
            if (along < Math.abs(sweep)) {
                box =
                        box.with(
                                new Spot(
                                        centreX() + radius * QUARTER_COS[quarter],
                                        centreY() + radius * QUARTER_SIN[quarter]));
            }
        }
        return box;
    }

    /** Whether a share lies on the stroke, its ends included up to rounding. */
    boolean holds(double share) {
        double rounding =
                END_ROUNDING / (isStraight() ? Math.max(1, chord()) : Math.abs(sweepRad()));
        return share >= -rounding && share <= 1 + rounding;
    }

    /**
     * Places of a chain of chords, the start left out, the end included.
     *
     * @param toleranceMm greatest distance of the chords from the stroke, over 0
     * @return one place or more
     */
    public List<Spot> chords(double toleranceMm) {
        List<Spot> spots = new ArrayList<>();
        if (!isStraight()) {
            double step = 4 * Math.asin(Math.sqrt(Math.min(toleranceMm / radius() / 2, 0.5)));
            int count = (int) Math.ceil(Math.abs(sweepRad()) / step);
            for (int i = 1; i < count; i++) {
                spots.add(at((double) i / count));
            }
        }
        spots.add(end);
        return spots;
    }

    /**
     * The stroke at a distance to its right (positive) or left, or null where an arc has no such
     * offset because the distance reaches its centre.
     */
    Stroke toRight(double mm) {
        double from = startRad();
        double to = endRad();
        if (!isStraight() && radius() + Math.signum(bulge) * mm <= 0) {
            return null;
        }
        Spot a = start.moved(mm * Math.sin(from), -mm * Math.cos(from));
        Spot b = end.moved(mm * Math.sin(to), -mm * Math.cos(to));
        return a.equals(b) ? null : new Stroke(a, b, bulge);
    }
}
