package haftline.drawing;

import java.util.List;

/**
 * A straight line.
 *
 * @param start where it starts
 * @param end where it ends, another place
 */
public record Line(Vertex start, Vertex end) implements Segment {
    /**
     * Checks that the line goes somewhere.
     *
     * @throws IllegalArgumentException where start and end are one place
     */
    public Line {
        Segment.requireDistinct("line", start, end);
    }

    @Override
    public Bounds bounds() {
        return Bounds.of(start, end);
    }

    @Override
    public double sweptAreaMm2() {
        return (start.xMm() * end.yMm() - end.xMm() * start.yMm()) / 2;
    }

    @Override
    public Line reversed() {
        return new Line(end, start);
    }

    @Override
    public Line mirrored() {
        return new Line(start.mirrored(), end.mirrored());
    }

    @Override
    public List<Vertex> chords(double toleranceMm) {
        Segment.requireTolerance(toleranceMm);
        return List.of(end);
    }
}
