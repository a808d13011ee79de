package haftline.handle;

/**
 * How the tang is held and why.
 *
 * @param fit pressed or bonded
 * @param because the reason, a sentence without a full stop
 * @param wishMm the bore that the tang wants at its deepest step, mm
 * @param onRack whether the drill that was taken for it is on the rack
 * @param seatX x of the tang's seating face, mm
 * @param tipX x of the tang's tip, mm
 * @param engagedMm length of tang in the wood, mm
 */
public record TangFit(
        Fit fit,
        String because,
        double wishMm,
        boolean onRack,
        double seatX,
        double tipX,
        double engagedMm) {
    /**
     * The bore's miss: how much wider the drill's hole is than the wish.
     *
     * @param bore the tang's bore
     * @return mm, negative where it is narrower
     */
    public double missMm(Bore bore) {
        return bore.deepest().diameterMm() - wishMm;
    }
}
