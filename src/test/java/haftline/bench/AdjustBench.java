package haftline.bench;

import haftline.adjust.solve.Adjust;
import haftline.adjust.solve.Adjustment;
import haftline.adjust.solve.RandomDesigns;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** What one adjustment of one piece costs, over designs that miss something; sampled. */
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 4)
@State(Scope.Benchmark)
public class AdjustBench {
    private static final int DESIGNS = 200;

    private final List<RandomDesigns.Design> designs = new ArrayList<>();
    private int next;

    /** Draws the designs. */
    @Setup
    public void prepare() {
        RandomDesigns random = new RandomDesigns(1);
        for (int i = 0; i < DESIGNS; i++) {
            designs.add(random.next());
        }
    }

    /** One design after the other. */
    @Benchmark
    public Adjustment onePiece() {
        RandomDesigns.Design design = designs.get(next++ % DESIGNS);
        return Adjust.of(design.set(), RandomDesigns.MATERIALS, design.wish());
    }
}
