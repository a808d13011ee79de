package haftline.write.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Anchor;
import haftline.drawing.Arc;
import haftline.drawing.Bounds;
import haftline.drawing.Circle;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.PathBuilder;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.support.Biarcs;
import haftline.support.Golden;
import haftline.support.SampleDrawings;
import haftline.support.SampleFiles;
import haftline.support.TagFile;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DxfWriterTest {
    private static final long SEED = 11;
    private static final double EXTENT_MM = 1e-6;

    @ParameterizedTest
    @ValueSource(strings = {"half-profile", "card", "hostile"})
    void samples_areAsTheyWereLookedAt(String name) throws Exception {
        Golden.assertMatches(
                "dxf/" + name + ".dxf", SampleFiles.dxf(SampleFiles.drawings().get(name)).text());
    }

    @Test
    void everySample_isReadByAStrictReader() {
        SampleFiles.drawings()
                .forEach(
                        (name, drawing) -> {
                            DxfFile file = SampleFiles.dxf(drawing);
                            TagFile read = TagFile.read(file.text());
                            assertThat(read.counts()).as(name).isEqualTo(file.report().entities());
                            assertThat(file.report().shortSegments()).isZero();
                            assertThat(file.report().doubledSegments()).isZero();
                        });
    }

    @Test
    void header_saysMillimetresAndMetric() {
        TagFile read = TagFile.read(SampleFiles.dxf(SampleDrawings.halfProfile()).text());
        assertThat(read.header("$ACADVER")).isEqualTo("AC1015");
        assertThat(read.header("$INSUNITS")).isEqualTo("4");
        assertThat(read.header("$MEASUREMENT")).isEqualTo("1");
    }

    @Test
    void halfProfile_isOneClosedLoopWithTheAreaAndExtentsOfItsCurves() {
        double tolerance = 0.01;
        Drawing drawing = SampleDrawings.halfProfile();
        Path loop = (Path) drawing.elements().findFirst().orElseThrow();
        DxfFile file = write(drawing.withArcs(new Biarcs(tolerance)));
        TagFile read = TagFile.read(file.text());
        assertThat(read.counts()).isEqualTo(Map.of("LWPOLYLINE", 1));
        TagFile.Record polyline = read.entities().get(0);
        assertThat(TagFile.isClosed(polyline)).isTrue();
        double area = Math.abs(loop.signedAreaMm2());
        double lengthMm = 140;
        assertThat(TagFile.area(polyline))
                .isCloseTo(area, within(Math.min(1e-3 * area, tolerance * lengthMm)));
        assertExtents(polyline, loop.bounds());
        assertThat(read.headerPoint("$EXTMIN")[0]).isCloseTo(-11.5, within(EXTENT_MM));
        assertThat(read.headerPoint("$EXTMAX")[1]).isCloseTo(11.5, within(EXTENT_MM));
    }

    @Test
    void loopsOfLinesAndArcs_keepAreaAndExtents() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 40; round++) {
            PathBuilder builder = Path.from(random.nextDouble(50), random.nextDouble(50));
            for (int i = 0; i < 6; i++) {
                double bulge = i % 2 == 0 ? 0 : random.nextDouble(-1.5, 1.5);
                builder.arcTo(random.nextDouble(-99, 99), random.nextDouble(-99, 99), bulge);
            }
            Path loop = builder.close(Layer.CUT);
            TagFile read = TagFile.read(write(drawing(loop)).text());
            TagFile.Record polyline = read.entities("LWPOLYLINE").get(0);
            double area = Math.abs(loop.signedAreaMm2());
            assertThat(TagFile.area(polyline)).as("seed %d", SEED).isCloseTo(area, within(1e-5));
            assertExtents(polyline, loop.bounds());
        }
    }

    private static void assertExtents(TagFile.Record polyline, Bounds bounds) {
        double[] box = TagFile.extents(polyline);
        assertThat(box[0]).isCloseTo(bounds.minXMm(), within(EXTENT_MM));
        assertThat(box[1]).isCloseTo(bounds.minYMm(), within(EXTENT_MM));
        assertThat(box[2]).isCloseTo(bounds.maxXMm(), within(EXTENT_MM));
        assertThat(box[3]).isCloseTo(bounds.maxYMm(), within(EXTENT_MM));
    }

    @Test
    void bulge_ofAQuarterTurn() {
        Path corner =
                Path.from(0, 0).lineTo(5, 0).arcTo(8, 3, Math.tan(Math.PI / 8)).open(Layer.CUT);
        TagFile read = TagFile.read(write(drawing(corner)).text());
        List<double[]> vertices = TagFile.vertices(read.entities().get(0));
        assertThat(vertices).hasSize(3);
        assertThat(vertices.get(1)[2]).isCloseTo(0.414213562373, within(1e-12));
        assertThat(TagFile.isClosed(read.entities().get(0))).isFalse();
    }

    @Test
    void singleSegments_areLinesAndAnticlockwiseArcs() {
        Path line = Path.line(Layer.SCORE, new Vertex(0, 0), new Vertex(7, 0));
        Path clockwise =
                new Path(Layer.SCORE, List.of(Arc.of(new Vertex(1, 2), 5, 120, -90)), false);
        Circle circle = new Circle(Layer.CUT, new Vertex(8, 15), 2.5);
        TagFile read = TagFile.read(write(drawing(line, clockwise, circle)).text());
        assertThat(read.counts()).isEqualTo(Map.of("LINE", 1, "ARC", 1, "CIRCLE", 1));
        TagFile.Record arc = read.entities("ARC").get(0);
        assertThat(arc.real(50)).isCloseTo(30, within(1e-8));
        assertThat(arc.real(51)).isCloseTo(120, within(1e-8));
        assertThat(arc.real(40)).isCloseTo(5, within(1e-8));
        assertThat(read.entities("CIRCLE").get(0).real(40)).isEqualTo(2.5);
    }

    @Test
    void curvesThatWereNotFitted_areRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> write(SampleDrawings.halfProfile()))
                .withMessageContaining("a path holds a Cubic");
    }

    @Test
    void layers_thatAreUsedAreWrittenWithTheirLineTypes() {
        DxfFile file = SampleFiles.dxf(SampleDrawings.halfSection("A"));
        TagFile read = TagFile.read(file.text());
        assertThat(read.names("LAYER"))
                .containsExactly("0", "HATCH", "CENTRE", "PART", "OUTLINE", "DIMENSION", "TEXT");
        assertThat(read.names("LTYPE"))
                .containsExactly("ByBlock", "ByLayer", "CONTINUOUS", "DASHED", "CENTER", "PHANTOM");
    }

    @Test
    void whatIsDrawnTwice_isWrittenOnce() {
        Path square = Path.from(0, 0).lineTo(9, 0).lineTo(9, 9).lineTo(0, 9).close(Layer.CUT);
        Path turned = Path.from(9, 9).lineTo(9, 0).lineTo(0, 0).lineTo(0, 9).close(Layer.CUT);
        Path partly = Path.from(-5, 0).lineTo(0, 0).lineTo(9, 0).lineTo(20, 0).open(Layer.CUT);
        Path elsewhere = Path.line(Layer.SCORE, new Vertex(0, 0), new Vertex(9, 0));
        Circle hole = new Circle(Layer.CUT, new Vertex(4, 4), 1);
        DxfFile file = write(drawing(partly, square, turned, elsewhere, elsewhere, hole, hole));
        TagFile read = TagFile.read(file.text());
        assertThat(read.counts()).isEqualTo(Map.of("LWPOLYLINE", 1, "LINE", 3, "CIRCLE", 1));
        // Four of the second square, one of the open path, one score line.
        assertThat(file.report().duplicates()).isEqualTo(6);
        assertThat(file.report().doubledSegments()).isZero();
    }

    @Test
    void loopsThatShareAnEdge_stayWholeAndAreCounted() {
        Path left = Path.from(0, 0).lineTo(9, 0).lineTo(9, 9).lineTo(0, 9).close(Layer.CUT);
        Path right = Path.from(9, 0).lineTo(18, 0).lineTo(18, 9).lineTo(9, 9).close(Layer.CUT);
        DxfFile file = write(drawing(left, right));
        assertThat(file.report().entities()).isEqualTo(Map.of("LWPOLYLINE", 2));
        assertThat(file.report().doubledSegments()).isEqualTo(1);
    }

    @Test
    void shortPieceOfASmoothLine_isMergedIntoItsNeighbour() {
        // A quarter circle of radius 10 of which the last 0.02 mm are an arc of their own.
        double rest = Math.toDegrees(0.02 / 10);
        Arc most = Arc.of(new Vertex(0, 0), 10, 0, 90 - rest);
        Vertex end = new Vertex(0, 10);
        Path path =
                Path.from(10, 0)
                        .add(most)
                        .add(Arc.about(most.end(), end, new Vertex(0, 0), true))
                        .lineTo(-5, 10)
                        .open(Layer.OUTLINE);
        DxfReport report = write(drawing(path)).report();
        assertThat(report.mergedSegments()).isEqualTo(1);
        assertThat(report.shortSegments()).isZero();
        assertThat(report.shortestSegmentMm()).isEqualTo(5);
        assertThat(report.extents().maxYMm()).isCloseTo(10, within(EXTENT_MM));
    }

    @Test
    void shortSeamOfALoop_isMergedAcrossItsStart() {
        Path loop =
                Path.from(0.01, 0)
                        .lineTo(9, 0)
                        .lineTo(9, 9)
                        .lineTo(0, 9)
                        .lineTo(0, 0)
                        .close(Layer.CUT);
        DxfFile file = write(drawing(loop));
        TagFile.Record square = TagFile.read(file.text()).entities().get(0);
        assertThat(file.report().mergedSegments()).isEqualTo(1);
        assertThat(TagFile.vertices(square)).hasSize(4);
        assertThat(TagFile.area(square)).isCloseTo(81, within(1e-9));
    }

    @Test
    void shortFaceThatIsMeant_staysAndIsCounted() {
        Path step =
                Path.from(0, 7).lineTo(10, 7).lineTo(10, 6.97).lineTo(20, 6.97).open(Layer.OUTLINE);
        DxfReport report = write(drawing(step)).report();
        assertThat(report.mergedSegments()).isZero();
        assertThat(report.shortSegments()).isEqualTo(1);
        assertThat(report.shortestSegmentMm()).isCloseTo(0.03, within(1e-9));
    }

    @Test
    void merging_neverMovesTheLineByMoreThanItSays() {
        SplittableRandom random = new SplittableRandom(SEED);
        for (int round = 0; round < 200; round++) {
            PathBuilder builder = Path.from(0, 0);
            double x = 0;
            double y = 0;
            for (int i = 0; i < 12; i++) {
                double step = random.nextInt(3) == 0 ? random.nextDouble(0.001, 0.05) : 3;
                x += step;
                y += step * random.nextDouble(-0.2, 0.2);
                builder.arcTo(x, y, random.nextDouble(-0.05, 0.05));
            }
            Path path = builder.open(Layer.OUTLINE);
            List<Segment> merged = ShortSegments.merged(path.segments(), false);
            Path after = new Path(Layer.OUTLINE, merged, false);
            assertThat(after.segments().get(0).start()).isEqualTo(new Vertex(0, 0));
            // Several may be merged into one after the other.
            double moved = 4 * DxfWriter.MERGE_DEVIATION_MM;
            for (Segment segment : path.segments()) {
                Vertex v = segment.end();
                assertThat(distance(v, after)).as("seed %d", SEED).isLessThan(moved);
            }
        }
    }

    private static double distance(Vertex v, Path path) {
        double least = Double.POSITIVE_INFINITY;
        Vertex from = path.segments().get(0).start();
        for (Segment segment : path.segments()) {
            for (Vertex to : segment.chords(1e-4)) {
                double dx = to.xMm() - from.xMm();
                double dy = to.yMm() - from.yMm();
                double wx = v.xMm() - from.xMm();
                double wy = v.yMm() - from.yMm();
                double t = Math.max(0, Math.min(1, (dx * wx + dy * wy) / (dx * dx + dy * dy)));
                least = Math.min(least, Math.hypot(wx - t * dx, wy - t * dy));
                from = to;
            }
        }
        return least;
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "plain, plain",
                "\u23006.2 \u00B10.1 45\u00B0, %%c6.2 %%p0.1 45%%d",
                "B\u00FCgel, B\\U+00FCgel",
                "\uD83E\uDDAA, \\U+FFFD",
                "\\U+0041, \\U+005CU+0041",
                "50%%u, 50% %u",
                "^J, ^ J",
                "a\u0007b, ab"
            })
    void text_isEscapedForAsciiFiles(String typed, String written) {
        assertThat(DxfText.escaped(typed)).isEqualTo(written);
    }

    @Test
    void text_neverGrowsBeyondWhatReadersTake() {
        assertThat(DxfText.escaped("\u05E9".repeat(500)))
                .hasSizeLessThanOrEqualTo(255)
                .endsWith("...");
        assertThat(DxfText.escaped("x\n0\nLINE\r\n")).isEqualTo("x 0 LINE  ");
    }

    @Test
    void text_isAnchoredAndTurned() {
        Text text = new Text(Layer.TEXT, new Vertex(3, 4), 2.5, Anchor.MIDDLE, 90, "7");
        TagFile.Record record = TagFile.read(write(drawing(text)).text()).entities("TEXT").get(0);
        assertThat(record.one(72)).isEqualTo("1");
        assertThat(record.real(11)).isEqualTo(3);
        assertThat(record.real(50)).isEqualTo(90);
        assertThat(record.real(40)).isEqualTo(2.5);
    }

    @Test
    void handles_areTheSameFromRunToRun() {
        String once = SampleFiles.dxf(SampleDrawings.halfSection("A")).text();
        assertThat(SampleFiles.dxf(SampleDrawings.halfSection("A")).text()).isEqualTo(once);
    }

    private static DxfFile write(Drawing drawing) {
        return new DxfWriter(DxfProfile.CUTTING).write(drawing);
    }

    private static Drawing drawing(Element... elements) {
        return new Drawing("Test", "", List.of(new Group("all", List.of(elements))));
    }

    @Test
    void theMinusSignIsOneThatEveryDrawingProgramHas() {
        assertThat(DxfText.escaped("\u22125.8")).isEqualTo("-5.8");
        assertThat(DxfText.plain("\u22125.8")).isEqualTo("-5.8");
    }
}
