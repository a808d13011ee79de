package haftline.adjust.takeoff;

import haftline.shape.Shape;
import haftline.store.ShapeFile;
import haftline.store.Starter;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;

/** Every starter shape measured with many seeds and taken off again; prints a table. */
final class StarterRun {
    static final double DEVIATION_MM = 0.05;
    static final double TOLERANCE_MM = 0.1;

    /** Whether the kit's metal was measured too. */
    static final boolean KNOWN = !Boolean.getBoolean("unknown");

    /** How far apart readings are, mm. */
    static final double SPACING_MM = Double.parseDouble(System.getProperty("spacing", "1"));

    private StarterRun() {}

    /** How one shape fared with one seed. */
    record Case(
            String name,
            long seed,
            double off,
            double crispOff,
            int more,
            int details,
            boolean strays) {
        boolean good() {
            return off <= TOLERANCE_MM && crispOff <= 0.5 && more <= 1;
        }
    }

    static Case of(Shape shape, long seed) {
        return of(shape, seed, KNOWN);
    }

    /** With or without the kit's metal. */
    static Case of(Shape shape, long seed, boolean known) {
        Bench bench = new Bench(shape);
        SplittableRandom random = new SplittableRandom(seed);
        Optional<TakeOff> taken =
                TakeOff.of(
                        bench.readings(SPACING_MM, DEVIATION_MM, random),
                        TOLERANCE_MM,
                        "taken off",
                        known ? bench.ends() : Ends.UNKNOWN);
        if (taken.isEmpty()) {
            return new Case(shape.name(), seed, 99, 99, 99, 0, false);
        }
        Shape back = taken.get().shape();
        // With the ends known the engine draws the shape on the very kit; else on the ends that the
        // take-off itself tells.
        var drawn = known ? bench.drawn(back) : taken.get().outline();
        return new Case(
                shape.name(),
                seed,
                bench.off(drawn),
                bench.crispOff(drawn),
                back.nodes().size() - shape.nodes().size(),
                back.details().size(),
                !taken.get().strays().isEmpty());
    }

    /**
     * Runs.
     *
     * @param args number of seeds; part of a shape's file name
     * @throws Exception where a starter shape cannot be read
     */
    public static void main(String[] args) throws Exception {
        int seeds = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        for (Path file : Starter.shapes()) {
            if (args.length > 1 && !file.toString().contains(args[1])) {
                continue;
            }
            Shape shape = ShapeFile.read(file);
            double[] off = new double[seeds];
            double crisp = 0;
            int more = -99;
            int bad = 0;
            int strays = 0;
            long start = System.nanoTime();
            for (int seed = Integer.getInteger("from", 0); seed < seeds; seed++) {
                Case one = of(shape, seed);
                off[seed] = one.off();
                crisp = Math.max(crisp, one.crispOff());
                more = Math.max(more, one.more());
                strays += one.strays() ? 1 : 0;
                if (!one.good()) {
                    bad++;
                    if (bad <= 5) {
                        System.out.println("  " + one);
                    }
                }
            }
            double ms = (System.nanoTime() - start) / 1e6 / seeds;
            Arrays.sort(off);
            System.out.printf(
                    Locale.ROOT,
                    "%-32s median %.3f 95%% %.3f worst %.3f crisp %.2f nodes %+d bad %d, good readings named in %d, %.0f ms%n",
                    shape.name(),
                    off[seeds / 2],
                    off[seeds * 95 / 100],
                    off[seeds - 1],
                    crisp,
                    more,
                    bad,
                    strays,
                    ms);
        }
    }
}
