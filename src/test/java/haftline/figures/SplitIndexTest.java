package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.SampleStock;
import haftline.handle.TestBrief;
import haftline.parts.BarbedTang;
import haftline.parts.FlatTang;
import haftline.parts.RoundTang;
import haftline.parts.SquareTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.stock.Catalogue;
import haftline.stock.CatalogueReader;
import haftline.stock.PressFit;
import haftline.stock.Wood;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class SplitIndexTest {
    /** MPa in one million pounds a square inch, by 0.45359237 kg, 9.80665 m/s2 and 25.4 mm. */
    private static final double MPSI = 6894.757293168;

    /** A plain cylinder 11.5 mm thick: 3 mm of wall over a 5.5 mm bore. */
    private static TestBrief cylinder() {
        return new TestBrief()
                .ferrule(10, 11.5, 12)
                .fit(Fit.PRESSED)
                .choose(Choices.builder().buttMm(11.5).tangDrillMm(5.5));
    }

    private static SplitIndex split(TestBrief brief) {
        return SplitIndex.of(brief.handle()).orElseThrow();
    }

    @Test
    void reference_isOne() {
        SplitIndex split = split(cylinder());
        assertThat(split.index()).isCloseTo(1, within(1e-12));
        assertThat(split.wallMm()).isCloseTo(3, within(1e-12));
        assertThat(split.atX()).isZero();
        // Compression across the grain of black cherry, Wood Handbook Table 5-3a; equilibrium
        // p a / t by hand: 4.8 x 2.75 / 3.
        assertThat(split.pressureMPa()).isEqualTo(4.8);
        assertThat(split.hoopMPa()).isCloseTo(4.4, within(1e-12));
        assertThat(SplitIndex.REFERENCE).isCloseTo(4.4 / 3.9, within(1e-12));
        assertThat(split.estimated()).isFalse();
    }

    @Test
    void reference_standsOnTheCataloguesRow() throws Exception {
        Wood cherry = CatalogueReader.starter().woods().find("black-cherry").orElseThrow();
        assertThat(SplitIndex.CHERRY_COMPRESSION_MPA)
                .isEqualTo(cherry.strength().compressionAcrossMPa().orElseThrow().value());
        assertThat(SplitIndex.CHERRY_TENSION_MPA)
                .isEqualTo(cherry.strength().tensionAcrossMPa().orElseThrow().value());
        assertThat(SplitIndex.CHERRY_BENDING_MPA)
                .isEqualTo(cherry.stiffness().bendingModulusMPa().orElseThrow().value());
        assertThat(SplitIndex.CHERRY_TANGENTIAL_RATIO)
                .isEqualTo(cherry.stiffness().tangentialRatio().orElseThrow().value());
        assertThat(SplitIndex.CHERRY_RADIAL_RATIO)
                .isEqualTo(cherry.stiffness().radialRatio().orElseThrow().value());
        assertThat(SplitIndex.CHERRY_POISSON)
                .isEqualTo(cherry.stiffness().poissonAcross().orElseThrow().value());
        assertThat(split(cylinder().stock(cherry)).index()).isCloseTo(1, within(1e-12));
    }

    /** Budynas and Nisbett, Shigley's Mechanical Engineering Design 8e, as solved there. */
    @ParameterizedTest
    @CsvSource({
        // R, ro in inches, radial interference in inches, E outer, E inner in Mpsi, nu's, p in psi
        "0.5, 1, 0.001, 30, 30, 0.292, 0.292, 22500",
        "0.5, 1, 0.001, 14.5, 30, 0.211, 0.292, 13064",
        "0.5, 1, 0.0015, 30, 30, 0.292, 0.292, 33750"
    })
    void pressure_shigley(
            double fit,
            double outer,
            double interference,
            double outerMpsi,
            double innerMpsi,
            double outerNu,
            double innerNu,
            double psi) {
        double pressure =
                SplitIndex.pressure(
                        fit,
                        outer - fit,
                        interference,
                        new PressFit.Material(outerMpsi * MPSI, outerNu),
                        new PressFit.Material(innerMpsi * MPSI, innerNu));
        assertThat(pressure / MPSI * 1e6).isCloseTo(psi, within(psi * 1e-4));
    }

    /** Acrylic over a rigid pin, reckoned by hand beforehand: E 3000, nu 0.35, 6 in 12 mm. */
    @ParameterizedTest
    @CsvSource({"0.02, 4.96, 8.26", "0.05, 12.4, 20.7"})
    void pressure_acrylicOverARigidPin(double diametral, double pressure, double hoop) {
        double found =
                SplitIndex.pressure(
                        3,
                        3,
                        diametral / 2,
                        new PressFit.Material(3000, 0.35),
                        new PressFit.Material(1e7, 0.3));
        assertThat(found).isCloseTo(pressure, within(0.005 * pressure));
        assertThat(found * PressFit.wallRatio(3, 6)).isCloseTo(hoop, within(0.005 * hoop));
    }

    @Test
    void slightInterference_pressesByElasticity() {
        // 0.01 mm on the diameter of cherry: p = delta E / (a (ratio + nu)) by hand, the steel
        // rigid beside it within 1 %.
        Tang tang = P1.round(5.51, 45);
        SplitIndex split = split(cylinder().tang(tang));
        double across = 1.10 * 10300 * (0.086 + 0.197) / 2;
        double ratio = (5.75 * 5.75 + 2.75 * 2.75) / (5.75 * 5.75 - 2.75 * 2.75);
        double expected = 0.005 * across / (2.75 * (ratio + 0.443));
        assertThat(split.pressureMPa()).isCloseTo(expected, within(0.01 * expected));
        assertThat(split.pressureMPa()).isLessThan(4.8);
        // The modulus across the grain is always an estimate.
        assertThat(split.estimated()).isTrue();
    }

    @Test
    void tangNarrowerThanItsBore_doesNotPress() {
        SplitIndex split = split(cylinder().tang(P1.round(5.4, 45)));
        assertThat(split.index()).isZero();
        assertThat(split.pressureMPa()).isZero();
    }

    @Test
    void largestReadingCounts() {
        Tang tang =
                new RoundTang(
                        haftline.measure.Measured.of(java.util.List.of(5.4, 5.45, 5.51), 0.05),
                        P1.exactly(45),
                        OptionalDouble.empty(),
                        Optional.empty());
        assertThat(split(cylinder().tang(tang)).pressureMPa())
                .isEqualTo(split(cylinder().tang(P1.round(5.51, 45))).pressureMPa());
    }

    /** Each presses as a round tang of 5.51 mm: equal area, barbs, the thick end. */
    @Test
    void otherTangs_pressAsTheRoundThatTheyCountAs() {
        double expected = split(cylinder().tang(P1.round(5.51, 45))).pressureMPa();
        double side = 5.51 * Math.sqrt(Math.PI) / 2;
        Tang square = new SquareTang(P1.exactly(side), P1.exactly(45), none(), Optional.empty());
        Tang flat =
                new FlatTang(
                        P1.exactly(side * 1.2),
                        P1.exactly(side / 1.2),
                        P1.exactly(45),
                        none(),
                        Optional.empty());
        Tang barbed =
                new BarbedTang(
                        P1.exactly(4), P1.exactly(5.51), P1.exactly(45), none(), Optional.empty());
        assertThat(split(cylinder().tang(square)).pressureMPa()).isCloseTo(expected, within(1e-9));
        assertThat(split(cylinder().tang(flat)).pressureMPa()).isCloseTo(expected, within(1e-9));
        assertThat(split(cylinder().tang(barbed)).pressureMPa()).isCloseTo(expected, within(1e-9));
        // Seated on the shoulder's plane, so that its root is where the wall is looked at.
        Tang tapered =
                new TaperedTang(
                        P1.exactly(5.51),
                        P1.exactly(5.5),
                        P1.exactly(45),
                        none(),
                        Optional.empty());
        assertThat(split(cylinder().seatMm(12).tang(tapered)).pressureMPa())
                .isCloseTo(expected, within(1e-9));
    }

    @Test
    void ferrulesHoop_takesHalfAtMostOnTheTenon() {
        // A tenon of 9 mm over 5.5: 1.75 mm of wall, under half of the body's 3: even relieved by
        // half it is the worse.
        SplitIndex thin = split(cylinder().choose(Choices.builder().tenonDiameterMm(8)));
        assertThat(thin.atX()).isNegative();
        assertThat(thin.wallMm()).isCloseTo(1.25, within(1e-12));
        assertThat(thin.hoopMPa()).isCloseTo(4.8 * 2.75 / 1.25 / 2, within(1e-12));
        // A tenon of more than half of the body's wall is not.
        assertThat(split(cylinder().choose(Choices.builder().tenonDiameterMm(9))).atX()).isZero();
    }

    /** Stiffness is modulus times wall. */
    @Test
    void shareOnTenon_isByStiffness() {
        assertThat(SplitIndex.shareOnTenon(1600, 3, 100_000, 1)).isEqualTo(0.5);
        assertThat(SplitIndex.shareOnTenon(1600, 3, 1600, 1)).isCloseTo(0.75, within(1e-12));
        assertThat(SplitIndex.shareOnTenon(1600, 3, 0, 1)).isEqualTo(1);
    }

    @Test
    void ranksWoods() {
        // By compression over tension across the grain, Table 5-3a: walnut 7.0/4.8 is worse than
        // cherry 4.8/3.9, and beech 7.0/7.0 is better.
        double cherry = split(cylinder()).index();
        assertThat(split(cylinder().stock(SampleStock.walnut())).index()).isGreaterThan(cherry);
        assertThat(split(cylinder().stock(SampleStock.beech())).index()).isLessThan(cherry);
        assertThat(split(cylinder().stock(SampleStock.walnut())).index() / cherry)
                .isCloseTo(7.0 / 4.8 / (4.8 / 3.9), within(1e-9));
    }

    @Test
    void wander_thinsTheWallThatCounts() {
        assertThat(split(cylinder().wander(0.5, 0)).wallMm()).isCloseTo(2.5, within(1e-12));
        SplitIndex deep = split(cylinder().wander(0, 0.02));
        // The tang's tip is the deepest place where it presses.
        assertThat(deep.atX()).isCloseTo(33, within(1e-9));
        assertThat(deep.wallMm()).isCloseTo(3 - 0.02 * 44.5, within(1e-9));
    }

    @Test
    void boreThatBreaksOut_staysFinite() {
        SplitIndex split = split(cylinder().wander(3.5, 0));
        assertThat(split.index()).isFinite().isGreaterThan(10);
    }

    @Test
    void missingFigures_giveNothing() {
        assertThat(SplitIndex.of(cylinder().stock(SampleStock.cocobolo()).handle())).isEmpty();
        assertThat(SplitIndex.of(cylinder().stock(SampleStock.acrylic()).handle())).isEmpty();
    }

    @Test
    void estimatedFigures_areSaid() throws Exception {
        Catalogue<Wood> woods = CatalogueReader.starter().woods();
        Wood wild = woods.find("european-cherry").orElseThrow();
        assertThat(wild.strength().tensionAcrossMPa().orElseThrow().isEstimate()).isTrue();
        assertThat(split(cylinder().stock(wild)).estimated()).isTrue();
    }

    /** The worst of all places along a plain tang, looked up at small steps. */
    @ParameterizedTest
    @ValueSource(longs = {61, 62})
    void worstPlace_bruteForce(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        int compared = 0;
        while (compared < 40) {
            Handle handle = handles.next();
            Optional<SplitIndex> found = SplitIndex.of(handle);
            if (handle.tangBore().steps().size() > 1 || found.isEmpty()) {
                continue;
            }
            compared++;
            assertThat(found.get().index())
                    .as("seed " + seed + " handle " + compared)
                    .isCloseTo(bruteForce(handle), within(0.01 * found.get().index() + 1e-12));
            assertThat(found.get().index()).isGreaterThanOrEqualTo(bruteForce(handle) - 1e-9);
        }
    }

    private static double bruteForce(Handle handle) {
        Wood wood = (Wood) handle.brief().stock();
        var strength = wood.strength();
        PressFit.Material across =
                new PressFit.Material(
                        wood.stiffness().modulusAcrossMPa().orElseThrow().value(),
                        wood.stiffness().poissonAcross().orElseThrow().value());
        double a = handle.tangBore().deepest().diameterMm() / 2;
        double from = Math.max(handle.tenonEndX(), handle.fit().seatX());
        double to =
                Math.min(
                        Math.min(handle.fit().tipX(), handle.buttX()),
                        handle.tenonEndX() + handle.tangBore().deepest().depthMm());
        double worst = 0;
        for (int i = 0; i <= 20_000; i++) {
            double x = from + (to - from) * i / 20_000;
            double wall =
                    (x < 0 ? handle.outline().rAfter(x) : handle.outline().r(x))
                            - a
                            - handle.wander().at(handle.tangBore().depthAt(x));
            wall = Math.max(0.1, wall);
            double interference = Math.max(0, radius(handle.brief().kit().tang()) - a);
            double pressure =
                    Math.min(
                            strength.compressionAcrossMPa().orElseThrow().value(),
                            PressFit.ofRadii(
                                            0,
                                            a,
                                            a + wall,
                                            interference,
                                            across,
                                            new PressFit.Material(193_000, 0.3))
                                    .pressureMPa());
            worst = Math.max(worst, pressure * a / wall * (x < 0 ? 0.5 : 1));
        }
        return worst / strength.tensionAcrossMPa().orElseThrow().value() / SplitIndex.REFERENCE;
    }

    private static double radius(Tang tang) {
        if (tang instanceof SquareTang square) {
            return square.width().greatest() / Math.sqrt(Math.PI);
        }
        if (tang instanceof FlatTang flat) {
            return Math.sqrt(flat.width().greatest() * flat.thickness().greatest() / Math.PI);
        }
        return tang.envelopeMm(0) / 2;
    }

    private static OptionalDouble none() {
        return OptionalDouble.empty();
    }
}
