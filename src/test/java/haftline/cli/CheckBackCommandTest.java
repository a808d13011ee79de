package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import haftline.measure.Units;
import haftline.set.Workshop;
import haftline.store.SetFile;
import haftline.write.OutputFile;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Turned pieces beside their designs, from the tables that make writes. */
class CheckBackCommandTest {
    @TempDir Path folder;

    /** The table of a piece as make writes it, every diameter filled in so much over the design. */
    private Path filled(String name, double over) throws Exception {
        ExaminedSet set = Examination.of(SetFile.read(Path.of(Run.DEMO)), Units.MM);
        OutputFile file =
                Exports.of(
                                set,
                                Workshop.COMMON_PRACTICE,
                                Wanted.of(EnumSet.of(Format.CSV)),
                                Units.MM)
                        .files()
                        .stream()
                        .filter(each -> each.name().equals(name + "-stations.csv"))
                        .findFirst()
                        .orElseThrow();
        String text = new String(file.content(), StandardCharsets.UTF_8);
        List<String> head = List.of(text.lines().findFirst().orElseThrow().split(",", -1));
        int column = head.indexOf("measured diameter [mm]");
        StringBuilder out = new StringBuilder();
        for (String line : text.lines().toList()) {
            String[] cells = line.split(",", -1);
            if (out.length() > 0) {
                boolean tenon = cells[0].startsWith("tenon");
                double design = Double.parseDouble(cells[2]);
                cells[column] = String.format(Locale.ROOT, "%.2f", design + (tenon ? 0 : over));
            }
            out.append(String.join(",", cells)).append("\r\n");
        }
        Path path = folder.resolve(file.name());
        Files.writeString(path, out);
        return path;
    }

    private static String oneLine(String page) {
        return page.replaceAll("\\s+", " ");
    }

    @Test
    void tablesThatMakeWrites_areReadBack() throws Exception {
        Run run =
                Run.of(
                        "checkback",
                        Run.DEMO,
                        filled("shucker", 0.1).toString(),
                        filled("butter-spreader", 0.05).toString(),
                        filled("seafood-fork", 0.62).toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED);
        assertThat(oneLine(run.out()))
                .contains("Design shucker: as designed; at most: wood +0.1")
                .contains("seafood fork: ▲ off at 7 of 9 stations")
                .contains(
                        "Family ▲ seafood fork falls out: on the mean 0.52 mm thicker beside its"
                                + " design than the middle of the set")
                .contains("▲ turn off 0.62");
        assertThat(run.out().lines())
                .allSatisfy(line -> assertThat(Paper.width(line)).isLessThan(81));
    }

    /** What was measured at the lathe outlives the next make, as often as it is filled in. */
    @Test
    void filledInTable_isKeptByTheNextMake() throws Exception {
        String[] make = {"make", Run.DEMO, "--only", "csv", "--to", folder.toString()};
        Path table = filled("shucker", 0.2);
        String first = Files.readString(table);
        Path kept = folder.resolve("shucker-stations.csv~");
        Run run = Run.of(make);
        assertThat(run.code()).isEqualTo(ExitCode.DONE);
        assertThat(run.err()).contains("shucker-stations.csv held measured diameters", "csv~");
        assertThat(kept).hasContent(first);
        assertThat(Files.readString(table)).isNotEqualTo(first);
        // An empty table is nothing to keep.
        assertThat(Run.of(make).err()).isEmpty();
        assertThat(folder.resolve("shucker-stations.csv~2")).doesNotExist();
        // As a spreadsheet of another language saves it, and the first is not lost for it.
        String second = Files.readString(filled("shucker", 0.3)).replace(',', ';');
        Files.write(table, (second + "k\u00e4;").getBytes(StandardCharsets.ISO_8859_1));
        assertThat(Run.of(make).err()).contains("csv~2");
        assertThat(kept).hasContent(first);
        assertThat(folder.resolve("shucker-stations.csv~2")).exists();
        assertThat(folder.resolve("butter-spreader-stations.csv~")).doesNotExist();
    }

