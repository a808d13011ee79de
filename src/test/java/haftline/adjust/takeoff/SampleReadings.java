package haftline.adjust.takeoff;

import haftline.store.ShapeFile;
import java.nio.file.Path;
import java.util.Locale;
import java.util.SplittableRandom;

/** Prints readings of a starter shape as a table, for trying the command by hand. */
final class SampleReadings {
    private SampleReadings() {}

    /**
     * Prints.
     *
     * @param args a shape's file, a seed, and a line to spoil
     * @throws Exception where the shape cannot be read
     */
    public static void main(String[] args) throws Exception {
        var bench = new Bench(ShapeFile.read(Path.of(args[0])));
        SplittableRandom random = new SplittableRandom(Long.parseLong(args[1]));
        System.out.println("x (mm),diameter (mm)");
        int line = 1;
        for (Reading one : bench.readings(1, StarterRun.DEVIATION_MM, random)) {
            line++;
            double spoilt = args.length > 2 && line == Integer.parseInt(args[2]) ? 1.2 : 0;
            System.out.printf(Locale.ROOT, "%.2f,%.2f%n", one.x(), one.diameterMm() + spoilt);
        }
    }
}
