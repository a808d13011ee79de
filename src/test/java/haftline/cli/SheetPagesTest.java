package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.within;

import haftline.drawing.Anchor;
import haftline.drawing.Drawing;
import haftline.drawing.Element;
import haftline.drawing.Text;
import haftline.figures.Figures;
import haftline.measure.Units;
import haftline.parts.TaperedTang;
import haftline.set.Rates;
import haftline.sheet.CareCard;
import haftline.sheet.InstructionSheet;
import haftline.sheet.LatheSheet;
import haftline.sheet.Rule;
import haftline.sheet.SheetPiece;
import haftline.sheet.html.CareHtml;
import haftline.sheet.html.InstructionHtml;
import haftline.sheet.html.LatheHtml;
import haftline.sheet.page.CarePages;
import haftline.sheet.page.Field;
import haftline.sheet.page.InstructionPages;
import haftline.sheet.page.LathePage;
import haftline.store.LoadedSet;
import haftline.store.SetFile;
import haftline.support.InLocale;
import haftline.write.lettering.Lettering;
import haftline.write.pdf.Paper;
import java.awt.geom.Rectangle2D;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.w3c.dom.Document;
import org.w3c.dom.NodeList;

/** How sheets are set: nothing over an edge, nothing over another word, nothing from outside. */
class SheetPagesTest {
    private static final long SEED = 20_261_125;
    private static final double ROUNDING_MM = 0.01;

    @TempDir private Path folder;

    private static List<SheetPiece> pieces(Path set, Units units) {
        ExaminedSet examined = SheetSamples.examined(set, units);
        return examined.pieces().stream()
                .flatMap(piece -> Sheets.source(examined, piece).stream())
                .toList();
    }

    private static List<Drawing> pages(SheetPiece piece, Units units, Field field) {
        List<Drawing> pages = new ArrayList<>(LathePage.pages(LatheSheet.of(piece, units), field));
        pages.addAll(InstructionPages.pages(InstructionSheet.of(piece, units), field));
        pages.addAll(CarePages.pages(CareCard.of(piece), field));
        return pages;
    }

    @Test
    void words_stayOnThePageAndOffEachOther() throws IOException {
        Path crowded = SheetSamples.crowded(folder);
        for (Path set : List.of(Path.of(Run.DEMO), crowded)) {
            for (Units units : Units.values()) {
                for (Paper paper : List.of(Paper.A4, Paper.LETTER)) {
                    Field field = new Field(paper);
                    for (SheetPiece piece : pieces(set, units)) {
                        pages(piece, units, field).forEach(page -> assertSound(page, field, ""));
                    }
                }
            }
        }
    }

    @Test
    void words_ofRandomPiecesToo() {
        SplittableRandom random = new SplittableRandom(SEED);
        Examination examination =
                new Examination(
                        Optional.empty(),
                        List.of(),
                        Rates.AdhesivePrice.USUAL_ALLOWANCE_PERCENT,
                        Units.INCH);
        Field field = new Field(Paper.LETTER);
        for (int i = 0; i < 12; i++) {
            ExaminedPiece examined = examination.piece(SampleBriefs.random(random));
            ExaminedSet set = new ExaminedSet("random", "batch", List.of(examined));
            String which = "seed " + SEED + ", piece " + i + ": ";
            Sheets.source(set, examined)
                    .filter(piece -> piece.stops().isEmpty())
                    .ifPresent(
                            piece ->
                                    pages(piece, Units.INCH, field)
                                            .forEach(page -> assertSound(page, field, which)));
        }
    }

    private static void assertSound(Drawing page, Field field, String which) {
        List<Rectangle2D> boxes = new ArrayList<>();
        List<Text> texts = new ArrayList<>();
        for (Element element : page.elements().toList()) {
            if (!(element instanceof Text text)) {
                var bounds = element.bounds();
                assertThat(bounds.minXMm()).as(which + element).isGreaterThan(-ROUNDING_MM);
                assertThat(bounds.minYMm()).as(which + element).isGreaterThan(-ROUNDING_MM);
                assertThat(bounds.maxXMm()).as(which + element).isLessThan(field.widthMm() + 0.01);
                assertThat(bounds.maxYMm()).as(which + element).isLessThan(field.heightMm() + 0.01);
                continue;
            }
            Rectangle2D box = box(text);
            assertThat(box.getMinX()).as(which + text.string()).isGreaterThan(-ROUNDING_MM);
            assertThat(box.getMinY()).as(which + text.string()).isGreaterThan(-ROUNDING_MM);
            assertThat(box.getMaxX())
                    .as(which + text.string())
                    .isLessThan(field.widthMm() + ROUNDING_MM);
            assertThat(box.getMaxY())
                    .as(which + text.string())
                    .isLessThan(field.heightMm() + ROUNDING_MM);
            // Thousands of pairs: an assertion for each that is wrong only.
            for (int i = 0; i < boxes.size(); i++) {
                if (boxes.get(i).intersects(box)) {
                    fail(
                            which
                                    + page.title()
                                    + ": "
                                    + text.string()
                                    + " over "
                                    + texts.get(i).string());
                }
            }
            boxes.add(box);
            texts.add(text);
        }
        assertThat(texts).hasSizeGreaterThan(20);
    }

