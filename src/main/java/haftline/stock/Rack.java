package haftline.stock;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** The drills that the maker owns, by rising diameter. Immutable; may be empty. */
public final class Rack {
    private final List<Drill> drills;

    private Rack(List<Drill> drills) {
        this.drills = drills;
    }

    /**
     * A rack.
     *
     * @param drills the drills in any order; of two alike in diameter and point the first is kept,
     *     of two of one diameter the first is taken for a bore
     * @return the rack
     */
    public static Rack of(List<Drill> drills) {
        List<Drill> sorted = new ArrayList<>(drills);
        sorted.sort(Comparator.comparingDouble(Drill::diameterMm));
        List<Drill> kept = new ArrayList<>();
        for (Drill drill : sorted) {
            if (kept.isEmpty() || !alike(kept.get(kept.size() - 1), drill)) {
                kept.add(drill);
            }
        }
        return new Rack(List.copyOf(kept));
    }

    private static boolean alike(Drill one, Drill other) {
        return one.diameterMm() == other.diameterMm()
                && one.pointAngleDeg().equals(other.pointAngleDeg());
    }

    /**
     * The drills by rising diameter.
     *
     * @return an unmodifiable list
     */
    public List<Drill> drills() {
        return drills;
    }

    /**
     * The smallest drill that is not smaller.
     *
     * @param diameterMm wish, mm
     * @return the drill, or nothing where all are smaller
     */
    public Optional<Drill> smallestAtLeast(double diameterMm) {
        int index = firstAtLeast(diameterMm);
        return index < drills.size() ? Optional.of(drills.get(index)) : Optional.empty();
    }

    /**
     * The largest drill that is not larger.
     *
     * @param diameterMm wish, mm
     * @return the drill, or nothing where all are larger
     */
    public Optional<Drill> largestAtMost(double diameterMm) {
        int index = firstAtLeast(diameterMm);
        if (index < drills.size() && drills.get(index).diameterMm() == diameterMm) {
            return Optional.of(drills.get(index));
        }
        return index > 0 ? Optional.of(drills.get(index - 1)) : Optional.empty();
    }

    /**
     * The drill nearest in diameter; of two equally near the smaller, for a hole can be eased but
     * not made less.
     *
     * @param diameterMm wish, mm
     * @return the drill, or nothing from an empty rack
     */
    public Optional<Drill> nearest(double diameterMm) {
        Optional<Drill> below = largestAtMost(diameterMm);
        Optional<Drill> above = smallestAtLeast(diameterMm);
        if (below.isEmpty() || above.isEmpty()) {
            return below.or(() -> above);
        }
        double under = diameterMm - below.get().diameterMm();
        double over = above.get().diameterMm() - diameterMm;
        return over < under ? above : below;
    }

    /**
     * Whether a drill of about this diameter is owned.
     *
     * @param diameterMm wish, mm
     * @param toleranceMm how far off still counts, mm, 0 or more
     * @return true where one is within the tolerance
     */
    public boolean holds(double diameterMm, double toleranceMm) {
        return nearest(diameterMm)
                .filter(drill -> Math.abs(drill.diameterMm() - diameterMm) <= toleranceMm)
                .isPresent();
    }

    private int firstAtLeast(double diameterMm) {
        if (!Double.isFinite(diameterMm)) {
            throw new IllegalArgumentException(
                    "diameterMm " + diameterMm + ": expected a finite number");
        }
        int low = 0;
        int high = drills.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (drills.get(middle).diameterMm() < diameterMm) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }
}
