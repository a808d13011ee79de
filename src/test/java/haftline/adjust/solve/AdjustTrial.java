package haftline.adjust.solve;

import haftline.adjust.Watch;
import haftline.adjust.solve.RandomDesigns.Design;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The long trials whose figures docs/decisions/0007-adjust.md keeps: {@code java -cp ...
 * haftline.adjust.solve.AdjustTrial 1000 50 200}. Run from the test classes; the tests run a part.
 */
public final class AdjustTrial {
    private AdjustTrial() {}

    /**
     * Runs both trials.
     *
     * @param args how many designs are checked, how many are searched, from how many beginnings
     */
    public static void main(String[] args) {
        int checked = Integer.parseInt(args[0]);
        if (checked > 0) {
            checked(checked);
        }
        searched(Integer.parseInt(args[1]), Integer.parseInt(args[2]));
    }

    private static void checked(int count) {
        RandomDesigns designs = new RandomDesigns(20261125);
        Map<String, Integer> outcomes = new TreeMap<>();
        List<Double> took = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Design design = designs.next();
            long start = cpu();
            Adjustment answer = Adjust.of(design.set(), RandomDesigns.MATERIALS, design.wish());
            took.add((cpu() - start) / 1e6);
            EngineCheck.holds(answer, design.set(), "design " + i);
            outcomes.merge(outcome(answer), 1, Integer::sum);
        }
        Collections.sort(took);
        report(
                count
                        + " designs checked: "
                        + outcomes
                        + ", processor time ms: median "
                        + took.get(count / 2)
                        + ", 95 in 100 under "
                        + took.get(count * 95 / 100));
    }

    private static String outcome(Adjustment answer) {
        if (answer.isMet()) {
            return "met";
        }
        boolean proved =
                answer.missed().stream().anyMatch(a -> a.standing() == Standing.IMPOSSIBLE);
        return proved ? "impossible, proved" : "not met within reach";
    }

    private static void searched(int count, int starts) {
        RandomDesigns designs = new RandomDesigns(20261126);
        int met = 0;
        int found = 0;
        int compared = 0;
        double worst = 0;
        for (int i = 0; compared < count; i++) {
            Design design = designs.next();
            Adjustment answer = Adjust.of(design.set(), RandomDesigns.MATERIALS, design.wish());
            if (outcome(answer).equals("impossible, proved")) {
                continue;
            }
            compared++;
            SetModel model =
                    new Adjust(design.set(), RandomDesigns.MATERIALS, design.wish(), Watch.NOBODY)
                            .model();
            double best = GlobalSearch.leastChangeMm(model, starts, i);
            if (answer.isMet()) {
                met++;
                double ratio = answer.changeMm() / best;
                worst = Math.max(worst, ratio);
                report("design " + i + ": " + answer.changeMm() + " mm, ratio " + ratio);
            } else if (Double.isFinite(best)) {
                found++;
                report("design " + i + ": a search met it at " + best + " mm");
            }
        }
        report(
                compared
                        + " designs searched from "
                        + starts
                        + " beginnings, "
                        + met
                        + " met: greatest ratio "
                        + worst
                        + "; told as not within reach but met by the search: "
                        + found);
    }

    private static long cpu() {
        return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
    }

    private static void report(String line) {
        System.err.println(line);
    }
}
