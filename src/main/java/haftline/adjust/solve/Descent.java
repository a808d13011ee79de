package haftline.adjust.solve;

import haftline.adjust.solve.SetModel.At;
import haftline.adjust.solve.SetModel.Cut;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Sequential quadratic programming with an exact penalty and a trust region (Fletcher, Practical
 * Methods of Optimization, 2nd ed., section 14.4: S l1 QP), with a second-order correction. The
 * measure of change is quadratic itself, so that only the demands are made straight; what a wall's
 * many minima ask is laid before the quadratic program all at once.
 */
final class Descent {
    /**
     * The engine's answers are trusted to this; the answer meets its demands with this to spare.
     */
    static final double SPARE_MM = 2e-7;

    /** A demand that is missed by less counts as met, mm: what the answer is checked to. */
    static final double MET_MM = 1e-6;

    /** First trust region, mm of diameter; most changes lie within it. */
    private static final double FIRST_REGION = 2;

    private static final double LEAST_REGION = 1e-8;

    /** Rows this near beyond the trust region may still come to matter, mm. */
    private static final double MARGIN_OF_WINDOW = 0.3;

    private static final int MOST_ROUNDS = 60;

    /** A predicted gain under this share of the merit ends the search. */
    private static final double NO_GAIN = 1e-10;

    /** This near a known answer, as a share of its length, a search would only find it again. */
    private static final double SAME_VALLEY = 0.005;

    private static final double GOOD = 0.7;
    private static final double ACCEPTED = 0.02;
    private static final int POLISH_ROUNDS = 12;

    private final SetModel model;
    private final double[] penalties;
    private final Axes axes;

    /**
     * A search.
     *
     * @param penalty what a mm costs by which a demand is missed, mm² a mm
     */
    Descent(SetModel model, double penalty) {
        this(model, penalty, null);
    }

    /** A search in which each demand weighs a share of the penalty; null for all the same. */
    Descent(SetModel model, double penalty, double[] share) {
        this.model = model;
        axes = Axes.of(model.size() + model.demands().size());
        penalties = new double[model.demands().size()];
        for (int d = 0; d < penalties.length; d++) {
            penalties[d] =
                    penalty * rank(model.demands().get(d).need()) * (share == null ? 1 : share[d]);
        }
    }

    /** On the way walls come first: they are what most often cannot wait. */
    private static double rank(Need need) {
        return need.group() == Need.Group.WALLS ? 10 : 1;
    }

    private double missed(At at) {
        double sum = 0;
        for (int d = 0; d < penalties.length; d++) {
            double by = shortOf(at.margin(d));
            sum += penalties[d] * by + by * by / 2;
        }
        return sum;
    }

    private static double shortOf(double margin) {
        return Math.max(0, SPARE_MM - margin);
    }

    double merit(At at) {
        return change(at.point()) + missed(at);
    }

    /** Half of the square length: the measure of change. */
    static double change(double[] point) {
        double sum = 0;
        for (double each : point) {
            sum += each * each;
        }
        return sum / 2;
    }

    /** Goes downhill from a point; null where no handle can be drawn there. */
    At from(double[] start) {
        return from(start, Optional.empty());
    }

    /** The same, also null where the way leads to an answer that is known. */
    At from(double[] start, Optional<At> known) {
        At at = model.at(start);
        if (at == null) {
            return null;
        }
        double region = FIRST_REGION;
        for (int round = 0; round < MOST_ROUNDS && region > LEAST_REGION; round++) {
            List<Cut> cuts = model.cuts(at, 2 * region + MARGIN_OF_WINDOW);
            double merit = merit(at);
            boolean moved = false;
            // Straight pieces serve until a step with them is taken.
            while (!moved && region > LEAST_REGION) {
                double[] step = step(at.point(), cuts, region);
                if (step == null) {
                    region /= 4;
                    continue;
                }
                double predicted = merit - predicted(at.point(), cuts, step);
                if (predicted <= NO_GAIN * (1e-3 + merit)) {
                    return at;
                }
                At there = model.at(step);
                double gain = there == null ? -1 : (merit - merit(there)) / predicted;
                if (there != null && gain < GOOD) {
                    At corrected = corrected(at, cuts, there, region);
                    if (corrected != null && merit(corrected) < merit(there)) {
                        there = corrected;
                        gain = (merit - merit(there)) / predicted;
                    }
                }
                if (gain > ACCEPTED) {
                    if (known.isPresent() && isSame(there.point(), known.get().point())) {
                        return null;
                    }
                    at = there;
                    moved = true;
                    region = gain > GOOD ? Math.min(2 * region, 8 * FIRST_REGION) : region;
                } else {
                    region /= 4;
                }
            }
        }
        return at;
    }

