package haftline.set.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * First fit decreasing: the longest item first, each into the first begun stick that has room, else
 * into a new one. Which kind of stick is begun is tried by cost, by rate and by length.
 */
final class FirstFit {
    private FirstFit() {}

    /** The best of the three, for what is wanted and the sticks that are left. */
    static List<Laid> best(Case of, int[] wanted, int[] left) {
        List<Comparator<Integer>> orders =
                List.of(
                        Comparator.comparingLong(j -> of.stickCost[j]),
                        Comparator.comparingDouble(
                                j -> of.stickCost[j] / (double) of.stickLength[j]),
                        Comparator.comparingLong(j -> -of.stickLength[j]));
        List<Laid> best = List.of();
        long least = Long.MAX_VALUE;
        for (Comparator<Integer> order : orders) {
            List<Laid> laid = by(order, of, wanted, left.clone());
            long cost = LeastCost.cost(of, laid);
            if (cost < least) {
                least = cost;
                best = laid;
            }
        }
        return best;
    }

    private static List<Laid> by(Comparator<Integer> order, Case of, int[] wanted, int[] left) {
        List<Integer> kinds = new ArrayList<>();
        for (int j = 0; j < of.sticks; j++) {
            kinds.add(j);
        }
        kinds.sort(order);
        List<Laid> begun = new ArrayList<>();
        List<Long> room = new ArrayList<>();
        for (int i = 0; i < of.items; i++) {
            int first = 0;
            for (int n = 0; n < wanted[i]; n++) {
                while (first < begun.size() && !hasRoom(of, begun, room, first, i)) {
                    first++;
                }
                if (first == begun.size()) {
                    int stick = begin(of, kinds, left, i);
                    begun.add(new Laid(stick, new int[of.items]));
                    room.add(of.stickLength[stick]);
                }
                begun.get(first).counts()[i]++;
                room.set(first, room.get(first) - of.length[i]);
            }
        }
        return begun;
    }

    private static boolean hasRoom(Case of, List<Laid> begun, List<Long> room, int at, int item) {
        return room.get(at) >= of.length[item] && of.holds[begun.get(at).stick()][item];
    }

    private static int begin(Case of, List<Integer> kinds, int[] left, int item) {
        for (int stick : kinds) {
            if (left[stick] > 0 && of.holds[stick][item]) {
                if (of.isLimited(stick)) {
                    left[stick]--;
                }
                return stick;
            }
        }
        throw new IllegalStateException("no stick is left, yet every item fits an unlimited one");
    }
}
