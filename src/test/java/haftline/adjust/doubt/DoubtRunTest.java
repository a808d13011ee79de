package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.Watch;
import haftline.figures.Figures;
import haftline.figures.Zone;
import haftline.findings.Code;
import haftline.findings.Finding;
import haftline.findings.Findings;
import haftline.findings.Gravity;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.Rules;
import haftline.handle.Spreads;
import haftline.handle.TestBrief;
import haftline.handle.Wander;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class DoubtRunTest {
    private static final int HANDLES = 40_000;

    /** The plain cylinder of the tests, whose wall is the same all along its bore. */
    private static Handle cylinder(Wander wander, Spreads spreads) {
        return new TestBrief().spreads(spreads).wander(wander.startMm(), wander.slope()).handle();
    }

    private static Handle cylinder(Wander wander) {
        return cylinder(wander, Spreads.COMMON_PRACTICE);
    }

    private static Spreads only(double tenon, double depth, double oversize, double density) {
        return new Spreads(0, tenon, depth, oversize, 0.95, density, 0, 0);
    }

    private static Doubt run(Handle handle, long seed) {
        return DoubtRun.of(handle, seed, HANDLES, 2, Watch.NOBODY).orElseThrow();
    }

    private static double tenonWall(Handle handle) {
        return Figures.of(handle).wall(Zone.TENON).orElseThrow().nominalMm();
    }

    @Test
    void aTenonThatScattersAloneFollowsTheNormalDistribution() {
        double over = tenonWall(cylinder(new Wander(0, 0))) - 2.5;
        double deviation = 2 * over;
        Doubt doubt = run(cylinder(new Wander(0, 0), only(deviation, 0, 0, 0)), 5);
        // The diameter scatters, the wall by half of it.
        double expected = new NormalDistribution(over, deviation / 2).cumulativeProbability(0);
        Proportion under = doubt.zones().get(0).under();
        assertThat(doubt.zones().get(0).zone()).isEqualTo(Zone.TENON);
        assertThat(expected).isBetween(under.low() - 0.003, under.high() + 0.003);
        assertThat(doubt.weights().get(0).input()).isEqualTo(Input.TENON);
    }

    @Test
    void aMouthOffTheAxisFollowsRayleigh() {
        Wander wander = new Wander(0.5, 0);
        Handle handle = cylinder(wander, only(0, 0, 0, 0));
        double over = tenonWall(handle) - 2.5;
        Doubt doubt = run(handle, 11);
        // 95 in 100 keep within 0.5 mm, so exp(-over^2 / 2 s^2) = 0.05^((over / 0.5)^2).
        double expected = Math.pow(0.05, over * over / 0.25);
        Proportion under = doubt.zones().get(0).under();
        assertThat(expected).isBetween(under.low() - 0.003, under.high() + 0.003);
    }

    /** What a hole is wider by is the positive half of a normal distribution. */
    @Test
    void aHoleCutTooWideFollowsHalfANormalDistribution() {
        double over = tenonWall(cylinder(new Wander(0, 0))) - 2.5;
        double deviation = 2 * over;
        Doubt doubt = run(cylinder(new Wander(0, 0), only(0, 0, deviation, 0)), 23);
        double expected = 2 * new NormalDistribution(0, deviation / 2).cumulativeProbability(-over);
        Proportion under = doubt.zones().get(0).under();
        assertThat(expected).isBetween(under.low() - 0.003, under.high() + 0.003);
        assertThat(doubt.weights().get(0)).isEqualTo(new Weight(Input.OVERSIZE, 1, 1));
    }

    /** That cylinder, bored until so much is left under its bore. */
    private static Handle leaving(double mm, TestBrief brief) {
        Handle drawn = brief.handle();
        double left = drawn.buttX() - drawn.tangBore().xAt(drawn.tangBore().reachMm());
        double depth = drawn.tangBore().deepest().depthMm() + left - mm;
        return brief.choose(Choices.builder().tangDepthMm(depth)).handle();
    }

    @Test
    void theFloorUnderABoreFollowsItsDepth() {
        Handle deep = leaving(8, new TestBrief().spreads(only(0, 4, 0, 0)));
        // 8 mm are left, 3 are wanted, 1.5 are the least that is made.
        Doubt doubt = run(deep, 29);
        NormalDistribution floor = new NormalDistribution(8, 4);
        assertThat(doubt.end().isWeb()).isFalse();
        assertThat(doubt.end().limitMm()).isEqualTo(3);
        holds(floor.cumulativeProbability(3), doubt.end().under());
        holds(floor.cumulativeProbability(1.5), doubt.end().stopped());
        assertThat(doubt.end().left().mean()).isCloseTo(8, within(0.06));
        assertThat(doubt.end().left().deviation()).isCloseTo(4, within(0.06));
    }

    /** Under the stop nothing is made: neither doubt nor the findings let a lower limit stand. */
    @Test
    void theFloorIsJudgedAsTheFindingsJudgeIt() {
        Handle handle =
                leaving(
                        4,
                        new TestBrief()
                                .spreads(only(0, 4, 0, 0))
                                .walls(new Rules.Walls(0.5, 0.5, 0.5, 0.5, 0.5, 5)));
        Doubt doubt = run(handle, 37);
        assertThat(Findings.of(Figures.of(handle)))
                .filteredOn(finding -> finding.code() == Code.BORE_BOTTOM_TOO_NEAR)
                .singleElement()
                .extracting(Finding::gravity, Finding::limit)
                .containsExactly(Gravity.STOP, doubt.end().limitMm());
        assertThat(doubt.end().under()).isEqualTo(doubt.end().stopped());
        holds(new NormalDistribution(4, 4).cumulativeProbability(5), doubt.end().under());
    }

    /** Two bores, each with its own depth, leave what differs by the root of two of one. */
    @Test
    void theWebBetweenTwoBoresFollowsBothDepths() {
        Handle handle =
                new TestBrief()
                        .cap(P1.kit(5).cap().orElseThrow())
                        .spreads(only(0, 3, 0, 0))
                        .handle();
        var web = Figures.of(handle).web().orElseThrow();
        Doubt doubt = run(handle, 31);
        NormalDistribution left = new NormalDistribution(web.mm(), 3 * Math.sqrt(2));
        assertThat(doubt.end().isWeb()).isTrue();
        assertThat(doubt.end().limitMm()).isEqualTo(web.limitMm());
        holds(left.cumulativeProbability(web.limitMm()), doubt.end().under());
        assertThat(doubt.end().left().deviation()).isCloseTo(3 * Math.sqrt(2), within(0.06));
    }

    private static void holds(double expected, Proportion share) {
        assertThat(expected).isBetween(share.low() - 0.003, share.high() + 0.003);
    }

    @Test
    void effectsOfAllInputsAddUpToTheWhole() {
        Doubt doubt = run(cylinder(new Wander(0.1, 0.01)), 2);
        assertThat(doubt.weights()).hasSize(Input.values().length);
        assertThat(doubt.weights().stream().mapToDouble(Weight::ofWall).sum())
                .isCloseTo(1, within(1e-12));
        assertThat(doubt.weights().stream().mapToDouble(Weight::ofBalance).sum())
                .isCloseTo(1, within(1e-12));
    }

    @Test
    void massFollowsTheDensityAlone() {
        Handle handle = cylinder(new Wander(0, 0), only(0, 0, 0, 0.1));
        Doubt doubt = run(handle, 3);
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
        Doubt one = DoubtRun.of(handle, 9, 7_300, 1, Watch.NOBODY).orElseThrow();
        assertThat(DoubtRun.of(handle, 9, 7_300, 3, Watch.NOBODY)).contains(one);
        assertThat(DoubtRun.of(handle, 9, 7_300, 8, Watch.NOBODY)).contains(one);
        assertThat(DoubtRun.of(handle, 10, 7_300, 1, Watch.NOBODY))
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
                    public void made(int done, int of) {
                        made = done;
                    }

                    @Override
                    public boolean isOver() {
                        return made >= 2_000;
                    }
                };
        Handle handle = cylinder(new Wander(0.1, 0.01));
        assertThat(DoubtRun.of(handle, 9, 2_000_000, 2, impatient)).isEmpty();
    }

    /** The worked figures of the score interval for 10 of 100 (0.0552 to 0.1744). */
    @Test
    void wilsonsIntervalIsTheKnownOne() {
        Proportion share = new Proportion(10, 100);
        assertThat(share.low()).isCloseTo(0.0552, within(5e-5));
        assertThat(share.high()).isCloseTo(0.1744, within(5e-5));
        assertThat(new Proportion(0, 100).low()).isZero();
        assertThat(new Proportion(0, 100).high()).isCloseTo(0.0370, within(5e-5));
    }
}
