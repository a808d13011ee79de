package haftline.curve;

/**
 * Volume and moments of the solid that an outline sweeps about the lathe axis, for unit density.
 *
 * @param volume pi int r^2 dx, mm^3
 * @param firstX pi int x r^2 dx, about the plane x = 0, mm^4
 * @param secondX pi int x^2 r^2 dx, about the plane x = 0, mm^5
 * @param aboutAxis polar second moment about the lathe axis, pi/2 int r^4 dx, mm^5
 */
public record Moments(double volume, double firstX, double secondX, double aboutAxis) {
    /** Of nothing. */
    public static final Moments NONE = new Moments(0, 0, 0, 0);

    /**
     * Adds a solid.
     *
     * @param other what to add
     * @return the moments of both together
     */
    public Moments plus(Moments other) {
        return new Moments(
                volume + other.volume,
                firstX + other.firstX,
                secondX + other.secondX,
                aboutAxis + other.aboutAxis);
    }

    /**
     * Takes a solid away: a bore from a body.
     *
     * @param other what to take away
     * @return the moments of what is left
     */
    public Moments minus(Moments other) {
        return new Moments(
                volume - other.volume,
                firstX - other.firstX,
                secondX - other.secondX,
                aboutAxis - other.aboutAxis);
    }

    /**
     * Returns the moments times a density.
     *
     * @param density mass of a cubic millimetre
     * @return mass and its moments
     */
    public Moments times(double density) {
        return new Moments(
                volume * density, firstX * density, secondX * density, aboutAxis * density);
    }

    /**
     * Returns the moments of the same solid moved along the axis.
     *
     * @param dx how far towards the butt, mm
     * @return the moments about the same plane x = 0
     */
    public Moments shifted(double dx) {
        return new Moments(
                volume, firstX + dx * volume, secondX + dx * (2 * firstX + dx * volume), aboutAxis);
    }

    /**
     * Returns the place of the centroid along the axis, mm; NaN where there is no volume.
     *
     * @return x of the centroid, mm
     */
    public double centroidX() {
        return firstX / volume;
    }

    /**
     * Returns the second moment about an axis square to the lathe axis: half the polar moment of
     * each slice plus the slice at its arm (parallel axes).
     *
     * @param x where that axis crosses the lathe axis, mm
     * @return the transverse moment, mm^5
     */
    public double transverse(double x) {
        return aboutAxis / 2 + secondX - x * (2 * firstX - x * volume);
    }
}
