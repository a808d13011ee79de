package haftline.handle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.measure.Measured;
import haftline.parts.BarbedTang;
import haftline.parts.Flare;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.parts.ThreadedTang;
import haftline.stock.Rack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Which drills for which tang. The rules are common practice without a source; the figures beside
 * them were reckoned by hand beforehand.
 */
class TangBoreTest {
    private static Handle handle(Tang tang, Fit fit, Rack rack) {
        return new TestBrief()
                .ferrule(16, 18, 12)
                .choose(Choices.builder().buttMm(18))
                .tang(tang)
                .fit(fit)
                .rack(rack)
                .handle();
    }

    private static double drill(Tang tang, Fit fit, Rack rack) {
        return handle(tang, fit, rack).tangBore().deepest().drillMm();
    }

    private static Tang flat(double width, double thickness) {
        return new FlatTang(
                P1.exactly(width), P1.exactly(thickness), P1.exactly(45), none(), noFlare());
    }

    private static Tang square(double width) {
        return new SquareTang(P1.exactly(width), P1.exactly(45), none(), noFlare());
    }

    private static Tang barbed(double core, double barb) {
        return new BarbedTang(
                P1.exactly(core), P1.exactly(barb), P1.exactly(45), none(), noFlare());
    }

    private static Tang tapered(double root, double tip, double length) {
        return new TaperedTang(
                P1.exactly(root), P1.exactly(tip), P1.exactly(length), none(), noFlare());
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }

    private static Optional<Flare> noFlare() {
        return Optional.empty();
    }

    /** Half a millimetre under the tang in fibrous stock. */
    @Test
    void roundPressed_isHalfUnder() {
        Handle handle = handle(P1.round(6, 45), Fit.PRESSED, SampleStock.tenths());
        assertThat(handle.tangBore().deepest().drillMm()).isEqualTo(5.5);
        assertThat(handle.fit().wishMm()).isCloseTo(5.5, within(1e-12));
        assertThat(handle.fit().missMm(handle.tangBore())).isCloseTo(0, within(1e-12));
    }

    /** 6.0 bonded: the next drill that is 0.1 over; by halves 6.5, by 64ths of an inch 1/4. */
    @Test
    void roundBonded_isTheNextDrillATenthOver() {
        assertThat(drill(P1.round(6, 45), Fit.BONDED, SampleStock.tenths())).isEqualTo(6.1);
        assertThat(drill(P1.round(6, 45), Fit.BONDED, SampleStock.halves())).isEqualTo(6.5);
        Rack inch = SampleStock.only(5.953125, 6.35, 6.746875);
        assertThat(drill(P1.round(6, 45), Fit.BONDED, inch)).isEqualTo(6.35);
    }

    /** A wish of 3.2 + 0.1 is a hair over 3.3 in binary; the 3.3 mm drill meets it. */
    @ParameterizedTest
    @ValueSource(doubles = {1.1, 1.3, 1.6, 1.8, 2.2, 2.7, 3.2, 3.7})
    void bonded_isNotThrownByRounding(double d) {
        assertThat(drill(P1.round(d, 45), Fit.BONDED, SampleStock.tenths()))
                .isCloseTo(d + 0.1, within(1e-9));
    }

    /** Bonded against the largest reading, pressed by the mean. */
    @Test
    void readings_thatHurtAreJudged() {
        Tang tang =
                new RoundTang(
                        Measured.of(List.of(5.9, 6.0, 6.1), 0.05),
                        P1.exactly(45),
                        none(),
                        noFlare());
        assertThat(drill(tang, Fit.BONDED, SampleStock.tenths())).isEqualTo(6.2);
        assertThat(drill(tang, Fit.PRESSED, SampleStock.tenths())).isEqualTo(5.5);
    }

    /** A round hole passes the diagonal: 8 x 2.5 is 8.38, hence 8.5; 10 x 3 is 10.44. */
    @ParameterizedTest
    @CsvSource({"8, 2.5, 8.38, 8.5", "10, 3, 10.44, 11"})
    void flatBonded_passesItsDiagonal(
            double width, double thickness, double diagonal, double drill) {
        assertThat(flat(width, thickness).envelopeMm(0)).isCloseTo(diagonal, within(0.005));
        assertThat(drill(flat(width, thickness), Fit.BONDED, SampleStock.halves()))
                .isEqualTo(drill);
    }

    @Test
    void flatThinnerThanSixTenths_isNotPressed() {
        Handle thin =
                new TestBrief()
                        .ferrule(16, 18, 12)
                        .choose(Choices.builder().buttMm(18))
                        .tang(flat(8, 4.7))
                        .handle();
        assertThat(thin.fit().fit()).isEqualTo(Fit.BONDED);
        assertThat(thin.fit().because()).contains("thin flat tang");
        Handle thick =
                new TestBrief()
                        .ferrule(16, 18, 12)
                        .choose(Choices.builder().buttMm(18))
                        .tang(flat(8, 4.8))
                        .handle();
        assertThat(thick.fit().fit()).isEqualTo(Fit.PRESSED);
    }

