package haftline.set.cutting;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.set.cutting.CuttingStock.Item;
import haftline.set.cutting.CuttingStock.Stick;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.apache.commons.math3.optim.linear.LinearConstraint;
import org.apache.commons.math3.optim.linear.LinearConstraintSet;
import org.apache.commons.math3.optim.linear.LinearObjectiveFunction;
import org.apache.commons.math3.optim.linear.NonNegativeConstraint;
import org.apache.commons.math3.optim.linear.Relationship;
import org.apache.commons.math3.optim.linear.SimplexSolver;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.junit.jupiter.api.Test;

/** The bound against the linear program over every pattern there is, written out in full. */
class LinearBoundTest {
    private static final double CLOSE = 1e-6;

    private static Case of(long length, long[] lengths, int[] counts) {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            items.add(new Item(lengths[i], 0, counts[i]));
        }
        return new Case(items, List.of(new Stick(length, 0, CuttingStock.UNLIMITED, 1)));
    }

    private static double bound(Case problem) {
        Prices prices = LinearBound.of(problem).orElseThrow().prices();
        return prices.bound(problem.wanted, problem.stickCount);
    }

    /** Chvátal's own figure: 452 1/4. */
    @Test
    void isChvatals() {
        Case problem = of(100, new long[] {45, 36, 31, 14}, new int[] {97, 610, 395, 211});
        assertThat(bound(problem)).isCloseTo(452.25, within(CLOSE));
    }

    /** The modelling book's: 46.25. */
    @Test
    void isTheModellingBooks() {
        Case problem = of(110, new long[] {75, 55, 50, 45, 20}, new int[] {8, 10, 24, 35, 48});
        assertThat(bound(problem)).isCloseTo(46.25, within(CLOSE));
    }

    @Test
    void isTheWholeProgramsLeast() {
        for (long seed = 1; seed <= 40; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            long[] lengths = new long[random.nextInt(2, 6)];
            int[] counts = new int[lengths.length];
            long length = 100;
            for (int i = 0; i < lengths.length; i++) {
                lengths[i] = random.nextLong(12, 70);
                counts[i] = random.nextInt(1, 30);
            }
            java.util.Arrays.sort(lengths);
            for (int i = 0; i < lengths.length / 2; i++) {
                long swap = lengths[i];
                lengths[i] = lengths[lengths.length - 1 - i];
                lengths[lengths.length - 1 - i] = swap;
            }
            Case problem = of(length, lengths, counts);
            assertThat(bound(problem))
                    .as("seed %d", seed)
                    .isCloseTo(whole(length, lengths, counts), within(CLOSE));
        }
    }

    private static double whole(long length, long[] lengths, int[] counts) {
        List<int[]> patterns = new ArrayList<>();
        patterns(length, lengths, counts, 0, new int[lengths.length], patterns);
        double[] objective = new double[patterns.size()];
        java.util.Arrays.fill(objective, 1);
        List<LinearConstraint> rows = new ArrayList<>();
        for (int i = 0; i < lengths.length; i++) {
            double[] row = new double[patterns.size()];
            for (int p = 0; p < row.length; p++) {
                row[p] = patterns.get(p)[i];
            }
            rows.add(new LinearConstraint(row, Relationship.GEQ, counts[i]));
        }
        return new SimplexSolver()
                .optimize(
                        new LinearObjectiveFunction(objective, 0),
                        new LinearConstraintSet(rows),
                        GoalType.MINIMIZE,
                        new NonNegativeConstraint(true))
                .getValue();
    }

    private static void patterns(
            long room, long[] lengths, int[] counts, int at, int[] taken, List<int[]> out) {
        if (at == lengths.length) {
            out.add(taken.clone());
            return;
        }
        for (int n = 0; n <= counts[at] && n * lengths[at] <= room; n++) {
            taken[at] = n;
            patterns(room - n * lengths[at], lengths, counts, at + 1, taken, out);
        }
        taken[at] = 0;
    }
}
