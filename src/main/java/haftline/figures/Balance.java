package haftline.figures;

import haftline.handle.Handle;
import haftline.parts.Blade;
import haftline.parts.EndCap;
import haftline.parts.Ferrule;
import haftline.parts.Kit;
import haftline.parts.Tang;
import java.util.ArrayList;
import java.util.List;

/**
 * Mass and balance of the finished piece: the sum of its parts.
 *
 * @param shares the parts
 * @param totalG whole mass, g
 * @param x centre of mass, mm from the shoulder
 * @param fromFerruleFaceMm centre of mass behind the ferrule's front face, mm, positive towards the
 *     butt
 */
public record Balance(List<Share> shares, double totalG, double x, double fromFerruleFaceMm) {
    /** Copies the list. */
    public Balance {
        shares = List.copyOf(shares);
    }

    /**
     * Mass and balance of a handle with its kit.
     *
     * @param handle the handle
     * @param wood volume of its wood
     * @param adhesive its adhesive
     * @param moisturePercent moisture content at which the wood is weighed, %
     * @return mass and balance
     */
    public static Balance of(
            Handle handle, WoodVolume wood, AdhesiveNeed adhesive, double moisturePercent) {
        Kit kit = handle.brief().kit();
        List<Share> shares = new ArrayList<>(6);
        addBlade(shares, handle, kit.blade(), kit.tang());
        Ferrule ferrule = kit.ferrule();
        double ferruleG =
                ferrule.massG()
                        .orElseGet(
                                () ->
                                        grams(
                                                ferrule.volumeMm3(),
                                                handle.brief()
                                                        .metals()
                                                        .ferrule()
                                                        .densityKgM3()
                                                        .value()));
        shares.add(
                Share.known(
                        Share.Part.FERRULE,
                        ferruleG,
                        handle.ferruleFaceX() + ferrule.centroidMm()));
        double density = handle.brief().stock().densityKgM3(moisturePercent);
        shares.add(
                Share.known(Share.Part.WOOD, grams(wood.finishedMm3(), density), wood.centroidX()));
        if (adhesive.volumeMm3() > 0) {
            double glue = handle.brief().adhesive().densityKgM3().value();
            shares.add(
                    Share.known(
                            Share.Part.ADHESIVE,
                            grams(adhesive.volumeMm3(), glue),
                            adhesive.centroidX()));
        }
        if (kit.cap().isPresent()) {
            EndCap cap = kit.cap().get();
            double capG =
                    cap.massG()
                            .orElseGet(
                                    () ->
                                            grams(
                                                    cap.volumeMm3(),
                                                    handle.brief()
                                                            .metals()
                                                            .cap()
                                                            .densityKgM3()
                                                            .value()));
            shares.add(Share.known(Share.Part.CAP, capG, handle.buttX() + cap.centroidMm()));
        }
        double total = 0;
        double moment = 0;
        for (Share share : shares) {
            total += share.massG();
            moment += share.massG() * share.x();
        }
        double x = moment / total;
        return new Balance(shares, total, x, x - handle.ferruleFaceX());
    }

    private static void addBlade(List<Share> shares, Handle handle, Blade blade, Tang tang) {
        double density = handle.brief().metals().blade().densityKgM3().value();
        double seat = handle.fit().seatX();
        double length = tang.length().mean();
        double tangG = tang.massG().orElseGet(() -> grams(tang.volumeMm3(length), density));
        double tangX = seat + tang.momentMm4(length) / tang.volumeMm3(length);
        if (blade.massG().isPresent()) {
            double massG = blade.massG().getAsDouble();
            if (blade.includesTang() && blade.balanceMm().isEmpty()) {
                // Only the scale's sum is known: what the tang does not weigh is blade, at its
                // usual place.
                double bladeG = Math.max(0, massG - tangG);
                shares.add(
                        new Share(
                                Share.Part.BLADE,
                                bladeG,
                                seat - blade.estimatedCentreMm(),
                                false,
                                true));
                shares.add(Share.known(Share.Part.TANG, massG - bladeG, tangX));
                return;
            }
            boolean guessed = blade.balanceMm().isEmpty();
            double x = seat - blade.balanceMm().orElseGet(blade::estimatedCentreMm);
            shares.add(new Share(Share.Part.BLADE, massG, x, false, guessed));
            if (blade.includesTang()) {
                return;
            }
        } else {
            double x = seat - blade.estimatedCentreMm();
            shares.add(
                    new Share(
                            Share.Part.BLADE,
                            grams(blade.estimatedVolumeMm3(), density),
                            x,
                            true,
                            true));
        }
        shares.add(Share.known(Share.Part.TANG, tangG, tangX));
    }

    private static double grams(double mm3, double kgM3) {
        return mm3 * kgM3 * 1e-6;
    }
}
