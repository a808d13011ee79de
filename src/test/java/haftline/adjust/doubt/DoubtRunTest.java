package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.figures.Figures;
import haftline.figures.Zone;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.TestBrief;
import haftline.handle.Wander;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class DoubtRunTest {
    private static final int HANDLES = 40_000;

    /** The plain cylinder of the tests, whose wall is the same all along its bore. */
    private static Handle cylinder(Wander wander) {
        var brief = new TestBrief().brief();
        var changed = brief.withChoices(brief.choices().toBuilder().wander(wander).build());
        return ((Resolution.Resolved) Resolve.of(changed)).handle();
    }

    private static double tenonWall(Handle handle) {
        return Figures.of(handle).wall(Zone.TENON).orElseThrow().nominalMm();
    }

    @Test
    void aTenonThatScattersAloneFollowsTheNormalDistribution() {
        Handle handle = cylinder(new Wander(0, 0));
        double over = tenonWall(handle) - 2.5;
        double deviation = 2 * over;
        Scatter scatter = new Scatter(0, deviation, 0.95, 0, 0);
        Doubt doubt = DoubtRun.of(handle, scatter, 5, HANDLES, 2, Watch.NOBODY).orElseThrow();
        // The diameter scatters, the wall by half of it.
        double expected = new NormalDistribution(over, deviation / 2).cumulativeProbability(0);
        Share under = doubt.zones().get(0).under();
        assertThat(doubt.zones().get(0).zone()).isEqualTo(Zone.TENON);
        assertThat(expected).isBetween(under.low() - 0.003, under.high() + 0.003);
        assertThat(doubt.weights().get(0).input()).isEqualTo(Input.TENON);
    }

    @Test
    void aMouthOffTheAxisFollowsRayleigh() {
        Wander wander = new Wander(0.5, 0);
        Handle handle = cylinder(wander);
        double over = tenonWall(handle) - 2.5;
        Scatter scatter = new Scatter(0, 0, 0.95, 0, 0);
        Doubt doubt = DoubtRun.of(handle, scatter, 11, HANDLES, 2, Watch.NOBODY).orElseThrow();
        // 95 in 100 keep within 0.5 mm, so exp(-over^2 / 2 s^2) = 0.05^((over / 0.5)^2).
        double expected = Math.pow(0.05, over * over / 0.25);
        Share under = doubt.zones().get(0).under();
        assertThat(expected).isBetween(under.low() - 0.003, under.high() + 0.003);
    }

    @Test
    void massFollowsTheDensityAlone() {
        Handle handle = cylinder(new Wander(0, 0));
        Scatter scatter = new Scatter(0, 0, 0.95, 0.1, 0);
        Doubt doubt = DoubtRun.of(handle, scatter, 3, HANDLES, 2, Watch.NOBODY).orElseThrow();
        double wood =
                Figures.of(handle).balance().shares().stream()
                        .filter(one -> one.part() == haftline.figures.Share.Part.WOOD)
                        .findFirst()
                        .orElseThrow()
                        .massG();
        assertThat(doubt.mass().mean())
                .isCloseTo(Figures.of(handle).balance().totalG(), within(0.002 * wood));
        // The relative error of a standard deviation is 1 / sqrt(2 n), 0.4 %.
        assertThat(doubt.mass().deviation()).isCloseTo(0.1 * wood, within(0.0015 * wood));
    }

    @Test
    void theSameSeedSaysTheSameOnAnyNumberOfThreads() {
        Handle handle = cylinder(new Wander(0.1, 0.01));
        Scatter scatter = Scatter.usual(handle.brief().stock());
        Doubt one = DoubtRun.of(handle, scatter, 9, 7_300, 1, Watch.NOBODY).orElseThrow();
        assertThat(DoubtRun.of(handle, scatter, 9, 7_300, 3, Watch.NOBODY)).contains(one);
        assertThat(DoubtRun.of(handle, scatter, 9, 7_300, 8, Watch.NOBODY)).contains(one);
        assertThat(DoubtRun.of(handle, scatter, 10, 7_300, 1, Watch.NOBODY))
                .isPresent()
                .get()
                .isNotEqualTo(one);
    }

    @Test
    void aRunThatIsNoLongerWantedEnds() {
        Watch impatient =
                new Watch() {
                    private volatile int made;

                    @Override
                    public void made(int handles, int of) {
                        made = handles;
                    }

                    @Override
                    public boolean isOver() {
                        return made >= 2_000;
                    }
                };
        Handle handle = cylinder(new Wander(0.1, 0.01));
        Scatter scatter = Scatter.usual(handle.brief().stock());
        assertThat(DoubtRun.of(handle, scatter, 9, 2_000_000, 2, impatient)).isEmpty();
    }

    /** The worked figures of the score interval for 10 of 100 (0.0552 to 0.1744). */
    @Test
    void wilsonsIntervalIsTheKnownOne() {
        Share share = new Share(10, 100);
        assertThat(share.low()).isCloseTo(0.0552, within(5e-5));
        assertThat(share.high()).isCloseTo(0.1744, within(5e-5));
        assertThat(new Share(0, 100).low()).isZero();
        assertThat(new Share(0, 100).high()).isCloseTo(0.0370, within(5e-5));
    }
}
