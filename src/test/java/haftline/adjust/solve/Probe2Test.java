package haftline.adjust.solve;

import java.util.*;
import org.junit.jupiter.api.Test;

public class Probe2Test {
    public static void main(String[] z) {
        new Probe2Test().probe();
    }

    @Test
    void probe() {
        RandomDesigns designs = new RandomDesigns(Long.getLong("s", 11));
        SplittableRandom rnd = new SplittableRandom(3);
        int worse = 0, missed = 0, cnt = 0, reach = 0;
        for (int i = 0; i < 120; i++) {
            RandomDesigns.Design d = designs.next();
            Adjustment a = Adjust.of(d.set(), RandomDesigns.MATERIALS, d.wish());
            if (a.missed().stream().anyMatch(x -> x.standing() == Standing.IMPOSSIBLE)) continue;
            SetModel m = new Adjust(d.set(), RandomDesigns.MATERIALS, d.wish()).model();
            double best = Double.POSITIVE_INFINITY;
            double[] bp = null;
            for (int s = 0; s < 30; s++) {
                double[] p = new double[m.size()];
                for (int k = 0; k < p.length; k++)
                    p[k] = m.low(k) + rnd.nextDouble() * (m.high(k) - m.low(k));
                var at = Adjust.met(m, p, best * best / 2);
                if (at.isPresent()) {
                    double c = Math.sqrt(2 * Descent.change(at.get().point()));
                    if (c < best) {
                        best = c;
                        bp = at.get().point();
                    }
                }
            }
            cnt++;
            if (a.isMet()) {
                if (a.changeMm() > 1.02 * best) {
                    worse++;
                    System.err.println(
                            i
                                    + " worse "
                                    + a.changeMm()
                                    + " best "
                                    + best
                                    + " "
                                    + d.wish().needs()
                                    + Arrays.toString(bp)
                                    + " from "
                                    + a.moves());
                }
            } else {
                reach++;
                if (best < 1e9) {
                    missed++;
                    System.err.println(i + " missed: " + best + " " + a.conflicts());
                }
            }
        }
        System.err.println(
                "n " + cnt + " worse " + worse + " reach " + reach + " missed " + missed);
    }
}
