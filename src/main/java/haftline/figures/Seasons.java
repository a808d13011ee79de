package haftline.figures;

import haftline.handle.Handle;
import java.util.Optional;

/**
 * How the wood moves between the shop, a dry winter room and a damp kitchen.
 *
 * @param shopPercent equilibrium moisture content in the shop, %
 * @param dryPercent in the dry room, %
 * @param dampPercent in the damp kitchen, %
 * @param tenonShrinkMm how much narrower the tenon is in the dry room, mm on the diameter, along
 *     the worse grain direction
 * @param ferruleGapMm clearance between ferrule and tenon in the dry room, mm on the diameter,
 *     adhesive not counted
 * @param swellGrowthMm how much wider the greatest diameter is in the damp kitchen, mm, along the
 *     worse grain direction
 * @param ovalMm how much the dry tenon is out of round, mm
 * @param reliable whether both moistures lie within the 6 to 14 % in which the handbook's equation
 *     holds
 */
public record Seasons(
        double shopPercent,
        double dryPercent,
        double dampPercent,
        double tenonShrinkMm,
        double ferruleGapMm,
        double swellGrowthMm,
        double ovalMm,
        boolean reliable) {
    /**
     * Movement of a handle.
     *
     * @param handle the handle
     * @return the movement, or empty for plastics and for woods that lack a coefficient
     */
    public static Optional<Seasons> of(Handle handle) {
        return Optional.empty();
    }
}
