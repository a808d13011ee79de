package haftline.adjust.doubt;

import haftline.adjust.Watch;
import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.Wander;
import java.util.Optional;

/**
 * What chance makes of one piece, drilled as stated and in another way.
 *
 * @param stated drilled as the set says
 * @param otherWay another way to drill, one of the presets
 * @param other the same handles drilled in that way
 */
public record TwoWays(Doubt stated, String otherWay, Doubt other) {
    /** Drilling after a centre drill has made the start true. */
    public static final String CENTRED = "lathe, centre drill first";

    /** Drilling without one. */
    public static final String UNCENTRED = "lathe";

    /**
     * Runs both ways with one seed.
     *
     * @param handle the handle as drawn
     * @param seed any number
     * @param handles how many to make, as {@link DoubtRun#of} takes
     * @param threads on how many threads, 1 or more
     * @param watch who waits; told the handles of both ways together
     * @return what both say; empty where the watch ended it
     */
    public static Optional<TwoWays> of(
            Handle handle, long seed, int handles, int threads, Watch watch) {
        boolean centred = handle.wander().slope() <= Wander.PRESETS.get(CENTRED).slope();
        String way = centred ? UNCENTRED : CENTRED;
        Brief brief = handle.brief();
        Resolution otherwise =
                Resolve.of(
                        brief.withChoices(
                                brief.choices().toBuilder()
                                        .wander(Wander.PRESETS.get(way))
                                        .build()));
        // Wander moves no outline, so what could be drawn can be drawn again.
        Handle other = ((Resolution.Resolved) otherwise).handle();
        return DoubtRun.of(handle, seed, handles, threads, new Half(watch, 0))
                .flatMap(
                        stated ->
                                DoubtRun.of(other, seed, handles, threads, new Half(watch, handles))
                                        .map(by -> new TwoWays(stated, way, by)));
    }

    /**
     * What the other way makes of the share of walls that are too thin.
     *
     * @return a clause without its stop, to follow {@code stated().under().inWords()}
     */
    public String otherInWords() {
        String way =
                otherWay.equals(CENTRED)
                        ? "drilling on the lathe with a centre drill first"
                        : "drilling on the lathe without a centre drill";
        String made = other.under().inWords();
        // Counts that differ by less than is told are no difference either.
        return made.equals(stated.under().inWords())
                ? way + " would not change it"
                : way + " makes it " + made.replace("about ", "");
    }

    /** One of two runs that one waits for. */
    private record Half(Watch watch, int before) implements Watch {
        @Override
        public void made(int handles, int of) {
            watch.made(before + handles, 2 * of);
        }

        @Override
        public boolean isOver() {
            return watch.isOver();
        }
    }
}
