package haftline.figures;

import haftline.curve.Extreme;
import haftline.handle.Handle;
import haftline.handle.Rules;

/**
 * The blank that a handle wants: room round the greatest diameter for a missed centre, a wandering
 * mouth and a cut that cleans up; length for facing each bored end, or for parting off.
 *
 * @param finishedMm greatest finished diameter, mm
 * @param greatestX where that is, mm from the shoulder
 * @param sideMm side of the square, mm
 * @param lengthMm length, mm
 */
public record Blank(double finishedMm, double greatestX, double sideMm, double lengthMm) {
    /**
     * The blank of a handle: S = D + 2 (centre + mouth error) + 2 clean-up, common practice.
     *
     * @param handle the handle
     * @return the blank
     */
    public static Blank of(Handle handle) {
        Rules.Blanks rules = handle.brief().rules().blanks();
        Extreme widest = handle.outline().greatest();
        double finished = 2 * widest.r();
        double side =
                finished + 2 * (rules.centreErrorMm() + rules.mouthErrorMm() + rules.cleanUpMm());
        double ends =
                handle.capBore().isPresent()
                        ? 2 * rules.facingMm()
                        : rules.facingMm() + rules.partingMm();
        return new Blank(finished, widest.x(), side, handle.lengths().turnedWoodMm() + ends);
    }
}
