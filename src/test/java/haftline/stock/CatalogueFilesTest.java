package haftline.stock;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A maker's own files: added, overriding, and spoiled in every way that spreadsheets know. */
class CatalogueFilesTest {
    private static final String WOOD_HEADER =
            "key,name,botanical,group,density_kg_m3,density_source,"
                    + "tension_across_mpa,tension_across_source,pores,pores_source\n";
    private static final String PLUM =
            "plum,plum,Prunus domestica,hardwood,760,own-scale,5.2,own-scale,closed,own-scale\n";
    private static final String OWN_SOURCES =
            "key,title,kind\nown-scale,Weighed and measured in my shop,measured\n";

    @TempDir Path folder;

    private Path file(String name, String text) {
        try {
            return Files.writeString(folder.resolve(name), text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private Catalogues with(String... texts) throws CatalogueException {
        Path[] files = new Path[texts.length];
        for (int i = 0; i < texts.length; i++) {
            files[i] = file("own-" + i + ".csv", texts[i]);
        }
        return CatalogueReader.starterWith(List.of(files));
    }

    private List<CatalogueProblem> problemsOf(String woodsText) {
        return catchThrowableOfType(
                        CatalogueException.class, () -> with(OWN_SOURCES, woodsText).woods())
                .problems();
    }

    @Test
    void ownWood_standsBesideTheStarterOnes() throws CatalogueException {
        Catalogues own = with(OWN_SOURCES, WOOD_HEADER + PLUM);
        Wood plum = own.woods().find("plum").orElseThrow();
        assertThat(own.woods().size()).isEqualTo(CatalogueReader.starter().woods().size() + 1);
        assertThat(plum.densityKgM3(12)).isEqualTo(760);
        assertThat(plum.statedDensity().basis()).isEqualTo(Basis.MEASURED);
        assertThat(plum.strength().tensionAcrossMPa().orElseThrow().value()).isEqualTo(5.2);
        assertThat(plum.strength().sideHardnessN()).isEmpty();
        assertThat(plum.isFibrous()).as("without a hardness the tang is bonded").isFalse();
        assertThat(own.woods().notes()).isEmpty();
        assertThat(own.stock().find("plum")).contains(plum);
    }

    @Test
    void ownWood_ofAStarterKey_takesItsPlace_andItIsSaid() throws CatalogueException {
        Catalogues own =
                with(OWN_SOURCES, WOOD_HEADER + PLUM.replaceFirst("plum,plum", "pear,my pear"));
        assertThat(own.woods().size()).isEqualTo(CatalogueReader.starter().woods().size());
        assertThat(own.woods().find("pear").orElseThrow().name()).isEqualTo("my pear");
        assertThat(own.woods().notes())
                .singleElement()
                .asString()
                .contains("own-1.csv, line 2: wood \"pear\" takes the place of seeds/woods.csv");
        assertThat(own.stock().notes()).isEqualTo(own.woods().notes());
    }

    @Test
    void laterFile_goesOverAnEarlierOne() throws CatalogueException {
        Catalogues own =
                with(
                        OWN_SOURCES,
                        WOOD_HEADER + PLUM,
                        WOOD_HEADER + PLUM.replace("plum,plum", "plum,garden plum"));
        assertThat(own.woods().find("plum").orElseThrow().name()).isEqualTo("garden plum");
        assertThat(own.woods().notes()).singleElement().asString().contains("own-1.csv, line 2");
    }

    @Test
    void wordEstimate_fillsInFromTheDensity() throws CatalogueException {
        Catalogues own =
                with(
                        OWN_SOURCES,
                        WOOD_HEADER + PLUM.replace("5.2,own-scale", "estimate,estimate-hardwood"));
        Figure tension =
                own.woods().find("plum").orElseThrow().strength().tensionAcrossMPa().orElseThrow();
        // Table 5-11a, refitted: 10.335 G^1.355 at G = 760 / 1120.
        assertThat(tension.value()).isCloseTo(10.335 * Math.pow(760 / 1120.0, 1.355), within(1e-9));
        assertThat(tension.isEstimate()).isTrue();
    }

    @Test
    void wordEstimate_fromAPublication_isRefused() {
        assertThat(problemsOf(WOOD_HEADER + PLUM.replace("5.2,own-scale", "estimate,wh-5-3a")))
                .singleElement()
                .hasToString(
                        folder.resolve("own-1.csv")
                                + ":2: tension_across_source: \"wh-5-3a\": expected a source"
                                + " of kind estimate");
    }

    @Test
    void ownDrills_makeASeriesForTheRack() throws CatalogueException {
        Catalogues own =
                with(
                        OWN_SOURCES,
                        "series,drill,diameter_mm,source\nmy-rack,6.2 brad,6.2,own-scale\n"
                                + "my-rack,8 spur,8.02,own-scale\n");
        Rack rack = own.drills().rack(List.of("my-rack", "7"));
        assertThat(rack.drills())
                .extracting(Drill::name)
                .containsExactly("6.2 brad", "7", "8 spur");
    }

    @Test
    void ownReactions_takeThePlaceOfTheList() throws CatalogueException {
        Catalogues own =
                with(
                        "key,reaction,site,potency,exposure,incidence,source\n"
                                + "pine,I,S,+,D,R,toxic-woods-1990\n");
        assertThat(own.woods().find("ponderosa-pine").orElseThrow().cautions())
                .extracting(Caution::text)
                .containsExactly("Irritates (skin); weak; from dust; reports are rare.");
    }

    /** Column, spoiled cell, what the message must hold. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "density_kg_m3 | 0.76 | 0.76: expected a number from 50 to 2000",
                "density_kg_m3 | -760 | -760: expected a number from 50 to 2000",
                "density_kg_m3 | 1e300 | 1e300: expected a number from 50 to 2000",
                "density_kg_m3 | NaN | \"NaN\": expected a number",
                "density_kg_m3 | Infinity | \"Infinity\": expected a number",
                "density_kg_m3 | 760kg | \"760kg\": expected a number",
                "density_kg_m3 | 0x2f8 | \"0x2f8\": expected a number",
                "density_kg_m3 | '' | \"\": expected a number",
                "density_kg_m3 | '\"0,76\"' | write a decimal point",
                "density_kg_m3 | ٧٦٠ | \"٧٦٠\": expected a number",
                "density_source | '' | a figure needs the key of its source",
                "density_source | own-scael | did you mean \"own-scale\"?",
                "density_source | hearsay-of-the-market | no source \"hearsay-of-the-market\"",
                "tension_across_source | '' | a figure needs the key of its source",
                "tension_across_mpa | 5200 | 5200: expected a number from 0.1 to 50",
                "key | Plum | \"Plum\": expected small letters and digits joined by hyphens",
                "key | '' | expected small letters",
                "key | plum tree | expected small letters",
                "name | '' | is empty; expected a text",
                "group | fruit | \"fruit\": expected one of hardwood, softwood",
                "pores | many | \"many\": expected one of open, closed"
            })
    void spoiledCell_givesOneClearError(String column, String cell, String message) {
        List<String> header = List.of(WOOD_HEADER.strip().split(","));
        String[] cells = PLUM.strip().split(",");
        cells[header.indexOf(column)] = cell;
        assertThat(problemsOf(WOOD_HEADER + String.join(",", cells) + "\n"))
                .singleElement()
                .satisfies(
                        problem -> {
                            assertThat(problem.file()).endsWith("own-1.csv");
                            assertThat(problem.line()).isEqualTo(2);
                            assertThat(problem.field()).isEqualTo(column);
                            assertThat(problem.message()).contains(message);
                        });
    }

    @Test
    void spoiledCell_isNamedAlikeUnderAnyLocale() {
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("de-DE", "tr-TR", "ar-EG-u-nu-arab", "hi-IN-u-nu-deva")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertThat(problemsOf(WOOD_HEADER + PLUM.replace("760", "76000")))
                        .singleElement()
                        .extracting(CatalogueProblem::message)
                        .isEqualTo("76000: expected a number from 50 to 2000");
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void severalSpoiledCells_areAllNamed_inTheOrderOfTheFile() {
        String text =
                WOOD_HEADER
                        + PLUM.replace("hardwood", "wood").replace("760", "x")
                        + PLUM.replace("plum,plum", "quince,quince")
                        + PLUM.replace("plum,plum", "medlar,medlar").replace("closed", "shut");
        assertThat(problemsOf(text))
                .extracting(problem -> problem.line() + " " + problem.field())
                .containsExactly("2 group", "2 density_kg_m3", "4 pores");
    }

    @Test
    void keyTwiceInOneFile_isAnError() {
        assertThat(problemsOf(WOOD_HEADER + PLUM + PLUM))
                .singleElement()
                .hasToString(
                        folder.resolve("own-1.csv")
                                + ":3: key: \"plum\" stands already in "
                                + folder.resolve("own-1.csv")
                                + ", line 2");
    }

    @Test
    void tooFewCells_areNamedByLine() {
        assertThat(problemsOf(WOOD_HEADER + PLUM + "quince,quince,Cydonia oblonga\n"))
                .singleElement()
                .hasToString(
                        folder.resolve("own-1.csv")
                                + ":3: 3 cells where the header has 10; a text with a comma"
                                + " in it needs quotes");
    }

    @Test
    void lineNumbers_countBlankLinesAndLineBreaksWithinTexts() {
        String text =
                WOOD_HEADER
                        + "\n"
                        + PLUM.replace("plum,plum", "plum,\"plum\nof the garden\"")
                        + PLUM.replace("plum,plum", "quince,quince").replace("760", "x");
        assertThat(problemsOf(text))
                .singleElement()
                .extracting(CatalogueProblem::line)
                .isEqualTo(5);
    }

    @Test
    void lastLineWithoutALineBreak_isCountedAlike() {
        String text = WOOD_HEADER + PLUM.replace("760", "x").strip();
        assertThat(problemsOf(text))
                .singleElement()
                .extracting(CatalogueProblem::line)
                .isEqualTo(2);
    }

    @Test
    void windowsLinesAndByteOrderMark_areTaken() throws CatalogueException {
        String text = "\uFEFF" + (WOOD_HEADER + PLUM).replace("\n", "\r\n");
        assertThat(with(OWN_SOURCES, text).woods().find("plum")).isPresent();
    }

    @Test
    void mistypedColumn_suggestsTheNearest() {
        assertThat(problemsOf(WOOD_HEADER.replace("density_kg_m3", "density_kgm3") + PLUM))
                .extracting(CatalogueProblem::toString)
                .containsExactly(
                        folder.resolve("own-1.csv")
                                + ":1: density_kgm3: no such column in a catalogue of woods; did you"
                                + " mean \"density_kg_m3\"?",
                        folder.resolve("own-1.csv")
                                + ":1: density_kg_m3: column is missing; a catalogue of woods needs"
                                + " it");
    }

    @Test
    void columnTwice_isAnError() {
        assertThat(problemsOf(WOOD_HEADER.replace("pores,", "name,") + PLUM))
                .anySatisfy(
                        problem ->
                                assertThat(problem.toString())
                                        .endsWith(":1: name: column stands there twice"));
    }

    @Test
    void semicolons_areRecognised() {
        assertThat(problemsOf((WOOD_HEADER + PLUM).replace(',', ';')))
                .singleElement()
                .asString()
                .contains("cells are parted by semicolons; save it with commas");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | is empty; expected a header row",
                "'key,title,kind\n\"a,b' | quotes are not closed",
                "'key,title,kind\na,b,measured\n\"a\"b,c,d' | :3: quotes are not closed, or text stands behind them",
                "'hello' | no such column"
            })
    void spoiledFile_givesOneClearError(String text, String message) {
        CatalogueException problem =
                catchThrowableOfType(
                        CatalogueException.class, () -> with(text == null ? "" : text).sources());
        assertThat(problem).hasMessageContaining("own-0.csv").hasMessageContaining(message);
    }

    /** What a terminal would obey, or a page would break at. */
    @Test
    void longAndStrangeCells_areQuotedShort() {
        assertThat(problemsOf(WOOD_HEADER + PLUM.replace("760", "7".repeat(5000))))
                .anySatisfy(p -> assertThat(p.message()).startsWith("7".repeat(40) + "...: "));
        assertThat(problemsOf(WOOD_HEADER + PLUM.replace("plum,plum", "plum,pl\u001B[31mum")))
                .extracting(CatalogueProblem::message)
                .containsExactly("\"pl\\u001b[31mum\": expected a text that can be read");
    }

    @Test
    void lineBreakWithinAText_becomesABlank() throws CatalogueException {
        String text = WOOD_HEADER + PLUM.replace("plum,plum", "plum,\"plum \r\n of the garden\"");
        assertThat(with(OWN_SOURCES, text).woods().find("plum").orElseThrow().name())
                .isEqualTo("plum of the garden");
    }

    @Test
    void binaryFile_isNamed() {
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class, () -> with("key,title,kind\n\0,b,c")))
                .hasMessageContaining("own-0.csv: is not a text file");
    }

    @Test
    void fileOfAnotherEncoding_isNamed() throws IOException {
        Path file = folder.resolve("latin.csv");
        Files.write(
                file,
                "key,title,kind\nown,Gewogen für mich,measured\n"
                        .getBytes(StandardCharsets.ISO_8859_1));
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> CatalogueReader.starterWith(List.of(file))))
                .hasMessage(file + ": is not UTF-8 text; save it as \"CSV UTF-8\"");
    }

    @Test
    void missingFileAndFolder_areNamed() {
        Path missing = folder.resolve("missing.csv");
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> CatalogueReader.starterWith(List.of(missing))))
                .hasMessage(missing + ": no such file");
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> CatalogueReader.starterWith(List.of(folder))))
                .hasMessage(folder + ": is a folder; expected a file");
    }

    @Test
    @EnabledOnOs({OS.LINUX, OS.MAC})
    void deviceWithoutEnd_isRefusedUnread() {
        Path zeros = Path.of("/dev/zero");
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> CatalogueReader.starterWith(List.of(zeros))))
                .hasMessage("/dev/zero: is not a plain file");
    }

    @Test
    void adhesiveWhoseGapsFall_isRefused() {
        String text =
                "key,name,density_kg_m3,density_source,mixing,caution,caution_source,"
                        + "gap_least_mm,gap_best_mm,gap_source\n"
                        + "paste,paste,1200,own-scale,Mix.,Gloves.,own-scale,0.2,0.1,own-scale\n";
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> with(OWN_SOURCES, text).adhesives()))
                .hasMessageContaining(":2: gap_best_mm 0.1: expected a number from 0.2");
    }

    @Test
    void hugeFile_isRefusedUnread() throws IOException {
        Path huge = folder.resolve("huge.csv");
        Files.write(huge, new byte[4_000_001]);
        assertThat(
                        catchThrowableOfType(
                                CatalogueException.class,
                                () -> CatalogueReader.starterWith(List.of(huge))))
                .hasMessage(huge + ": larger than 4 MB");
    }

    @Test
    void manyProblems_areCutShort() {
        StringBuilder text = new StringBuilder(WOOD_HEADER);
        for (int i = 0; i < 200; i++) {
            text.append(PLUM.replace("plum,plum", "plum-" + i + ",plum").replace("760", "x"));
        }
        assertThat(problemsOf(text.toString())).hasSize(50);
    }

    @Test
    void plasticNamedAsAWood_isRefused() {
        CatalogueException problem =
                catchThrowableOfType(
                        CatalogueException.class,
                        () ->
                                with(
                                                OWN_SOURCES,
                                                "key,name,density_kg_m3,density_source,caution,"
                                                        + "caution_source\n"
                                                        + "teak,not teak,1200,own-scale,Dust.,"
                                                        + "own-scale\n")
                                        .stock());
        assertThat(problem).hasMessageContaining("\"teak\" names a wood as well");
    }

    @Test
    void unknownKey_suggestsTheNearest() throws CatalogueException {
        Catalogue<Stock> stock = CatalogueReader.starter().stock();
        assertThat(stock.missing("blakc-cherry"))
                .isEqualTo(
                        "no stock \"blakc-cherry\" in the catalogue; did you mean \"black-cherry\"?");
        assertThat(stock.missing("Black Cherry")).endsWith("did you mean \"black-cherry\"?");
        assertThat(stock.missing("Maple"))
                .contains("red-maple, silver-maple, sugar-maple")
                .doesNotContain("sapele");
        assertThat(stock.missing("unobtainium"))
                .isEqualTo(
                        "no stock \"unobtainium\" in the catalogue; "
                                + stock.size()
                                + " are known");
    }

    @Test
    void aSecondAsking_givesTheSameErrorsAgain() throws CatalogueException {
        Catalogues own = with(OWN_SOURCES, WOOD_HEADER + PLUM.replace("760", "x"));
        CatalogueException first = catchThrowableOfType(CatalogueException.class, own::woods);
        CatalogueException second = catchThrowableOfType(CatalogueException.class, own::woods);
        assertThat(second.problems()).isEqualTo(first.problems());
        assertThat(own.metals().size()).as("other kinds are not touched").isPositive();
    }
}
