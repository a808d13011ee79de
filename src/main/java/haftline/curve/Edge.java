package haftline.curve;

/**
 * A straight edge in any direction: a bore's wall (level), its bottom (square to the axis), its
 * point cone, the face of a step.
 *
 * @param x0 one end, mm
 * @param r0 its radius, mm
 * @param x1 the other end, mm
 * @param r1 its radius, mm
 */
public record Edge(double x0, double r0, double x1, double r1) {
    /** Refuses ends that are no finite numbers; both ends may be one point. */
    public Edge {
        Checks.finite("x0", x0);
        Checks.finite("r0", r0);
        Checks.finite("x1", x1);
        Checks.finite("r1", r1);
    }

    /**
     * The lesser x of its ends.
     *
     * @return mm
     */
    public double lowX() {
        return Math.min(x0, x1);
    }

    /**
     * The greater x of its ends.
     *
     * @return mm
     */
    public double highX() {
        return Math.max(x0, x1);
    }

    double lowR() {
        return Math.min(r0, r1);
    }

    double highR() {
        return Math.max(r0, r1);
    }

    /** Share of the way from the first end to the foot of a point, held to the edge. */
    double footShare(double x, double r) {
        double dx = x1 - x0;
        double dr = r1 - r0;
        double square = dx * dx + dr * dr;
        if (square == 0) {
            return 0;
        }
        return Math.max(0, Math.min(1, ((x - x0) * dx + (r - r0) * dr) / square));
    }

    /** The x at a share of the way, exact at both ends. */
    double xAt(double share) {
        return share <= 0.5 ? x0 + share * (x1 - x0) : x1 - (1 - share) * (x1 - x0);
    }

    /** The radius at a share of the way, exact at both ends. */
    double rAt(double share) {
        return share <= 0.5 ? r0 + share * (r1 - r0) : r1 - (1 - share) * (r1 - r0);
    }
}
