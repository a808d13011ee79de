package haftline.adjust.solve;

import java.util.*;
import org.junit.jupiter.api.Test;

public class ProbeTest {
    public static void main(String[] z) {
        new ProbeTest().probe();
    }

    @Test
    void probe() {
        RandomDesigns designs = new RandomDesigns(7);
        int n = 300;
        Map<String, Integer> out = new TreeMap<>();
        List<Double> ms = new ArrayList<>();
        List<Double> msMet = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            RandomDesigns.Design d = designs.next();
            long t =
                    java.lang.management.ManagementFactory.getThreadMXBean()
                            .getCurrentThreadCpuTime();
            Adjustment a = Adjust.of(d.set(), RandomDesigns.MATERIALS, d.wish());
            double took =
                    (java.lang.management.ManagementFactory.getThreadMXBean()
                                            .getCurrentThreadCpuTime()
                                    - t)
                            / 1e6;
            if (i > 100) {
                ms.add(took);
                if (a.isMet()) msMet.add(took);
            }
            String k =
                    a.isMet()
                            ? "met"
                            : a.missed().stream().anyMatch(x -> x.standing() == Standing.IMPOSSIBLE)
                                    ? "impossible"
                                    : "reach";
            if (k.equals("reach"))
                k +=
                        a.conflicts().stream()
                                .flatMap(List::stream)
                                .map(x -> x.need().words())
                                .sorted()
                                .toList();
            out.merge(k, 1, Integer::sum);
        }
        Collections.sort(ms);
        Collections.sort(msMet);
        System.err.println(
                out
                        + " median "
                        + ms.get(ms.size() / 2)
                        + " p95 "
                        + ms.get(ms.size() * 95 / 100)
                        + " max "
                        + ms.get(ms.size() - 1)
                        + " met median "
                        + msMet.get(msMet.size() / 2)
                        + " max "
                        + msMet.get(msMet.size() - 1));
    }
}
