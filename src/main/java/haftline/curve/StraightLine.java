package haftline.curve;

/**
 * A straight line: a cylinder or a cone when it is turned.
 *
 * @param x0 start, mm
 * @param r0 radius at the start, mm
 * @param x1 end, mm, greater than x0
 * @param r1 radius at the end, mm
 */
public record StraightLine(double x0, double r0, double x1, double r1) implements Segment {
    /** Refuses a line that does not run forward or goes below the axis. */
    public StraightLine {
        Checks.increasing(x0, x1);
        Checks.radius("r0", r0);
        Checks.radius("r1", r1);
    }

    /**
     * Returns a level line, a cylinder.
     *
     * @param x0 start, mm
     * @param x1 end, mm
     * @param r radius, mm
     * @return the line
     */
    public static StraightLine level(double x0, double x1, double r) {
        return new StraightLine(x0, r, x1, r);
    }

    @Override
    public double startX() {
        return x0;
    }

    @Override
    public double endX() {
        return x1;
    }

    @Override
    public double r(double x) {
        // From the nearer end, so that both ends are met exactly.
        double h = x1 - x0;
        return x - x0 <= x1 - x ? r0 + (r1 - r0) * ((x - x0) / h) : r1 - (r1 - r0) * ((x1 - x) / h);
    }

    @Override
    public double slope(double x) {
        return slope();
    }

    /**
     * Returns dr/dx, the same everywhere.
     *
     * @return the slope
     */
    public double slope() {
        return (r1 - r0) / (x1 - x0);
    }

    @Override
    public double curvature(double x) {
        return 0;
    }

    @Override
    public Moments moments() {
        double h = x1 - x0;
        double mid = 0.5 * (x0 + x1);
        double mean = 0.5 * (r0 + r1);
        double half = 0.5 * (r1 - r0);
        // About the middle r = mean + half * t, x = mid + (h/2) t, t in [-1, 1]; integrals of even
        // powers only, so nothing cancels.
        double mm = mean * mean;
        double dd = half * half;
        double volume = Math.PI * h * (mm + dd / 3);
        double first = Math.PI * h * h * mean * half / 3;
        double second = Math.PI * h * h * h / 4 * (mm / 3 + dd / 5);
        double axis = Math.PI / 2 * h * (mm * mm + 2 * mm * dd + dd * dd / 5);
        return new Moments(
                volume, first + mid * volume, second + mid * (2 * first + mid * volume), axis);
    }

    @Override
    public Segment part(double fromX, double toX) {
        Checks.inside("fromX", fromX, x0, x1);
        Checks.inside("toX", toX, x0, x1);
        return new StraightLine(fromX, r(fromX), toX, r(toX));
    }

    @Override
    public Segment shifted(double dx) {
        return new StraightLine(x0 + dx, r0, x1 + dx, r1);
    }

    @Override
    public Gap leastAbove(double c, double m, double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        double a = Math.max(fromX, x0);
        double b = Math.min(toX, x1);
        double atA = r(a) - (c + m * a);
        double atB = r(b) - (c + m * b);
        return atB < atA ? new Gap(b, atB) : new Gap(a, atA);
    }

    @Override
    public Gap greatestAbove(double c, double m, double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        double a = Math.max(fromX, x0);
        double b = Math.min(toX, x1);
        double atA = r(a) - (c + m * a);
        double atB = r(b) - (c + m * b);
        return atB > atA ? new Gap(b, atB) : new Gap(a, atA);
    }

    @Override
    public double steepest(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        return Math.abs(slope());
    }

    @Override
    public BendRadius tightestConcave(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        return BendRadius.NONE;
    }

    @Override
    public BendRadius tightestConvex(double fromX, double toX) {
        Checks.overlap(fromX, toX, x0, x1);
        return BendRadius.NONE;
    }

    @Override
    public double arcLength(double toleranceMm) {
        return length();
    }

    @Override
    public double surfaceArea(double toleranceMm2) {
        return Math.PI * (r0 + r1) * length();
    }

    /**
     * Returns the length.
     *
     * @return mm
     */
    public double length() {
        return Math.sqrt((x1 - x0) * (x1 - x0) + (r1 - r0) * (r1 - r0));
    }
}
