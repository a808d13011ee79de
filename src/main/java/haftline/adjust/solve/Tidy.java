package haftline.adjust.solve;

import haftline.adjust.solve.SetModel.At;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * An answer in few decimals that still meets all demands: nobody turns or types 0.6186917335, and
 * rounding alone would miss a limit by a hair. The limits are drawn in by what rounding can cost,
 * the answer is rounded, and then brought back step by step as far as the limits allow.
 *
 * @param model the model with quantities in decimals
 * @param point the point, in the model's mm
 */
record Tidy(SetModel model, double[] point) {
    /**
     * How coarse quantities may be, mm of diameter, coarsest first: a hundredth is what a calliper
     * reads (common practice); finer where a hundredth would make too much of a small change.
     */
    static final double[] STEPS_MM = {1e-2, 1e-3, 1e-4};

    /**
     * Where no such grid meets everything, as where a diameter is asked to the point: some figures
     * stay finer than anybody turns, but no longer than the check of the answer needs them.
     */
    private static final double FINEST_MM = Descent.SPARE_MM;

    /**
     * Rounding may make a change greater by this share of its square: by 1.5 in 100, so that it
     * stays well within 2 in 100 of the least that there is.
     */
    private static final double MORE_CHANGE = 1.015 * 1.015;

    /** What is so near the least change (by 0.1 in 100, squared) is not worth looking on. */
    private static final double NEAR_ENOUGH = 1.001 * 1.001;

    /** Less than this is not moved at all, mm. */
    private static final double NOTHING_MM = 1e-9;

    /** The tidiest of an answer that meets all demands of the model and changes little. */
    static Tidy of(SetModel model, double[] found) {
        return of(model, found, (exactOrNot, point) -> Descent.change(point), true);
    }

    /**
     * The tidiest of an answer that meets all demands of the model.
     *
     * @param cost what a point of a model costs, of which rounding may add a little
     */
    static Tidy of(SetModel model, double[] found, BiFunction<SetModel, double[], Double> cost) {
        return of(model, found, cost, false);
    }

    private static Tidy of(
            SetModel model,
            double[] found,
            BiFunction<SetModel, double[], Double> cost,
            boolean fewMoves) {
        double[] point = found.clone();
        for (int i = 0; i < point.length; i++) {
            point[i] = Math.abs(point[i]) < NOTHING_MM ? 0 : point[i];
        }
        double least = cost.apply(model, found);
        for (double step : STEPS_MM) {
            Grid grid = new Grid(model, step);
            Optional<double[]> tidy = rounded(grid, model, point, cost, NEAR_ENOUGH * least);
            if (tidy.isPresent() && cost.apply(grid.model(), tidy.get()) <= MORE_CHANGE * least) {
                double[] there = tidy.get();
                if (fewMoves) {
                    there =
                            grid.fewer(
                                    there,
                                    p ->
                                            cost.apply(grid.model(), p) <= MORE_CHANGE * least
                                                    && met(grid, p).isPresent());
                }
                return new Tidy(grid.model(), there);
            }
        }
        Optional<Tidy> mixed = mixed(model, point, cost, MORE_CHANGE * least);
        if (mixed.isPresent()) {
            return mixed.get();
        }
        At cleaned = model.at(point);
        boolean isMet = cleaned != null && isMet(cleaned);
        return new Tidy(model, isMet ? point : found);
    }

    /** On the finest grid, then each quantity by itself on the coarsest that still will do. */
    private static Optional<Tidy> mixed(
            SetModel model,
            double[] found,
            BiFunction<SetModel, double[], Double> cost,
            double most) {
        Grid grid = new Grid(model, FINEST_MM);
        Optional<double[]> point =
                met(grid, found).filter(p -> cost.apply(grid.model(), p) <= most);
        if (point.isEmpty()) {
            return Optional.empty();
        }
        Tidy tidy = new Tidy(grid.model(), point.get());
        Grid finest = grid;
        for (int i = 0; i < found.length; i++) {
            for (double step = STEPS_MM[0]; step > FINEST_MM && found[i] != 0; step /= 10) {
                Grid coarser = finest.with(i, step);
                Optional<double[]> there =
                        met(coarser, tidy.point())
                                .filter(p -> cost.apply(coarser.model(), p) <= most);
                if (there.isPresent()) {
                    finest = coarser;
                    tidy = new Tidy(coarser.model(), there.get());
                    break;
                }
            }
        }
        return Optional.of(tidy);
    }

    private static boolean isMet(At at) {
        return at.leastMargin() >= -Descent.MET_MM / 2;
    }

    private static Optional<double[]> rounded(
            Grid grid,
            SetModel model,
            double[] point,
            BiFunction<SetModel, double[], Double> cost,
            double enough) {
        double strict = 0;
        for (int i = 0; i < point.length; i++) {
            strict += point[i] == 0 ? 0 : grid.stepMm(i) / 2;
        }
        Optional<double[]> start = met(grid, point);
        // Half of what rounding can cost often does, and changes less.
        for (double share : new double[] {0.5, 1}) {
            if (start.isEmpty()) {
                SetModel stricter = model.stricter(share * strict);
                At at = stricter.at(point);
                start =
                        new Descent(stricter, Adjust.LAST_PENALTY)
                                .polished(at)
                                .flatMap(inside -> met(grid, inside.point()));
            }
        }
        return start.map(
                from ->
                        grid.best(
                                from,
                                p -> cost.apply(grid.model(), p),
                                p -> met(grid, p).isPresent(),
                                enough));
    }

    /** The nearest point of the grid, if it meets all demands. */
    private static Optional<double[]> met(Grid grid, double[] point) {
        double[] nearest = grid.nearest(point);
        At at = grid.model().at(nearest);
        return at != null && isMet(at) ? Optional.of(nearest) : Optional.empty();
    }
}
