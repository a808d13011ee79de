package haftline.figures;

import haftline.handle.Handle;
import haftline.handle.Use;

/**
 * How a handle fills the hand, beside published guidance for its use.
 *
 * @param use how it is held
 * @param greatestMm greatest diameter of the visible wood, mm
 * @param greatestX where it is, mm from the shoulder
 * @param leastMm least diameter of the visible wood outside of the butt's form, mm
 * @param lengthMm length that the hand can close on, ferrule's front face to butt, mm
 * @param diameterLowMm least diameter by the guidance, mm
 * @param diameterHighMm greatest diameter by the guidance, mm
 * @param lengthLowMm least length that the hand wants, mm
 * @param lengthHighMm greatest length that the hand wants, mm
 * @param diameterRule whose guidance the diameters are
 * @param lengthRule whose guidance the lengths are
 */
public record Grip(
        Use use,
        double greatestMm,
        double greatestX,
        double leastMm,
        double lengthMm,
        double diameterLowMm,
        double diameterHighMm,
        double lengthLowMm,
        double lengthHighMm,
        String diameterRule,
        String lengthRule) {
    /**
     * Grip of a handle.
     *
     * @param handle the handle
     * @return the figures
     */
    public static Grip of(Handle handle) {
        return new Grip(handle.brief().use(), 0, 0, 0, 0, 0, 0, 0, 0, "", "");
    }
}
