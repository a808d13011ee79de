package haftline.adjust.doubt;

import haftline.adjust.Watch;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.store.SetFile;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;

/** What 100,000 handles cost; docs/decisions/0005-doubt.md keeps the figures. */
final class DoubtBench {
    private static final int ROUNDS = 7;

    private DoubtBench() {}

    /**
     * Measures and prints.
     *
     * @param args none
     * @throws Exception where the demonstration set cannot be read
     */
    public static void main(String[] args) throws Exception {
        for (Brief brief : SetFile.read(Path.of("profiles/sets/tidewater.yaml")).briefs()) {
            Handle handle = ((Resolution.Resolved) Resolve.of(brief)).handle();
            double[] seconds = new double[ROUNDS];
            Doubt doubt = null;
            for (int i = 0; i < ROUNDS; i++) {
                long start = System.nanoTime();
                doubt = DoubtRun.of(handle, 1, 100_000, 2, Watch.NOBODY).orElseThrow();
                seconds[i] = (System.nanoTime() - start) / 1e9;
            }
            Arrays.sort(seconds);
            System.out.printf(
                    Locale.ROOT,
                    "%-20s first to last %.2f to %.2f s, median %.2f; under %.5f (%.5f to %.5f)%n",
                    brief.name(),
                    seconds[0],
                    seconds[ROUNDS - 1],
                    seconds[ROUNDS / 2],
                    doubt.under().value(),
                    doubt.under().low(),
                    doubt.under().high());
            System.out.println(
                    "   " + doubt.leastWall() + " " + doubt.balance() + " " + doubt.mass());
            System.out.println("   " + doubt.weights());
            System.out.println("   " + doubt.zones() + " " + doubt.end());
            System.out.println("   " + doubt.bands().subList(0, 3));
        }
    }
}
