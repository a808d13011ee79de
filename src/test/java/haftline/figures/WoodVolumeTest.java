package haftline.figures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Segment;
import haftline.handle.Bore;
import haftline.handle.BoreStep;
import haftline.handle.Choices;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.handle.RandomHandles;
import haftline.handle.TestBrief;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Volumes against Commons Math quadrature of min(outline, widest bore) squared. */
class WoodVolumeTest {
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();

    /** Slices between two breaks: where bore and outline cross inside, the error is theirs. */
    private static final int SLICES = 200;

    private static double widest(Handle handle, double x) {
        double radius = handle.tangBore().radiusAt(x);
        return Math.max(radius, handle.capBore().map(bore -> bore.radiusAt(x)).orElse(0.0));
    }

    /** Solid, removed, and first moment of what is left. */
    private static double[] quadrature(Handle handle) {
        double start = handle.outline().startX();
        double end = handle.outline().endX();
        TreeSet<Double> breaks = new TreeSet<>(List.of(start, end));
        for (Segment segment : handle.outline().segments()) {
            breaks.add(segment.startX());
        }
        List<Bore> bores = new ArrayList<>(List.of(handle.tangBore()));
        handle.capBore().ifPresent(bores::add);
        for (Bore bore : bores) {
            for (BoreStep step : bore.steps()) {
                breaks.add(bore.xAt(step.depthMm()));
                breaks.add(bore.xAt(step.depthMm() + step.pointMm()));
            }
        }
        double[] sum = new double[3];
        double from = start;
        for (double to : breaks.subSet(start, false, end, true)) {
            double h = (to - from) / SLICES;
            for (int i = 0; i < SLICES; i++) {
                double a = from + i * h;
                GaussIntegrator rule = GAUSS.legendre(5, a, a + h);
                Segment segment = handle.outline().segmentAt(a + h / 2);
                sum[0] += rule.integrate(x -> square(segment.r(x)));
                sum[1] += rule.integrate(x -> square(Math.min(segment.r(x), widest(handle, x))));
                sum[2] +=
                        rule.integrate(
                                x ->
                                        x
                                                * (square(segment.r(x))
                                                        - square(
                                                                Math.min(
                                                                        segment.r(x),
                                                                        widest(handle, x)))));
            }
            from = to;
        }
        return new double[] {Math.PI * sum[0], Math.PI * sum[1], Math.PI * sum[2]};
    }

    private static double square(double r) {
        return r * r;
    }

    private static boolean breaksOutOrMeets(Handle handle) {
        return Walls.of(handle).stream().anyMatch(wall -> wall.nominalMm() < 0)
                || Walls.web(handle).map(web -> web.mm() < 0).orElse(false);
    }

    private static void compare(Handle handle, double relative, String as) {
        WoodVolume volume = WoodVolume.of(handle, Walls.of(handle));
        double[] expected = quadrature(handle);
        double scale = relative * expected[0];
        assertThat(volume.solidMm3()).as(as).isCloseTo(expected[0], within(scale));
        assertThat(volume.removedMm3()).as(as).isCloseTo(expected[1], within(scale));
        double left = volume.finishedMm3();
        assertThat(volume.centroidX() * left).as(as).isCloseTo(expected[2], within(100 * scale));
    }

    @ParameterizedTest
    @ValueSource(longs = {31, 32})
    void agreesWithQuadrature_boresInside(long seed) {
        RandomHandles handles = RandomHandles.of(seed);
        int compared = 0;
        for (int i = 0; i < 40; i++) {
            Handle handle = handles.next();
            // A half round is as steep as can be at its ends, which a rule of few points feels;
            // the closed forms do not.
            if (!breaksOutOrMeets(handle)) {
                compare(handle, 2e-8, "seed " + seed + " handle " + i);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    @ParameterizedTest
    @ValueSource(longs = {41, 42})
    void agreesWithQuadrature_boresThatMeetOrBreakOut(long seed) {
        RandomHandles handles = RandomHandles.reckless(seed);
        int compared = 0;
        for (int i = 0; i < 60; i++) {
            Handle handle = handles.next();
            if (breaksOutOrMeets(handle)) {
                compare(handle, 1e-6, "seed " + seed + " handle " + i);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    @Test
    void boreRightThrough_leavesATube() {
        // A plain cylinder 14 mm thick with a tenon of 11.9, bored through at 8 mm.
        Handle handle =
                new TestBrief().choose(Choices.builder().tangDrillMm(8).tangDepthMm(300)).handle();
        WoodVolume wood = WoodVolume.of(handle, Walls.of(handle));
        double whole = handle.buttX() - handle.tenonEndX();
        assertThat(wood.removedMm3()).isCloseTo(Math.PI * 16 * whole, within(1e-8));
        double tube =
                Math.PI * (49 - 16) * handle.buttX()
                        + Math.PI
                                * (square(handle.tenon().diameterMm() / 2) - 16)
                                * handle.tenon().lengthMm();
        assertThat(wood.finishedMm3()).isCloseTo(tube, within(1e-8));
    }

    @Test
    void boresThatMeetAreNotCountedTwice() {
        var brief = P1.brief();
        Handle apart = P1.handle(brief);
        // The tang's bore runs to the butt; the cap's, which is narrower, lies within it.
        Handle met =
                P1.handle(
                        brief.withChoices(brief.choices().toBuilder().tangDepthMm(116.5).build()));
        double tang = Math.PI * 3.1 * 3.1 * 116.5;
        assertThat(WoodVolume.of(met, Walls.of(met)).removedMm3()).isCloseTo(tang, within(1e-8));
        assertThat(WoodVolume.of(met)).isEqualTo(WoodVolume.of(met, Walls.of(met)));
        assertThat(WoodVolume.of(apart, Walls.of(apart)).removedMm3())
                .isLessThan(WoodVolume.of(met, Walls.of(met)).removedMm3());
    }

    /** Looks along a stretch end exactly where it ends, whatever the lengths round to. */
    @Test
    void breakingOut_isReckonedOnHandlesOfAnyLength() {
        for (int i = 0; i < 4000; i++) {
            Handle handle =
                    new TestBrief()
                            .smooth(0.11, 11.62)
                            .smooth(0.29, 12.32)
                            .crisp(0.41, 12.6)
                            .choose(
                                    Choices.builder()
                                            .tangDrillMm(12.5)
                                            .lengthRatio(0.8 + 0.0001 * i))
                            .handle();
            WoodVolume wood = WoodVolume.of(handle, Walls.of(handle));

            assertThat(wood.removedMm3()).as("ratio %d", i).isBetween(1000.0, wood.solidMm3());
            assertThat(WoodVolume.of(handle)).as("without the walls").isEqualTo(wood);
        }
    }
}
