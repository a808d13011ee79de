package haftline.set.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Turns sticks in terms of merged items into patterns of the items that were asked for. */
final class Decoding {
    private Decoding() {}

    /**
     * The patterns.
     *
     * @param members which items of the problem each merged one stands for
     */
    static List<CuttingPlan.Cut> cuts(
            CuttingStock problem, List<List<Integer>> members, List<Laid> laid) {
        int[] open = problem.items().stream().mapToInt(CuttingStock.Item::count).toArray();
        // Equal sticks one after the other, so that items alike come out in equal patterns.
        List<Laid> sorted = new ArrayList<>(laid);
        sorted.sort(
                Comparator.comparingInt(Laid::stick)
                        .thenComparing(Laid::counts, Decoding::largestFirst));
        Map<CuttingPlan.Cut, Integer> times = new LinkedHashMap<>();
        for (Laid stick : sorted) {
            Integer[] counts = new Integer[open.length];
            java.util.Arrays.fill(counts, 0);
            for (int k = 0; k < stick.counts().length; k++) {
                int rest = stick.counts()[k];
                for (int item : members.get(k)) {
                    int taken = Math.min(rest, open[item]);
                    counts[item] = taken;
                    open[item] -= taken;
                    rest -= taken;
                }
            }
            times.merge(new CuttingPlan.Cut(stick.stick(), List.of(counts), 1), 1, Integer::sum);
        }
        return times.entrySet().stream()
                .map(
                        e ->
                                new CuttingPlan.Cut(
                                        e.getKey().stick(), e.getKey().counts(), e.getValue()))
                .toList();
    }

    private static int largestFirst(int[] one, int[] other) {
        return java.util.Arrays.compare(other, one);
    }
}
