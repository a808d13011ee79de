package haftline.ui.board;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.handle.Brief;
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
        Brief brief = new TestBrief().smooth(0.5, swellMm).brief();
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
        int wholeRows = 0;
        for (int i = 0; i < alone.length; i++) {
            // A sixteenth of a pixel more or less looks the same.
            if (apart(over[i], alone[i]) > 32) {
                // In the section a row is wood or not, so one at the edge may be the other.
                assertThat(i / SIZE.width()).as("pixel %d", i).isGreaterThan(SIZE.axisRow() + 40);
                assertThat(apart(over[i - SIZE.width()], over[i + SIZE.width()]))
                        .as("at an edge, pixel %d", i)
                        .isGreaterThan(32);
                wholeRows++;
            }
        }
        assertThat(wholeRows).isLessThan(20);
        int[] before = empty();
        coarse(handle(24), before, EMPTY);
        assertThat(before).isNotEqualTo(alone);
    }

    /** The greatest difference of two colours in one of their parts. */
    private static int apart(int one, int other) {
        int most = 0;
        for (int shift = 0; shift < 32; shift += 8) {
            most = Math.max(most, Math.abs((one >>> shift & 255) - (other >>> shift & 255)));
        }
        return most;
    }

    @Test
    void columnsThatLookTheSameAreLeftAlone() {
        int[] pixels = empty();
        long[] shown = coarse(handle(26), pixels, EMPTY);
        int[] wiped = empty();
        assertThat(coarse(handle(26), wiped, shown)).isEqualTo(shown);
        assertThat(wiped).containsOnly(0);
    }

    private static int[] over(Ground ground, double swell) {
        int[] pixels = empty();
        new CoarseRaster(handle(swell), Palette.PAPER, new CoarseGrain(CoarseRaster.TALL), ground)
                .paint(START_X, SCALE, SIZE, 1, 7, pixels, EMPTY);
        return pixels;
    }

    private static Ground squares() {
        boolean[] isUpright = new boolean[SIZE.width()];
        boolean[] isLevel = new boolean[SIZE.height()];
        isUpright[3] = true;
        isLevel[5] = true;
        return Ground.squared(0xFFF0F0F0, 0xFFC0C0C0, isUpright, isLevel);
    }

    @Test
    void paperIsSeenBesideThePieceAndNothingThroughIt() {
        int[] clear = over(Ground.CLEAR, 26);
        int[] paper = over(squares(), 26);
        int seen = 0;
        for (int i = 0; i < clear.length; i++) {
            int row = i / SIZE.width();
            int column = i % SIZE.width();
            assertThat(paper[i] >>> 24).as("pixel %d", i).isEqualTo(255);
            if (clear[i] == 0 && paper[i] == 0xFFF0F0F0) {
                assertThat(row == 5 || column == 3).as("line at %d", i).isFalse();
                seen++;
            }
        }
        assertThat(seen).isGreaterThan(50_000);
        assertThat(paper[5 * SIZE.width() + 40]).isEqualTo(0xFFC0C0C0);
        assertThat(paper[9 * SIZE.width() + 3]).isEqualTo(0xFFC0C0C0);
    }

    @Test
    void overPaperTheOutlinesLineIsOnTheEdge() {
        Handle handle = handle(26);
        int[] paper = over(squares(), 26);
        for (double x : new double[] {10, 30, 50}) {
            int column = (int) Math.round((x - START_X) * SCALE);
            double edge = handle.outline().r(START_X + column / SCALE) * SCALE;
            for (int sign : new int[] {-1, 1}) {
                int darkest = 0;
                for (int k = (int) edge - 6; k <= edge + 6; k++) {
                    darkest =
                            light(paper, sign, k, column) < light(paper, sign, darkest, column)
                                    ? k
                                    : darkest;
                }
                assertThat(darkest + 0.5).as("line at %s", x).isCloseTo(edge, within(1.0));
                assertThat(light(paper, sign, darkest, column)).isLessThan(150);
            }
        }
    }

    private static int light(int[] pixels, int sign, int k, int column) {
        int row = sign < 0 ? SIZE.axisRow() + k : SIZE.axisRow() - 1 - k;
        int colour = pixels[row * SIZE.width() + column];
        return (colour >> 16 & 255) + (colour >> 8 & 255) + (colour & 255);
    }

    @Test
    void grainIsStretchedAndWorkedOutAnewOnlyWhenItIsStretchedTooFar() {
        CoarseGrain grain = new CoarseGrain(CoarseRaster.TALL);
        int column = (int) Math.round((handle(26).buttX() / 2 - START_X) * SCALE);
        int[] first = slice(grain, 26, column);
        assertThat(slice(grain, 27, column)).isSameAs(first);
        assertThat(slice(grain, 40, column)).isNotSameAs(first);
        grain.forget();
        assertThat(slice(grain, 26, column)).isNotSameAs(first).isEqualTo(first);
    }

    private static int[] slice(CoarseGrain grain, double swell, int column) {
        Handle handle = handle(swell);
        Columns columns = new Columns(handle, START_X, 1 / SCALE, SIZE.width());
        grain.keepTo(handle.brief().stock(), columns);
        return grain.of(column, columns.wood[column], Grain.of(handle.brief().stock()));
    }
}
