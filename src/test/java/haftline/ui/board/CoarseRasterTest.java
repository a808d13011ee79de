package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.handle.Brief;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.Resolution;
import haftline.handle.Resolve;
import haftline.handle.TestBrief;
import haftline.ui.theme.Palette;
import org.junit.jupiter.api.Test;

/** The picture of a piece in hand beside the one of a piece at rest. */
class CoarseRasterTest {
    private static final double SCALE = 8;
    private static final PieceRaster.Size SIZE = new PieceRaster.Size(960, 256, 128);
    private static final double START_X = -16 + 0.5 / SCALE;
    private static final long[] EMPTY = {};

    private static Handle handle(double swellMm) {
        Brief brief =
                new TestBrief().brief().withChoices(Choices.builder().swellMm(swellMm).build());
        return ((Resolution.Resolved) Resolve.of(brief)).handle();
    }

    private static long[] coarse(Handle handle, int[] into, long[] shown) {
        return new CoarseRaster(
                        handle, Palette.PAPER, new CoarseGrain(CoarseRaster.TALL), Ground.CLEAR)
                .paint(START_X, SCALE, SIZE, 1, 7, into, shown);
    }

    private static int[] empty() {
        return new int[SIZE.width() * SIZE.height()];
    }

    @Test
    void edgesAreAsSharpAsAtRest() {
        Handle handle = handle(26);
        int[] coarse = empty();
        coarse(handle, coarse, EMPTY);
        int[] fine = empty();
        new PieceRaster(handle, Palette.PAPER, PieceRaster.Below.SECTION)
                .paint(START_X, SCALE, SIZE, 1, fine);
        int covered = 0;
        for (int i = 0; i < fine.length; i++) {
            assertThat(coarse[i] >>> 24).as("pixel %d", i).isEqualTo(fine[i] >>> 24);
            covered += fine[i] == 0 ? 0 : 1;
        }
        assertThat(covered).isGreaterThan(100_000);
    }

    @Test
    void whatIsPaintedOverAnotherShapeLooksAsIfPaintedAlone() {
        int[] over = empty();
        long[] shown = EMPTY;
        for (double swell : new double[] {24, 27, 25.5, 25.501}) {
            shown = coarse(handle(swell), over, shown);
        }
        int[] alone = empty();
        coarse(handle(25.501), alone, EMPTY);
        for (int i = 0; i < alone.length; i++) {
            for (int shift = 0; shift < 32; shift += 8) {
                int a = over[i] >>> shift & 255;
                int b = alone[i] >>> shift & 255;
                // A sixteenth of a pixel more or less looks the same.
                assertThat(Math.abs(a - b)).as("pixel %d", i).isLessThanOrEqualTo(32);
            }
        }
    }

    @Test
    void columnsThatLookTheSameAreLeftAlone() {
        int[] pixels = empty();
        long[] shown = coarse(handle(26), pixels, EMPTY);
        int[] wiped = empty();
        assertThat(coarse(handle(26), wiped, shown)).isEqualTo(shown);
        assertThat(wiped).containsOnly(0);
    }
}
