package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Exit codes and streams for every way in which a run can end. */
class MainTest {
    private static final String PARTS = "shared/parts/tidewater.yaml";

    @TempDir private Path folder;

    @Test
    void demoSet_isDone() {
        Run run = Run.of("check", Run.DEMO);
        assertThat(run.code()).isEqualTo(0);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("shucker").contains("Findings");
    }

    @Test
    void noVerb_showsUsageAsAnError() {
        Run run = Run.of();
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("Usage: haftline").contains("make").contains("check");
    }

    @ParameterizedTest
    @MethodSource("helps")
    void helpAndVersion_areDataAndDone(List<String> words, String told) {
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(0);
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains(told);
        assertThat(run.out().lines()).allSatisfy(line -> assertThat(line.length()).isLessThan(81));
    }

    static Stream<Arguments> helps() {
        return Stream.of(
                Arguments.of(List.of("--help"), "Verbs:"),
                Arguments.of(List.of("--version"), "haftline " + Version.NUMBER),
                Arguments.of(List.of("help"), "haftline help VERB says more"),
                Arguments.of(List.of("help", "make"), "--only"),
                Arguments.of(List.of("help", "help"), "Verbs:"),
                Arguments.of(List.of("checkback", "--help"), "1 a station is off or a piece falls"),
                Arguments.of(List.of("edit", "--help"), "there is no screen"),
                Arguments.of(List.of("make", "--help"), "--only"),
                Arguments.of(List.of("check", "-h"), "20000 unless said"));
    }

