package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import haftline.store.AtomicSave;
import haftline.support.InLocale;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AdjustCommandTest {
    @Test
    void showsWhatItWouldMoveAndWritesNothing(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Path shape = folder.resolve("profiles/shapes/waisted.yaml");
        String before = Files.readString(shape);
        Run run = Run.of("adjust", demo.set(), "--demand", "walls");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out())
                .contains("all demands met")
                .contains("in the")
                .contains("butter spreader: gone wall-too-thin (warn)");
        assertThat(run.out().lines()).allMatch(line -> Paper.width(line) <= Paper.WIDTH);
        assertThat(Files.readString(shape)).isEqualTo(before);
    }

    @Test
    void writesAndThenHasNothingLeftToDo(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Run run = Run.of("adjust", demo.set(), "--demand", "walls,character", "--each", "--write");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Written").contains("tidewater.yaml");
        try (var files = Files.list(folder.resolve("profiles/sets"))) {
            assertThat(files.map(file -> file.getFileName().toString()))
                    .as("one backup beside the set")
                    .anyMatch(name -> name.startsWith("tidewater.yaml") && name.length() > 14);
        }
        Run again = Run.of("adjust", demo.set(), "--demand", "walls,character", "--each");
        assertThat(again.code()).isZero();
        assertThat(again.out()).contains("Moves     nothing");
    }

    /** What pieces share is told with its file and those pieces, then written, and nothing else. */
    @Test
    void saysWhichSharedFileChangesBeforeItWritesIt(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Path set = Path.of(demo.set());
        String before = Files.readString(set);
        Run told = Run.of("adjust", demo.set(), "--demand", "walls");
        Run run = Run.of("adjust", demo.set(), "--demand", "walls", "--write");
        String shape = folder.resolve("profiles/shapes/waisted.yaml").toString();
        String flat = run.out().replaceAll("\\s+", "");
        assertThat(flat).contains("Changes" + shape + ",theshapethatissharedby");
        assertThat(told.out().replaceAll("\\s+", ""))
                .contains("--writewouldchange" + shape)
                .doesNotContain("Written");
        assertThat(flat.substring(flat.indexOf("Written")))
                .isEqualTo("Written" + shape)
                .doesNotContain("tidewater.yaml");
        assertThat(Files.readString(set)).isEqualTo(before);
    }

    /** A folder in the backup's place keeps the shape from being saved: it is named, and once. */
    @Test
    void namesTheFileThatCannotBeWrittenOnce(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Path shape = folder.resolve("profiles/shapes/waisted.yaml");
        String before = Files.readString(shape);
        Files.createDirectories(AtomicSave.backup(shape).resolve("full"));
        Run run = Run.of("adjust", demo.set(), "--demand", "walls", "--write");
        assertThat(run.code()).isEqualTo(ExitCode.CANNOT_WRITE);
        assertThat(run.err())
                .startsWith("haftline: cannot write " + shape + ": ")
                .containsOnlyOnce("waisted.yaml")
                .doesNotContain("tidewater.yaml");
        assertThat(Files.readString(shape)).isEqualTo(before);
    }

    @Test
    void namesFilesByTheWayTheUserNamedTheSet() throws Exception {
        Run run = Run.of("adjust", Run.DEMO, "--demand", "walls", "--json");
        JsonNode changes = new ObjectMapper().readTree(run.out()).get("changes");
        assertThat(changes).isNotEmpty();
        assertThat(changes.get(0).get("file").asText()).isEqualTo("profiles/shapes/waisted.yaml");
        assertThat(changes.get(0).get("what").asText()).isEqualTo("shared-shape");
        assertThat(changes.get(0).get("pieces")).hasSizeGreaterThan(1);
    }

    /** What is told as written is what a reader finds in the documents. */
    @Test
    void tellsTheVeryFiguresThatItWrites(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Run run =
                Run.of(
                        "adjust",
                        demo.set(),
                        "--demand",
                        "walls",
                        "--fair",
                        "0.3",
                        "--each",
                        "--write",
                        "--json");
        JsonNode answer = new ObjectMapper().readTree(run.out());
        String set = Files.readString(Path.of(demo.set()));
        for (JsonNode move : answer.get("fairing").get("moves")) {
            String after = move.get("after").asText();
            assertThat(set).contains(move.get("what").asText() + ": {diameter: " + after + "}");
            assertThat(after).matches("\\d+(\\.\\d{1,2})?");
        }
        assertThat(answer.get("written")).hasSize(1);
        assertThat(run.err()).contains("writing ").contains("what the set decides for");
    }

    /**
     * A diameter or a balance that is asked to the point leaves no room for hundredths: figures
     * grow no longer than the engine's check needs them, and hold when they are read again.
     */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "--demand grip --grip 24:24",
                "--demand balance --balance 10:10 --allow length",
                "--balance 12:12 --allow swell,length"
            })
    void writesNoFigureLongerThanItMustBe(String options, @TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        String[] words = (options + " --nearest --write --json").split(" ");
        JsonNode answer = new ObjectMapper().readTree(adjust(demo.set(), words).out());
        assertThat(answer.get("moves")).isNotEmpty();
        for (JsonNode move : answer.get("moves")) {
            assertThat(move.get("after").asText()).matches("\\d+(\\.\\d{1,8})?");
        }
        Run shown = adjust(demo.set(), options.split(" "));
        assertThat(shown.out()).doesNotContainPattern("\\d\\.\\d{9}");
        words = (options + " --json").split(" ");
        JsonNode again = new ObjectMapper().readTree(adjust(demo.set(), words).out());
        assertThat(again.get("demands")).hasSameSizeAs(answer.get("demands"));
        int met = 0;
        for (int i = 0; i < answer.get("demands").size(); i++) {
            JsonNode told = answer.get("demands").get(i);
            JsonNode read = again.get("demands").get(i);
            assertThat(read.get("before_mm").asDouble())
                    .as(told.toString())
                    .isCloseTo(told.get("after_mm").asDouble(), within(1e-9));
            if (told.get("standing").asText().equals("met")) {
                met++;
                assertThat(told.get("margin_after_mm").asDouble(1)).isGreaterThanOrEqualTo(-1e-6);
            }
        }
        assertThat(met).isPositive();
    }

    private static Run adjust(String set, String... options) {
        List<String> words = new ArrayList<>(List.of("adjust", set));
        words.addAll(List.of(options));
        return Run.of(words.toArray(String[]::new));
    }

    @Test
    void writesNothingWhereNotAllCanBeMetUnlessToldTo(@TempDir Path folder) throws Exception {
        DemoCopy demo = DemoCopy.in(folder);
        Run run = Run.of("adjust", demo.set(), "--write");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED);
        assertThat(run.out()).contains("not met together within reach").doesNotContain("Written");
        assertThat(run.err()).contains("nothing written").contains("--nearest");
        Run nearest = Run.of("adjust", demo.set(), "--write", "--nearest");
        assertThat(nearest.code()).isEqualTo(ExitCode.STOPPED);
        assertThat(nearest.out()).contains("Written");
    }

    @Test
    void fairsAlone() {
        Run run = Run.of("adjust", Run.DEMO, "--demand", "none", "--fair", "0.2");
        assertThat(run.code()).isZero();
        assertThat(run.out()).contains("Faired").contains("variation of curvature");
    }

    @Test
    void answersInJsonThatIsTheSameEverywhere() throws Exception {
        String[] words = {"adjust", Run.DEMO, "--demand", "walls,grip", "--json", "--fair", "0.2"};
        Run run = Run.of(words);
        JsonNode answer = new ObjectMapper().readTree(run.out());
        assertThat(answer.get("haftline").asInt()).isEqualTo(1);
        assertThat(answer.get("met").asBoolean()).isTrue();
        assertThat(answer.get("moves")).isNotEmpty();
        assertThat(answer.get("demands"))
                .isNotEmpty()
                .allMatch(demand -> demand.get("margin_after_mm").asDouble() >= -1e-6);
        assertThat(answer.get("conflicts")).isEmpty();
        assertThat(answer.get("fairing").get("band_mm").asDouble()).isEqualTo(0.2);
        assertThat(InLocale.get("de-DE", () -> Run.of(words).out())).isEqualTo(run.out());
    }

    @Test
    void namesTheWordItDoesNotKnow() {
        Run run = Run.of("adjust", Run.DEMO, "--demand", "wals");
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.err())
                .contains("--demand")
                .contains(
                        "\"wals\": expected walls, balance, grip, coves, swell, character or none")
                .contains("did you mean walls?");
        assertThat(Run.of("adjust", Run.DEMO, "--fair", "9").err())
                .contains("\"9\": expected a length from 0.01 to 5 mm");
        assertThat(Run.of("adjust", Run.DEMO, "--balance", "9").err())
                .contains("\"9\": expected two lengths with a colon between, such as 0:15");
        assertThat(Run.of("adjust", Run.DEMO, "--grip", "9:3").err())
                .contains("\"9:3\": expected the lesser length first");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--demand none | --demand none leaves nothing to do: say --fair too",
                "--demand none,walls | --demand none stands alone",
                "--demand walls --balance 0:5 | balance is not among the demands",
                "--demand walls --grip 20:26 | grip is not among the demands",
                "--reach 60 | \"60\": expected a length from 0.01 to 50 mm",
                "--grip 0:30in | band, to 762 mm: expected a length from 0 to 500 mm",
            })
    void refusesWhatWouldBeLeftOutInSilence(String words, String told) {
        String[] line = ("adjust " + Run.DEMO + " " + words).split(" ");
        Run run = Run.of(line);
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told);
    }

    /** A quarter of an inch is 6.35 mm. */
    @Test
    void readsLengthsInInchesToo() {
        String mm = Run.of("adjust", Run.DEMO, "--reach", "6.35", "--balance", "0:12.7").out();
        assertThat(Run.of("adjust", Run.DEMO, "--reach", "1/4in", "--balance", "0:1/2in").out())
                .isEqualTo(mm);
    }

    /** Where a demand is missed {@code --write} alone saves nothing, and the page says so. */
    @Test
    void saysWhatNearestWouldChange() {
        Run shown = Run.of("adjust", Run.DEMO, "--balance", "0:5");
        Run refused = Run.of("adjust", Run.DEMO, "--balance", "0:5", "--write");
        assertThat(shown.out()).contains("with --nearest would change").contains("over by");
        assertThat(refused.out()).isEqualTo(shown.out()).doesNotContain("Changes ");
        assertThat(refused.err()).contains("nothing written");
    }
}