    /** Equal area: 1.13 x width - 0.5; a 6 mm square wants 6.28. */
    @Test
    void squarePressed_isOfEqualAreaLessAHalf() {
        Handle handle = handle(square(6), Fit.PRESSED, SampleStock.tenths());
        assertThat(handle.fit().wishMm()).isCloseTo(1.13 * 6 - 0.5, within(0.015));
        assertThat(handle.tangBore().deepest().drillMm()).isEqualTo(6.3);
    }

    @Test
    void squareBonded_passesItsDiagonal() {
        assertThat(drill(square(6), Fit.BONDED, SampleStock.tenths())).isEqualTo(8.6);
    }

    /** Barbs 6.0 over a core of 5.0: glued 6.1, pressed 5.75. */
    @Test
    void barbed_glued_isATenthOverTheBarbs() {
        assertThat(drill(barbed(5, 6), Fit.BONDED, SampleStock.tenths())).isEqualTo(6.1);
    }

    @Test
    void barbed_pressed_liesBetweenCoreAndBarb() {
        Handle handle = handle(barbed(5, 6), Fit.PRESSED, SampleStock.only(5.5, 5.75, 6));
        assertThat(handle.fit().wishMm()).isCloseTo(5.75, within(1e-12));
        assertThat(handle.tangBore().deepest().drillMm()).isEqualTo(5.75);
        // Barbs lower than the rule's quarter millimetre: the core bounds it.
        assertThat(handle(barbed(5, 5.1), Fit.PRESSED, SampleStock.tenths()).fit().wishMm())
                .isEqualTo(5);
    }

    @Test
    void barbed_pressed_neverOverTheBarbs() {
        // 6.0 is nearer to 5.75 than 5.4 is, but over it nothing grips.
        assertThat(drill(barbed(5, 6), Fit.PRESSED, SampleStock.only(5.4, 6.0))).isEqualTo(5.4);
    }

    /** "Common practice: an 8.2 mm drill 0.2 mm off makes a hole of 8.6 mm." */
    @Test
    void wobblingDrill_makesAWiderHole() {
        Handle handle =
                new TestBrief()
                        .ferrule(16, 18, 12)
                        .choose(Choices.builder().buttMm(18).tangDrillMm(8.2))
                        .fit(Fit.BONDED)
                        .tang(P1.round(8.4, 45))
                        .eccentricityMm(0.2)
                        .handle();
        assertThat(handle.tangBore().deepest().drillMm()).isEqualTo(8.2);
        assertThat(handle.tangBore().deepest().diameterMm()).isCloseTo(8.6, within(1e-12));
    }

    /**
     * The bore is the hole that is made: a tang of 8.5 wants 8.6, which that 8.2 mm drill makes.
     */
    @Test
    void wobblingDrill_isChosenByItsHole() {
        TestBrief brief =
                new TestBrief()
                        .ferrule(16, 18, 12)
                        .choose(Choices.builder().buttMm(18))
                        .tang(P1.round(8.5, 45))
                        .eccentricityMm(0.2);
        assertThat(brief.fit(Fit.BONDED).handle().tangBore().deepest().drillMm()).isEqualTo(8.2);
        // Pressed: a hole of 8.0 is a drill of 7.6.
        assertThat(brief.fit(Fit.PRESSED).handle().tangBore().deepest().drillMm()).isEqualTo(7.6);
    }

    @Test
    void drillThatIsNotOwned_isSaid() {
        Handle handle = handle(P1.round(6, 45), Fit.BONDED, SampleStock.only(3, 4));
        assertThat(handle.fit().onRack()).isFalse();
        assertThat(handle.tangBore().deepest().drillMm()).isCloseTo(6.1, within(1e-12));
        assertThat(handle.tangBore().deepest().drillName()).contains("not on the rack");
        assertThat(handle(P1.round(6, 45), Fit.BONDED, SampleStock.tenths()).fit().onRack())
                .isTrue();
    }

    @Test
    void makersDrill_isTaken() {
        Handle handle =
                new TestBrief().choose(Choices.builder().tangDrillMm(7)).fit(Fit.BONDED).handle();
        assertThat(handle.tangBore().deepest().drillMm()).isEqualTo(7);
        assertThat(handle.fit().missMm(handle.tangBore())).isCloseTo(0.9, within(1e-12));
        Handle unowned =
                new TestBrief()
                        .choose(Choices.builder().tangDrillMm(7))
                        .rack(SampleStock.only(6))
                        .handle();
        assertThat(unowned.fit().onRack()).isFalse();
    }

