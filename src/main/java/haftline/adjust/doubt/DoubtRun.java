package haftline.adjust.doubt;

import haftline.adjust.Watch;
import haftline.figures.Zone;
import haftline.handle.Handle;
import haftline.measure.Checks;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;

/**
 * Makes a handle many times in figures. The handles are cut into chunks of one size, each with a
 * random source split off the seed by its number, and what the chunks say is put together in their
 * order: the same seed gives the same answer on any number of threads.
 */
public final class DoubtRun {
    /** Handles of one chunk: large against the cost of handing it out, small against a wait. */
    private static final int CHUNK = 1000;

    /** Walks from handle to handle from which the inputs' weights are reckoned. */
    private static final int WALKS = 4000;

    private static final int WALL = 0;
    private static final int BALANCE = 1;
    private static final int ANSWERS = 2;

    /** Counts of a chunk behind those of the zones. */
    private static final int ANY = 0;

    private static final int STOPPED = 1;
    private static final int END_UNDER = 2;
    private static final int END_STOPPED = 3;
    private static final int COUNTS = 4;

    /** Handles that are few enough and many enough. */
    public static final int FEWEST = 100;

    /** Most handles of a run. */
    public static final int MOST = 2_000_000;

    /** Width of the histogram's classes for the bands, mm. */
    private static final double CLASS_MM = 0.02;

    private static final int CLASSES = 2000;
    private static final double LOWEST_MM = -5;

    /** Places of the bands lie at least this far apart, mm. */
    private static final double BAND_MM = 2;

    private final Handle handle;
    private final Likeness likeness;
    private final long seed;
    private final int handles;
    private final Watch watch;
    private final int[] bandStations;
    private final Effects effects;
    private final double[] margin;
    private final double[] end;
    private final double[] balance;
    private final double[] mass;
    private final int[][] chunkUnder;
    private final int[] classes;
    private final AtomicInteger finished = new AtomicInteger();

    private DoubtRun(Handle handle, long seed, int handles, Watch watch) {
        Checks.within("handles", handles, FEWEST, MOST);
        this.handle = handle;
        this.likeness = new Likeness(handle);
        this.seed = seed;
        this.handles = handles;
        this.watch = watch;
        this.bandStations = bandStations();
        this.effects = effects(likeness);
        this.margin = new double[handles];
        this.end = new double[handles];
        this.balance = new double[handles];
        this.mass = new double[handles];
        this.chunkUnder = new int[chunks()][likeness.zones().size() + COUNTS];
        this.classes = new int[bandStations.length * CLASSES];
    }

    /**
     * Runs.
     *
     * @param handle the handle as drawn; its rules say how far a made one is from it
     * @param seed any number
     * @param handles how many to make, {@link #FEWEST} to {@link #MOST}
     * @param threads on how many threads, 1 or more
     * @param watch who waits
     * @return what it says; empty where the watch ended it
     */
    public static Optional<Doubt> of(
            Handle handle, long seed, int handles, int threads, Watch watch) {
        return new DoubtRun(handle, seed, handles, watch).run(threads);
    }

    private static Effects effects(Likeness likeness) {
        int[] inputOf = new int[likeness.figures()];
        for (int f = 0; f < inputOf.length; f++) {
            inputOf[f] = likeness.input(f).ordinal();
        }
        int[] walked =
                Arrays.stream(Input.values())
                        .filter(likeness::scatters)
                        .mapToInt(Input::ordinal)
                        .toArray();
        return new Effects(inputOf, walked, Input.values().length, ANSWERS);
    }

    private int chunks() {
        return (handles + CHUNK - 1) / CHUNK;
    }

