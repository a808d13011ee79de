package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import haftline.support.TagFile;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The workshop as a document and on the command line, and what comes of it. */
class WorkshopOptionsTest {
    private static final String WORKSHOP = "shared/workshop.yaml";

    @TempDir Path folder;

    private Run make(String set, String... more) {
        List<String> words = new ArrayList<>(List.of("make", set, "--to", out().toString()));
        words.addAll(List.of(more));
        return Run.of(words.toArray(String[]::new));
    }

    private Path out() {
        return folder.resolve("out");
    }

    private List<String> written() throws IOException {
        try (Stream<Path> files = Files.list(out())) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /**
     * As {@code make --help} says: what is read at the lathe follows the unit, data for programs do
     * not.
     */
    @Test
    void units_changeDrawingsSheetsAndCards_notTables() throws IOException {
        String lineUp = "tidewater-line-up.svg";
        String drawing = "shucker-section.svg";
        String table = "shucker-stations.csv";
        String sheet = "shucker-lathe.html";
        String[] only = {"--only", "drawings,tables,sheet,gauges,svg,csv,html", "--units", "mm"};
        assertThat(make(Run.DEMO, only).code()).isEqualTo(ExitCode.DONE);
        List<String> names = List.of(table, drawing, lineUp, sheet, "tidewater-gauges-1.svg");
        List<String> before = new ArrayList<>();
        for (String name : names) {
            before.add(Files.readString(out().resolve(name)));
        }
        only[3] = "in";
        assertThat(make(Run.DEMO, only).code()).isEqualTo(ExitCode.DONE);
        for (int i = 0; i < names.size(); i++) {
            String now = Files.readString(out().resolve(names.get(i)));
            assertThat(now.equals(before.get(i))).as(names.get(i)).isEqualTo(i == 0);
        }
        assertThat(Files.readString(out().resolve(drawing)))
                .contains("lengths in inches", "Tenon \u23000.")
                .doesNotContain("lengths in mm");
        assertThat(Files.readString(out().resolve(table))).startsWith("station,from shoulder [mm]");
        assertThat(Run.of("make", "--help").out().replaceAll("\\s+", " "))
                .contains("drawings, sheets, pictures, gauges and templates follow --units")
                .contains("tables and solids are in mm");
    }

    /** What is framed for a sheet prints on one, of Letter too, and on a printer that is off. */
    @ParameterizedTest
    @CsvSource({"A4, 100x100", "Letter, 100x100", "A4, 99.6x100.2", "Letter, 101x98.7"})
    void sectionsAndLineUp_printOnOnePageOfThePaper(String paper, String printer)
            throws IOException {
        String paperAndPrinter = "--only drawings,pdf --paper " + paper + " --printer " + printer;
        make(Run.DEMO, paperAndPrinter.split(" "));
        List<String> pdfs = written().stream().filter(name -> name.endsWith(".pdf")).toList();
        assertThat(pdfs).hasSize(5);
        for (String name : pdfs) {
            try (PDDocument pdf = Loader.loadPDF(out().resolve(name).toFile())) {
                assertThat(pdf.getNumberOfPages()).as(name).isEqualTo(1);
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--tool lazer       | expected hand-saw, laser or router; did you mean laser?",
                "--kerf 0.2         | --kerf is the laser's: say --tool laser",
                "--bit 6            | --bit is the router's: say --tool router",
                "--tool laser --kerf 3  | kerf 3 mm: expected a length from 0 to 2 mm",
                "--tool router --bit 40 | bit 40 mm: expected a length from 0.2 to 30 mm",
                "--tool laser --kerf thin | expected a length such as 0.15",
                "--sheet 600        | two lengths with an x between them, such as 600x400",
                "--sheet 10x400     | sheet width 10 mm: expected a length from 20 to 5000 mm",
                "--lettering stroke | strokes, outlines, font or none; did you mean strokes?",
                "--dxf r12          | expected cutting, drawing or old-controller",
                "--paper A5         | expected A4, A3 or Letter",
                "--printer 90x100   | bar along the short edge 90 mm: expected a length from 95.3",
                "--only gauge       | did you mean gauges?",
            })
    void whatMakesNoSense_isBadUsage(String words, String told) {
        Run run = make(Run.DEMO, words.split(" "));
        assertThat(run.code()).isEqualTo(2);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told).contains("--help");
        assertThat(out()).doesNotExist();
    }

    /** The demonstration set in the workshop of common practice. */
    private DemoCopy plainWorkshop() throws IOException {
        return DemoCopy.in(folder).change(Run.DEMO, "workshop-tidewater.yaml", "workshop.yaml");
    }

    @Test
    void workshopWithAMistake_isABadDocument() throws IOException {
        DemoCopy demo = plainWorkshop().change(WORKSHOP, "kerf: 0.15", "kerf: 15");
        Run run = Run.of("check", demo.set());
        assertThat(run.code()).isEqualTo(3);
        assertThat(run.err())
                .contains("workshop.yaml:9:17: templates.laser.kerf: found 15, expected a length");
    }

    @Test
    void workshopOfTheSet_isFollowed_andTheCommandLineOverrulesIt() throws IOException {
        DemoCopy demo =
                plainWorkshop()
                        .change(WORKSHOP, "tool: hand saw", "tool: laser")
                        .change(WORKSHOP, "cards: slots apart", "cards: all on one")
                        .change(WORKSHOP, "margin: 2", "width: 600")
                        .change(WORKSHOP, "dxf: cutting", "dxf: old controller");
        assertThat(make(demo.set(), "--only", "gauges,svg,dxf").code()).isZero();
        assertThat(written())
                .containsExactly("tidewater-gauges-1-r12-mm.dxf", "tidewater-gauges-1.svg");
        Path svg = out().resolve("tidewater-gauges-1.svg");
        assertThat(svg)
                .content()
                .contains("600 mm × 168 mm \u00b7 laser: kerf of 0.15 mm allowed for")
                .contains("shucker, profile gauge, story rod, sizing slots: edge");
        assertThat(TagFile.read(Files.readString(out().resolve("tidewater-gauges-1-r12-mm.dxf"))))
                .isNotNull();
        make(demo.set(), "--only", "profile-gauge,svg", "--tool", "hand-saw", "--sheet", "500x200");
        assertThat(out().resolve("tidewater-profile-gauges-1.svg"))
                .content()
                .contains("500 mm × 200 mm \u00b7 by hand")
                .doesNotContain("story rod")
                .doesNotContain("slots");
    }

    /** The sheet for gauges is the paper on its side, so that each prints on one page at 1:1. */
    @ParameterizedTest
    @CsvSource({"A4, 277 mm × 168", "Letter, 259 mm × 173", "A3, 400 mm × 255"})
    void sheet_followsThePaper_unlessItIsSaid(String paper, String size) throws IOException {
        DemoCopy demo = plainWorkshop().change(WORKSHOP, "paper: A4", "paper: " + paper);
        make(demo.set(), "--only", "slots,svg,pdf");
        assertThat(out().resolve("tidewater-slots-1.svg")).content().contains(size + " mm");
        try (PDDocument pdf = Loader.loadPDF(out().resolve("tidewater-slots-1.pdf").toFile())) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
        make(Run.DEMO, "--only", "slots,svg", "--paper", paper);
        assertThat(out().resolve("tidewater-slots-1.svg")).content().contains(size + " mm");
        make(Run.DEMO, "--only", "slots,svg", "--paper", paper, "--sheet", "270x160");
        assertThat(out().resolve("tidewater-slots-1.svg")).content().contains("270 mm × 160 mm");
        demo.change(WORKSHOP, "margin: 2", "width: 277");
        make(demo.set(), "--only", "slots,svg");
        assertThat(out().resolve("tidewater-slots-1.svg")).content().contains("277 mm × ");
    }

    @Test
    void cardLargerThanTheSheet_isAStopOnThePage_onTheSheet_andInTheExitCode() throws IOException {
        Run run = make(Run.DEMO, "--only", "slots,svg", "--sheet", "160x60");
        assertThat(run.code()).isEqualTo(1);
        assertThat(run.out())
                .containsPattern(
                        "■ stop\\s+shucker, sizing slots: It is \\S+ mm long or high, the\\s+sheet");
        assertThat(out().resolve("tidewater-slots-1.svg"))
                .content()
                .contains("STOP shucker, sizing slots: larger than sheet");
    }

    @Test
    void sheetThatHoldsNoCardAtAll_isToldToo() {
        Run run = make(Run.DEMO, "--only", "slots,svg", "--sheet", "30x30");
        assertThat(run.code()).isEqualTo(ExitCode.STOPPED);
        assertThat(run.out())
                .contains("Written   0 files")
                .containsPattern("■ stop\\s+shucker, sizing slots: It is \\S+ mm long or high");
    }

    @Test
    void sheetsThatAreNoLongerNeeded_areToldOfAsOutOfDate() {
        make(Run.DEMO, "--only", "copying,svg", "--sheet", "160x60");
        Run again = make(Run.DEMO, "--only", "copying,svg", "--sheet", "277x168");
        assertThat(again.err())
                .contains("tidewater-copying-templates-2.svg is out of date: there are fewer");
    }

    @Test
    void entitiesAreCounted_andPagesWhereThereAreSeveral() {
        Run run = make(Run.DEMO, "--only", "slots,dxf,pdf", "--sheet", "600x400");
        assertThat(run.out())
                .containsPattern("slots-1\\.dxf \\(\\d+ entities\\) \\.pdf \\(\\d+ pages\\)");
    }
}