    /** None narrower than the tang in its span less the fit, for any taper, rack and wobble. */
    @ParameterizedTest
    @ValueSource(longs = {101, 102})
    void tapered_isNowhereNarrowerThanTheTang(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int stepped = 0;
        for (int n = 0; n < 500; n++) {
            double root = random.nextDouble(5, 12);
            double tip = random.nextDouble(2, root);
            double length = random.nextDouble(20, 70);
            Fit fit = random.nextBoolean() ? Fit.PRESSED : Fit.BONDED;
            double eccentricity = random.nextBoolean() ? 0 : random.nextDouble(0, 0.3);
            TestBrief brief =
                    new TestBrief()
                            .ferrule(16, 18, random.nextDouble(6, 16))
                            .choose(Choices.builder().buttMm(18))
                            .tang(tapered(root, tip, length))
                            .fit(fit)
                            .rack(
                                    random.nextBoolean()
                                            ? SampleStock.tenths()
                                            : SampleStock.halves())
                            .eccentricityMm(eccentricity);
            if (random.nextInt(4) == 0) {
                // A drill of the maker's that clears at least the tip.
                brief.choose(Choices.builder().tangDrillMm(Math.min(12, Math.ceil(tip + 0.1))));
            }
            Handle handle = brief.handle();
            stepped += handle.tangBore().steps().size() > 1 ? 1 : 0;
            double over = fit == Fit.BONDED ? 0.1 : -0.5;
            for (int i = 0; i <= 200; i++) {
                double fromSeat = length * i / 200;
                double x = handle.fit().seatX() + fromSeat;
                if (x < handle.tenonEndX() || x > handle.tenonEndX() + deepestFull(handle)) {
                    continue;
                }
                double tang = root + (tip - root) * fromSeat / length;
                assertThat(2 * handle.tangBore().radiusAt(x))
                        .as("seed " + seed + " tang " + n + " at " + fromSeat)
                        .isGreaterThanOrEqualTo(tang + over - 1e-9);
            }
        }
        assertThat(stepped).isGreaterThan(150);
    }

    private static double deepestFull(Handle handle) {
        return handle.tangBore().deepest().depthMm();
    }

    /** 8 to 5 mm over 45: three drills at most, widest first, each where the next clears. */
    @Test
    void tapered_stepsDown() {
        Handle handle = handle(tapered(8, 5, 45), Fit.BONDED, SampleStock.tenths());
        assertThat(handle.tangBore().steps())
                .extracting(BoreStep::drillMm)
                .containsExactly(8.1, 7.1, 6.1);
        // The tang is 7.0 at a third of its length from the seat, which lies 0.5 mm before the
        // tenon's end.
        assertThat(handle.tangBore().steps().get(0).depthMm()).isCloseTo(14.5, within(1e-9));
        assertThat(handle.tangBore().steps().get(1).depthMm()).isCloseTo(29.5, within(1e-9));
        assertThat(handle.tangBore().steps().get(2).depthMm()).isCloseTo(46.5, within(1e-9));
    }

    @Test
    void tapered_makersWiderDrillTakesTheDeepestPlace() {
        Handle handle =
                new TestBrief()
                        .ferrule(16, 18, 12)
                        .choose(Choices.builder().buttMm(18).tangDrillMm(7.5))
                        .tang(tapered(8, 5, 45))
                        .fit(Fit.BONDED)
                        .handle();
        assertThat(handle.tangBore().steps())
                .extracting(BoreStep::drillMm)
                .containsExactly(8.1, 7.5);
    }

    @Test
    void threaded_getsItsClearanceAndItsOwnBore() {
        Tang tang =
                new ThreadedTang(
                        P1.exactly(6), 5.2, 6.2, P1.exactly(15), P1.exactly(45), none(), noFlare());
        Handle handle = new TestBrief().tang(tang).handle();
        assertThat(handle.fit().fit()).isEqualTo(Fit.BONDED);
        assertThat(handle.tangBore().steps())
                .extracting(BoreStep::drillMm)
                .containsExactly(6.2, 5.2);
        assertThat(handle.tangBore().steps().get(0).depthMm()).isCloseTo(14.5, within(1e-9));
        assertThat(handle.tangBore().steps().get(1).depthMm()).isCloseTo(46.5, within(1e-9));
    }

    /** A flare of 9 mm that reaches 14 mm, 2 past a ferrule of 12, wants a countersink. */
    @Test
    void flaredRoot_isCountersunk() {
        Tang tang =
                new RoundTang(
                        P1.exactly(6),
                        P1.exactly(45),
                        none(),
                        Optional.of(new Flare(P1.exactly(9), P1.exactly(14))));
        Handle handle = new TestBrief().tang(tang).fit(Fit.BONDED).handle();
        assertThat(handle.tangBore().steps())
                .extracting(BoreStep::drillMm)
                .containsExactly(9.1, 6.1);
        assertThat(handle.tangBore().steps().get(0).depthMm()).isCloseTo(13.5, within(1e-9));
    }

    @Test
    void flareInsideTheFerrule_needsNone() {
        Tang tang =
                new RoundTang(
                        P1.exactly(6),
                        P1.exactly(45),
                        none(),
                        Optional.of(new Flare(P1.exactly(9), P1.exactly(0.4))));
        Handle handle = new TestBrief().tang(tang).fit(Fit.BONDED).handle();
        assertThat(handle.tangBore().steps()).hasSize(1);
    }
}
