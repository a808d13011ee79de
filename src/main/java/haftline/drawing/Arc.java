package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * An arc of a circle, less than a full turn, held by its two ends and its bulge.
 *
 * <p>The bulge is the tangent of a quarter of the angle swept, positive anticlockwise: 0 would be
 * straight, 1 is a half circle (as defined in the published DXF reference). Ends and bulge are kept
 * rather than centre and angles because the ends are what neighbours share: they stay exact, and
 * centre, radius and angles follow. The rise of the arc over its chord is |bulge| x chord / 2.
 *
 * @param start where it starts
 * @param end where it ends, another place
 * @param bulge tangent of a quarter of the swept angle, not 0, at most {@link #GREATEST_BULGE}
 */
public record Arc(Vertex start, Vertex end, double bulge) implements Segment {
    /**
     * A bulge of 1000 leaves a gap of a 1600th of a turn: what sweeps more is drawn as a circle.
     */
    public static final double GREATEST_BULGE = 1000;

    /**
     * Checks that the arc goes somewhere and is bent.
     *
     * @throws IllegalArgumentException where start and end are one place, or the bulge is 0 or too
     *     great
     */
    public Arc {
        Segment.requireDistinct("arc", start, end);
        Checks.within("bulge", bulge, -GREATEST_BULGE, GREATEST_BULGE);
        if (bulge == 0) {
            throw new IllegalArgumentException("bulge 0: expected an arc, use a line");
        }
    }

    /**
     * An arc from its circle and angles; the ends follow to rounding.
     *
     * @param centre centre of the circle
     * @param radiusMm radius, over 0
     * @param startDeg direction from the centre to the start, anticlockwise from +x
     * @param sweepDeg angle swept, positive anticlockwise, between -360 and 360, not 0
     * @return the arc
     * @throws IllegalArgumentException where the radius or the sweep is out of range
     */
    public static Arc of(Vertex centre, double radiusMm, double startDeg, double sweepDeg) {
        Checks.within("radius", radiusMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
        Checks.within("sweep", sweepDeg, -Angle.FULL_TURN_DEG, Angle.FULL_TURN_DEG);
        return new Arc(
                centre.towards(startDeg, radiusMm),
                centre.towards(startDeg + sweepDeg, radiusMm),
                bulgeOf(sweepDeg));
    }

    /**
     * An arc between two given ends about a given centre; the ends are kept to the last bit and the
     * angle between them is taken from the centre.
     *
     * @param start where it starts
     * @param end where it ends
     * @param centre centre of the circle, as far from the one as from the other
     * @param anticlockwise which way round
     * @return the arc
     */
    public static Arc about(Vertex start, Vertex end, Vertex centre, boolean anticlockwise) {
        double sx = start.xMm() - centre.xMm();
        double sy = start.yMm() - centre.yMm();
        double ex = end.xMm() - centre.xMm();
        double ey = end.yMm() - centre.yMm();
        // The angle between the two radii, well conditioned however small it is.
        double betweenRad = Math.atan2(sx * ey - sy * ex, sx * ex + sy * ey);
        double sweepRad = betweenRad;
        if (anticlockwise && betweenRad < 0) {
            sweepRad += 2 * Math.PI;
        } else if (!anticlockwise && betweenRad > 0) {
            sweepRad -= 2 * Math.PI;
        }
        return new Arc(start, end, Math.tan(sweepRad / 4));
    }

    /**
     * The bulge of an angle.
     *
     * @param sweepDeg angle swept in degrees, positive anticlockwise
     * @return its bulge
     */
    public static double bulgeOf(double sweepDeg) {
        return Math.tan(Math.toRadians(sweepDeg) / 4);
    }

    /**
     * The angle swept.
     *
     * @return degrees, positive anticlockwise, between -360 and 360
     */
    public double sweepDeg() {
        return Math.toDegrees(4 * Math.atan(bulge));
    }

    /**
     * The radius.
     *
     * @return mm, over 0
     */
    public double radiusMm() {
        return start.distanceMm(end) * (1 + bulge * bulge) / (4 * Math.abs(bulge));
    }

    /**
     * How far the middle of the arc stands off its chord.
     *
     * @return mm, over 0
     */
    public double riseMm() {
        return start.distanceMm(end) * Math.abs(bulge) / 2;
    }

    /**
     * The centre; beyond {@link Vertex#LIMIT_MM} for an arc that is all but straight, therefore
     * given as plain numbers through {@link #centreXMm()} and {@link #centreYMm()} too.
     *
     * @return the centre
     * @throws IllegalArgumentException where it lies beyond the limit
     */
    public Vertex centre() {
        return new Vertex(centreXMm(), centreYMm());
    }

    /**
     * The centre's x.
     *
     * @return mm
     */
    public double centreXMm() {
        double dy = end.yMm() - start.yMm();
        return (start.xMm() + end.xMm()) / 2 - dy * (1 - bulge * bulge) / (4 * bulge);
    }

    /**
     * The centre's y.
     *
     * @return mm
     */
    public double centreYMm() {
        double dx = end.xMm() - start.xMm();
        return (start.yMm() + end.yMm()) / 2 + dx * (1 - bulge * bulge) / (4 * bulge);
    }

    /**
     * Direction from the centre to the start.
     *
     * @return degrees in [0, 360), anticlockwise from +x
     */
    public double startDeg() {
        return Angle.of(start.xMm() - centreXMm(), start.yMm() - centreYMm());
    }

    /**
     * Direction from the centre to the end.
     *
     * @return degrees in [0, 360), anticlockwise from +x
     */
    public double endDeg() {
        return Angle.of(end.xMm() - centreXMm(), end.yMm() - centreYMm());
    }

    @Override
    public Bounds bounds() {
        Bounds bounds = Bounds.of(start, end);
        double radius = radiusMm();
        double from = bulge > 0 ? startDeg() : endDeg();
        double sweep = Math.abs(sweepDeg());
        for (int quadrant = 0; quadrant < 4; quadrant++) {
            double direction = 90.0 * quadrant;
            if (Angle.normalised(direction - from) < sweep) {
                bounds =
                        bounds.with(
                                centreXMm() + radius * Angle.cos(direction),
                                centreYMm() + radius * Angle.sin(direction));
            }
        }
        return bounds;
    }

    @Override
    public double sweptAreaMm2() {
        double chordArea = (start.xMm() * end.yMm() - end.xMm() * start.yMm()) / 2;
        double sweepRad = 4 * Math.atan(bulge);
        double radius = radiusMm();
        return chordArea + radius * radius * (sweepRad - Math.sin(sweepRad)) / 2;
    }

    @Override
    public Arc reversed() {
        return new Arc(end, start, -bulge);
    }

    @Override
    public Arc mirrored() {
        return new Arc(start.mirrored(), end.mirrored(), -bulge);
    }

    @Override
    public List<Vertex> chords(double toleranceMm) {
        Segment.requireTolerance(toleranceMm);
        double sweepRad = 4 * Math.atan(bulge);
        double radius = radiusMm();
        int count = (int) Math.ceil(Math.abs(sweepRad) / chordRad(radius, toleranceMm));
        List<Vertex> vertices = new ArrayList<>(count);
        double from = Math.atan2(start.yMm() - centreYMm(), start.xMm() - centreXMm());
        for (int i = 1; i < count; i++) {
            double angle = from + sweepRad * i / count;
            vertices.add(
                    new Vertex(
                            centreXMm() + radius * Math.cos(angle),
                            centreYMm() + radius * Math.sin(angle)));
        }
        vertices.add(end);
        return vertices;
    }

    /**
     * The angle over which a chord stands a tolerance off its circle, radius (1 - cos(a/2)),
     * written with the half angle so that it does not cancel on an arc that is all but straight.
     */
    static double chordRad(double radiusMm, double toleranceMm) {
        return 4 * Math.asin(Math.sqrt(Math.min(toleranceMm / radiusMm / 2, 0.5)));
    }
}