    /** What a level text covers, measured with the font it is printed in. */
    private static Rectangle2D box(Text text) {
        Lettering font = Lettering.font();
        double wide = font.widthEm(text.string()) * text.heightMm() / font.capitalPerEm();
        double share = text.anchor() == Anchor.START ? 0 : text.anchor() == Anchor.END ? 1 : 0.5;
        double left = text.position().xMm() - share * wide;
        return new Rectangle2D.Double(left, text.position().yMm(), wide, text.heightMm());
    }

    @Test
    void bodyOfTheDemonstration_isReadAtArmsLength() {
        for (SheetPiece piece : pieces(Path.of(Run.DEMO), Units.MM)) {
            double size =
                    LathePage.layout(LatheSheet.of(piece, Units.MM), new Field(Paper.A4)).size();
            // Of 11 points; figures of the tables are half as large again.
            assertThat(size).as(piece.name()).isGreaterThan(0.8);
        }
    }

    @Test
    void html_isWellFormedAsksForNothingAndHasNoIdTwice() throws Exception {
        Path set =
                Path.of(
                        DemoCopy.in(folder)
                                .change(
                                        "profiles/sets/tidewater.yaml",
                                        "name: butter spreader",
                                        "name: \"<script>alert('x')</script>&\\\"]]>\"")
                                .set());
        Field field = new Field(Paper.A4);
        for (SheetPiece piece : pieces(set, Units.MM)) {
            for (String html :
                    List.of(
                            LatheHtml.of(LatheSheet.of(piece, Units.MM), field),
                            InstructionHtml.of(InstructionSheet.of(piece, Units.MM), field),
                            CareHtml.of(CareCard.of(piece), field))) {
                Document document =
                        DocumentBuilderFactory.newInstance()
                                .newDocumentBuilder()
                                .parse(
                                        new ByteArrayInputStream(
                                                html.getBytes(StandardCharsets.UTF_8)));
                assertThat(document.getElementsByTagName("script").getLength()).isZero();
                assertThat(document.getElementsByTagName("h1").item(0).getTextContent())
                        .isEqualTo(piece.name());
                Matcher links =
                        Pattern.compile("(?i)\\b(src|href|url|@import)\\b[ =(\"']").matcher(html);
                assertThat(links.find()).as("asks for something from outside").isFalse();
                NodeList all = document.getElementsByTagName("*");
                for (int i = 0; i < all.getLength(); i++) {
                    assertThat(all.item(i).getAttributes().getNamedItem("id")).isNull();
                }
            }
        }
    }

    /** The rules on the instruction sheet, evaluated here, wish what the program drilled for. */
    @Test
    void rulesInLetters_giveTheBoresOfTheBatch() throws IOException {
        List<SheetPiece> all = new ArrayList<>(pieces(Path.of(Run.DEMO), Units.MM));
        SplittableRandom random = new SplittableRandom(SEED);
        Examination examination =
                new Examination(
                        Optional.empty(),
                        List.of(),
                        Rates.AdhesivePrice.USUAL_ALLOWANCE_PERCENT,
                        Units.MM);
        for (int i = 0; i < 100; i++) {
            ExaminedPiece examined = examination.piece(SampleBriefs.random(random));
            ExaminedSet set = new ExaminedSet("random", "batch", List.of(examined));
            Sheets.source(set, examined).ifPresent(all::add);
        }
        int tenons = 0;
        for (SheetPiece piece : all) {
            InstructionSheet sheet = InstructionSheet.of(piece, Units.MM);
            boolean tapered = piece.brief().kit().tang() instanceof TaperedTang;
            boolean chosen = piece.brief().choices().tangDrillMm().isPresent();
            List<Rule> drills =
                    sheet.rules().stream()
                            .filter(rule -> rule.what().startsWith("drill"))
                            .filter(rule -> !rule.what().contains("cap"))
                            .filter(rule -> rule.wishMm().isPresent())
                            .toList();
            assertThat(drills).as(piece.name()).isNotEmpty();
            double deepest = drills.get(drills.size() - 1).wishMm().getAsDouble();
            if (!tapered || !chosen) {
                assertThat(deepest)
                        .as("seed " + SEED + ", " + piece.name() + ", " + drills)
                        .isCloseTo(piece.handle().fit().wishMm(), within(1e-9));
            }
            for (Rule rule : sheet.rules()) {
                if (rule.what().equals("tenon, diameter") && rule.wishMm().isPresent()) {
                    tenons++;
                    assertThat(rule.wishMm().getAsDouble())
                            .isCloseTo(piece.handle().tenon().diameterMm(), within(1e-9));
                }
            }
            assertThat(
                            sheet.rules().stream().map(Rule::letter).distinct().count()
                                    + sheet.measures().stream()
                                            .map(measure -> measure.letter())
                                            .distinct()
                                            .count())
                    .as("no letter twice")
                    .isEqualTo(sheet.rules().size() + sheet.measures().size());
        }
        assertThat(tenons).isGreaterThan(30);
    }

