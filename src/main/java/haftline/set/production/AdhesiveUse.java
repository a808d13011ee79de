package haftline.set.production;

import haftline.handle.Handle;
import haftline.set.Rates;
import haftline.stock.Adhesive;
import haftline.stock.Figure;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Adhesive for a batch.
 *
 * @param adhesive which
 * @param jointsMl what the joints of tangs and caps hold, ml
 * @param ferrulesMl what is between tenons and ferrules that are bonded, ml
 * @param allowancePercent mixed beyond that, %
 * @param pieces how many pieces take some
 * @param mixes how many times it is mixed so that no mix outlives its working time; empty where
 *     that or the pace of the gluing is not known
 * @param piecesPerMix how many pieces one mix serves; empty where the mixes are
 */
public record AdhesiveUse(
        Adhesive adhesive,
        double jointsMl,
        double ferrulesMl,
        double allowancePercent,
        int pieces,
        OptionalInt mixes,
        OptionalInt piecesPerMix) {
    private static final double MM3_PER_ML = 1000;

    /** kg/m3 into g/ml. */
    private static final double G_PER_ML = 1000;

    /** The adhesive of a batch, or empty where no joint takes any. */
    static Optional<AdhesiveUse> of(List<Order> orders, Optional<Rates> rates) {
        double joints = 0;
        double ferrules = 0;
        int pieces = 0;
        double minutes = 0;
        Optional<Rates.WorkStep> gluing =
                rates.flatMap(r -> r.steps().stream().filter(Rates.WorkStep::isGluing).findFirst());
        for (Order order : orders) {
            if (mlEach(order) > 0) {
                joints += order.quantity() * jointsMlEach(order);
                ferrules += order.quantity() * ferruleMlEach(order);
                pieces += order.quantity();
                double pace = gluing.map(step -> step.minutes(order.piece())).orElse(0.0);
                minutes = Math.max(minutes, pace);
            }
        }
        if (pieces == 0) {
            return Optional.empty();
        }
        Adhesive adhesive = orders.get(0).figures().handle().brief().adhesive();
        double allowance = Rates.AdhesivePrice.allowancePercent(rates);
        OptionalInt perMix = perMix(adhesive, minutes, pieces);
        OptionalInt mixes =
                perMix.isPresent()
                        ? OptionalInt.of((pieces + perMix.getAsInt() - 1) / perMix.getAsInt())
                        : OptionalInt.empty();
        return Optional.of(
                new AdhesiveUse(adhesive, joints, ferrules, allowance, pieces, mixes, perMix));
    }

    /** What one piece takes, ml. */
    static double mlEach(Order order) {
        return jointsMlEach(order) + ferruleMlEach(order);
    }

    private static double jointsMlEach(Order order) {
        return order.figures().adhesive().volumeMm3() / MM3_PER_ML;
    }

    /** The ring between tenon and ferrule: pi / 4 (D² - d²) over the tenon's length. */
    private static double ferruleMlEach(Order order) {
        Handle handle = order.figures().handle();
        if (handle.brief().rules().tenons().driven()) {
            return 0;
        }
        double bore = handle.brief().kit().ferrule().bore().mean();
        double tenon = handle.tenon().diameterMm();
        double ring = Math.PI / 4 * (bore * bore - tenon * tenon) * handle.tenon().lengthMm();
        return Math.max(0, ring) / MM3_PER_ML;
    }

    /** By the slowest piece, so that no mix is relied on beyond its time. */
    private static OptionalInt perMix(Adhesive adhesive, double minutes, int pieces) {
        Optional<Figure> working = adhesive.workingMinutes();
        if (working.isEmpty() || minutes <= 0) {
            return OptionalInt.empty();
        }
        int inTime = (int) Math.floor(working.get().value() / minutes);
        return OptionalInt.of(Math.max(1, Math.min(pieces, inTime)));
    }

    /**
     * What is mixed.
     *
     * @return ml, allowance included
     */
    public double mixedMl() {
        return (jointsMl + ferrulesMl) * (1 + allowancePercent / 100);
    }

    /**
     * Mass of what is mixed.
     *
     * @return g
     */
    public double mixedG() {
        return mixedMl() * adhesive.densityKgM3().value() / G_PER_ML;
    }

    /**
     * Whether one piece takes longer than a mix stays workable.
     *
     * @return true where even one piece a mix is too slow
     */
    public boolean isTooSlow(Rates rates) {
        Optional<Figure> working = adhesive.workingMinutes();
        return working.isPresent()
                && rates.steps().stream()
                        .filter(Rates.WorkStep::isGluing)
                        .anyMatch(step -> step.eachMinutes() > working.get().value());
    }
}
