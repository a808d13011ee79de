package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.curve.Outline;
import haftline.measure.Units;
import haftline.set.Workshop;
import haftline.store.SetFile;
import haftline.support.InLocale;
import haftline.support.TagFile;
import haftline.write.OutputFile;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.junit.jupiter.api.Test;

/** The files that make writes. */
class ExportsTest {
    /** Everything, made once for all tests: it takes seconds. */
    private static final Map<String, String> DEMO = demo(Wanted.everything());

    private static Map<String, String> demo(Wanted wanted) {
        try {
            ExaminedSet set = Examination.of(SetFile.read(Path.of(Run.DEMO)), Units.MM);
            return texts(Exports.of(set, Workshop.COMMON_PRACTICE, wanted, Units.MM).files());
        } catch (Exception e) {
            throw new IllegalStateException(e);
        }
    }

    private static Map<String, String> texts(List<OutputFile> files) {
        Map<String, String> texts = new TreeMap<>();
        for (OutputFile file : files) {
            // One char a byte, so that binary files compare as they are; no text here goes beyond
            // what tests look for.
            texts.put(file.name(), new String(file.content(), StandardCharsets.ISO_8859_1));
        }
        return texts;
    }

    @Test
    void samplesInTheRepository_areWhatIsWrittenNow() throws IOException {
        for (Map.Entry<String, String> file : DEMO.entrySet()) {
            Path sample = Path.of("exports").resolve(file.getKey());
            byte[] now = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
            byte[] kept = Files.readAllBytes(sample);
            String hint = sample + "; the main command writes it anew";
            if (file.getKey().endsWith(".png")) {
                assertSamePixels(pixels(now), pixels(kept), hint);
            } else if (file.getKey().endsWith(".pdf")) {
                assertSamePixels(page(now), page(kept), hint);
            } else {
                assertThat(now).as(hint).isEqualTo(kept);
            }
        }
    }

    private static BufferedImage pixels(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static BufferedImage page(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, 100);
        }
    }

    /**
     * Compressed bytes may differ from one machine to the next; what is seen may not, but for a
     * shade of rounding.
     */
    private static void assertSamePixels(BufferedImage now, BufferedImage kept, String hint) {
        assertThat(now.getWidth()).as(hint).isEqualTo(kept.getWidth());
        assertThat(now.getHeight()).as(hint).isEqualTo(kept.getHeight());
        long unlike = 0;
        for (int y = 0; y < now.getHeight(); y++) {
            for (int x = 0; x < now.getWidth(); x++) {
                int a = now.getRGB(x, y);
                int b = kept.getRGB(x, y);
                for (int shift = 0; shift < 24; shift += 8) {
                    if (Math.abs((a >> shift & 255) - (b >> shift & 255)) > 2) {
                        unlike++;
                        break;
                    }
                }
            }
        }
        assertThat(unlike).as(hint).isZero();
    }

    @Test
    void files_areTheSameFromRunToRunAndUnderAnyLocale() {
        assertThat(DEMO).hasSize(70);
        String first = InLocale.TAGS.get(0);
        assertThat(InLocale.get(first, () -> demo(Wanted.everything()))).as(first).isEqualTo(DEMO);
        for (String tag : InLocale.TAGS) {
            // Sheets of templates take seconds to lay out; once is enough for them.
            Wanted quick = Wanted.of(EnumSet.of(Format.CSV, Format.HTML, Format.TXT, Format.STL));
            assertThat(DEMO).as(tag).containsAllEntriesOf(InLocale.get(tag, () -> demo(quick)));
        }
    }

    @Test
    void profileInDxf_isOneClosedLoopAsLargeAsTheWood() {
        List<ExaminedPiece> pieces = new ArrayList<>();
        RandomHandles.of(7, 12)
                .forEach(
                        handle ->
                                pieces.add(
                                        new ExaminedPiece(
                                                handle.brief(),
                                                Optional.of(haftline.figures.Figures.of(handle)),
                                                Guidance.NONE,
                                                List.of())));
        Map<String, String> files =
                texts(
                        Exports.of(
                                        new ExaminedSet("random", "batch", pieces),
                                        Workshop.COMMON_PRACTICE,
                                        Wanted.of(EnumSet.of(Format.DXF)),
                                        Units.MM)
                                .files());
        for (int i = 0; i < pieces.size(); i++) {
            String name = "random" + (i == 0 ? "" : "-" + (i + 1)) + "-profile.dxf";
            TagFile file = TagFile.read(files.get(name));
            Outline outline = pieces.get(i).figures().orElseThrow().handle().outline();
            assertThat(file.entities()).as(name).hasSize(1);
            assertThat(file.header("$INSUNITS")).isEqualTo("4");
            TagFile.Record loop = file.entities("LWPOLYLINE").get(0);
            assertThat(TagFile.isClosed(loop)).isTrue();
            assertThat(TagFile.extents(loop))
                    .containsExactly(
                            new double[] {
                                outline.startX(), 0, outline.endX(), outline.greatest().r()
                            },
                            within(1e-6));
            double area = area(outline);
            double length = outline.arcLength(1e-6);
            // The arcs stay within 0.01 mm of the outline.
            assertThat(TagFile.area(loop))
                    .isCloseTo(area, within(Math.min(1e-3 * area, 0.01 * length)));
        }
    }

    /** Area under the outline by the trapezium rule, fine enough for a thousandth. */
    private static double area(Outline outline) {
        double area = 0;
        for (var segment : outline.segments()) {
            int steps = 2000;
            double h = (segment.endX() - segment.startX()) / steps;
            for (int i = 0; i < steps; i++) {
                double x = segment.startX() + h * i;
                area += h * (segment.r(x) + segment.r(Math.min(x + h, segment.endX()))) / 2;
            }
        }
        return area;
    }

    @Test
    void stations_areInOrderAndTurnedBeforeTheyAreSanded() {
        String csv = DEMO.get("seafood-fork-stations.csv");
        List<String[]> rows = csv.lines().skip(1).map(line -> line.split(",", -1)).toList();
        double before = Double.NEGATIVE_INFINITY;
        for (String[] row : rows) {
            double x = Double.parseDouble(row[1]);
            assertThat(x).isGreaterThanOrEqualTo(before);
            double finished = Double.parseDouble(row[2]);
            boolean tenon = row[0].startsWith("tenon");
            assertThat(Double.parseDouble(row[3]))
                    .isCloseTo(finished + (tenon ? 0 : 0.3), within(1e-9));
            before = x;
        }
        assertThat(rows.stream().map(row -> row[0]))
                .contains("tenon's end", "shoulder", "waist", "swell", "mid-slope", "seat", "butt");
    }
}