    private static boolean isSame(double[] point, double[] known) {
        double[] apart = new double[point.length];
        for (int i = 0; i < apart.length; i++) {
            apart[i] = point[i] - known[i];
        }
        return change(apart) < SAME_VALLEY * SAME_VALLEY * change(known);
    }

    private double predicted(double[] from, List<Cut> cuts, double[] to) {
        double[] least = new double[penalties.length];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (Cut cut : cuts) {
            least[cut.demand()] = Math.min(least[cut.demand()], cut.at(from, to));
        }
        double sum = change(to);
        for (int d = 0; d < least.length; d++) {
            double by = shortOf(least[d]);
            sum += penalties[d] * by + by * by / 2;
        }
        return sum;
    }

    /** The same slopes, with the values found at the end of the step. */
    private At corrected(At at, List<Cut> cuts, At there, double region) {
        List<Cut> seen = new ArrayList<>(cuts.size());
        for (Cut cut : cuts) {
            double value = there.rows().get(cut.demand()).valueOf(cut.key(), cut.index());
            if (Double.isNaN(value)) {
                return null;
            }
            double straight = cut.at(at.point(), there.point());
            seen.add(cut.moved(cut.value() + value - straight));
        }
        double[] step = step(at.point(), seen, region);
        return step == null ? null : model.at(step);
    }

    /** The quadratic program: the point, and how much each demand is missed by, not under 0. */
    private double[] step(double[] from, List<Cut> cuts, double region) {
        int n = model.size();
        int m = penalties.length;
        LeastDistance program = new LeastDistance(new double[n + m], model.watch());
        for (int d = 0; d < m; d++) {
            program.held(axes.up()[n + d], 0, penalties[d]);
        }
        for (Cut cut : cuts) {
            double[] normal = java.util.Arrays.copyOf(cut.slope(), n + m);
            normal[n + cut.demand()] = 1;
            program.row(normal, SPARE_MM - cut.at(from, new double[n]));
        }
        box(program, from, region, axes);
        return program.solve().map(z -> java.util.Arrays.copyOf(z, n)).orElse(null);
    }

    private void box(LeastDistance program, double[] from, double region, Axes along) {
        for (int i = 0; i < model.size(); i++) {
            program.row(along.up()[i], Math.max(model.low(i), from[i] - region));
            program.row(along.down()[i], -Math.min(model.high(i), from[i] + region));
        }
    }

    /** The ways along each coordinate, made once for all programs of a search. */
    private record Axes(double[][] up, double[][] down) {
        static Axes of(int columns) {
            double[][] up = new double[columns][columns];
            double[][] down = new double[columns][columns];
            for (int i = 0; i < columns; i++) {
                up[i][i] = 1;
                down[i][i] = -1;
            }
            return new Axes(up, down);
        }
    }

    /**
     * Brings an answer that misses its demands by rounding onto them: Newton's method, each step
     * the shortest.
     */
    Optional<At> polished(At found) {
        At at = found;
        Axes alone = Axes.of(model.size());
        for (int round = 0; round < POLISH_ROUNDS; round++) {
            if (at.leastMargin() >= -MET_MM / 2) {
                return Optional.of(at);
            }
            int n = model.size();
            LeastDistance program = new LeastDistance(at.point(), model.watch());
            for (Cut cut : model.cuts(at, MARGIN_OF_WINDOW)) {
                program.row(cut.slope(), SPARE_MM - cut.at(at.point(), new double[n]));
            }
            box(program, at.point(), FIRST_REGION, alone);
            Optional<double[]> step = program.solve();
            At there = step.isEmpty() ? null : model.at(step.get());
            if (there == null || there.leastMargin() <= at.leastMargin()) {
                return Optional.empty();
            }
            at = there;
        }
        return Optional.empty();
    }
}
