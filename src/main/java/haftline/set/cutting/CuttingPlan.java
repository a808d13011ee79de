package haftline.set.cutting;

import java.util.List;

/**
 * Which sticks are cut into what.
 *
 * @param cuts the patterns, most often used first
 * @param cost cost of the sticks that are begun
 * @param bound no plan costs less than this
 * @param isProven whether no plan costs less than this one
 */
public record CuttingPlan(List<Cut> cuts, long cost, long bound, boolean isProven) {
    /**
     * Sticks that are cut alike.
     *
     * @param stick index of the stick in the problem
     * @param counts how many of each item come out of one stick, in the order of the problem
     * @param times how many sticks are cut so
     */
    public record Cut(int stick, List<Integer> counts, int times) {
        /** Copies the list. */
        public Cut {
            counts = List.copyOf(counts);
        }
    }

    /** Copies the list. */
    public CuttingPlan {
        cuts = List.copyOf(cuts);
    }

    /**
     * How many sticks are begun.
     *
     * @return the count
     */
    public int sticks() {
        return cuts.stream().mapToInt(Cut::times).sum();
    }
}
