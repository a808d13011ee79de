package haftline.write.dxf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Anchor;
import haftline.drawing.Cubic;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Segment;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.support.Golden;
import haftline.support.InLocale;
import haftline.support.SampleDrawings;
import haftline.support.SampleFiles;
import haftline.support.TagFile;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class DxfProfilesTest {
    private static final double EXTENT_MM = 1e-6;

    @ParameterizedTest
    @EnumSource(DxfProfile.class)
    void everySample_isReadByAStrictReaderAndHasNoShortSegment(DxfProfile profile) {
        SampleFiles.drawings()
                .forEach(
                        (name, drawing) -> {
                            DxfFile file = SampleFiles.dxf(drawing, profile);
                            TagFile read = TagFile.read(file.text());
                            assertThat(read.counts()).as(name).isEqualTo(file.report().entities());
                            assertThat(file.report().shortSegments()).isZero();
                            assertThat(file.report().shortestSegmentMm())
                                    .isGreaterThanOrEqualTo(DxfWriter.SHORTEST_SEGMENT_MM);
                        });
    }

    @ParameterizedTest
    @EnumSource(DxfProfile.class)
    void bytes_areTheSameInEveryLocale(DxfProfile profile) {
        Drawing drawing = SampleDrawings.halfSection("INDIGO");
        String once = SampleFiles.dxf(drawing, profile).text();
        for (String tag : InLocale.TAGS) {
            assertThat(InLocale.get(tag, () -> SampleFiles.dxf(drawing, profile).text()))
                    .isEqualTo(once);
        }
    }

    @ParameterizedTest
    @CsvSource({"half-profile, DRAWING", "half-profile, OLD_CONTROLLER", "hostile, OLD_CONTROLLER"})
    void samples_areAsTheyWereLookedAt(String name, DxfProfile profile) throws Exception {
        Golden.assertMatches(
                "dxf/" + name + profile.suffix() + ".dxf",
                SampleFiles.dxf(SampleFiles.drawings().get(name), profile).text());
    }

    @Test
    void oldController_hasOneClosedPolylineWithTheAreaAndExtentsOfItsCurves() {
        Drawing drawing = SampleDrawings.halfProfile();
        Path loop = (Path) drawing.elements().findFirst().orElseThrow();
        TagFile read = TagFile.read(SampleFiles.dxf(drawing, DxfProfile.OLD_CONTROLLER).text());
        List<TagFile.Record> polylines = read.r12Polylines();
        assertThat(polylines).hasSize(1);
        assertThat(TagFile.isClosed(polylines.get(0))).isTrue();
        double area = Math.abs(loop.signedAreaMm2());
        assertThat(TagFile.area(polylines.get(0))).isCloseTo(area, within(1e-3 * area));
        double[] box = TagFile.extents(polylines.get(0));
        assertThat(box[0]).isCloseTo(loop.bounds().minXMm(), within(EXTENT_MM));
        assertThat(box[3]).isCloseTo(loop.bounds().maxYMm(), within(EXTENT_MM));
        assertThat(read.headerPoint("$EXTMAX")[0])
                .isCloseTo(loop.bounds().maxXMm(), within(EXTENT_MM));
    }

    @Test
    void oldController_tellsItsUnitInLayersAndByABar() {
        TagFile read =
                TagFile.read(
                        SampleFiles.dxf(SampleDrawings.halfProfile(), DxfProfile.OLD_CONTROLLER)
                                .text());
        assertThat(read.names("LAYER")).containsExactly("0", "OUTLINE-MM", "DIMENSION-MM");
        assertThat(read.entities("TEXT").stream().map(text -> text.one(1)))
                .containsExactly("check bar 50 mm", "unit: mm");
        assertThat(
                        read.entities("LINE").stream()
                                .mapToDouble(line -> line.real(11) - line.real(10))
                                .max())
                .hasValueCloseTo(50.0, within(1e-9));
    }

    @Test
    void oldController_refusesCurvesThatWereNotFitted() {
        assertThatIllegalArgumentException()
                .isThrownBy(
                        () ->
                                new DxfWriter(DxfProfile.OLD_CONTROLLER)
                                        .write(SampleDrawings.halfProfile()))
                .withMessageContaining("a path holds a Cubic");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '`',
            value = {
                "\u23006.2 \u00B10.1 45\u00B0 \u00B5m, %%c6.2 %%p0.1 45%%d um",
                "B\u00FCgel, Bugel",
                "\uD83E\uDDAA \u05D9, ? ?",
                "\\U+0041, /U+0041",
                "50%%u, 50% %u"
            })
    void plainText_isAsciiWithoutEscapes(String typed, String written) {
        assertThat(DxfText.plain(typed)).isEqualTo(written);
    }

    @Test
    void drawing_keepsEveryCubicAsASpline() {
        Drawing drawing = SampleDrawings.halfProfile();
        Path loop = (Path) drawing.elements().findFirst().orElseThrow();
        TagFile read = TagFile.read(SampleFiles.dxf(drawing, DxfProfile.DRAWING).text());
        // Three cubics end to end; tenon, butt and axis in one polyline.
        assertThat(read.counts()).isEqualTo(Map.of("SPLINE", 1, "LWPOLYLINE", 1));
        TagFile.Record spline = read.entities("SPLINE").get(0);
        List<Segment> cubics = loop.segments().stream().filter(Cubic.class::isInstance).toList();
        for (int i = 0; i < cubics.size(); i++) {
            for (double t = 0; t < 1; t += 0.1) {
                double[] on = TagFile.onSpline(spline, i + t);
                Vertex at = ((Cubic) cubics.get(i)).at(t);
                assertThat(on[0]).isCloseTo(at.xMm(), within(1e-8));
                assertThat(on[1]).isCloseTo(at.yMm(), within(1e-8));
            }
        }
        List<double[]> vertices = TagFile.vertices(read.entities("LWPOLYLINE").get(0));
        double[] first = vertices.get(0);
        double[] last = vertices.get(vertices.size() - 1);
        List<String> xs = spline.all(10);
        assertThat(Double.parseDouble(xs.get(xs.size() - 1))).isEqualTo(first[0]);
        assertThat(Double.parseDouble(xs.get(0))).isEqualTo(last[0]);
    }

    @Test
    void drawing_keepsDomesAsEllipses() {
        Path flat = Path.from(10, 7).ellipseTo(14, 0, 10, 0, 4, 7, false).open(Layer.OUTLINE);
        Path wide = Path.from(0, 3).ellipseTo(-9, 0, 0, 0, 9, 3, true).open(Layer.OUTLINE);
        TagFile read = TagFile.read(write(flat, wide).text());
        List<TagFile.Record> ellipses = read.entities("ELLIPSE");
        assertThat(ellipses).hasSize(2);
        assertEnds(ellipses.get(0), 14, 0, 10, 7);
        assertEnds(ellipses.get(1), 0, 3, -9, 0);
    }

    /** Ends as the published reference reckons them: centre, greater axis, ratio, parameters. */
    private static void assertEnds(
            TagFile.Record ellipse, double x0, double y0, double x1, double y1) {
        double[][] expected = {{x0, y0}, {x1, y1}};
        for (int end = 0; end < 2; end++) {
            double u = ellipse.real(41 + end);
            double mx = ellipse.real(11);
            double my = ellipse.real(21);
            double ratio = ellipse.real(40);
            assertThat(ratio).isBetween(1e-6, 1.0);
            double x = ellipse.real(10) + mx * Math.cos(u) - my * ratio * Math.sin(u);
            double y = ellipse.real(20) + my * Math.cos(u) + mx * ratio * Math.sin(u);
            assertThat(x).isCloseTo(expected[end][0], within(1e-8));
            assertThat(y).isCloseTo(expected[end][1], within(1e-8));
        }
    }

    @Test
    void drawing_writesACurveThatIsThereAlreadyOnce() {
        Path curve = Path.from(0, 0).cubicTo(1, 3, 5, 3, 6, 0).open(Layer.OUTLINE);
        Path other = Path.from(0, 0).cubicTo(1, 4, 5, 4, 6, 0).open(Layer.OUTLINE);
        DxfFile file = write(curve, curve.reversed(), other);
        assertThat(file.report().entities()).isEqualTo(Map.of("SPLINE", 2));
        assertThat(file.report().duplicates()).isEqualTo(1);
    }

    @Test
    void drawing_doesNotCutARunWhereTheLoopStarts() {
        Path loop =
                Path.from(0, 0)
                        .cubicTo(1, 3, 5, 3, 6, 0)
                        .lineTo(6, -5)
                        .lineTo(-6, -5)
                        .lineTo(-6, 0)
                        .cubicTo(-5, 3, -1, 3, 0, 0)
                        .close(Layer.CUT);
        assertThat(write(loop).report().entities()).isEqualTo(Map.of("SPLINE", 1, "LWPOLYLINE", 1));
    }

    @Test
    void r12Layers_areStrictNames() {
        for (Layer layer : Layer.values()) {
            assertThat(R12File.name(layer)).matches("[A-Z0-9$_-]{1,31}");
        }
        Text text = Text.level(Layer.TEXT, 0, 0, 3, Anchor.END, "7");
        TagFile read =
                TagFile.read(new DxfWriter(DxfProfile.OLD_CONTROLLER).write(drawing(text)).text());
        assertThat(read.entities("TEXT").get(0).one(72)).isEqualTo("2");
    }

    private static DxfFile write(Element... elements) {
        return new DxfWriter(DxfProfile.DRAWING).write(drawing(elements));
    }

    private static Drawing drawing(Element... elements) {
        return new Drawing("Test", "", List.of(new Group("all", List.of(elements))));
    }
}
