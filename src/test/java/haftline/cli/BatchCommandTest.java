package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import haftline.support.InLocale;
import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** {@code haftline batch} as a shell sees it. */
class BatchCommandTest {
    private static final String WORKSHOP = "shared/workshop-tidewater.yaml";

    @TempDir private Path folder;

    private static JsonNode json(Run run) throws IOException {
        return new ObjectMapper().readTree(run.out());
    }

    @Test
    void showsTheBatchOnAPageOfEightyColumns() {
        Run run = Run.of("batch", Run.DEMO, "--quantity", "6");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("24 pieces")
                .contains("Sticks and cuts")
                .contains("no other plan buys or begins less")
                .contains("mark-up of 66.7 %")
                .contains("local rules");
        assertThat(run.out().lines())
                .allSatisfy(line -> assertThat(Paper.width(line)).isLessThanOrEqualTo(80));
    }

    @ParameterizedTest
    @MethodSource("badUsages")
    void badUsageIsTold(List<String> words, String told) {
        Run run =
                Run.of(
                        Stream.concat(Stream.of("batch", Run.DEMO), words.stream())
                                .toArray(String[]::new));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told).contains("--help").doesNotContain("Exception");
        assertThat(run.err().lines().count()).isEqualTo(2);
    }

    static Stream<Arguments> badUsages() {
        return Stream.of(
                Arguments.of(List.of(), "say how many"),
                Arguments.of(List.of("--quantity", "0"), "expected a whole number from 1 to 1000"),
                Arguments.of(List.of("--quantity", "-2"), "expected a whole number from 1 to 1000"),
                Arguments.of(List.of("--quantity", "shuker=3"), "did you mean \"shucker\"?"),
                Arguments.of(List.of("--quantity", "2", "--only", "csv"), "give --to DIR"),
                Arguments.of(
                        List.of("--quantity", "2", "--to", "x", "--only", "stl"),
                        "expected csv or pdf"),
                Arguments.of(
                        List.of("--quantity", "2", "--done", "shucker: saw 1"),
                        "--start begins one"));
    }

    @Test
    void figuresAreThoseOfTheCheck() throws IOException {
        JsonNode check = json(Run.of("check", Run.DEMO, "--json")).get("pieces");
        JsonNode tables =
                json(Run.of("batch", Run.DEMO, "--quantity", "4", "--json")).get("tables");
        double glue = 0;
        double depth = 0;
        for (JsonNode piece : check) {
            glue += 4 * piece.get("adhesive_mm3").asDouble() / 1000;
            for (JsonNode bore : piece.get("bores")) {
                for (JsonNode step : bore.get("steps")) {
                    depth += 4 * step.get("depth_mm").asDouble();
                }
            }
        }
        assertThat(tables.get("adhesive").get(0).get("tang_and_cap_ml").asDouble())
                .isCloseTo(glue, within(1e-9));
        double drilled = 0;
        for (JsonNode drill : tables.get("drills")) {
            drilled += drill.get("in_all_mm").asDouble();
        }
        assertThat(drilled).isCloseTo(depth, within(1e-9));
        assertThat(tables.get("price")).hasSize(4);
    }

    @Test
    void keepsAndTicksOffTheBatchBesideTheSet() throws IOException {
        String set = DemoCopy.in(folder).set();
        Path kept = Path.of(set).resolveSibling("tidewater-progress.yaml");
        assertThat(
                        Run.of("batch", set, "--quantity", "shucker=3, seafood fork=2", "--start")
                                .code())
                .isZero();
        Run ticked =
                Run.of("batch", set, "--done", "shucker: bore 2", "--done", "all: saw", "--json");
        assertThat(ticked.code()).isZero();
        JsonNode far = json(ticked).get("tables").get("progress");
        assertThat(far).hasSize(2);
        assertThat(far.get(0).get("bore").asInt()).isEqualTo(2);
        assertThat(far.get(1).get("saw").asInt()).isEqualTo(2);
        String before = Files.readString(kept);
        Run tooMany = Run.of("batch", set, "--done", "all: turn", "--done", "shucker: bore 4");
        assertThat(tooMany.code()).isEqualTo(2);
        assertThat(tooMany.err()).contains("from 0 to 3");
        assertThat(kept).hasContent(before);
        assertThat(Run.of("batch", set, "--quantity", "9", "--start").err()).contains("--again");
        assertThat(kept).hasContent(before);
        assertThat(Run.of("batch", set, "--quantity", "9").err()).contains("other quantities");
        assertThat(Run.of("batch", set, "--quantity", "9", "--start", "--again").code()).isZero();
        assertThat(kept.resolveSibling("tidewater-progress.yaml~")).hasContent(before);
    }

    @Test
    void workDoneOutOfOrder_isKeptAndSaid() throws IOException {
        String set = DemoCopy.in(folder).set();
        Path kept = Path.of(set).resolveSibling("tidewater-progress.yaml");
        Run begun = Run.of("batch", set, "--quantity", "shucker=3", "--start");
        assertThat(begun.out().replaceAll("\\s+", "")).endsWith("Progresskeptin" + kept);
        Run early = Run.of("batch", set, "--done", "shucker: saw 1", "--done", "shucker: turn 2");
        assertThat(early.code()).isZero();
        assertThat(early.err())
                .isEqualTo(
                        "haftline: shucker: turn is 2, but before it saw 1, bore 0; kept as said\n");
        assertThat(Files.readString(kept)).contains("{step: turn, count: 2}");
        // What was out of order before is not said again.
        assertThat(Run.of("batch", set, "--done", "shucker: saw 2").err()).isEmpty();
        assertThat(Run.of("batch", set).out()).doesNotContain("kept in");
        // Taking a tick back is no work done early.
        assertThat(Run.of("batch", set, "--done", "shucker: turn 1").err()).isEmpty();
    }

    @Test
    void doneWithoutABatch_saysWhatIsMissing() throws IOException {
        Run run = Run.of("batch", DemoCopy.in(folder).set(), "--done", "shucker: saw 1");
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.err()).contains("--done: no batch was begun; --start begins one");
    }

    @Test
    void theAllowanceOfTheRates_isTheOneOfEveryPage() throws IOException {
        DemoCopy copy =
                DemoCopy.in(folder)
                        .change("shared/workshop-tidewater.yaml", "allowance: 30", "allowance: 45");
        String words = "45 % more for waste";
        assertThat(line(Run.of("check", copy.set()))).contains("mix " + words);
        assertThat(line(Run.of("batch", copy.set(), "--quantity", "1"))).contains(words);
        Path out = folder.resolve("out");
        Run.of("make", copy.set(), "--only", "sheet,html", "--to", out.toString());
        assertThat(Files.readString(out.resolve("citrus-zester-lathe.html")))
                .contains("mix " + words)
                .doesNotContain("30 % more");
        copy.change(Run.DEMO, "workshop: ../../shared/workshop-tidewater.yaml\n", "");
        assertThat(line(Run.of("check", copy.set()))).contains("mix 30 % more for waste");
    }

    private static String line(Run run) {
        return run.out().replaceAll("[\\s\u00a0]+", " ");
    }

    @Test
    void aProgressFileThatDoesNotFitIsRefused() throws IOException {
        DemoCopy copy = DemoCopy.in(folder);
        Run.of("batch", copy.set(), "--quantity", "2", "--start");
        copy.change("profiles/sets/tidewater-progress.yaml", "name: shucker", "name: shocker");
        Run run = Run.of("batch", copy.set());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err())
                .contains("tidewater-progress.yaml:")
                .matches(
                        "\\S+:\\d+:\\d+: pieces\\[1\\]\\.name: no piece \"shocker\" in the set; did"
                                + " you mean shucker\\?\n");
        copy.change("profiles/sets/tidewater-progress.yaml", "quantity: 2", "quantity: 0");
        assertThat(Run.of("batch", copy.set()).err())
                .contains("pieces[1].quantity: found 0, expected a whole number from 1 to 1000");
    }

    @Test
    void wrongRatesAreToldWithFileLineFieldValueAndRange() throws IOException {
        DemoCopy copy =
                DemoCopy.in(folder)
                        .change(WORKSHOP, "hour: 24", "hour: -24")
                        .change(WORKSHOP, "stock: acrylic", "stock: acrilic");
        Run run = Run.of("batch", copy.set(), "--quantity", "2");
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("workshop-tidewater.yaml:19:9: rates.hour: found -24, expected a number")
                .contains("no stock \"acrilic\" in the catalogue; did you mean \"acrylic\"?");
    }

    @Test
    void aStoppedPieceIsLeftOutUnlessAsked() throws IOException {
        DemoCopy copy =
                DemoCopy.in(folder)
                        .change(
                                Run.DEMO,
                                "    swell: 28\n",
                                "    swell: 28\n    fit: bonded\n    tang_drill: 12\n");
        Run run = Run.of("batch", copy.set(), "--quantity", "2");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out()).contains("NOT TO BE MADE").contains("6 pieces");
        Run all = Run.of("batch", copy.set(), "--quantity", "2", "--with-stopped");
        assertThat(all.code()).isEqualTo(1);
        assertThat(all.out()).contains("8 pieces").contains("shucker (stopped)");
        Run none = Run.of("batch", copy.set(), "--quantity", "shucker=2", "--start");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).contains("no piece to be made");
    }

    @Test
    void aSetWithoutWorkshopSaysWhatItCannotSay() throws IOException {
        DemoCopy copy =
                DemoCopy.in(folder)
                        .change(Run.DEMO, "workshop: ../../shared/workshop-tidewater.yaml\n", "");
        Run run = Run.of("batch", copy.set(), "--quantity", "2");
        assertThat(run.code()).isZero();
        assertThat(run.out())
                .contains("states no stock_lengths")
                .contains("states no rates")
                .doesNotContain("Price");
    }

    private Map<String, byte[]> written(String set, String... more) throws IOException {
        Path to = Files.createTempDirectory(folder, "to");
        String[] words = {"batch", set, "--quantity", "6", "--to", to.toString()};
        Run run = Run.of(Stream.concat(Stream.of(words), Stream.of(more)).toArray(String[]::new));
        assertThat(run.code()).as(run.err()).isZero();
        Map<String, byte[]> files = new TreeMap<>();
        try (Stream<Path> all = Files.list(to)) {
            for (Path file : all.toList()) {
                files.put(file.getFileName().toString(), Files.readAllBytes(file));
            }
        }
        return files;
    }

    @Test
    void filesAreTheSameUnderEveryLocale() throws IOException {
        Map<String, byte[]> plain = written(Run.DEMO);
        for (String tag : InLocale.TAGS) {
            Map<String, byte[]> there =
                    InLocale.get(
                            tag,
                            () -> {
                                try {
                                    return written(Run.DEMO);
                                } catch (IOException e) {
                                    throw new java.io.UncheckedIOException(e);
                                }
                            });
            assertThat(there.keySet()).isEqualTo(plain.keySet());
            plain.forEach((name, bytes) -> assertThat(there.get(name)).as(name).isEqualTo(bytes));
        }
    }

    @Test
    void tablesAreReadByAnotherReader() throws IOException {
        byte[] file = written(Run.DEMO, "--only", "csv").get("tidewater-batch-cuts.csv");
        String text = new String(file, java.nio.charset.StandardCharsets.UTF_8);
        assertThat(text).contains("\r\n");
        try (var parsed =
                CSVFormat.RFC4180
                        .builder()
                        .setHeader()
                        .setSkipHeaderRecord(true)
                        .get()
                        .parse(new StringReader(text))) {
            double pieces = 0;
            for (CSVRecord row : parsed) {
                double sticks = Double.parseDouble(row.get("sticks"));
                for (String taken : row.get("each cut into").split(", ")) {
                    pieces += sticks * Integer.parseInt(taken.substring(0, taken.indexOf(' ')));
                }
            }
            assertThat(pieces).isEqualTo(4 * 7);
        }
    }

    @Test
    void sheetsHoldAllTextEvenOfLongNamesAndInches() throws IOException {
        String longName = "a name of exactly forty characters, long";
        DemoCopy copy =
                DemoCopy.in(folder)
                        .change(Run.DEMO, "name: shucker", "name: \"" + longName + "\"")
                        .change(WORKSHOP, "step: saw", "step: \"" + longName + "\"")
                        .change(
                                WORKSHOP,
                                "stock_lengths:",
                                "files: {paper: Letter}\nstock_lengths:");
        Run page = Run.of("batch", copy.set(), "--quantity", "40", "--units", "in");
        assertThat(page.out().lines())
                .allSatisfy(line -> assertThat(Paper.width(line)).isLessThanOrEqualTo(80));
        Map<String, byte[]> files = written(copy.set(), "--only", "pdf", "--units", "in");
        assertThat(files).hasSize(1);
        try (PDDocument pdf = Loader.loadPDF(files.get("tidewater-batch.pdf"))) {
            String text = new PDFTextStripper().getText(pdf);
            assertThat(text).contains("page 1 of " + pdf.getNumberOfPages());
            assertThat(text).contains("Price of one").contains("Tick off").contains("local rules");
            // One sheet a page: nothing is so wide or high that it had to be tiled.
            assertThat(text).doesNotContain("Sheet 2 of");
        }
    }
}
