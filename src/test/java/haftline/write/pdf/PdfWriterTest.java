package haftline.write.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Anchor;
import haftline.drawing.Bounds;
import haftline.drawing.Circle;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Group;
import haftline.drawing.Layer;
import haftline.drawing.Path;
import haftline.drawing.Text;
import haftline.drawing.Vertex;
import haftline.support.InLocale;
import haftline.support.SampleDrawings;
import haftline.support.SampleFiles;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PdfWriterTest {
    private static final double TRUE_MM = 0.1;
    private static final double STRIP_MM = Sheet.STRIP_MM;
    private static final double BAR_MM = 2.8;
    private static final double RING_MM = 1.5;

    @ParameterizedTest
    @CsvSource({
        "A4, PORTRAIT, 210, 297, 1, 1",
        "A4, LANDSCAPE, 297, 210, 1, 1",
        "A3, PORTRAIT, 297, 420, 1, 1",
        "LETTER, PORTRAIT, 215.9, 279.4, 1, 1",
        "A4, PORTRAIT, 210, 297, 1.01, 0.995",
        "A4, LANDSCAPE, 297, 210, 1.01, 0.995"
    })
    void barsAndOutline_measureTrueOnTheRaster(
            String paper,
            Orientation orientation,
            double width,
            double height,
            double shortEdge,
            double longEdge) {
        PrinterCorrection correction = new PrinterCorrection(shortEdge, longEdge);
        PdfOptions options =
                PdfOptions.on(paper(paper)).withOrientation(orientation).withCorrection(correction);
        Path loop =
                Path.from(0, 0)
                        .lineTo(120, 0)
                        .cubicTo(125, 30, 100, 60, 120, 90)
                        .lineTo(0, 90)
                        .close(Layer.OUTLINE);
        Raster page = Raster.pages(new PdfWriter(options).write(drawing(loop))).get(0);
        assertThat(page.widthMm()).isCloseTo(width, within(TRUE_MM));
        assertThat(page.heightMm()).isCloseTo(height, within(TRUE_MM));
        double level = orientation == Orientation.PORTRAIT ? shortEdge : longEdge;
        double upright = orientation == Orientation.PORTRAIT ? longEdge : shortEdge;
        double corner = options.marginMm() + STRIP_MM;
        assertBar(page, true, corner, corner - BAR_MM, 100 * level);
        assertBar(page, true, corner, height - corner + BAR_MM, 101.6 * level);
        assertBar(page, false, corner, corner - BAR_MM, 100 * upright);
        assertBar(page, false, corner, width - corner + BAR_MM, 101.6 * upright);
        // The outline's lines are 0.5 mm wide; its middle is level with the field's.
        Bounds bounds = loop.bounds();
        double middleX = width / 2;
        double middleY = height / 2;
        double left = middleX - level * (bounds.minXMm() + bounds.maxXMm()) / 2;
        assertLength(
                page.uprightExtent(left + 30, corner + 1, height - corner - 1), 90 * upright + 0.5);
        double waist = middleY;
        double atWaist = (120 + 3 * 125 + 3 * 100 + 120) / 8.0;
        assertLength(
                page.levelExtent(waist, corner + 1, width - corner - 1), atWaist * level + 0.5);
        assertThat(page.levelExtent(waist, corner + 1, width - corner - 1)[0] - left)
                .isCloseTo(-0.25, within(TRUE_MM));
    }

    /** Ends of a bar are the middles of ticks 0.2 mm wide; its text begins 1 mm farther. */
    private static void assertBar(
            Raster page, boolean level, double corner, double at, double lengthMm) {
        double from = corner - 1;
        double to = corner + lengthMm + 0.6;
        double[] ends = level ? page.levelExtent(at, from, to) : page.uprightExtent(at, from, to);
        assertLength(ends, lengthMm + 0.2);
    }

    private static void assertLength(double[] ends, double expectedMm) {
        assertThat(ends[1] - ends[0]).isCloseTo(expectedMm, within(TRUE_MM));
    }

    @Test
    void tiles_reassembledFromTheirRegisterMarksEqualTheUntiledDrawing() {
        Drawing drawing = seamTest();
        PdfOptions options =
                PdfOptions.on(Paper.A4).withOrientation(Orientation.PORTRAIT).withMargin(10);
        PdfFile tiled = new PdfWriter(options).write(drawing);
        assertThat(tiled.sheets()).isEqualTo(4);
        List<Raster> pages = Raster.pages(tiled);
        Raster whole =
                Raster.pages(
                                new PdfWriter(PdfOptions.on(new Paper("large", 260, 350)))
                                        .write(drawing))
                        .get(0);
        List<List<Vertex>> marks = pages.stream().map(page -> page.registerMarks(RING_MM)).toList();
        assertThat(marks).allSatisfy(of -> assertThat(of).hasSize(4));
        // Where the first page's lower left corner lies on each page's paper.
        Vertex right = shift(marks.get(0), marks.get(1), true);
        Vertex below = shift(marks.get(0), marks.get(2), false);
        Vertex last = shift(marks.get(1), marks.get(3), false);
        Vertex lastByRow = shift(marks.get(2), marks.get(3), true);
        assertThat(right.xMm() + last.xMm())
                .isCloseTo(below.xMm() + lastByRow.xMm(), within(TRUE_MM));
        assertThat(right.yMm() + last.yMm())
                .isCloseTo(below.yMm() + lastByRow.yMm(), within(TRUE_MM));
        Vertex[] shifts = {
            new Vertex(0, 0),
            right,
            below,
            new Vertex(right.xMm() + last.xMm(), right.yMm() + last.yMm())
        };
        // The frame's own corner ties the mosaic to the whole: found on both rasters alike.
        Vertex cornerOfWhole = lowerLeftOfInk(whole, 22, 22, 250, 340);
        Vertex cornerOnPage = lowerLeftOfInk(pages.get(2), 25, 25, 195, 280);
        Vertex corner =
                new Vertex(cornerOnPage.xMm() - below.xMm(), cornerOnPage.yMm() - below.yMm());
        int wrong = 0;
        int inked = 0;
        for (double x = 0; x < 212; x += Raster.DOT_MM) {
            for (double y = 0; y < 302; y += Raster.DOT_MM) {
                boolean expected =
                        whole.ink(cornerOfWhole.xMm() + x, cornerOfWhole.yMm() + y) > 0.9;
                if (expected) {
                    inked++;
                    wrong += nearInk(pages, shifts, corner.xMm() + x, corner.yMm() + y) ? 0 : 1;
                }
            }
        }
        assertThat(inked).isGreaterThan(20_000);
        assertThat(wrong).isZero();
    }

    /** How far the same place lies elsewhere on a neighbouring sheet's paper. */
    private static Vertex shift(List<Vertex> from, List<Vertex> to, boolean sideBySide) {
        Comparator<Vertex> across =
                sideBySide
                        ? Comparator.comparingDouble(Vertex::xMm)
                        : Comparator.comparingDouble(Vertex::yMm);
        Comparator<Vertex> along =
                sideBySide
                        ? Comparator.comparingDouble(Vertex::yMm)
                        : Comparator.comparingDouble(Vertex::xMm);
        // The two marks nearest to the joined edge.
        List<Vertex> a =
                from.stream()
                        .sorted(sideBySide ? across.reversed() : across)
                        .limit(2)
                        .sorted(along)
                        .toList();
        List<Vertex> b =
                to.stream()
                        .sorted(sideBySide ? across : across.reversed())
                        .limit(2)
                        .sorted(along)
                        .toList();
        Vertex first = new Vertex(b.get(0).xMm() - a.get(0).xMm(), b.get(0).yMm() - a.get(0).yMm());
        Vertex second =
                new Vertex(b.get(1).xMm() - a.get(1).xMm(), b.get(1).yMm() - a.get(1).yMm());
        assertThat(first.distanceMm(second)).isLessThan(TRUE_MM);
        return first;
    }

    private static boolean nearInk(List<Raster> pages, Vertex[] shifts, double x, double y) {
        double reach = Raster.DOT_MM;
        for (int i = 0; i < shifts.length; i++) {
            double px = x + shifts[i].xMm();
            double py = y + shifts[i].yMm();
            if (px < 15 || py < 15 || px > 195 || py > 282) {
                continue;
            }
            for (int dx = -1; dx <= 1; dx++) {
                for (int dy = -1; dy <= 1; dy++) {
                    if (pages.get(i).ink(px + dx * reach, py + dy * reach) > 0.3) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    /** Where an upright line on the left and a level one at the bottom meet, to a dot. */
    private static Vertex lowerLeftOfInk(
            Raster page, double fromX, double fromY, double toX, double toY) {
        double left = page.levelExtent((fromY + toY) / 2, fromX, toX)[0];
        double bottom = page.uprightExtent((fromX + toX) / 2, fromY, toY)[0];
        return new Vertex(left, bottom);
    }

    /** Lines over every seam; black, so that only the register marks have a colour. */
    private static Drawing seamTest() {
        return drawing(
                Path.from(0, 0).lineTo(210, 0).lineTo(210, 300).lineTo(0, 300).close(Layer.OUTLINE),
                new Circle(Layer.OUTLINE, new Vertex(105, 150), 100),
                new Circle(Layer.OUTLINE, new Vertex(118, 160), 31),
                Path.from(0, 0)
                        .cubicTo(105, 300, 105, 0, 210, 300)
                        .ellipseTo(0, 300, 105, 300, 105, 60, false)
                        .open(Layer.OUTLINE));
    }

    @Test
    void drawingFramedForItsPaper_takesOneSheet() {
        Path frame =
                Path.from(0, 0).lineTo(277, 0).lineTo(277, 190).lineTo(0, 190).close(Layer.OUTLINE);
        assertThat(write(drawing(frame)).sheets()).isEqualTo(1);
    }

    @Test
    void seamsAreWhereTheNeighboursOverlap() {
        Tiling tiling =
                Tiling.of(new Bounds(0, 0, 500, 300), PdfOptions.on(Paper.A4).withOverlap(20));
        for (int column = 0; column + 1 < tiling.columns(); column++) {
            Bounds a = tiling.shown(column, 0);
            Bounds b = tiling.shown(column + 1, 0);
            assertThat(a.maxXMm() - b.minXMm()).isCloseTo(20, within(1e-9));
            assertThat(tiling.seamX(column)).isCloseTo((a.maxXMm() + b.minXMm()) / 2, within(1e-9));
        }
        Bounds last = tiling.shown(tiling.columns() - 1, tiling.rows() - 1);
        assertThat(tiling.shown(0, 0).minXMm()).isLessThanOrEqualTo(0);
        assertThat(last.maxXMm()).isGreaterThanOrEqualTo(500);
        assertThat(last.minYMm()).isLessThanOrEqualTo(0);
    }

    @Test
    void orientation_followsTheFewestSheets() {
        PdfWriter a4 = new PdfWriter(PdfOptions.on(Paper.A4));
        Drawing wide = drawing(Path.line(Layer.CUT, new Vertex(0, 0), new Vertex(260, 0)));
        assertThat(a4.sheetsOf(wide)).isEqualTo(1);
        assertThat(
                        new PdfWriter(PdfOptions.on(Paper.A4).withOrientation(Orientation.PORTRAIT))
                                .sheetsOf(wide))
                .isEqualTo(2);
    }

    @Test
    void file_asksViewersNotToScaleAndEmbedsItsFont() throws Exception {
        PdfFile file = write(SampleFiles.drawings().get("half-section"));
        try (PDDocument document = Loader.loadPDF(file.content())) {
            assertThat(document.getDocumentCatalog().getViewerPreferences().getPrintScaling())
                    .isEqualTo("None");
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
            assertThat(document.getDocumentInformation().getModificationDate()).isNull();
            assertThat(document.getDocumentInformation().getTitle())
                    .isEqualTo("Handle P1, black cherry");
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).isTrue();
                    assertThat(font.getName()).matches("[A-Z]{6}\\+LiberationSans");
                }
            }
            assertThat(new PDFTextStripper().getText(document))
                    .contains("Handle P1, black cherry")
                    .contains("100 mm")
                    .contains("Print at 100 %");
        }
    }

    @Test
    void bytes_areTheSameFromRunToRunAndInEveryLocale() {
        for (String name : List.of("half-section", "hostile", "long-name")) {
            Drawing drawing = SampleFiles.drawings().get(name);
            byte[] once = write(drawing).content();
            assertThat(write(drawing).content()).isEqualTo(once);
            for (String tag : InLocale.TAGS) {
                assertThat(InLocale.get(tag, () -> write(drawing).content()))
                        .as("%s in %s", name, tag)
                        .isEqualTo(once);
            }
        }
    }

    @Test
    void curves_stayCurves() throws Exception {
        Path loop =
                Path.from(0, 0)
                        .lineTo(50, 0)
                        .cubicTo(60, 10, 40, 20, 50, 30)
                        .lineTo(0, 30)
                        .close(Layer.CUT);
        try (PDDocument document = Loader.loadPDF(write(drawing(loop)).content())) {
            String content =
                    new String(
                            document.getPage(0).getContents().readAllBytes(),
                            StandardCharsets.US_ASCII);
            assertThat(content.split("\n")).filteredOn(line -> line.endsWith(" c")).hasSize(1);
        }
    }

    @Test
    void namesOfAnyScript_areWritten() throws Exception {
        String name = "\u05D9\u05D3\u05D9\u05EA \u2300 5 \u00B0 \u00B1 \u00B5m \uD83E\uDDAA fillet";
        Text text = Text.level(Layer.TEXT, 0, 0, 3, Anchor.START, name);
        try (PDDocument document = Loader.loadPDF(write(drawing(text)).content())) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("\u00B0", "\u00B1", "\u00B5m", "fillet")
                    .contains("\u05D9\u05D3\u05D9\u05EA");
        }
        assertThat(write(SampleDrawings.card(SampleDrawings.HOSTILE)).sheets()).isEqualTo(1);
    }

    @Test
    void wishesOutOfRange_areRefused() {
        PdfOptions options = PdfOptions.on(Paper.A4);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> options.withMargin(2))
                .withMessageContaining("margin 2:");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> PrinterCorrection.measured(97, 110))
                .withMessageContaining("long edge 110:");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new PdfWriter(options).write("none", List.of()))
                .withMessageContaining("at least one drawing");
    }

    private static Paper paper(String name) {
        return List.of(Paper.A4, Paper.A3, Paper.LETTER).stream()
                .filter(paper -> paper.name().equalsIgnoreCase(name))
                .findFirst()
                .orElseThrow();
    }

    private static PdfFile write(Drawing drawing) {
        return new PdfWriter(PdfOptions.on(Paper.A4)).write(drawing);
    }

    private static Drawing drawing(Element... elements) {
        return new Drawing("Test", "", List.of(new Group("all", List.of(elements))));
    }
}
