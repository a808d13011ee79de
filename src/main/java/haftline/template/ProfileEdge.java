package haftline.template;

import haftline.curve.ArcFit;
import haftline.curve.CircularArc;
import haftline.curve.NearestDistance;
import haftline.curve.Outline;
import haftline.curve.Segment;
import haftline.curve.StraightLine;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/**
 * The edge of a profile: lines and arcs, single-valued in x, with steps square to the axis; the top
 * of a body that reaches down without end. Heights are counted from the axis and may be negative.
 *
 * <p>To grow such a body by a disc is to take the highest of the offset lines, the offset arcs and
 * the arcs about outer corners, and to shrink it is the same upside down ({@link Envelope}): exact,
 * and without loops that would have to be cut away. A body of this kind stays in one piece whatever
 * is done to it; whether a card cut along it does is for the card to say.
 */
public final class ProfileEdge {
    /**
     * Outlines refuse radii under the axis, offsets need them: inside, the axis lies this high. A
     * power of two, so that little more than the last three bits of a radius are lost.
     */
    private static final double LIFT_MM = 1024;

    /** Slope of 60 degrees, over which a follower jams (common practice, no source). */
    private static final double STEEPEST_RUN = Math.sqrt(3);

    /** A step under this is rounding, mm. */
    private static final double SAME_MM = 1e-6;

    private final Outline lifted;

    private ProfileEdge(Outline lifted) {
        this.lifted = lifted;
    }

    /**
     * The edge of an outline of straight lines and circular arcs.
     *
     * @param outline the outline
     * @return its edge
     * @throws IllegalArgumentException where a segment is neither line nor arc
     */
    public static ProfileEdge of(Outline outline) {
        return new ProfileEdge(mapped(outline, ProfileEdge::lift));
    }

    /**
     * The edge of any outline, turned into lines and arcs once.
     *
     * @param outline the outline
     * @param toleranceMm greatest distance of the arcs from it, mm
     * @return its edge
     */
    public static ProfileEdge fitted(Outline outline, double toleranceMm) {
        return of(ArcFit.of(outline, toleranceMm).outline());
    }

    private static Outline mapped(Outline outline, UnaryOperator<Segment> change) {
        return new Outline(outline.segments().stream().map(change).toList());
    }

    private static Segment lift(Segment segment) {
        return raised(segment, LIFT_MM);
    }

    private static Segment raised(Segment segment, double by) {
        if (segment instanceof StraightLine line) {
            return new StraightLine(line.x0(), line.r0() + by, line.x1(), line.r1() + by);
        }
        if (segment instanceof CircularArc arc) {
            return new CircularArc(arc.x0(), arc.r0() + by, arc.x1(), arc.r1() + by, arc.bulge());
        }
        throw new IllegalArgumentException(
                "profile edge: expected lines and arcs, not a "
                        + segment.getClass().getSimpleName());
    }

    /** Upside down about the lifted axis. */
    private static Segment overturned(Segment segment) {
        if (segment instanceof CircularArc arc) {
            return new CircularArc(
                    arc.x0(),
                    2 * LIFT_MM - arc.r0(),
                    arc.x1(),
                    2 * LIFT_MM - arc.r1(),
                    -arc.bulge());
        }
        StraightLine line = (StraightLine) segment;
        return new StraightLine(
                line.x0(), 2 * LIFT_MM - line.r0(), line.x1(), 2 * LIFT_MM - line.r1());
    }

    /** The edge as an outline again; only where no part of it lies under the axis. */
    Outline outline() {
        return mapped(lifted, segment -> raised(segment, -LIFT_MM));
    }

    /**
     * Where it starts.
     *
     * @return x, mm
     */
    public double startX() {
        return lifted.startX();
    }

    /**
     * Where it ends.
     *
     * @return x, mm
     */
    public double endX() {
        return lifted.endX();
    }

    /**
     * Height as x is reached from the ferrule's side.
     *
     * @param x place, mm, within the edge
     * @return mm from the axis
     */
    public double yBefore(double x) {
        return lifted.rBefore(x) - LIFT_MM;
    }

    /**
     * Height as x is left towards the butt.
     *
     * @param x place, mm, within the edge
     * @return mm from the axis
     */
    public double yAfter(double x) {
        return lifted.rAfter(x) - LIFT_MM;
    }

    /**
     * Least height.
     *
     * @return mm from the axis
     */
    public double leastY() {
        return lifted.least().r() - LIFT_MM;
    }

    /** Where it is lowest, x in mm. */
    double lowestX() {
        return lifted.least().x();
    }

    /**
     * Greatest height.
     *
     * @return mm from the axis
     */
    public double greatestY() {
        return lifted.greatest().r() - LIFT_MM;
    }

    /**
     * Shortest distance from a place to the edge, its steps included.
     *
     * @param spot the place
     * @return mm, 0 or more
     */
    public double distance(Spot spot) {
        return NearestDistance.ofPoint(lifted, spot.x(), spot.y() + LIFT_MM, true).distance();
    }

    /** Whether a place lies in the body under the edge. */
    boolean covers(Spot spot) {
        return spot.y() < Math.max(yBefore(spot.x()), yAfter(spot.x()));
    }

    /** The places where one piece ends and the next begins, both ends included, in order. */
    List<Double> joints() {
        List<Double> joints = new ArrayList<>();
        joints.add(startX());
        for (Segment segment : lifted.segments()) {
            joints.add(segment.endX());
        }
        return joints;
    }

