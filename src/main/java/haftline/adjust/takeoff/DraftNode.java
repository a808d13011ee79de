package haftline.adjust.takeoff;

/**
 * A node that is being fitted.
 *
 * @param x mm from the shoulder
 * @param diameterMm mm
 * @param crisp whether the outline may bend there
 */
record DraftNode(double x, double diameterMm, boolean crisp) {}
