package haftline.adjust.doubt;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.figures.Figures;
import haftline.figures.Wall;
import haftline.handle.Bore;
import haftline.handle.BoreProfile;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.Spreads;
import haftline.handle.TestBrief;
import haftline.parts.Blade;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A made handle held against the engine's figures of one that is drawn so. */
class LikenessTest {
    private static final Spreads DEPTH_AND_WIDTH = new Spreads(0, 0, 1, 1, 0.95, 0, 0, 0);

    private static TestBrief waisted() {
        return new TestBrief()
                .cap(P1.kit(5).cap().orElseThrow())
                .smooth(0.3, 17)
                .smooth(0.6, 21)
                .smooth(0.85, 13)
                .spreads(DEPTH_AND_WIDTH)
                .choose(Choices.builder().tangDrillMm(6).capDrillMm(5));
    }

    private static Handle drawn(double tangDepth, double capDepth, double eccentricity) {
        return waisted()
                .eccentricityMm(eccentricity)
                .choose(Choices.builder().tangDepthMm(tangDepth).capDepthMm(capDepth))
                .handle();
    }

    /** Where a normal figure of one bore stands. */
    private static int place(Likeness likeness, Input input, int bore) {
        int seen = 0;
        for (int f = 0; f < likeness.figures(); f++) {
            if (likeness.input(f) == input && seen++ == bore) {
                return f;
            }
        }
        throw new AssertionError(input);
    }

    private static boolean massScatters(boolean weighed, boolean withTang) {
        Blade blade =
                new Blade(
                        P1.exactly(121),
                        24,
                        2,
                        OptionalDouble.empty(),
                        "stainless",
                        weighed ? OptionalDouble.of(48) : OptionalDouble.empty(),
                        withTang,
                        OptionalDouble.empty());
        return new Likeness(new TestBrief().blade(blade).handle()).scatters(Input.RECKONED);
    }

    /** Where it balances may be reckoned; what the scale said is known. */
    @Test
    void weighedBlade_doesNotScatterThoughNobodyBalancedIt() {
        assertThat(massScatters(true, true)).isFalse();
        assertThat(massScatters(true, false)).isFalse();
        assertThat(massScatters(false, true)).isTrue();
    }

    /** The walls at stations miss the least by what the outline dips between two, a micron. */
    @ParameterizedTest
    @CsvSource({"0,0,0", "1.7,0,0", "-2.3,0.4,0", "0,0,0.12", "2.1,-0.6,0.2"})
    void isWhatTheEngineMakesOfBoresDrawnSo(double tang, double cap, double wider) {
        Likeness likeness = new Likeness(drawn(47, 12, 0));
        Likeness.Made made = likeness.made();
        double[] normal = new double[likeness.figures()];
        normal[place(likeness, Input.DEPTH, 0)] = tang;
        normal[place(likeness, Input.DEPTH, 1)] = cap;
        // Both signs of a normal figure make the hole wider.
        normal[place(likeness, Input.OVERSIZE, 0)] = 2 * wider;
        normal[place(likeness, Input.OVERSIZE, 1)] = -2 * wider;
        made.make(normal);
        Figures so = Figures.of(drawn(47 + tang, 12 + cap, wider));
        assertThat(made.end).isCloseTo(so.web().orElseThrow().mm(), within(1e-9));
        for (int z = 0; z < likeness.zones().size(); z++) {
            Wall wall = so.wall(likeness.zones().get(z)).orElseThrow();
            assertThat(made.zoneWall[z])
                    .as(wall.zone().toString())
                    .isBetween(wall.nominalMm() - 1e-9, wall.nominalMm() + 0.003);
        }
        assertThat(made.mass).isCloseTo(so.balance().totalG(), within(1e-3));
        assertThat(made.balance).isCloseTo(so.balance().fromFerruleFaceMm(), within(1e-3));
    }

    @ParameterizedTest
    @CsvSource({"0,0", "1.5,0", "-1.5,0", "0,0.2", "-0.7,0.1"})
    void aHoleIsTheBoreDrawnDeeperAndWider(double deeper, double wider) {
        Hole hole = new Hole(drawn(40, 12, 0).tangBore());
        Bore so = drawn(40 + deeper, 12, wider).tangBore();
        for (double z = 0.1; z < 44; z += 0.37) {
            assertThat(Math.max(0, hole.radiusAt(z, deeper, wider)))
                    .isCloseTo(so.radiusAt(so.faceX() + z), within(1e-9));
        }
        assertThat(hole.tipDepth(deeper, wider)).isCloseTo(so.reachMm(), within(1e-9));
        double before = BoreProfile.of(hole.bore()).volumeMm3();
        // The longer point's own hair.
        assertThat(before + hole.moreVolume(deeper, wider))
                .isCloseTo(BoreProfile.of(so).volumeMm3(), within(0.01));
        double moment =
                so.faceX() * BoreProfile.of(so).volumeMm3() + BoreProfile.of(so).momentMm4();
        double momentBefore = so.faceX() * before + BoreProfile.of(hole.bore()).momentMm4();
        assertThat(momentBefore + hole.moreMoment(deeper, wider)).isCloseTo(moment, within(0.3));
    }
}
