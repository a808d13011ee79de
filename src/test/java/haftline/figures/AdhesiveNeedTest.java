package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Choices;
import haftline.handle.Fit;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.TestBrief;
import haftline.parts.EndCap;
import haftline.parts.FlatTang;
import haftline.parts.Tang;
import haftline.parts.TaperedTang;
import haftline.stock.Drill;
import haftline.stock.Rack;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;

class AdhesiveNeedTest {
    private static Rack flatDrill(double mm) {
        return Rack.of(List.of(Drill.of(mm, "flat").withPointAngleDeg(180)));
    }

    /** 8 x 2.5 in an 8.5 bore, 45 long: 1654 mm3, as reckoned beforehand. */
    @Test
    void flatTang_wantsNineTimesTheRoundOnesGlue() {
        Tang flat =
                new FlatTang(
                        P1.exactly(8),
                        P1.exactly(2.5),
                        P1.exactly(45),
                        OptionalDouble.empty(),
                        Optional.empty());
        // Seated at the tenon's end, in a flat-bottomed bore of its own length.
        Handle handle =
                new TestBrief()
                        .tang(flat)
                        .seatMm(0.5)
                        .rack(flatDrill(8.5))
                        .choose(Choices.builder().tangDepthMm(45))
                        .handle();
        AdhesiveNeed need = AdhesiveNeed.of(handle);
        assertThat(Math.round(need.tangMm3())).isEqualTo(1654);
        assertThat(need.centroidX()).isCloseTo(-11.5 + 22.5, within(1e-9));
        assertThat(need.bondAreaMm2()).isCloseTo(Math.PI * 8.5 * 45, within(1e-9));
        double round = AdhesiveNeed.of(P1.handle(P1.brief())).tangMm3();
        assertThat(need.tangMm3() / round).isCloseTo(9, within(0.5));
    }

    /** A cone that fills a bore but for a ring of one tenth. */
    @Test
    void taperedTang_closedForm() {
        Tang cone =
                new TaperedTang(
                        P1.exactly(6),
                        P1.exactly(4),
                        P1.exactly(45),
                        OptionalDouble.empty(),
                        Optional.empty());
        Handle handle =
                new TestBrief()
                        .tang(cone)
                        .seatMm(0.5)
                        .fit(Fit.BONDED)
                        .rack(flatDrill(6.1))
                        .choose(Choices.builder().tangDrillMm(6.1).tangDepthMm(45))
                        .handle();
        double frustum = Math.PI * 45 / 12 * (36 + 24 + 16);
        assertThat(AdhesiveNeed.of(handle).tangMm3())
                .isCloseTo(Math.PI / 4 * 6.1 * 6.1 * 45 - frustum, within(1e-9));
    }

    @Test
    void pressedTang_wantsNone_butItsCapDoes() {
        EndCap cap =
                new EndCap(
                        P1.exactly(6),
                        P1.exactly(8),
                        P1.exactly(14),
                        P1.exactly(3),
                        EndCap.Form.FLAT,
                        "brass",
                        OptionalDouble.empty(),
                        OptionalDouble.empty());
        Handle handle = new TestBrief().cap(cap).rack(flatDrill(6.1)).fit(Fit.PRESSED).handle();
        AdhesiveNeed need = AdhesiveNeed.of(handle);
        assertThat(need.tangMm3()).isZero();
        assertThat(need.bondAreaMm2()).isZero();
        // Bore 6.1 x 9, spigot 6 x 8.
        assertThat(need.capMm3()).isCloseTo(Math.PI / 4 * (6.1 * 6.1 * 9 - 36 * 8), within(1e-9));
        assertThat(need.volumeMm3()).isEqualTo(need.capMm3());
        assertThat(need.centroidX()).isBetween(handle.buttX() - 9, handle.buttX());
    }

    @Test
    void neitherBondNorCap_wantsNone() {
        AdhesiveNeed need = AdhesiveNeed.of(new TestBrief().fit(Fit.PRESSED).handle());
        assertThat(need.volumeMm3()).isZero();
        assertThat(need.centroidX()).isZero();
    }
}
