package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import haftline.measure.Units;
import haftline.sheet.page.Field;
import haftline.write.OutputFile;
import haftline.write.PlannedFile;
import haftline.write.pdf.Paper;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every figure on a lathe sheet, read back from the files by other programs, is the one that {@code
 * check --json} answers, rounded as the sheet rounds; walls down, never up.
 */
class SheetFiguresTest {
    @TempDir private static Path folder;

    static Stream<Arguments> pieces() throws IOException {
        List<Arguments> all = new ArrayList<>();
        Path crowded = SheetSamples.crowded(folder.resolve("crowded"));
        Path stopped = SheetSamples.stopped(folder.resolve("stopped"));
        for (Path set : List.of(Path.of(Run.DEMO), crowded, stopped)) {
            for (Units units : Units.values()) {
                all.add(Arguments.of(set, units));
            }
        }
        return all.stream();
    }

    @ParameterizedTest
    @MethodSource("pieces")
    void figures_areThoseOfTheAnswer(Path path, Units units) throws Exception {
        ExaminedSet set = SheetSamples.examined(path, units);
        JsonNode answer = new ObjectMapper().readTree(CheckJson.of(set));
        Field field = new Field(units == Units.MM ? Paper.A4 : Paper.LETTER);
        for (int i = 0; i < set.pieces().size(); i++) {
            JsonNode piece = answer.get("pieces").get(i);
            Map<String, String> texts = new LinkedHashMap<>();
            FileGroup group = new FileGroup();
            Sheets.addTo(
                    group,
                    "x",
                    set,
                    set.pieces().get(i),
                    Wanted.of(List.of(new Only(Optional.empty(), Set.of(Part.SHEET)))),
                    units,
                    field);
            for (PlannedFile file : group.files()) {
                texts.put(file.name(), plain(file.made().orElseThrow()));
            }
            assertThat(texts).containsOnlyKeys("x-lathe.pdf", "x-lathe.html");
            for (Map.Entry<String, String> text : texts.entrySet()) {
                String as = piece.get("name").asText() + ", " + text.getKey() + ", " + units;
                for (String expected : expected(piece, set.pieces().get(i), units)) {
                    assertThat(text.getValue()).as(as).contains(expected);
                }
                boolean stopped = set.pieces().get(i).isStopped();
                assertThat(text.getValue().contains("NOT TO BE MADE")).as(as).isEqualTo(stopped);
            }
        }
    }

    private static List<String> expected(JsonNode piece, ExaminedPiece examined, Units units) {
        double facing = examined.brief().rules().blanks().facingMm();
        String unit = " " + units.symbol();
        List<String> all = new ArrayList<>();
        all.add(rounded(piece.get("length").get("overall_mm"), units, 1));
        all.add(rounded(piece.get("length").get("visible_wood_mm"), units, 1) + " of it shows");
        all.add(rounded(piece.get("length").get("turned_wood_mm"), units, 1) + unit);
        all.add(
                tenon(piece.get("tenon").get("diameter_mm").asDouble(), units)
                        + " × "
                        + rounded(piece.get("tenon").get("length_mm"), units, 1)
                        + unit);
        all.add(rounded(piece.get("tang_engaged_mm"), units, 1) + unit);
        all.add(piece.get("fit").asText());
        for (JsonNode bore : piece.get("bores")) {
            for (JsonNode step : bore.get("steps")) {
                double depth = step.get("depth_mm").asDouble();
                double angle = Math.toRadians(step.get("point_angle_deg").asDouble() / 2);
                double point = step.get("diameter_mm").asDouble() / (2 * Math.tan(angle));
                all.add(
                        rounded(depth + facing, units, 1)
                                + " "
                                + rounded(depth + facing + point, units, 1)
                                + " "
                                + rounded(depth, units, 1)
                                + " ");
            }
        }
        for (JsonNode wall : piece.get("walls")) {
            double step = units == Units.MM ? 0.1 : 0.0254;
            double down = Math.floor(wall.get("worst_mm").asDouble() / step + 1e-9) * step;
            assertThat(down).isLessThanOrEqualTo(wall.get("worst_mm").asDouble() + 1e-6);
            all.add(
                    wall.get("zone").asText()
                            + " "
                            + rounded(down, units, 1)
                            + " (limit "
                            + rounded(wall.get("limit_mm"), units, 1)
                            + ")");
        }
        all.add("Mass " + fixed(piece.get("mass").get("total_g").asDouble(), 1) + " g");
        double balance = piece.get("balance").get("from_ferrule_face_mm").asDouble();
        all.add(
                "balance "
                        + rounded(Math.abs(balance), units, 1)
                        + unit
                        + (balance < 0 ? " in front of" : " behind"));
        double ml = Math.ceil(piece.get("adhesive_mm3").asDouble() / 10 - 1e-9) / 100;
        if (ml > 0) {
            all.add(fixed(ml, 2) + " ml");
        }
        return all;
    }

    private static String tenon(double mm, Units units) {
        return units == Units.MM ? fixed(Math.round(mm / 0.05) * 0.05, 2) : fixed(mm / 25.4, 3);
    }

    private static String rounded(JsonNode mm, Units units, int decimals) {
        return rounded(mm.asDouble(), units, decimals);
    }

    private static String rounded(double mm, Units units, int decimals) {
        return units == Units.MM ? fixed(mm, decimals) : fixed(mm / 25.4, 3);
    }

    private static String fixed(double value, int decimals) {
        return BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP).toPlainString();
    }

    /** The words of a file in reading order with single blanks. */
    private static String plain(OutputFile file) throws Exception {
        if (file.name().endsWith(".pdf")) {
            try (PDDocument document = Loader.loadPDF(file.content())) {
                assertThat(document.getNumberOfPages()).isEqualTo(1);
                String all = new PDFTextStripper().getText(document) + columns(document.getPage(0));
                return all.replaceAll("\\s+", " ");
            }
        }
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        String html = new String(file.content(), StandardCharsets.UTF_8);
        String text =
                factory.newDocumentBuilder()
                        .parse(
                                new ByteArrayInputStream(
                                        html.replaceAll("</t[dh]>", " $0")
                                                .getBytes(StandardCharsets.UTF_8)))
                        .getDocumentElement()
                        .getTextContent();
        return text.replaceAll("\\s+", " ");
    }

    /** Line by line the left half of the page and the right one, so that no row is torn. */
    private static String columns(PDPage page) throws IOException {
        float width = page.getMediaBox().getWidth();
        float height = page.getMediaBox().getHeight();
        PDFTextStripperByArea stripper = new PDFTextStripperByArea();
        stripper.setSortByPosition(true);
        stripper.addRegion("left", new Rectangle2D.Float(0, 0, width / 2, height));
        stripper.addRegion("right", new Rectangle2D.Float(width / 2, 0, width / 2, height));
        stripper.extractRegions(page);
        return stripper.getTextForRegion("left") + stripper.getTextForRegion("right");
    }
}