    /**
     * The body grown by a disc: the edge offset outward.
     *
     * @param mm radius of the disc, 0 or more
     * @return the new edge; longer or shorter at its ends as their normals lean
     */
    public ProfileEdge grown(double mm) {
        return mm == 0 ? this : new ProfileEdge(Envelope.upper(EdgePieces.offsets(lifted, mm)));
    }

    /**
     * The body shrunk by a disc: the edge offset inward.
     *
     * @param mm radius of the disc, 0 or more
     * @return the new edge
     */
    public ProfileEdge shrunk(double mm) {
        if (mm == 0) {
            return this;
        }
        Outline hollow = mapped(lifted, ProfileEdge::overturned);
        Outline grown = Envelope.upper(EdgePieces.offsets(hollow, mm));
        return new ProfileEdge(mapped(grown, ProfileEdge::overturned));
    }

    /**
     * The edge offset along its normal.
     *
     * @param outwardMm distance, mm, negative inward
     * @return the new edge
     */
    public ProfileEdge offset(double outwardMm) {
        return outwardMm < 0 ? shrunk(-outwardMm) : grown(outwardMm);
    }

    /**
     * The least body that holds this one and is nowhere steeper than a slope: what a follower that
     * climbs no further leaves standing.
     *
     * @param steepestDeg degrees from the axis, over 0 and under 90
     * @return the eased edge; the same where nothing is steeper
     */
    public ProfileEdge eased(double steepestDeg) {
        double slope = Math.tan(Math.toRadians(steepestDeg));
        List<Segment> ramps = EdgePieces.ramps(lifted, slope);
        if (ramps.isEmpty()) {
            return this;
        }
        ramps.addAll(lifted.segments());
        return new ProfileEdge(Envelope.upper(ramps));
    }

    /**
     * The edge carried on straight and tangent past both ends, but no steeper than a follower can
     * run, 60 degrees.
     *
     * @param beforeMm how far before the start, mm along x, over 0
     * @param behindMm how far behind the end, mm along x, over 0
     * @return the longer edge
     */
    public ProfileEdge extended(double beforeMm, double behindMm) {
        double x0 = startX();
        double x1 = endX();
        double r0 = lifted.rAfter(x0);
        double r1 = lifted.rBefore(x1);
        double in = runSlope(lifted.segments().get(0).slope(x0));
        double out = runSlope(lifted.segments().get(lifted.segments().size() - 1).slope(x1));
        List<Segment> all = new ArrayList<>(lifted.segments().size() + 2);
        all.add(new StraightLine(x0 - beforeMm, r0 - beforeMm * in, x0, r0));
        all.addAll(lifted.segments());
        all.add(new StraightLine(x1, r1, x1 + behindMm, r1 + behindMm * out));
        return new ProfileEdge(new Outline(all));
    }

    private static double runSlope(double slope) {
        return Math.max(-STEEPEST_RUN, Math.min(STEEPEST_RUN, slope));
    }

    /**
     * The edge between two places.
     *
     * @param fromX start, mm, within the edge
     * @param toX end, mm, within the edge
     * @return the part
     */
    public ProfileEdge part(double fromX, double toX) {
        return new ProfileEdge(lifted.part(fromX, toX));
    }

    /** The edge, nowhere lower than a height. */
    ProfileEdge notBelow(double y) {
        List<Segment> pieces = new ArrayList<>(lifted.segments());
        pieces.add(StraightLine.level(startX(), endX(), y + LIFT_MM));
        return new ProfileEdge(Envelope.upper(pieces));
    }

    /** The edge with a disc's upper half cut out above it: relief for a corner. */
    ProfileEdge relieved(Spot centre, double radiusMm) {
        List<Segment> pieces = new ArrayList<>(lifted.segments());
        double from = Math.max(startX(), centre.x() - radiusMm);
        double to = Math.min(endX(), centre.x() + radiusMm);
        pieces.add(CircularArc.about(centre.x(), centre.y() + LIFT_MM, radiusMm, from, to, true));
        return new ProfileEdge(Envelope.upper(pieces));
    }

    /**
     * Heights multiplied, as a pivoting copier does, and turned into arcs again.
     *
     * @param factor by what, over 0
     * @param toleranceMm greatest distance of the arcs from the scaled curve, mm
     * @return the scaled edge
     */
    public ProfileEdge scaled(double factor, double toleranceMm) {
        return factor == 1
                ? this
                : new ProfileEdge(RadialScale.of(lifted, LIFT_MM, factor, toleranceMm));
    }

    /**
     * The edge as lines and arcs in order of x, steps as upright lines.
     *
     * @return one stroke or more, each starting where the one before ends
     */
    public List<Stroke> strokes() {
        List<Stroke> strokes = new ArrayList<>();
        Spot at = null;
        for (Segment segment : lifted.segments()) {
            Spot start = new Spot(segment.startX(), segment.r(segment.startX()) - LIFT_MM);
            Spot end = new Spot(segment.endX(), segment.r(segment.endX()) - LIFT_MM);
            if (at != null && Math.abs(at.y() - start.y()) > SAME_MM) {
                strokes.add(Stroke.line(at, start));
            } else if (at != null) {
                start = at;
            }
            double bulge = segment instanceof CircularArc arc ? arc.bulge() : 0;
            strokes.add(new Stroke(start, end, bulge));
            at = end;
        }
        return strokes;
    }
}
