package haftline.adjust.takeoff;

import java.util.ArrayList;
import java.util.List;

/**
 * Readings between two crisp places.
 *
 * @param from first reading
 * @param to last reading, included
 * @param left where and how it begins
 * @param right where and how it ends
 * @param stretches what fits it
 */
record Run(int from, int to, Cut left, Cut right, List<Stretch> stretches) {
    Run {
        stretches = List.copyOf(stretches);
    }

    double widthMm() {
        return right.x() - left.x();
    }

    /** Joins stretches through their smooth cuts. */
    static List<Run> of(
            List<Stretch> stretches, double[] x, double[] d, double deviation, double clear) {
        List<Run> runs = new ArrayList<>();
        List<Stretch> within = new ArrayList<>();
        Cut left = new Cut(Cut.Kind.END, x[0]);
        for (int k = 0; k < stretches.size(); k++) {
            Stretch stretch = stretches.get(k);
            within.add(stretch);
            boolean last = k + 1 == stretches.size();
            Cut right =
                    last
                            ? new Cut(Cut.Kind.END, x[stretch.to()])
                            : Cut.between(stretch, stretches.get(k + 1), x, d, deviation, clear);
            if (last || right.isCrisp()) {
                runs.add(new Run(within.get(0).from(), stretch.to(), left, right, within));
                within.clear();
                left = right;
            }
        }
        return runs;
    }
}
