package haftline.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.shape.Butt;
import haftline.shape.Shape;
import haftline.store.DocumentException;
import haftline.store.ReadingsFile;
import haftline.store.ShapeFile;
import haftline.store.Tracing;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.assertj.core.api.Assertions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TakeoffCommandTest {
    @TempDir private Path folder;

    private Path file(String name, String text) throws Exception {
        return Files.writeString(folder.resolve(name), text);
    }

    /** A cone from 14 to 20 mm in 60 mm, then to 14 mm at 90 mm, in inches. */
    private static String cones() {
        StringBuilder text = new StringBuilder("x (in),diameter (in)\n");
        for (int x = 0; x <= 90; x += 2) {
            double d = x < 60 ? 14 + x / 10.0 : 20 - (x - 60) / 5.0;
            text.append(String.format(Locale.ROOT, "%.6f,%.6f%n", x / 25.4, d / 25.4));
        }
        return text.toString();
    }

    @Test
    void writesAShapeThatIsReadBack() throws Exception {
        Path readings = file("cones.csv", cones());
        Path shape = folder.resolve("cones.yaml");
        Path plot = folder.resolve("cones.svg");
        Run run =
                Run.of(
                        "takeoff",
                        readings.toString(),
                        "--to",
                        shape.toString(),
                        "--plot",
                        plot.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        Shape read = ShapeFile.read(shape);
        assertThat(read.nodes()).hasSize(1);
        assertThat(read.nodes().get(0).name()).isEqualTo("edge");
        assertThat(read.nodes().get(0).place().x(90)).isBetween(59.9, 60.1);
        assertThat(read.butt()).isInstanceOf(Butt.Square.class);
        assertThat(plot).content().contains("<svg");
    }

    @Test
    void folderThatIsNotThere_isToldOnce() throws Exception {
        Path readings =
                file(
                        "plain.csv",
                        "x (mm),diameter (mm)\n0,17.05\n10,16.2\n20,17.5\n30,20.5\n40,24\n50,26.5\n58,27.5\n65,27\n75,24\n87,19\n");
        String to = readings.resolveSibling("none").resolve("shape.yaml").toString();
        Run run = Run.of("takeoff", readings.toString(), "--to", to);
        assertThat(run.code()).isEqualTo(ExitCode.CANNOT_WRITE);
        assertThat(run.err())
                .isEqualTo("haftline: cannot write " + to + ": there is no such folder\n");
    }

    /** None of the files is there: what is asked for is judged before anything is read. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "r.csv | --axis 3 | --axis is for a traced outline",
                "r.csv | --scale 2 | --scale is for a traced outline",
                "r.csv | --known 0,0,1,0,5 | --known is for a traced outline",
                "r.csv | --part body | --part is for a traced outline",
                "r.csv | --plot p.jpg | --plot p.jpg: expected a name that ends in .svg, .pdf or .png",
                "r.csv | --to shape.txt | --to shape.txt: expected a name that ends in .yaml or .yml",
                "r.svg | --plot r.svg | --plot r.svg: that is the file that is read",
                "r.csv | --tolerance 1in | \"1in\": expected a length from 0.01 to 5 mm",
                "r.csv | --ferrule 9in | ferrule diameter 228.6 mm: expected a length from 1 to 200 mm",
                "r.svg | --known 0,0,1,1 | --known: found 4 numbers, expected X1,Y1,X2,Y2,MM",
                "r.svg | --known 0,0,1,1,5 --scale 2 | --known and --scale both say what a unit is",
            })
    void refusesWhatItWouldNotHonour(String readings, String options, String told) {
        List<String> words = new ArrayList<>(List.of("takeoff", readings));
        words.addAll(List.of(options.split(" ")));
        Run run = Run.of(words.toArray(String[]::new));
        assertThat(run.code()).isEqualTo(ExitCode.USAGE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(told);
    }

    @Test
    void folderOfThePlotThatIsNotThere_isToldBeforeTheReport() throws Exception {
        Path readings = file("cones.csv", cones());
        String plot = folder.resolve("none").resolve("p.png").toString();
        Run run = Run.of("takeoff", readings.toString(), "--plot", plot);
        assertThat(run.code()).isEqualTo(ExitCode.CANNOT_WRITE);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains("cannot write " + plot + ": there is no such folder");
    }

    @Test
    void tellsHowADrawingWasReadAndWhatWasWritten() throws Exception {
        Path svg =
                file(
                        "half.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg'>"
                                + "<path id='side' d='M10 40 L10 26 L110 20 V40 Z'/></svg>");
        Path plot = Path.of("").toAbsolutePath().relativize(folder.resolve("half.png"));
        Run run =
                Run.of(
                        "takeoff",
                        svg.toString(),
                        "--part",
                        "side",
                        "--known",
                        "10,20,110,20,50",
                        "--axis",
                        "40",
                        "--plot",
                        plot.toString());
        assertThat(run.code()).as(run.err()).isEqualTo(ExitCode.DONE);
        assertThat(run.out().replaceAll("\\s+", " "))
                .contains("outline path side")
                .contains("0.5 mm a unit: from 10,20 to 110,20 it is 50 mm, as --known says")
                .contains("y = 40, as --axis says")
                .contains("apart 50.00 mm");
        assertThat(run.out().replaceAll("\\s", "")).contains("Written" + plot);
        assertThat(folder.resolve("half.png")).isNotEmptyFile();
    }

    /** 90 mm are 3.543 in, 14 mm 0.551: the table of the cones is in inches, its page as asked. */
    @Test
    void pageAndPlotFollowTheUnits() throws Exception {
        Path readings = file("cones.csv", cones());
        Path plot = folder.resolve("cones.svg");
        Run mm = Run.of("takeoff", readings.toString());
        Run inch =
                Run.of("takeoff", readings.toString(), "--units", "in", "--plot", plot.toString());
        assertThat(figure(mm.out(), "apart")).isEqualTo(90);
        assertThat(figure(inch.out(), "apart")).isEqualTo(3.543);
        assertThat(figure(inch.out(), "seat")).isCloseTo(0.551, within(0.002));
        assertThat(inch.out()).contains(" in  across").doesNotContain(" mm ");
        assertThat(plot).content().contains("inches on the diameter").doesNotContain(">20<");
    }

    private static double figure(String page, String label) {
        Matcher row = Pattern.compile(label + " +([0-9.]+) ").matcher(page);
        assertThat(row.find()).isTrue();
        return Double.parseDouble(row.group(1));
    }

    /** As the tables that the program writes name their units. */
    @Test
    void readsAHeadingWithSquareBrackets() throws Exception {
        Path readings =
                file("square.csv", "from shoulder [mm],finished diameter [in]\n0,1\n10,0.5\n");
        assertThat(read(readings)).extracting(Reading::diameterMm).containsExactly(25.4, 12.7);
        Path feet = file("feet.csv", "x [ft],diameter [mm]\n0,14\n");
        Run run = Run.of("takeoff", feet.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.err()).contains("feet.csv:1: x: unit ft: expected (mm) or (in)");
    }

    @Test
    void namesLineFieldValueAndRange() throws Exception {
        Path readings = file("bad.csv", "x (mm),diameter (mm)\n0,14\n1,four\n2,400\n");
        Run run = Run.of("takeoff", readings.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.err())
                .contains("bad.csv:3: diameter: four: expected a number from 0 to 200 mm")
                .contains("bad.csv:4: diameter: 400:");
    }

    /** What a programmer's parser would take (5d, 0x1p4) is no reading. */
    @Test
    void aCellIsALengthAsPeopleWriteIt() throws Exception {
        Path readings =
                file("cells.csv", "x (mm),diameter (mm)\n0,9/16 in\n2,0.5 in\n4,12d\n6,0x1p4\n");
        assertThat(Run.of("takeoff", readings.toString()).err())
                .doesNotContain("cells.csv:2")
                .doesNotContain("cells.csv:3")
                .contains("cells.csv:4: diameter: 12d: expected a number from 0 to 200 mm")
                .contains("cells.csv:5: diameter: 0x1p4:");
    }

    @Test
    void quotesThatAreNotClosed_areToldWithTheirLine() throws Exception {
        Path readings = file("quotes.csv", "x (mm),diameter (mm)\n0,14\n1,\"13\n2,12\n");
        Run run = Run.of("takeoff", readings.toString());
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.err()).contains("quotes.csv:3: quotes are not closed");
    }

    @Test
    void refusesATransformAndAnOpenOutlineWithoutAxis() throws Exception {
        Path moved =
                file(
                        "moved.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg'><g transform='scale(2)'>"
                                + "<path d='M0 0H90V7H0Z'/></g></svg>");
        Path open =
                file(
                        "open.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 7L90 9'/></svg>");
        assertThat(Run.of("takeoff", moved.toString()).err()).contains("transform");
        assertThat(Run.of("takeoff", open.toString()).err()).contains("--axis");
    }

    /** A scale slips easily: a handle of two metres is told, not run into. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--scale 50|length of the outline: 4500 mm: expected a length from 0 to 1000 mm",
                "--axis 900|diameter 0 mm from the left: 476.25 mm: expected a length from 0 to 200 mm",
                "--scale 0.001|length that the readings span 0.09 mm: expected a length from 10",
            })
    void tellsAScaleThatNoHandleHas(String options, String told) throws Exception {
        Path svg =
                file(
                        "scale.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H90V7H0Z'/></svg>");
        Run run = Run.of((("takeoff " + svg + " ") + options).split(" "));
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.err()).contains("scale.svg: " + told);
    }

    @Test
    void refusesADrawingOfWhatIsNoNumber() throws Exception {
        Path svg =
                file(
                        "far.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg'><path d='M0 0H1e99V7H0Z'/></svg>");
        Path dxf =
                file(
                        "nan.dxf",
                        "0\nSECTION\n2\nENTITIES\n0\nLINE\n10\n0\n20\nNaN\n11\n9\n21\n0\n0\nENDSEC\n");
        assertThat(Run.of("takeoff", svg.toString()).err())
                .contains("far.svg: path: path data: a number is too large");
        assertThat(Run.of("takeoff", dxf.toString()).err())
                .contains("nan.dxf:10: LINE: NaN: expected a number");
    }

    /** Drawing programs write a curve as thousands of short lines: their joints are no corners. */
    @Test
    void aCurveInShortLinesIsReadAsACurve() throws Exception {
        StringBuilder path = new StringBuilder("M0 40V30");
        for (int k = 0; k <= 20_000; k++) {
            double x = 90.0 * k / 20_000;
            path.append(" L").append(x).append(' ').append(30 - 5 * Math.sin(x / 30));
        }
        Path svg =
                file(
                        "short-lines.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg' width='100mm' viewBox='0 0 100 50'>"
                                + "<path d='"
                                + path
                                + " V40Z'/></svg>");
        List<Reading> readings = read(svg);
        assertThat(readings).hasSizeBetween(200, 210);
        for (Reading reading : readings) {
            assertThat(reading.diameterMm())
                    .isCloseTo(2 * (10 + 5 * Math.sin(reading.x() / 30)), within(1e-4));
        }
    }

    @Test
    void saysHowManyReadingsAreEnough() throws Exception {
        StringBuilder table = new StringBuilder("x (mm),diameter (mm)\n");
        for (int k = 0; k <= TakeOff.MOST; k++) {
            table.append(k * 0.08).append(",14\n");
        }
        Run run = Run.of("takeoff", file("many.csv", table.toString()).toString());
        assertThat(run.code()).isEqualTo(ExitCode.DOCUMENT);
        assertThat(run.err()).contains("many.csv: more than 1000 readings");
    }

    @Test
    void readsAHalfFromSvgAndAWholeFromDxfAlike() throws Exception {
        // A cylinder of 14 mm, a quarter circle of 5 mm up to a step, in a unit of half a mm.
        Path svg =
                file(
                        "half.svg",
                        "<svg xmlns='http://www.w3.org/2000/svg' width='60mm' viewBox='0 0 120 60'>"
                                + "<path d='M10 40 L10 26 H60 A10 10 0 0 0 70 16 V26 H110 V40 Z'/></svg>");
        Path dxf =
                file(
                        "whole.dxf",
                        String.join(
                                "\n",
                                List.of(
                                        "0",
                                        "SECTION",
                                        "2",
                                        "ENTITIES",
                                        "0",
                                        "LWPOLYLINE",
                                        "70",
                                        "1",
                                        "10",
                                        "0",
                                        "20",
                                        "7",
                                        "10",
                                        "25",
                                        "20",
                                        "7",
                                        "42",
                                        "-0.41421356237309503",
                                        "10",
                                        "30",
                                        "20",
                                        "12",
                                        "42",
                                        "0",
                                        "10",
                                        "30",
                                        "20",
                                        "7",
                                        "10",
                                        "50",
                                        "20",
                                        "7",
                                        "10",
                                        "50",
                                        "20",
                                        "-7",
                                        "10",
                                        "30",
                                        "20",
                                        "-7",
                                        "10",
                                        "30",
                                        "20",
                                        "-12",
                                        "42",
                                        "-0.41421356237309503",
                                        "10",
                                        "25",
                                        "20",
                                        "-7",
                                        "42",
                                        "0",
                                        "10",
                                        "0",
                                        "20",
                                        "-7",
                                        "0",
                                        "ENDSEC",
                                        "0",
                                        "EOF")));
        for (Path traced : List.of(svg, dxf)) {
            List<Reading> readings = read(traced);
            assertThat(readings.get(readings.size() - 1).x()).isEqualTo(50);
            assertThat(at(readings, 10, false)).as(traced + "").isBetween(13.999, 14.001);
            assertThat(at(readings, 30, false)).as(traced + "").isBetween(23.99, 24.01);
            assertThat(at(readings, 30, true)).as(traced + "").isBetween(13.999, 14.001);
        }
    }

    /** Variables of the header have names in the group code that names a section. */
    @Test
    void unitOfADxfFile_countsBehindANamedCoordinateSystemToo() throws Exception {
        String header =
                "0 SECTION 2 HEADER 9 $ACADVER 1 AC1024 9 $UCSBASE 2 BENCH 9 $INSUNITS 70 1 0 ENDSEC";
        String half =
                "0 SECTION 2 ENTITIES 0 LWPOLYLINE 70 0 10 0 20 0.25 10 4 20 0.5 0 ENDSEC 0 EOF";
        List<Reading> readings =
                read(file("inches.dxf", (header + " " + half).replace(' ', '\n')), 0);
        assertThat(readings.get(readings.size() - 1).x()).isCloseTo(4 * 25.4, within(1e-9));
        assertThat(readings.get(readings.size() - 1).diameterMm()).isCloseTo(25.4, within(1e-4));
    }

    /** What a unit was taken for is told, and whether the file says so. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "70 0 | 1 mm a unit, for the file names no unit that is known here; --scale or --known",
                "70 99 | 1 mm a unit, for the file names no unit that is known here; --scale or --known",
                "70 4 | 1 mm a unit, as the file says",
                "70 5 | 10 mm a unit, as the file says",
            })
    void scaleIsToldWithWhatTheFileSays(String unit, String told) throws Exception {
        String header = "0 SECTION 2 HEADER 9 $INSUNITS " + unit + " 0 ENDSEC ";
        String bar =
                "0 SECTION 2 ENTITIES 0 LWPOLYLINE 70 1 10 0 20 -7 10 0 20 7 10 9 20 8 10 20 20 7"
                        + " 10 20 20 -7 10 9 20 -8 0 ENDSEC 0 EOF";
        Path drawing = file("bar.dxf", (header + bar).replace(' ', '\n'));
        Run run = Run.of("takeoff", drawing.toString());
        assertThat(run.err()).isEmpty();
        assertThat(run.out().replaceAll("\\s+", " ")).contains("scale " + told);
        Run asked = Run.of("takeoff", drawing.toString(), "--scale", "2");
        assertThat(asked.out()).contains("2 mm a unit, as --scale says");
    }

    private static List<Reading> read(Path traced, double axis) throws DocumentException {
        return ReadingsFile.read(
                traced,
                Optional.empty(),
                new Tracing(OptionalDouble.empty(), OptionalDouble.of(axis), Optional.empty()));
    }

    private static List<Reading> read(Path traced) throws DocumentException {
        return ReadingsFile.read(traced, Optional.empty(), Tracing.PLAIN);
    }

    /** The reading at a place; of two the second, where asked for. */
    private static double at(List<Reading> readings, double x, boolean second) {
        List<Reading> there =
                readings.stream().filter(one -> Math.abs(one.x() - x) < 1e-9).toList();
        Assertions.assertThat(there).isNotEmpty();
        return there.get(second ? there.size() - 1 : 0).diameterMm();
    }
}