    @ParameterizedTest
    @MethodSource("badUsages")
    void badUsage_isToldInOneLineOnTheErrorStream(List<String> words, String told) {
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told).contains("--help").doesNotContain("Exception");
        assertThat(run.err().lines().count()).isEqualTo(2);
    }

    static Stream<Arguments> badUsages() {
        return Stream.of(
                Arguments.of(List.of("chek", Run.DEMO), "did you mean check?"),
                Arguments.of(List.of("polish"), "there are check, make, edit, compare"),
                Arguments.of(List.of("help", "polish"), "there is no verb \"polish\""),
                Arguments.of(List.of("--nonsense"), "--nonsense"),
                Arguments.of(List.of("check"), "SET is missing: The set document."),
                Arguments.of(List.of("compare", "parts.yaml"), "--set SET is missing: "),
                Arguments.of(List.of("check", "--colour", Run.DEMO), "there is no option --colour"),
                Arguments.of(List.of("check", Run.DEMO, "--unit=in"), "did you mean --units?"),
                Arguments.of(
                        List.of("check", Run.DEMO, "second.yaml"),
                        "\"second.yaml\": nothing more is expected here"),
                Arguments.of(List.of("check", Run.DEMO, "--units", "furlong"), "expected mm or in"),
                Arguments.of(List.of("check", Run.DEMO, "--units"), "--units"),
                Arguments.of(
                        List.of("make", Run.DEMO, "--only", "svg,paper"),
                        "svg, dxf, pdf, stl, csv, png"),
                Arguments.of(List.of("make", Run.DEMO, "--only", "svk"), "did you mean svg?"),
                Arguments.of(
                        List.of("make", Run.DEMO, "--only", ""), "svg, dxf, pdf, stl, csv, png"),
                Arguments.of(List.of("make", Run.DEMO, "--to"), "--to"),
                Arguments.of(
                        List.of("check", Run.DEMO, "--seed", "3"),
                        "--seed goes with --doubt: say that too"),
                Arguments.of(
                        List.of("check", Run.DEMO, "--handles", "many"),
                        "\"many\": expected a whole number"),
                Arguments.of(
                        List.of("check", Run.DEMO, "--seed", "1.5"),
                        "\"1.5\": expected a whole number"),
                Arguments.of(
                        List.of("takeoff", "none.csv", "--seat", "NaN"),
                        "\"NaN\": expected a length such as 0.15"),
                Arguments.of(
                        List.of("takeoff", "none.csv", "--known", "1,2,x"),
                        "\"x\": expected a number such as 0.2"),
                Arguments.of(List.of("check", "bad\0name"), "SET"));
    }

    @Test
    void documentThatIsNotThere_isABadDocument() {
        Run run = Run.of("check", folder.resolve("none.yaml").toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith(folder.resolve("none.yaml") + ": ");
    }

    @Test
    void badDocument_tellsEveryProblemOnALineOfItsOwn() throws IOException {
        DemoCopy demo =
                DemoCopy.in(folder)
                        .change(Run.DEMO, "kit: spreader", "kid: spreader")
                        .change(Run.DEMO, "swell: 22", "swell: wide");
        Run run = Run.of("make", demo.set(), "--to", folder.resolve("out").toString());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err().lines().toList())
                .hasSizeGreaterThanOrEqualTo(2)
                .allSatisfy(
                        line ->
                                assertThat(line)
                                        .matches(".*tidewater\\.yaml:[0-9]+:[0-9]+: .+: .+"))
                .anySatisfy(line -> assertThat(line).contains("did you mean kit?"));
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void catalogueThatTheSetDoesNotNeed_isStillABadDocumentWhereItIsBroken() throws IOException {
        Files.writeString(
                folder.resolve("speeds.csv"),
                "key,name,least_in_rpm,greatest_in_rpm,source\nfast,Fast,nine,12,turners-speed-rule\n");
        DemoCopy demo =
                DemoCopy.in(folder)
                        .change(
                                Run.DEMO,
                                "adhesive: slow-epoxy",
                                "adhesive: slow-epoxy\ncatalogues: [../../speeds.csv]");
        Run run = Run.of("check", demo.set());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("speeds.csv:2: least_in_rpm: \"nine\": expected a number");
    }

    @Test
    void stoppedPiece_isDoneWithStop_andItsFilesSaySo() throws IOException {
        DemoCopy demo =
                DemoCopy.in(folder)
                        .change(Run.DEMO, "stock: acrylic", "stock: acrylic\n    fit: pressed");
        Path out = folder.resolve("out");
        Run run = Run.of("make", demo.set(), "--to", out.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("NOT TO BE MADE: 1 stop")
                .contains("tidewater-set.png (without citrus zester)");
        int three = ImageIO.read(out.resolve("tidewater-set.png").toFile()).getHeight();
        int four = ImageIO.read(Path.of("exports/tidewater-set.png").toFile()).getHeight();
        assertThat(three).isLessThan(four);
        try (Stream<Path> files = Files.list(out)) {
            // Sheets of templates hold cards of all pieces; their marks are tested where cards are
            // drawn.
            assertThat(files.filter(file -> !file.toString().contains("-templates-")))
                    .allSatisfy(
                            file -> {
                                String name = file.getFileName().toString();
                                boolean stopped =
                                        name.startsWith("citrus")
                                                || name.contains("-line-up")
                                                        && !name.endsWith(".png");
                                assertThat(words(file).contains("NOT TO BE MADE"))
                                        .as(file.toString())
                                        .isEqualTo(stopped);
                            });
        }
    }

    /** What can be read in a file; in a solid or a picture nothing can. */
    private static String words(Path file) throws IOException {
        byte[] content = Files.readAllBytes(file);
        if (!file.toString().endsWith(".pdf")) {
            return new String(content, StandardCharsets.ISO_8859_1);
        }
        try (PDDocument document = Loader.loadPDF(content)) {
            return new PDFTextStripper().getText(document);
        }
    }

    @Test
    void pieceThatCannotBeDrawn_isAStop_andGetsNoFiles() throws IOException {
        DemoCopy demo =
                DemoCopy.in(folder).change(Run.DEMO, "length_ratio: 1.25", "length_ratio: 0.2");
        Path out = folder.resolve("out");
        Path old = out.resolve("citrus-zester-profile.dxf");
        Files.createDirectories(out);
        Files.writeString(old, "from before");
        Run run = Run.of("make", demo.set(), "--to", out.toString());
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.err())
                .isEqualTo(
                        "haftline: " + old + " is out of date: this piece cannot be drawn now\n");
        assertThat(run.out()).contains("citrus-zester: nothing, for it cannot be drawn");
        assertThat(out.resolve("shucker-section.svg")).exists();
        assertThat(out.resolve("citrus-zester-section.svg")).doesNotExist();
        assertThat(Run.of("check", "--json", demo.set()).out()).contains("\"cannot-be-drawn\"");
    }

    @Test
    void folderThatIsAFile_cannotBeWritten() throws IOException {
        Path file = Files.writeString(folder.resolve("taken"), "mine");
        Run run = Run.of("make", Run.DEMO, "--to", file.toString());
        assertThat(run.code()).isEqualTo(4);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).startsWith("haftline: cannot write ").doesNotContain("Exception");
        assertThat(file).hasContent("mine");
    }

    @Test
    void fileInTheWayOfAFolder_leavesTheOthersUnwritten() throws IOException {
        Files.createDirectories(folder.resolve("citrus-zester-stations.csv"));
        Run run = Run.of("make", Run.DEMO, "--to", folder.toString());
        assertThat(run.code()).isEqualTo(4);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }

    @Test
    void mistakeInTheProgram_isShortAndHasItsOwnCode() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream broken =
                new PrintStream(
                        java.io.OutputStream.nullOutputStream(), false, StandardCharsets.UTF_8) {
                    @Override
                    public void print(String text) {
                        throw new IllegalStateException("the stream is broken");
                    }
                };
        int code =
                Main.run(
                        new String[] {"check", Run.DEMO},
                        broken,
                        new PrintStream(err, true, StandardCharsets.UTF_8));
        assertThat(code).isEqualTo(70);
        assertThat(err.toString(StandardCharsets.UTF_8))
                .contains("a mistake in the program, IllegalStateException: the stream is broken")
                .doesNotContain("\tat ")
                .hasLineCount(2);
    }

    @Test
    void mistakeInTheProgram_showsWhereWhenAsked() {
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        PrintStream stream = new PrintStream(err, true, StandardCharsets.UTF_8);
        Console console = new Console(stream, stream, Ink.PLAIN);
        int code = new Failures(console, true).failed(new IllegalStateException("why"));
        assertThat(code).isEqualTo(70);
        assertThat(err.toString(StandardCharsets.UTF_8)).contains("\tat haftline.cli.MainTest");
    }

    @Test
    void only_writesThatFormatAlone() throws IOException {
        Run run = Run.of("make", Run.DEMO, "--only", "csv", "--to", folder.toString());
        assertThat(run.code()).isEqualTo(0);
        try (Stream<Path> files = Files.list(folder)) {
            assertThat(files)
                    .hasSize(4)
                    .allSatisfy(file -> assertThat(file.toString()).endsWith("-stations.csv"));
        }
    }

    @Test
    void changedFerruleBore_isFollowedByTenonOutlineAndFindings() throws IOException {
        DemoCopy demo = DemoCopy.in(folder);
        String before = Run.of("check", "--json", demo.set()).out();
        String page = Run.of("check", demo.set()).out();
        String zester = "ferrule: {bore: [12.95, 13.0]";
        demo.change(PARTS, zester, "ferrule: {bore: [10.5, 10.8]");
        String after = Run.of("check", "--json", demo.set()).out();
        assertThat(page).contains("diameter        12.75 mm");
        assertThat(Run.of("check", demo.set()).out()).contains("diameter        10.30 mm");
        assertThat(before)
                .contains("\"diameter_mm\": 12.75")
                .doesNotContain(
                        "readings-disagree\",\n      \"gravity\": \"warn\",\n      \"zone\": \"ferrule");
        assertThat(after)
                .contains("\"diameter_mm\": 10.3")
                .contains("[ [ -9.5, 5.15 ], [ 0, 5.15 ] ]");
        assertThat(count(after, "wall-too-thin")).isGreaterThan(count(before, "wall-too-thin"));
        assertThat(count(after, "readings-disagree"))
                .isGreaterThan(count(before, "readings-disagree"));
    }

    private static int count(String text, String word) {
        return text.split(word, -1).length - 1;
    }

    @Test
    void hostileNames_makeSafeFileNames() throws IOException {
        DemoCopy demo =
                DemoCopy.in(folder)
                        .change(Run.DEMO, "name: shucker", "name: \"../../escape <&'> \\u202e\"")
                        .change(Run.DEMO, "name: butter spreader", "name: CON")
                        .change(Run.DEMO, "name: seafood fork", "name: \"" + "x".repeat(500) + "\"")
                        .change(Run.DEMO, "name: citrus zester", "name: \"<🦪> זית & %s\"");
        Path out = folder.resolve("deep/out");
        Run run = Run.of("make", demo.set(), "--to", out.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(0);
        assertThat(run.out()).doesNotContain("\u001b").doesNotContain("\u202e");
        assertThat(run.out().lines())
                .allSatisfy(line -> assertThat(Paper.width(line)).isLessThan(81));
        try (Stream<Path> files = Files.list(out)) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .hasSize(70)
                    .allSatisfy(
                            name ->
                                    assertThat(name)
                                            .matches(
                                                    "[\\p{L}\\p{N}-]+\\.(svg|dxf|pdf|stl|csv|png|html|txt)")
                                            .hasSizeLessThan(150))
                    .contains("escape-section.svg", "piece-con-section.svg");
        }
        try (Stream<Path> beside = Files.list(folder)) {
            assertThat(beside.map(file -> file.getFileName().toString()))
                    .containsExactlyInAnyOrder("profiles", "shared", "deep");
        }
    }
}
