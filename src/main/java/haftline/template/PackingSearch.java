package haftline.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;

/**
 * Looks for a good order in which to set cards down: a few plain orders on strips of several
 * widths, then small changes to the best, kept where they use up less. Always the same steps, so
 * always the same layout.
 */
final class PackingSearch {
    /** Any fixed number: it makes the search repeatable. */
    private static final long SEED = 1;

    /** Strips tried between the widest card and the whole sheet. */
    private static final int WIDTHS = 9;

    /**
     * Work that changing orders may cost, in columns: it keeps forty cards within a few seconds.
     */
    private static final long COLUMN_BUDGET = 8_000_000_000L;

    /** What waste under a card may count against the height of its top. */
    private static final double[] WASTE_WEIGHTS = {0.15, 0.5, 1, 2};

    /** What holes count against what is used up: enough to choose between equals. */
    private static final double HOLES_WEIGHT = 0.05;

    /** Share of the orders tried that are shuffled altogether. */
    private static final int SHUFFLED_IN = 2;

    /** By what share a change may make things worse at first. */
    private static final double MOST_TOLERANCE = 0.004;

    private static final int FEWEST_CHANGES = 150;
    private static final int MOST_CHANGES = 2_500;

    /** Of so many changes one goes to another width. */
    private static final int WIDTH_CHANGES_IN = 12;

    private final List<Silhouette> shapes;
    private final List<Silhouette> downs;
    private final SheetSize size;
    private final List<Double> widths = new ArrayList<>();
    private final Runnable step;

    /** One way to set the cards down, and what it costs. */
    private record Trial(int[] order, double widthMm, double wasteWeight, double cost) {}

    PackingSearch(List<Silhouette> shapes, SheetSize size, Runnable step) {
        this.step = step;
        this.shapes = List.copyOf(shapes);
        this.downs = shapes.stream().map(s -> s.otherWayUp(size.gapMm())).toList();
        this.size = size;
        double whole = Packing.widthMm(size);
        double widest = shapes.stream().mapToDouble(Silhouette::width).max().orElse(whole);
        for (int i = 0; i <= WIDTHS; i++) {
            widths.add(widest + (whole - widest) * i / WIDTHS);
        }
    }

    List<SheetLayout.Sheet> best() {
        Trial best = null;
        for (int[] plain : plainOrders()) {
            for (double widthMm : widths) {
                for (double wasteWeight : WASTE_WEIGHTS) {
                    best = better(best, trial(plain, widthMm, wasteWeight));
                }
            }
        }
        best = improved(best);
        return packed(best.order, best.widthMm, best.wasteWeight).sheets();
    }

    private static Trial better(Trial a, Trial b) {
        return a == null || b.cost < a.cost ? b : a;
    }

    private List<int[]> plainOrders() {
        Comparator<Integer> byArea =
                Comparator.comparingDouble(i -> -shapes.get(i).card().outline().area());
        Comparator<Integer> byHeight = Comparator.comparingDouble(i -> -shapes.get(i).height());
        Comparator<Integer> byWidth = Comparator.comparingInt(i -> -shapes.get(i).lower().length);
        return List.of(
                sorted(byHeight.thenComparing(byWidth)),
                sorted(byWidth.thenComparing(byHeight)),
                sorted(byArea));
    }

    private int[] sorted(Comparator<Integer> comparator) {
        List<Integer> list = new ArrayList<>();
        for (int i = 0; i < shapes.size(); i++) {
            list.add(i);
        }
        list.sort(comparator);
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private Trial trial(int[] order, double widthMm, double wasteWeight) {
        step.run();
        Packing packing = packed(order, widthMm, wasteWeight);
        double cost = packing.used() + HOLES_WEIGHT * packing.waste();
        return new Trial(order, widthMm, wasteWeight, cost);
    }

    private Packing packed(int[] order, double widthMm, double wasteWeight) {
        Packing packing = new Packing(size, widthMm, wasteWeight);
        for (int index : order) {
            packing.add(shapes.get(index), downs.get(index));
        }
        return packing;
    }

    /**
     * First shuffled orders, then small changes to the best of all; a change for the worse is
     * followed while it stays within a tolerance that shrinks to nothing (threshold accepting).
     */
    private Trial improved(Trial start) {
        SplittableRandom random = new SplittableRandom(SEED);
        int changes = changes();
        int shuffled = changes / SHUFFLED_IN;
        Trial best = start;
        for (int i = 0; i < shuffled; i++) {
            int[] order = start.order.clone();
            shuffle(order, random);
            double widthMm = random.nextBoolean() ? widths.get(WIDTHS) : any(widths, random);
            best = better(best, trial(order, widthMm, anyWeight(random)));
        }
        Trial current = best;
        for (int i = shuffled; i < changes; i++) {
            int[] order = current.order.clone();
            change(order, random);
            boolean otherWidth = random.nextInt(WIDTH_CHANGES_IN) == 0;
            boolean otherWeight = random.nextInt(WIDTH_CHANGES_IN) == 0;
            Trial next =
                    trial(
                            order,
                            otherWidth ? any(widths, random) : current.widthMm,
                            otherWeight ? anyWeight(random) : current.wasteWeight);
            double tolerance = MOST_TOLERANCE * (changes - i) / changes;
            if (next.cost <= current.cost * (1 + tolerance)) {
                current = next;
                best = better(best, current);
            }
        }
        return best;
    }

    private static double any(List<Double> list, SplittableRandom random) {
        return list.get(random.nextInt(list.size()));
    }

    private static double anyWeight(SplittableRandom random) {
        return WASTE_WEIGHTS[random.nextInt(WASTE_WEIGHTS.length)];
    }

    private static void shuffle(int[] candidate, SplittableRandom random) {
        for (int i = candidate.length - 1; i > 0; i--) {
            int k = random.nextInt(i + 1);
            int swap = candidate[i];
            candidate[i] = candidate[k];
            candidate[k] = swap;
        }
    }

    /** Takes one card out and puts it in elsewhere, or swaps two. */
    private static void change(int[] candidate, SplittableRandom random) {
        int a = random.nextInt(candidate.length);
        int b = random.nextInt(candidate.length);
        int moved = candidate[a];
        if (random.nextBoolean()) {
            candidate[a] = candidate[b];
        } else if (a < b) {
            System.arraycopy(candidate, a + 1, candidate, a, b - a);
        } else {
            System.arraycopy(candidate, b, candidate, b + 1, a - b);
        }
        candidate[b] = moved;
    }

    private int changes() {
        long each = 0;
        for (Silhouette shape : shapes) {
            int length = shape.lower().length;
            each += 2L * length * Math.max(1, (int) Packing.widthMm(size) - length);
        }
        return (int) Math.max(FEWEST_CHANGES, Math.min(MOST_CHANGES, COLUMN_BUDGET / each));
    }
}