    @Test
    void instructions_followANewBatch() throws IOException {
        Path second = Path.of(Run.DEMO);
        Path first =
                Path.of(
                        DemoCopy.in(folder)
                                .change("profiles/sets/tidewater.yaml", "batch: B2", "batch: B1")
                                .set());
        String of2 = figures(second);
        String of1 = figures(first);
        // The shucker's ferrule: 15.0 in the first parcel, 14.9 at its smallest in the second.
        assertThat(of1).contains("tenon, diameter 14.90");
        assertThat(of2).contains("tenon, diameter 14.80");
    }

    private static String figures(Path set) {
        InstructionSheet sheet = InstructionSheet.of(pieces(set, Units.MM).get(0), Units.MM);
        StringBuilder text = new StringBuilder();
        sheet.rules().forEach(rule -> text.append(rule.what() + " " + rule.figure() + "\n"));
        return text.toString();
    }

    @Test
    void careCards_claimNothingAndCallAcrylicByItsNeeds() {
        for (SheetPiece piece : pieces(Path.of(Run.DEMO), Units.MM)) {
            String text = CareHtml.text(CareCard.of(piece));
            assertThat(text).contains("not been tested for contact with food");
            assertThat(text.toLowerCase(java.util.Locale.ROOT))
                    .doesNotContain("food safe")
                    .doesNotContain("food-safe");
            boolean acrylic = piece.name().equals("citrus zester");
            assertThat(text.contains("acetone")).isEqualTo(acrylic);
            assertThat(text.contains("oil or wax")).isEqualTo(!acrylic);
        }
    }

    @Test
    void sheets_areTheSameUnderAnyLocale() {
        SheetPiece piece = pieces(Path.of(Run.DEMO), Units.MM).get(3);
        Field field = new Field(Paper.A4);
        String usual = LatheHtml.of(LatheSheet.of(piece, Units.MM), field);
        for (String tag : InLocale.TAGS) {
            String there =
                    InLocale.get(
                            tag,
                            () ->
                                    LatheHtml.of(
                                            LatheSheet.of(
                                                    pieces(Path.of(Run.DEMO), Units.MM).get(3),
                                                    Units.MM),
                                            field));
            assertThat(there).as(tag).isEqualTo(usual);
        }
    }

    @Test
    void cautionsOfStockAndAdhesive_standOnEverySheet() throws IOException {
        Path set = SheetSamples.crowded(folder);
        SheetPiece piece = pieces(set, Units.MM).get(0);
        Figures figures = piece.figures();
        LatheSheet sheet = LatheSheet.of(piece, Units.MM);
        assertThat(figures.handle().brief().stock().cautions())
                .isNotEmpty()
                .allSatisfy(
                        caution ->
                                assertThat(sheet.cautions())
                                        .anyMatch(line -> line.endsWith(caution.text())));
        assertThat(sheet.cautions())
                .anyMatch(line -> line.contains(piece.brief().adhesive().caution().text()))
                .anyMatch(line -> line.contains("local codes and licensed practice"))
                .anyMatch(line -> line.contains("Face shield"));
        assertThat(Files.exists(set)).isTrue();
    }

    @Test
    void pagesForTheEditor_areThoseThatAreWritten_andAStoppedPieceHasALatheSheetAlone()
            throws Exception {
        LoadedSet loaded = SetFile.read(SheetSamples.stopped(folder));
        assertThat(pages(loaded, "shucker", PiecePaper.Kind.LATHE))
                .isEqualTo(
                        LathePage.pages(
                                LatheSheet.of(
                                        pieces(folder.resolve(Run.DEMO), Units.MM).get(0),
                                        Units.MM),
                                new Field(Paper.A4)));
        assertThat(pages(loaded, "shucker", PiecePaper.Kind.INSTRUCTIONS)).hasSize(2);
        assertThat(pages(loaded, "seafood fork", PiecePaper.Kind.LATHE)).hasSize(1);
        assertThat(pages(loaded, "seafood fork", PiecePaper.Kind.INSTRUCTIONS)).isEmpty();
        assertThat(pages(loaded, "seafood fork", PiecePaper.Kind.CARE)).isEmpty();
    }

    private static List<Drawing> pages(LoadedSet loaded, String piece, PiecePaper.Kind kind)
            throws Exception {
        return PiecePaper.of(loaded, piece, kind, Units.MM)
                .map(PiecePaper::pages)
                .orElse(List.of());
    }
}
