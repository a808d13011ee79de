package haftline.curve;

/**
 * A least or greatest radius and where it stands. Where it stands at several places, the first is
 * given.
 *
 * @param x place along the axis, mm
 * @param r the radius there, mm
 */
public record Extreme(double x, double r) {}
