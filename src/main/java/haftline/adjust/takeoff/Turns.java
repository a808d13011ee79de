package haftline.adjust.takeoff;

import java.util.ArrayList;
import java.util.List;

/** The widest and narrowest places inside a run of readings. */
final class Turns {
    private Turns() {}

    /**
     * Turns of the curves that fit a run, each of which stands out from its neighbours.
     *
     * @param run the run
     * @param x places of all readings
     * @param d their diameters
     * @param least how far a turn stands out, mm on the diameter
     * @return places and diameters, in order
     */
    static List<DraftNode> of(Run run, double[] x, double[] d, double least) {
        double[] line = new double[run.to() - run.from() + 1];
        for (Stretch stretch : run.stretches()) {
            Polynomial fit = new Polynomial(x, d, stretch.from(), stretch.to());
            int order =
                    stretch.kind() == Stretch.Kind.ARC
                            ? Math.min(Polynomial.HIGHEST, fit.orders())
                            : stretch.order();
            for (int j = stretch.from(); j <= stretch.to(); j++) {
                line[j - run.from()] = fit.at(x[j], order);
            }
        }
        List<DraftNode> turns = new ArrayList<>();
        int low = 0;
        int high = 0;
        int rising = 0;
        for (int j = 1; j < line.length; j++) {
            low = line[j] < line[low] ? j : low;
            high = line[j] > line[high] ? j : high;
            if (rising >= 0 && line[high] - line[j] > least) {
                if (rising > 0 || high > 0) {
                    turn(turns, run, x, line, high);
                }
                rising = -1;
                low = j;
                high = j;
            } else if (rising <= 0 && line[j] - line[low] > least) {
                if (rising < 0 || low > 0) {
                    turn(turns, run, x, line, low);
                }
                rising = 1;
                high = j;
                low = j;
            }
        }
        return turns;
    }

    private static void turn(List<DraftNode> turns, Run run, double[] x, double[] line, int at) {
        turns.add(new DraftNode(x[run.from() + at], line[at], false));
    }
}
