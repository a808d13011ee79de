package haftline.figures;

import haftline.handle.Handle;
import haftline.handle.Rules;
import haftline.stock.Figure;
import haftline.stock.Moisture;
import haftline.stock.Wood;
import java.util.Optional;

/**
 * How the wood moves between the shop, a dry winter room and a damp kitchen: equilibrium moisture
 * content by Wood Handbook Equation 4-5, change of size by Equation 13-2 (FPL-GTR-190).
 *
 * @param shopPercent equilibrium moisture content in the shop, %
 * @param dryPercent in the dry room, %
 * @param dampPercent in the damp kitchen, %
 * @param tenonShrinkMm how much narrower the tenon is in the dry room, mm on the diameter, along
 *     the worse grain direction; negative where the shop is the drier
 * @param ferruleGapMm clearance between ferrule and tenon in the dry room, mm on the diameter: the
 *     ferrule's mean bore less the dry tenon, adhesive not counted
 * @param swellGrowthMm how much wider the greatest diameter is in the damp kitchen, mm, along the
 *     worse grain direction; negative where the shop is the damper
 * @param ovalMm how much the dry tenon is out of round, mm: radial against tangential
 * @param reliable whether all moistures lie within the 6 to 14 % in which the handbook's equation
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
        if (!(handle.brief().stock() instanceof Wood wood)) {
            return Optional.empty();
        }
        Optional<Figure> tangential = wood.movement().tangentialCoefficient();
        Optional<Figure> radial = wood.movement().radialCoefficient();
        if (tangential.isEmpty() || radial.isEmpty()) {
            return Optional.empty();
        }
        double across = tangential.get().value();
        double along = radial.get().value();
        Rules.Climate climate = handle.brief().rules().climate();
        double shop = Moisture.emcPercent(climate.shopC(), climate.shopRh());
        double dry = Moisture.emcPercent(climate.dryC(), climate.dryRh());
        double damp = Moisture.emcPercent(climate.dampC(), climate.dampRh());
        double worse = Math.max(across, along);
        double tenon = handle.tenon().diameterMm();
        double swell = 2 * handle.outline().greatest(0, handle.buttX()).r();
        Moisture.Movement winter = Moisture.movement(tenon, worse, shop, dry);
        Moisture.Movement summer = Moisture.movement(swell, worse, shop, damp);
        double oval = Math.abs((across - along) * tenon * (shop - dry));
        return Optional.of(
                new Seasons(
                        shop,
                        dry,
                        damp,
                        -winter.changeMm(),
                        handle.brief().kit().ferrule().bore().mean() - tenon - winter.changeMm(),
                        summer.changeMm(),
                        oval,
                        winter.holds() && summer.holds()));
    }
}
