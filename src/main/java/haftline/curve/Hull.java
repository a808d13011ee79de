package haftline.curve;

/** Cheap bounds of a segment's radius, never inside the true ones. */
final class Hull {
    private Hull() {}

    static double low(Segment segment) {
        if (segment instanceof GraphCubic c) {
            return Math.min(
                    Math.min(c.r0(), c.r1()), Math.min(c.firstControlR(), c.secondControlR()));
        }
        if (segment instanceof CircularArc a) {
            return Math.min(a.r0(), a.r1()) - Math.max(0, a.bulge()) * a.chord() / 2;
        }
        if (segment instanceof EllipseQuarter e) {
            return e.upper() ? e.centreR() : e.centreR() - e.semiR();
        }
        StraightLine line = (StraightLine) segment;
        return Math.min(line.r0(), line.r1());
    }

    static double high(Segment segment) {
        if (segment instanceof GraphCubic c) {
            return Math.max(
                    Math.max(c.r0(), c.r1()), Math.max(c.firstControlR(), c.secondControlR()));
        }
        if (segment instanceof CircularArc a) {
            return Math.max(a.r0(), a.r1()) - Math.min(0, a.bulge()) * a.chord() / 2;
        }
        if (segment instanceof EllipseQuarter e) {
            return e.upper() ? e.centreR() + e.semiR() : e.centreR();
        }
        StraightLine line = (StraightLine) segment;
        return Math.max(line.r0(), line.r1());
    }
}
