package haftline.write.stl;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.cli.RandomHandles;
import haftline.curve.Point;
import haftline.curve.Segment;
import haftline.figures.Figures;
import haftline.handle.Brief;
import haftline.handle.ChoicesBuilder;
import haftline.handle.Handle;
import haftline.handle.P1;
import haftline.support.InLocale;
import java.util.List;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StlWriterTest {
    private static final long SEED = 4_007;
    private static final int HANDLES = 150;

    @ParameterizedTest
    @ValueSource(doubles = {0.2, 0.05, 0.01})
    void workedHandle_isClosedAndHasTheVolumeOfItsFrusta(double tolerance) {
        Handle handle = P1.handle(P1.brief());
        TurnedMesh mesh = made(handle, tolerance);
        StlFile file = StlFile.binary(StlWriter.binary(mesh));
        assertSound(file, mesh);
        // Straight tapers: only the sides of the rings cost volume, by the area of a regular
        // polygon.
        double side = 2 * Math.PI / mesh.sides();
        double share = Math.sin(side) / side;
        double wood = 26113.03;
        assertThat(file.volume()).isCloseTo(wood * share, within(0.05));
    }

    @Test
    void randomHandles_areClosedOutwardAndWithinTheBoundOfTheirVolume() {
        double tolerance = 0.05;
        for (Handle handle : RandomHandles.of(SEED, HANDLES)) {
            MeshResult result = TurnedMesh.of(handle, tolerance);
            Figures figures = Figures.of(handle);
            boolean thin =
                    figures.walls().stream().anyMatch(wall -> wall.nominalMm() < tolerance)
                            || figures.web().map(web -> web.mm() < tolerance).orElse(false);
            assertThat(result instanceof MeshResult.Refused).as("seed %d", SEED).isEqualTo(thin);
            if (!thin) {
                TurnedMesh mesh = ((MeshResult.Made) result).mesh();
                StlFile file = StlFile.binary(StlWriter.binary(mesh));
                assertSound(file, mesh);
                double bound = tolerance * file.surface();
                assertThat(Math.abs(file.volume() - figures.wood().finishedMm3()))
                        .as("seed %d", SEED)
                        .isLessThan(bound);
            }
        }
    }

    @Test
    void volume_comesToTheExactOneAsTheToleranceShrinks() {
        for (Handle handle : RandomHandles.of(SEED + 1, 3)) {
            if (TurnedMesh.of(handle, 0.2) instanceof MeshResult.Refused) {
                continue;
            }
            double exact = Figures.of(handle).wood().finishedMm3();
            double coarse = error(handle, 0.2, exact);
            double fine = error(handle, 0.004, exact);
            assertThat(fine).as("seed %d", SEED).isLessThan(coarse / 15);
            assertThat(fine / exact).isLessThan(1e-3);
        }
    }

    private static double error(Handle handle, double tolerance, double exact) {
        byte[] bytes = StlWriter.binary(made(handle, tolerance));
        return Math.abs(StlFile.binary(bytes).volume() - exact);
    }

    @Test
    void chords_stayWithinTheToleranceOfTheOutline() {
        double tolerance = 0.05;
        for (Handle handle : RandomHandles.of(SEED + 2, 20)) {
            List<Point> chain = ProfileChain.of(handle, tolerance);
            for (int i = 1; i < chain.size(); i++) {
                Point a = chain.get(i - 1);
                Point b = chain.get(i);
                Point middle = new Point((a.x() + b.x()) / 2, (a.r() + b.r()) / 2);
                if (onSameSegment(handle, a, b)) {
                    assertThat(distance(handle, middle))
                            .as("seed %d, %s", SEED, middle)
                            .isLessThan(tolerance * 1.001);
                }
            }
        }
    }

    /** Bores and faces are straight: only what lies on a curve between two of its own points. */
    private static boolean onSameSegment(Handle handle, Point a, Point b) {
        return handle.outline().segments().stream()
                .anyMatch(s -> isOn(s, a) && isOn(s, b) && a.x() < b.x());
    }

    private static boolean isOn(Segment s, Point p) {
        return p.x() >= s.startX() && p.x() <= s.endX() && Math.abs(s.r(p.x()) - p.r()) < 1e-6;
    }

    private static double distance(Handle handle, Point p) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment s : handle.outline().segments()) {
            double from = Math.max(s.startX(), p.x() - 1);
            double to = Math.min(s.endX(), p.x() + 1);
            for (int i = 0; from < to && i <= 2000; i++) {
                double x = i == 2000 ? to : from + (to - from) * i / 2000;
                least = Math.min(least, Math.hypot(x - p.x(), s.r(x) - p.r()));
            }
        }
        return least;
    }

    @Test
    void text_holdsTheSameSolidAsBinary() {
        TurnedMesh mesh = made(P1.handle(P1.brief()), 0.1);
        String text = StlWriter.text(mesh, "Pi\u00E8ce <1>");
        StlFile read = StlFile.text(text);
        assertSound(read, mesh);
        assertThat(text).startsWith("solid pi-ce-1 mm\n").endsWith("endsolid pi-ce-1 mm\n");
        assertThat(text.chars()).allMatch(c -> c < 0x7F);
        double volume = StlFile.binary(StlWriter.binary(mesh)).volume();
        assertThat(read.volume()).isCloseTo(volume, within(1e-2));
    }

    @Test
    void extents_areThoseOfTheHandle() {
        Handle handle = P1.handle(P1.brief());
        StlFile file = StlFile.binary(StlWriter.binary(made(handle, 0.2)));
        double[] x = file.facets.stream().mapToDouble(f -> f.a().x()).sorted().toArray();
        double[] y = file.facets.stream().mapToDouble(f -> f.a().y()).sorted().toArray();
        double[] z = file.facets.stream().mapToDouble(f -> f.a().z()).sorted().toArray();
        assertThat(x[0]).isCloseTo(-11.5, within(1e-5));
        assertThat(x[x.length - 1]).isCloseTo(105, within(1e-5));
        assertThat(y[0]).isCloseTo(-11.5, within(1e-5));
        assertThat(z[z.length - 1]).isCloseTo(11.5, within(1e-5));
    }

    @Test
    void bytes_areTheSameFromRunToRunAndInEveryLocale() {
        Handle handle = P1.handle(P1.brief());
        byte[] once = StlWriter.binary(made(handle, 0.1));
        String text = StlWriter.text(made(handle, 0.1), "INDIGO");
        for (String tag : InLocale.TAGS) {
            assertThat(InLocale.get(tag, () -> StlWriter.binary(made(handle, 0.1))))
                    .isEqualTo(once);
            assertThat(InLocale.get(tag, () -> StlWriter.text(made(handle, 0.1), "INDIGO")))
                    .isEqualTo(text);
        }
    }

    @Test
    void boresThatMeet_areRefusedWithTheirPlaces() {
        assertThat(refused(choices -> choices.capDepthMm(75.0)))
                .isEqualTo(
                        "the bores meet: the tang's bore reaches to x 37.36 mm, the cap's to x"
                                + " 28.17 mm");
    }

    @Test
    void boreThatBreaksOut_isRefusedWithItsPlace() {
        assertThat(refused(choices -> choices.tangDrillMm(12.95)))
                .contains("the tang's bore breaks out of the wood")
                .contains("is left at x");
    }

    @Test
    void tolerance_outOfRangeIsRefused() {
        Handle handle = P1.handle(P1.brief());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TurnedMesh.of(handle, 0))
                .withMessageContaining("chord tolerance");
    }

    private static String refused(UnaryOperator<ChoicesBuilder> change) {
        Brief brief = P1.brief();
        ChoicesBuilder choices = change.apply(haftline.handle.Choices.builder());
        Handle handle =
                P1.handle(
                        new Brief(
                                brief.name(),
                                brief.kit(),
                                brief.metals(),
                                brief.stock(),
                                brief.adhesive(),
                                brief.shape(),
                                brief.rules(),
                                brief.rack(),
                                choices.build().over(brief.choices())));
        return ((MeshResult.Refused) TurnedMesh.of(handle, 0.05)).reason();
    }

    private static void assertSound(StlFile file, TurnedMesh mesh) {
        assertThat(file.facets).hasSize(mesh.triangleCount());
        assertThat(file.looseEdges()).isZero();
        assertThat(file.leastArea()).isPositive();
        // Where a side is a ten-thousandth of a millimetre a float's rounding turns it a little.
        assertThat(file.worstNormal()).isLessThan(1e-2);
        // A positive volume is what outward normals mean on a closed surface.
        assertThat(file.volume()).isPositive();
    }

    private static TurnedMesh made(Handle handle, double tolerance) {
        return ((MeshResult.Made) TurnedMesh.of(handle, tolerance)).mesh();
    }
}