    @Test
    void typedReadings_inInches_andAThinPiece() throws IOException {
        Run run =
                Run.of(
                        "checkback",
                        Run.DEMO,
                        "--reading",
                        "shucker, 57.8, 1.08 in",
                        "--reading",
                        "citrus zester,40,21.5",
                        "--json");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED);
        JsonNode answer = new ObjectMapper().readTree(run.out());
        JsonNode shucker = answer.at("/pieces/0");
        assertThat(shucker.at("/name").asText()).isEqualTo("shucker");
        // 1.08 in is 27.432 mm; the swell is 28.
        assertThat(shucker.at("/wood_worst_off_mm").asDouble()).isCloseTo(-0.568, within(1e-3));
        assertThat(shucker.at("/stations/0/good").asBoolean()).isFalse();
        assertThat(shucker.at("/tenon_worst_off_mm").isNull()).isTrue();
        assertThat(oneLine(Run.of("checkback", Run.DEMO, "--reading", "shucker,57.8,27.4").out()))
                .contains("▲ too thin by 0.60")
                .contains("one piece is measured; it has no other to match");
    }

    /** Piece, place and diameter in a table of one's own; semicolons, commas for points, inches. */
    @Test
    void tablesOfOnesOwn_areRead() throws IOException {
        Path own = folder.resolve("own.csv");
        Files.writeString(
                own,
                "piece;x [mm];diameter [in]\nshucker;57,8;1,1\ncitrus zester;40;\nseafood fork;50;55/64\n");
        JsonNode answer =
                new ObjectMapper()
                        .readTree(Run.of("checkback", Run.DEMO, own.toString(), "--json").out());
        assertThat(answer.at("/pieces")).hasSize(2);
        assertThat(answer.at("/pieces/0/stations/0/measured_mm").asDouble())
                .isCloseTo(27.94, within(1e-9));
        assertThat(answer.at("/pieces/1/stations/0/measured_mm").asDouble())
                .isCloseTo(55.0 / 64 * 25.4, within(1e-9));
    }

    @Test
    void mistakes_areToldWithFileLineAndColumn() throws IOException {
        Path bad = folder.resolve("bad.csv");
        Files.writeString(
                bad,
                "piece,x [mm],measured diameter [mm]\nshuker,10,16\nshucker,200,16\nshucker,10,fat\n");
        Run run = Run.of("checkback", Run.DEMO, bad.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err())
                .contains("bad.csv:2: x [mm]: there is no piece \"shuker\"")
                .contains("did you mean shucker?")
                .contains("bad.csv:3: x [mm]: 200 mm is not on the wood of shucker")
                .contains("bad.csv:4: measured diameter [mm]: found \"fat\", expected a diameter");

        Path blank = folder.resolve("shucker-stations.csv");
        Files.copy(Path.of("exports/shucker-stations.csv"), blank);
        assertThat(Run.of("checkback", Run.DEMO, blank.toString()).code())
                .isEqualTo(ExitCode.DOCUMENT);
        assertThat(Run.of("checkback", Run.DEMO, folder.resolve("none.csv").toString()).err())
                .contains("none.csv: no such file");
        Files.writeString(bad, "piece,x,measured\nshucker,10,16\nshucker,\"20,17\n");
        assertThat(Run.of("checkback", Run.DEMO, bad.toString()).err())
                .startsWith(bad + ":3: quotes are not closed");
        Files.writeString(bad, "piece,x [cm],measured [in]\nshucker,1,0.6\n");
        assertThat(Run.of("checkback", Run.DEMO, bad.toString()).err())
                .isEqualTo(bad + ":1: x [cm]: expected the unit [mm] or [in]\n");
        Files.writeString(bad, "x,measured\n10,16\n20,17\n");
        assertThat(Run.of("checkback", Run.DEMO, bad.toString()).err())
                .contains("bad.csv:2: x: which piece?")
                .hasLineCount(1);
        // 17 mm where the swell rises past 20: off its design.
        assertThat(Run.of("checkback", Run.DEMO, bad.toString(), "--piece", "shucker").code())
                .isEqualTo(ExitCode.STOPPED);
        assertThat(Run.of("checkback", Run.DEMO).code()).isEqualTo(ExitCode.USAGE);
    }

    @Test
    void theExitCodeSaysWhetherAllIsAsDesigned() {
        assertThat(Run.of("checkback", Run.DEMO, "--reading", "shucker, 57.8, 28.1").code())
                .isEqualTo(ExitCode.DONE);
        assertThat(Run.of("checkback", Run.DEMO, "--reading", "shucker, 57.8, 28.4").code())
                .isEqualTo(ExitCode.STOPPED);
        // Each within 0.3 mm of its design, yet 0.5 mm apart on the mean.
        String[] apart = {
            "checkback",
            Run.DEMO,
            "--reading",
            "shucker, 57.8, 28.25",
            "--reading",
            "seafood fork, 54.6, 21.75"
        };
        Run family = Run.of(apart);
        assertThat(oneLine(family.out())).contains("shucker: as designed").contains("falls out");
        assertThat(family.code()).isEqualTo(ExitCode.STOPPED);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--piece   | shuker                 | --piece: there is no piece \"shuker\"",
                "--reading | shuker, 57.8, 28       | did you mean shucker?",
                "--reading | shucker, abc, 28       | found \"abc\", expected a length on the wood of shucker, from -11.50 to 87.00 mm",
                "--reading | shucker, NaN, 28       | found \"NaN\", expected a length on the wood of shucker, from -11.50 to 87.00 mm",
                "--reading | shucker, 57.8, fat     | found \"fat\", expected a diameter",
                "--reading | shucker, 500, 28       | 500 mm is not on the wood of shucker",
                "--reading | shucker 57.8           | expected piece, place and diameter"
            })
    void whatIsTypedWrongly_isBadUsage(String option, String value, String told) {
        Run run = Run.of("checkback", Run.DEMO, "exports/shucker-stations.csv", option, value);
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told).contains("try haftline checkback --help");
    }
}
