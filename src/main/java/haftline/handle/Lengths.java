package haftline.handle;

/**
 * The lengths of one handle, mm.
 *
 * @param overallMm ferrule's front face to butt, cap included
 * @param ferruleMm ferrule's front face to the shoulder
 * @param capMm thickness of the cap's head, 0 without a cap
 * @param tenonMm length of the tenon
 */
public record Lengths(double overallMm, double ferruleMm, double capMm, double tenonMm) {
    /**
     * Shoulder to the wood's butt face.
     *
     * @return mm
     */
    public double visibleWoodMm() {
        return overallMm - ferruleMm - capMm;
    }

    /**
     * Tenon's end to the wood's butt face.
     *
     * @return mm
     */
    public double turnedWoodMm() {
        return visibleWoodMm() + tenonMm;
    }
}
