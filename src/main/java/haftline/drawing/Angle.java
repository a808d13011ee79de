package haftline.drawing;

/** Angles in degrees, with the right angles exact: cos 90 is 0, not 6e-17. */
final class Angle {
    static final double FULL_TURN_DEG = 360;

    private Angle() {}

    static double cos(double deg) {
        return sin(deg + 90);
    }

    static double sin(double deg) {
        double turned = normalised(deg);
        if (turned % 180 == 0) {
            return 0;
        }
        if (turned % 90 == 0) {
            return turned == 90 ? 1 : -1;
        }
        return Math.sin(Math.toRadians(turned));
    }

    /** The same direction in [0, 360). */
    static double normalised(double deg) {
        double rest = deg % FULL_TURN_DEG;
        double positive = rest < 0 ? rest + FULL_TURN_DEG : rest;
        // A tiny negative angle rounds up to the full turn itself.
        return positive >= FULL_TURN_DEG ? 0 : positive + 0.0;
    }

    /** Direction of a displacement, in [0, 360). */
    static double of(double dx, double dy) {
        return normalised(Math.toDegrees(Math.atan2(dy, dx)));
    }
}
