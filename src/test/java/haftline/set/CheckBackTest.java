package haftline.set;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Brief;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/**
 * The worked handle "P1", straight tapers through x:diameter 0:14, 20:13, 65:23, 95:18, 105:14,
 * tenon 11.9: its diameters can be read off.
 */
class CheckBackTest {
    private static Handle named(String name) {
        Brief p1 = P1.brief();
        Brief brief =
                new Brief(
                        name,
                        p1.kit(),
                        p1.metals(),
                        p1.stock(),
                        p1.adhesive(),
                        p1.shape(),
                        p1.rules(),
                        p1.rack(),
                        p1.choices());
        return ((Resolution.Resolved) Resolve.of(brief)).handle();
    }

    private static List<CheckBack.Reading> readings(String piece, double... xAndDiameter) {
        List<CheckBack.Reading> readings = new ArrayList<>();
        for (int i = 0; i < xAndDiameter.length; i += 2) {
            readings.add(new CheckBack.Reading(piece, xAndDiameter[i], xAndDiameter[i + 1]));
        }
        return readings;
    }

    @Test
    void tenonTurnedAsThickAsTheWood_isNotTakenForTheWood() {
        Handle handle = named("one");
        double tenon = 2 * handle.outline().rBefore(0);
        double wood = 2 * handle.outline().rAfter(0);
        for (CheckBack.Side side : CheckBack.Side.values()) {
            CheckBack back =
                    CheckBack.of(
                            List.of(handle),
                            List.of(new CheckBack.Reading("one", 0, wood, Optional.of(side))),
                            0.3);
            CheckBack.Station station = back.pieces().get(0).stations().get(0);
            boolean onTenon = side == CheckBack.Side.TENON;
            assertThat(station.onTenon()).isEqualTo(onTenon);
            assertThat(station.isGood()).isEqualTo(!onTenon);
            assertThat(station.offMm()).isCloseTo(onTenon ? wood - tenon : 0, within(1e-12));
        }
    }

    @Test
    void deviations_areThoseReadOff() {
        // Half-way up the long taper, at 42.5, the design is 18.
        CheckBack back =
                CheckBack.of(
                        List.of(named("one")),
                        readings("one", 65, 23.4, 20, 12.9, 42.5, 18, -5, 11.96),
                        0.3);
        CheckBack.Measured piece = back.pieces().get(0);
        assertThat(piece.stations())
                .extracting(CheckBack.Station::x)
                .containsExactly(-5.0, 20.0, 42.5, 65.0);
        assertThat(piece.stations().get(1).offMm()).isCloseTo(-0.1, within(1e-9));
        assertThat(piece.stations().get(2).offMm()).isCloseTo(0, within(1e-9));
        assertThat(piece.worst(false).orElseThrow().x()).isEqualTo(65);
        assertThat(piece.worst(false).orElseThrow().offMm()).isCloseTo(0.4, within(1e-9));
        // The tenon of 11.9 has a tolerance of its own, and its 0.06 do not count for the wood.
        assertThat(piece.worst(true).orElseThrow().isGood()).isFalse();
        assertThat(piece.meanOffMm()).isCloseTo(0.1, within(1e-9));
        assertThat(piece.off()).hasSize(2);
        assertThat(piece.fallsOut()).isFalse();
        assertThat(piece.familyOffMm()).isNaN();
    }

    /**
     * At the shoulder the tenon and the body meet: a reading belongs to the side it is nearer to.
     */
    @Test
    void atAStep_theNearerSideCounts() {
        CheckBack.Measured piece =
                CheckBack.of(List.of(named("one")), readings("one", 0, 13.8, 0, 11.95), 0.3)
                        .pieces()
                        .get(0);
        assertThat(piece.stations())
                .anySatisfy(
                        station -> {
                            assertThat(station.onTenon()).isFalse();
                            assertThat(station.designMm()).isCloseTo(14, within(1e-9));
                        })
                .anySatisfy(
                        station -> {
                            assertThat(station.onTenon()).isTrue();
                            assertThat(station.designMm()).isCloseTo(11.9, within(1e-9));
                        });
    }

    /** All 0.5 too fat but one: none is as designed, and the one that is falls out. */
    @Test
    void theOddOne_fallsOut_evenWhereItAloneIsAsDesigned() {
        List<CheckBack.Reading> all = new ArrayList<>();
        for (String name : List.of("a", "b", "c")) {
            all.addAll(readings(name, 20, 13.5, 65, 23.5));
        }
        all.addAll(readings("d", 20, 13, 65, 23));
        CheckBack back =
                CheckBack.of(List.of(named("a"), named("b"), named("c"), named("d")), all, 0.3);
        assertThat(back.pieces())
                .filteredOn(CheckBack.Measured::fallsOut)
                .extracting(CheckBack.Measured::name)
                .containsExactly("d");
        assertThat(back.pieces().get(3).off()).isEmpty();
        assertThat(back.pieces().get(0).off()).hasSize(2);
        assertThat(back.pieces().get(3).familyOffMm()).isCloseTo(0.5, within(1e-9));
    }

    /** One wild piece of three does not make the others strays. */
    @Test
    void aWildOneOfThree_fallsOutAlone() {
        List<CheckBack.Reading> all = new ArrayList<>();
        all.addAll(readings("a", 65, 23.1));
        all.addAll(readings("b", 65, 23.0));
        all.addAll(readings("c", 65, 24.9));
        CheckBack back = CheckBack.of(List.of(named("a"), named("b"), named("c")), all, 0.3);
        assertThat(back.pieces())
                .extracting(CheckBack.Measured::fallsOut)
                .containsExactly(false, false, true);
    }

    @Test
    void twoPieces_areHeldAgainstEachOther() {
        List<CheckBack.Reading> all = new ArrayList<>(readings("a", 65, 23.25));
        all.addAll(readings("b", 65, 22.75));
        CheckBack back = CheckBack.of(List.of(named("a"), named("b")), all, 0.3);
        assertThat(back.pieces()).allMatch(CheckBack.Measured::fallsOut);
        assertThat(back.pieces()).allMatch(piece -> piece.off().isEmpty());
    }

    @Test
    void nonsense_isRefused() {
        assertThatThrownBy(() -> new CheckBack.Reading("a", 10, 0.2))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("measured diameter");
        assertThatThrownBy(() -> CheckBack.of(List.of(), List.of(), 0))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
