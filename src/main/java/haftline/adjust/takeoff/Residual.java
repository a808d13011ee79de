package haftline.adjust.takeoff;

/**
 * A reading against the line that was laid through all of them.
 *
 * @param reading the reading
 * @param x its place, mm from the shoulder
 * @param fittedMm diameter of the line there, mm
 * @param stray whether it stands so far off that it was left out
 */
public record Residual(Reading reading, double x, double fittedMm, boolean stray) {
    /**
     * Read less fitted.
     *
     * @return mm on the diameter
     */
    public double mm() {
        return reading.diameterMm() - fittedMm;
    }
}
