package haftline.handle;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ChoicesTest {
    private static Choices full(double n) {
        return Choices.builder()
                .lengthRatio(n)
                .swellMm(20 + n)
                .buttMm(14 + n)
                .fit(n > 1 ? Fit.BONDED : Fit.PRESSED)
                .tangDrillMm(5 + n)
                .tangDepthMm(40 + n)
                .capDrillMm(6 + n)
                .capDepthMm(9 + n)
                .tenonDiameterMm(11 + n)
                .tenonLengthMm(10 + n)
                .wander(new Wander(n / 10, n / 100))
                .use(n > 1 ? Use.POWER : Use.FINGERTIPS)
                .blankSideMm(25 + n)
                .blankLengthMm(130 + n)
                .nodeDiameterMm("swell", 22 + n)
                .nodePlace("swell", n / 10)
                .build();
    }

    @Test
    void over_piecesChoicesWin() {
        assertThat(full(2).over(full(1))).isEqualTo(full(2));
        assertThat(full(2).over(Choices.NONE)).isEqualTo(full(2));
    }

    @Test
    void over_whatIsOpenComesFromTheSet() {
        assertThat(Choices.NONE.over(full(1))).isEqualTo(full(1));
    }

    @Test
    void over_mixesChoiceByChoice() {
        Choices piece = Choices.builder().swellMm(24).nodeDiameterMm("waist", 13).build();
        Choices set =
                Choices.builder()
                        .swellMm(22)
                        .buttMm(15)
                        .nodeDiameterMm("waist", 12)
                        .nodeDiameterMm("tail", 18)
                        .build();
        Choices both = piece.over(set);
        assertThat(both.swellMm()).hasValue(24);
        assertThat(both.buttMm()).hasValue(15);
        assertThat(both.nodeDiametersMm())
                .containsOnlyKeys("tail", "waist")
                .containsEntry("waist", 13.0)
                .containsEntry("tail", 18.0);
        assertThat(both.tangDrillMm()).isEmpty();
    }

    @Test
    void builder_keepsWhatItStartedFrom() {
        assertThat(full(2).toBuilder().build()).isEqualTo(full(2));
        assertThat(full(2).toBuilder().swellMm(30).build().buttMm()).hasValue(16);
        assertThat(full(2).toBuilder().tangDrillByRule().capDrillByRule().build())
                .satisfies(c -> assertThat(c.tangDrillMm()).isEqualTo(OptionalDouble.empty()))
                .satisfies(c -> assertThat(c.capDrillMm()).isEqualTo(OptionalDouble.empty()));
    }

    @Test
    void nodes_areInOneOrder() {
        Choices one = Choices.builder().nodeDiameterMm("b", 2).nodeDiameterMm("a", 3).build();
        assertThat(one.nodeDiametersMm().keySet()).containsExactly("a", "b");
        assertThatThrownBy(() -> one.nodeDiametersMm().put("c", 1.0))
                .isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void outOfRange_isRefusedByName() {
        assertThatThrownBy(() -> Choices.builder().swellMm(Double.NaN).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("swell");
        assertThatThrownBy(() -> Choices.builder().nodePlace("waist", 1.2).build())
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("waist");
    }

    /** e(z) = e0 + k z; a hole that enters 0.2 off and leaves 1.0 off over 40 mm wanders by 2 %. */
    @ParameterizedTest
    @CsvSource({"0.2, 1.0, 40, 0.2, 0.02", "-0.2, 0.6, 40, 0.2, 0.02", "0, 0, 40, 0, 0"})
    void wander_fromATestHole(double entry, double exit, double depth, double e0, double k) {
        Wander wander = Wander.ofTestHole(entry, exit, depth);
        assertThat(wander.startMm()).isEqualTo(e0);
        assertThat(wander.slope()).isEqualTo(k);
        assertThat(wander.at(10)).isEqualTo(e0 + 10 * k);
    }

    /** The bad case that is quoted: 3/8 in off in 7 in is 5.4 %. */
    @Test
    void wander_badDay() {
        assertThat(Wander.ofTestHole(0, 9.525, 177.8).slope()).isBetween(0.053, 0.054);
    }
}