    private Optional<Doubt> run(int threads) {
        double[][] walks = new double[(WALKS + CHUNK - 1) / CHUNK][];
        List<SplittableRandom> sources = new ArrayList<>();
        SplittableRandom root = new SplittableRandom(seed);
        for (int k = 0; k < chunks() + walks.length; k++) {
            sources.add(root.split());
        }
        AtomicInteger next = new AtomicInteger();
        Runnable work =
                () -> {
                    for (int k = next.getAndIncrement();
                            k < sources.size() && !watch.isOver();
                            k = next.getAndIncrement()) {
                        if (k < chunks()) {
                            chunk(k, sources.get(k));
                        } else {
                            walks[k - chunks()] = weigh(sources.get(k));
                        }
                    }
                };
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            List<Future<?>> all = new ArrayList<>();
            for (int i = 0; i < threads; i++) {
                all.add(pool.submit(work));
            }
            for (Future<?> one : all) {
                one.get();
            }
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Optional.empty();
        } catch (ExecutionException mistake) {
            throw new IllegalStateException(mistake.getCause());
        } finally {
            pool.shutdownNow();
        }
        return watch.isOver() ? Optional.empty() : Optional.of(answer(walks));
    }

    private void chunk(int k, SplittableRandom random) {
        Likeness.Made made = likeness.made();
        double[] normal = new double[likeness.figures()];
        int[] own = new int[classes.length];
        int zones = likeness.zones().size();
        double stop = handle.brief().rules().walls().stopMm();
        int to = Math.min(handles, (k + 1) * CHUNK);
        for (int i = k * CHUNK; i < to; i++) {
            draw(random, normal);
            made.make(normal);
            margin[i] = made.leastMargin;
            end[i] = made.end;
            balance[i] = made.balance;
            mass[i] = made.mass;
            for (int z = 0; z < zones; z++) {
                chunkUnder[k][z] += made.zoneWall[z] < likeness.limitMm(z) ? 1 : 0;
            }
            chunkUnder[k][zones + ANY] += made.leastMargin < 0 ? 1 : 0;
            chunkUnder[k][zones + STOPPED] += made.least < stop ? 1 : 0;
            chunkUnder[k][zones + END_UNDER] += made.end < likeness.endLimitMm() ? 1 : 0;
            chunkUnder[k][zones + END_STOPPED] += made.end < stop ? 1 : 0;
            for (int b = 0; b < bandStations.length; b++) {
                int at = (int) ((made.wall[bandStations[b]] - LOWEST_MM) / CLASS_MM);
                own[b * CLASSES + Math.max(0, Math.min(CLASSES - 1, at))]++;
            }
        }
        synchronized (classes) {
            // Whole numbers add up the same in any order.
            for (int i = 0; i < own.length; i++) {
                classes[i] += own[i];
            }
        }
        watch.made(Math.min(handles, finished.addAndGet(to - k * CHUNK)), handles);
    }

    private static void draw(SplittableRandom random, double[] normal) {
        for (int i = 0; i < normal.length; i++) {
            normal[i] = random.nextGaussian();
        }
    }

    private double[] weigh(SplittableRandom random) {
        Likeness.Made made = likeness.made();
        double[] sums = effects.sums();
        double[] a = new double[likeness.figures()];
        double[] b = new double[a.length];
        for (int i = 0; i < CHUNK; i++) {
            draw(random, a);
            draw(random, b);
            effects.walk(
                    a,
                    b,
                    (figures, answers) -> {
                        made.make(figures);
                        answers[WALL] = made.leastMargin;
                        answers[BALANCE] = made.balance;
                    },
                    random,
                    sums);
        }
        return sums;
    }

    private Doubt answer(double[][] walks) {
        int zones = likeness.zones().size();
        int[] under = new int[zones + COUNTS];
        for (int[] chunk : chunkUnder) {
            for (int z = 0; z < under.length; z++) {
                under[z] += chunk[z];
            }
        }
        List<ZoneDoubt> byZone = new ArrayList<>();
        for (int z = 0; z < zones; z++) {
            Zone zone = likeness.zones().get(z);
            byZone.add(new ZoneDoubt(zone, likeness.limitMm(z), new Proportion(under[z], handles)));
        }
        return new Doubt(
                handles,
                seed,
                handle.wander(),
                new Proportion(under[zones + ANY], handles),
                new Proportion(under[zones + STOPPED], handles),
                byZone,
                new EndDoubt(
                        likeness.isWeb(),
                        likeness.endLimitMm(),
                        new Proportion(under[zones + END_UNDER], handles),
                        new Proportion(under[zones + END_STOPPED], handles),
                        Spread.of(end)),
                Spread.of(margin),
                Spread.of(balance),
                Spread.of(mass),
                weights(walks),
                bands());
    }

    private List<Weight> weights(double[][] walks) {
        double[] sums = effects.sums();
        for (double[] chunk : walks) {
            for (int i = 0; i < sums.length; i++) {
                sums[i] += chunk[i];
            }
        }
        double[] ofWall = effects.shares(sums, WALL);
        double[] ofBalance = effects.shares(sums, BALANCE);
        List<Weight> weights = new ArrayList<>();
        for (Input input : Input.values()) {
            int i = input.ordinal();
            weights.add(new Weight(input, ofWall[i], ofBalance[i]));
        }
        weights.sort(Comparator.comparingDouble(Weight::ofWall).reversed());
        return weights;
    }

    private int[] bandStations() {
        List<Integer> chosen = new ArrayList<>();
        double[] places = likeness.stations().x();
        for (int s = 0; s < places.length; s++) {
            double x = places[s];
            boolean far = chosen.stream().allMatch(t -> Math.abs(places[t] - x) >= BAND_MM);
            if (far && likeness.stations().isDrawn()[s]) {
                chosen.add(s);
            }
        }
        return chosen.stream().mapToInt(Integer::intValue).toArray();
    }

    private List<Band> bands() {
        List<Band> bands = new ArrayList<>();
        for (int b = 0; b < bandStations.length; b++) {
            bands.add(
                    new Band(
                            likeness.stations().x()[bandStations[b]],
                            quantile(b, 0.05),
                            quantile(b, 0.5),
                            quantile(b, 0.95)));
        }
        bands.sort(Comparator.comparingDouble(Band::x));
        return bands;
    }

    private double quantile(int band, double share) {
        double sought = share * handles;
        double sum = 0;
        for (int i = 0; i < CLASSES; i++) {
            int here = classes[band * CLASSES + i];
            if (sum + here >= sought && here > 0) {
                return LOWEST_MM + CLASS_MM * (i + (sought - sum) / here);
            }
            sum += here;
        }
        return LOWEST_MM + CLASS_MM * CLASSES;
    }
}
