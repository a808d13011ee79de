package haftline.write.stl;

import haftline.curve.CircularArc;
import haftline.curve.EllipseQuarter;
import haftline.curve.GraphCubic;
import haftline.curve.Outline;
import haftline.curve.Point;
import haftline.curve.Segment;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Handle;
import java.util.ArrayList;
import java.util.List;

/**
 * The edge of the wood in the half-plane as a chain of chords from the axis to the axis: from the
 * tang bore's deepest point to its mouth, over the tenon's face and along the outline to the butt,
 * and down the cap's bore, or to the butt's middle where there is none. Turned about the axis it is
 * a closed surface.
 */
final class ProfileChain {
    /** Places closer than this are one: a tenth of a micrometre, far under any tolerance. */
    private static final double SAME_MM = 1e-4;

    private final double toleranceMm;
    private final List<Point> points = new ArrayList<>();

    private ProfileChain(double toleranceMm) {
        this.toleranceMm = toleranceMm;
    }

    /**
     * The chain of a handle whose bores stay in the wood.
     *
     * @param handle the handle
     * @param toleranceMm greatest distance between curve and chords, mm
     * @return first and last point on the axis, all others off it
     */
    static List<Point> of(Handle handle, double toleranceMm) {
        ProfileChain chain = new ProfileChain(toleranceMm);
        chain.bore(handle.tangBore(), true);
        chain.outline(handle.outline());
        handle.capBore().ifPresent(bore -> chain.bore(bore, false));
        chain.close(handle.buttX());
        return List.copyOf(chain.points);
    }

    private void bore(Bore bore, boolean outwards) {
        BoreProfile edge = BoreProfile.of(bore);
        for (int i = 0; i < edge.size(); i++) {
            int corner = outwards ? edge.size() - 1 - i : i;
            add(bore.xAt(edge.depth(corner)), edge.radius(corner));
        }
    }

    private void outline(Outline outline) {
        for (Segment segment : outline.segments()) {
            add(segment.startX(), segment.r(segment.startX()));
            int count = chords(segment);
            for (int i = 1; i < count; i++) {
                Point point = at(segment, (double) i / count);
                add(point.x(), point.r());
            }
            add(segment.endX(), segment.r(segment.endX()));
        }
    }

    /** How many chords a segment needs. */
    private int chords(Segment segment) {
        if (segment instanceof GraphCubic cubic) {
            // A chord over h is off by at most h^2/8 of the greatest second derivative, which lies
            // at an end, being linear.
            double bend = Math.max(Math.abs(cubic.startSecond()), Math.abs(cubic.endSecond()));
            double length = cubic.x1() - cubic.x0();
            return atLeastOne(length * Math.sqrt(bend / (8 * toleranceMm)));
        }
        if (segment instanceof CircularArc arc) {
            return atLeastOne(4 * Math.atan(Math.abs(arc.bulge())) / chordRad(arc.radius()));
        }
        if (segment instanceof EllipseQuarter ellipse) {
            double sweep = ellipse.parameter(ellipse.startX()) - ellipse.parameter(ellipse.endX());
            return atLeastOne(sweep / chordRad(Math.max(ellipse.semiX(), ellipse.semiR())));
        }
        return 1;
    }

    private static int atLeastOne(double count) {
        return (int) Math.max(1, Math.ceil(count));
    }

    private double chordRad(double radiusMm) {
        return TurnedMesh.chordRad(radiusMm, toleranceMm);
    }

    /** The place at a share of the way: of x for a cubic, of the angle for what is round. */
    private static Point at(Segment segment, double share) {
        if (segment instanceof CircularArc arc) {
            return onArc(arc, share);
        }
        double x = segment.startX() + share * (segment.endX() - segment.startX());
        if (segment instanceof EllipseQuarter ellipse) {
            double from = ellipse.parameter(ellipse.startX());
            double to = ellipse.parameter(ellipse.endX());
            x = ellipse.centreX() + ellipse.semiX() * Math.cos(from + share * (to - from));
        }
        double within = Math.max(segment.startX(), Math.min(segment.endX(), x));
        return new Point(within, segment.r(within));
    }

    /** From the chord and the angle, so that the centre of a shallow arc is not wanted. */
    private static Point onArc(CircularArc arc, double share) {
        double half = 2 * Math.atan(arc.bulge());
        double along = Math.sin(half * share) * Math.cos(half * (1 - share)) / Math.sin(half);
        double across = Math.sin(half * share) * Math.sin(half * (1 - share)) / Math.sin(half);
        double dx = arc.x1() - arc.x0();
        double dr = arc.r1() - arc.r0();
        return new Point(arc.x0() + along * dx + across * dr, arc.r0() + along * dr - across * dx);
    }

    private void add(double x, double r) {
        if (!points.isEmpty()) {
            Point last = points.get(points.size() - 1);
            if (Math.hypot(x - last.x(), r - last.r()) < SAME_MM) {
                return;
            }
        }
        points.add(new Point(x, r < SAME_MM ? 0 : r));
    }

    /** Without a bore the butt ends in its pole, or in a flat face whose middle is the pole. */
    private void close(double buttX) {
        if (points.get(points.size() - 1).r() > 0) {
            points.add(new Point(buttX, 0));
        }
    }
}
