package haftline.curve;

/**
 * What a circular arc is evaluated from: the sines and cosines of its end tangents and its
 * curvature. Places are reckoned from the nearer end, so that a pole there keeps all its figures.
 */
record ArcFrame(
        CircularArc arc, double sin0, double cos0, double sin1, double cos1, double curvature) {
    static ArcFrame of(CircularArc arc) {
        double dx = arc.x1() - arc.x0();
        double dr = arc.r1() - arc.r0();
        double b = arc.bulge();
        // Cosine and sine of half the sweep, which each tangent stands off the chord.
        double w = 1 + b * b;
        double chord = arc.chord();
        double cosHalf = (1 - b * b) / (w * chord);
        double sinHalf = 2 * b / (w * chord);
        return new ArcFrame(
                arc,
                dr * cosHalf - dx * sinHalf,
                Math.max(0, dx * cosHalf + dr * sinHalf),
                dr * cosHalf + dx * sinHalf,
                Math.max(0, dx * cosHalf - dr * sinHalf),
                2 * sinHalf);
    }

    private boolean fromStart(double x) {
        return x - arc.x0() <= arc.x1() - x;
    }

    /** Sine of the tangent's angle, linear in x. */
    double sin(double x) {
        double s =
                fromStart(x)
                        ? sin0 + curvature * (x - arc.x0())
                        : sin1 + curvature * (x - arc.x1());
        return Math.max(-1, Math.min(1, s));
    }

    /** Cosine of the tangent's angle. */
    double cos(double x) {
        boolean start = fromStart(x);
        double sin = start ? sin0 : sin1;
        double cos = start ? cos0 : cos1;
        double w = curvature * (start ? x - arc.x0() : x - arc.x1());
        return Math.sqrt(Math.max(0, cos * cos - w * (2 * sin + w)));
    }

    double slope(double x) {
        return sin(x) / cos(x);
    }

    double r(double x) {
        boolean start = fromStart(x);
        double u = start ? x - arc.x0() : x - arc.x1();
        double near = start ? arc.r0() : arc.r1();
        if (u == 0) {
            return near;
        }
        return near + u * (sin(x) + (start ? sin0 : sin1)) / (cos(x) + (start ? cos0 : cos1));
    }

    /** Where the tangent has this sine, on the whole circle. */
    double placeOfSine(double sine) {
        return Math.abs(sine - sin0) <= Math.abs(sine - sin1)
                ? arc.x0() + (sine - sin0) / curvature
                : arc.x1() + (sine - sin1) / curvature;
    }
}
