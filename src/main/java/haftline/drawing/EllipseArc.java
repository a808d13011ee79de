package haftline.drawing;

import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.List;

/**
 * An arc of an ellipse whose axes lie along x and y, less than a full turn: a dome on a butt.
 *
 * <p>Its place is centre + (a cos t, b sin t); t is the parameter, not the direction from the
 * centre.
 *
 * @param start where it starts, on the ellipse
 * @param end where it ends, on the ellipse, another place
 * @param centre centre of the ellipse
 * @param semiXMm half the axis along x, over 0
 * @param semiYMm half the axis along y, over 0
 * @param anticlockwise which way round
 */
public record EllipseArc(
        Vertex start,
        Vertex end,
        Vertex centre,
        double semiXMm,
        double semiYMm,
        boolean anticlockwise)
        implements Segment {
    /** How far, in parts of the ellipse's own size, an end may be off it: rounding, no more. */
    private static final double ON_ELLIPSE = 1e-6;

    /**
     * Checks that the ends are two places on the ellipse.
     *
     * @throws IllegalArgumentException where an axis is not over 0, or an end is off the ellipse
     */
    public EllipseArc {
        Segment.requireDistinct("ellipse arc", start, end);
        Checks.within("semi-axis x", semiXMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
        Checks.within("semi-axis y", semiYMm, Double.MIN_NORMAL, Vertex.LIMIT_MM);
        for (Vertex vertex : List.of(start, end)) {
            double reach =
                    Math.hypot(
                            (vertex.xMm() - centre.xMm()) / semiXMm,
                            (vertex.yMm() - centre.yMm()) / semiYMm);
            Checks.within(vertex + " on the ellipse", reach, 1 - ON_ELLIPSE, 1 + ON_ELLIPSE);
        }
    }

    /**
     * Parameter of the start.
     *
     * @return degrees in [0, 360)
     */
    public double startDeg() {
        return parameterDeg(start);
    }

    /**
     * Parameter swept.
     *
     * @return degrees, positive anticlockwise, between -360 and 360, not 0
     */
    public double sweepDeg() {
        double forward = Angle.normalised(parameterDeg(end) - parameterDeg(start));
        return anticlockwise ? forward : forward - Angle.FULL_TURN_DEG;
    }

    @Override
    public Bounds bounds() {
        Bounds bounds = Bounds.of(start, end);
        double from = anticlockwise ? startDeg() : parameterDeg(end);
        double sweep = Math.abs(sweepDeg());
        for (int quadrant = 0; quadrant < 4; quadrant++) {
            double parameter = 90.0 * quadrant;
            if (Angle.normalised(parameter - from) < sweep) {
                Vertex extreme = at(parameter);
                bounds = bounds.with(extreme.xMm(), extreme.yMm());
            }
        }
        return bounds;
    }

    @Override
    public double sweptAreaMm2() {
        // The sector about the centre is a b sweep / 2; moved off the origin it gains a triangle's
        // worth.
        double sector = semiXMm * semiYMm * Math.toRadians(sweepDeg()) / 2;
        double moved =
                centre.xMm() * (end.yMm() - start.yMm()) - centre.yMm() * (end.xMm() - start.xMm());
        return sector + moved / 2;
    }

    @Override
    public EllipseArc reversed() {
        return new EllipseArc(end, start, centre, semiXMm, semiYMm, !anticlockwise);
    }

    @Override
    public EllipseArc mirrored() {
        return new EllipseArc(
                start.mirrored(),
                end.mirrored(),
                centre.mirrored(),
                semiXMm,
                semiYMm,
                !anticlockwise);
    }

    @Override
    public List<Vertex> chords(double toleranceMm) {
        Segment.requireTolerance(toleranceMm);
        // A chord over a parameter step h is off by at most the larger semi-axis x (1 - cos(h/2)).
        double stepDeg = Math.toDegrees(Arc.chordRad(Math.max(semiXMm, semiYMm), toleranceMm));
        int count = (int) Math.ceil(Math.abs(sweepDeg()) / stepDeg);
        List<Vertex> vertices = new ArrayList<>(count);
        for (int i = 1; i < count; i++) {
            vertices.add(at(startDeg() + sweepDeg() * i / count));
        }
        vertices.add(end);
        return vertices;
    }

    private Vertex at(double parameterDeg) {
        return new Vertex(
                centre.xMm() + semiXMm * Angle.cos(parameterDeg),
                centre.yMm() + semiYMm * Angle.sin(parameterDeg));
    }

    private double parameterDeg(Vertex vertex) {
        return Angle.of(
                (vertex.xMm() - centre.xMm()) / semiXMm, (vertex.yMm() - centre.yMm()) / semiYMm);
    }
}
