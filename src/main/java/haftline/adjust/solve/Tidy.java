package haftline.adjust.solve;

import haftline.adjust.solve.SetModel.At;
import java.util.Optional;

/**
 * An answer in few decimals that still meets all demands: nobody turns or types 0.6186917335, and
 * rounding alone would miss a limit by a hair. The limits are drawn in by what rounding can cost,
 * and the rounded answer is tried.
 *
 * @param model the model with quantities in decimals
 * @param point the point, in the model's mm
 */
record Tidy(SetModel model, double[] point) {
    /** How coarse quantities may be, mm of diameter, coarsest first. */
    private static final double[] STEPS_MM = {1e-2, 1e-3, 1e-4};

    /** Rounding may make a change greater by this share. */
    private static final double MORE_CHANGE = 1.003;

    /** Less than this is not moved at all, mm. */
    private static final double NOTHING_MM = 1e-9;

    /** The tidiest of an answer that meets all demands of the model. */
    static Tidy of(SetModel model, double[] found) {
        double[] point = found.clone();
        for (int i = 0; i < point.length; i++) {
            point[i] = Math.abs(point[i]) < NOTHING_MM ? 0 : point[i];
        }
        double most = MORE_CHANGE * Descent.change(found);
        for (double step : STEPS_MM) {
            Optional<Tidy> tidy = rounded(model, point, step);
            if (tidy.isPresent() && Descent.change(tidy.get().point()) <= most) {
                return tidy.get();
            }
        }
        At cleaned = model.at(point);
        boolean isMet = cleaned != null && cleaned.leastMargin() >= -Descent.MET_MM;
        return new Tidy(model, isMet ? point : found);
    }

    private static Optional<Tidy> rounded(SetModel model, double[] point, double stepMm) {
        int[] decimals = new int[point.length];
        double cost = 0;
        for (int i = 0; i < point.length; i++) {
            decimals[i] = Math.max(0, (int) Math.ceil(-Math.log10(stepMm / model.weight(i))));
            cost += point[i] == 0 ? 0 : Math.pow(10, -decimals[i]) * model.weight(i) / 2;
        }
        SetModel stricter = model.stricter(cost);
        At at = stricter.at(point);
        Optional<At> inside = new Descent(stricter, Adjust.LAST_PENALTY).polished(at);
        SetModel inDecimals = model.withDecimals(decimals);
        return inside.map(At::point)
                .filter(
                        p -> {
                            At there = inDecimals.at(p);
                            return there != null && there.leastMargin() >= -Descent.MET_MM / 2;
                        })
                .map(p -> new Tidy(inDecimals, p));
    }
}
