package haftline.set.cutting;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A one-dimensional cutting-stock problem: which sticks are cut into which lengths at the least
 * cost of the sticks that are begun. Several lengths of stick, limited counts and sections are
 * allowed; an item is cut from a stick at least as thick.
 *
 * <p>A saw's kerf is brought in by adding it to every item and once to every stick: k items of
 * length l need k l + (k - 1) kerf, and what is left over may be less than one kerf.
 *
 * @param items what is wanted; at least one
 * @param sticks what it is cut from; every item fits a stick of unlimited count, so that there
 *     always is a plan
 */
public record CuttingStock(List<Item> items, List<Stick> sticks) {
    /** The count of a stick of which there are as many as are wanted. */
    public static final int UNLIMITED = Integer.MAX_VALUE;

    /**
     * Work after which a search is given up: a few seconds on a machine of 2020.
     * docs/formats/batch.md says what comes to a proof before.
     */
    public static final int USUAL_WORK = 20_000_000;

    /** Keeps every sum of lengths and costs exact in a double. */
    private static final long GREATEST = 1L << 40;

    /**
     * Pieces of one length.
     *
     * @param length length, over 0
     * @param across thickness, 0 or more
     * @param count how many, 1 or more
     */
    public record Item(long length, long across, int count) {
        /** Checks the ranges. */
        public Item {
            within("item length", length, 1, GREATEST);
            within("item thickness", across, 0, GREATEST);
            within("item count", count, 1, UNLIMITED);
        }
    }

    /**
     * Sticks of one kind.
     *
     * @param length length, over 0
     * @param across thickness, 0 or more
     * @param count how many there are, 0 or more, or {@link #UNLIMITED}
     * @param cost cost of beginning one, over 0
     */
    public record Stick(long length, long across, int count, long cost) {
        /** Checks the ranges. */
        public Stick {
            within("stick length", length, 1, GREATEST);
            within("stick thickness", across, 0, GREATEST);
            within("stick count", count, 0, UNLIMITED);
            within("stick cost", cost, 1, GREATEST);
        }

        /**
         * Whether an item can be cut from it.
         *
         * @param item the item
         * @return true where it is long and thick enough
         */
        public boolean holds(Item item) {
            return item.length() <= length && item.across() <= across;
        }
    }

    private static void within(String field, long value, long low, long high) {
        if (value < low || value > high) {
            throw new IllegalArgumentException(
                    field + " " + value + ": expected a whole number from " + low + " to " + high);
        }
    }

    /** Checks that there is a plan. */
    public CuttingStock {
        items = List.copyOf(items);
        sticks = List.copyOf(sticks);
        if (items.isEmpty()) {
            throw new IllegalArgumentException("items: expected at least one");
        }
        for (Item item : items) {
            if (sticks.stream().noneMatch(s -> s.count() == UNLIMITED && s.holds(item))) {
                throw new IllegalArgumentException(
                        "item of length "
                                + item.length()
                                + ": expected a stick of unlimited count that holds it");
            }
        }
    }

    /**
     * The plan of least cost: first fit decreasing, then the bound of Gilmore and Gomory's linear
     * program (Operations Research 9, 1961; 11, 1963) and its rounding, then a search over whole
     * patterns that ends in a proof or at the limit of work.
     *
     * @param mostWork how many steps the search may take; a count and not a time, so that the
     *     answer is the same on every machine
     * @return the plan, with the lower bound and whether it is proven to be the least
     */
    public CuttingPlan solve(int mostWork) {
        // Items alike are one to the search: to tell them apart would only multiply its ways.
        Map<Item, List<Integer>> alike = new LinkedHashMap<>();
        for (int i = 0; i < items.size(); i++) {
            Item kind = new Item(items.get(i).length(), items.get(i).across(), 1);
            alike.computeIfAbsent(kind, k -> new ArrayList<>()).add(i);
        }
        List<Map.Entry<Item, List<Integer>>> kinds = new ArrayList<>(alike.entrySet());
        kinds.sort(
                Comparator.comparing(
                        Map.Entry::getKey,
                        Comparator.comparingLong(Item::length)
                                .thenComparingLong(Item::across)
                                .reversed()));
        List<Item> merged = new ArrayList<>();
        for (Map.Entry<Item, List<Integer>> kind : kinds) {
            int count = kind.getValue().stream().mapToInt(i -> items.get(i).count()).sum();
            merged.add(new Item(kind.getKey().length(), kind.getKey().across(), count));
        }
        LeastCost least = LeastCost.of(new Case(merged, sticks), mostWork);
        return new CuttingPlan(
                Decoding.cuts(this, kinds.stream().map(Map.Entry::getValue).toList(), least.laid()),
                least.cost(),
                least.bound(),
                least.isProven());
    }
}
