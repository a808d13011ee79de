package haftline.cli;

import haftline.adjust.takeoff.Ends;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.TakeOff;
import haftline.drawing.Drawing;
import haftline.drawing.TakeOffDrawing;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.store.DocumentException;
import haftline.store.ReadingsFile;
import haftline.store.SaveException;
import haftline.store.ShapeFile;
import haftline.store.Traced;
import haftline.store.Tracing;
import haftline.write.OutputException;
import haftline.write.OutputFolder;
import haftline.write.pdf.Orientation;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfPicture;
import haftline.write.pdf.PdfWriter;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code haftline takeoff}: a shape from calliper readings or a traced outline. */
@Command(
        name = "takeoff",
        sortOptions = false,
        description =
                "Takes the shape off a handle: from calliper readings (CSV) or a traced outline"
                        + " (SVG, DXF); writes no file without --to or --plot.",
        footer = {"", "Exit: 0 done, 2 bad usage, 3 readings that are refused, 4 cannot write."})
final class TakeoffCommand extends Verb implements Callable<Integer> {
    @Parameters(
            paramLabel = "READINGS",
            converter = PathOption.class,
            description =
                    "A table with the columns x and diameter, the unit of each in brackets: x (mm) or"
                            + " x [in]; from the shoulder to the butt; at a step two readings at one"
                            + " place, the ferrule's side first. Or an SVG or DXF file with a traced"
                            + " outline, butt to the right.")
    private Path file;

    @Option(
            names = "--tolerance",
            paramLabel = "LENGTH",
            converter = Tolerance.class,
            defaultValue = "0.1",
            description =
                    "How far the line may run beside the true one on the diameter, 0.01 to 5 mm;"
                            + " 0.1 unless said.")
    private double toleranceMm;

    @Option(
            names = "--units",
            paramLabel = "mm|in",
            converter = UnitsOption.class,
            description =
                    "Unit of the page and the plot, and of a table whose heading names none: mm"
                            + " unless said.")
    private Units units;

    @Option(
            names = "--to",
            paramLabel = "SHAPE.yaml",
            converter = PathOption.class,
            description = "Writes the shape; a file of that name is kept as a backup.")
    private Path to;

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            converter = PathOption.class,
            description = "Draws readings, outline and what is left: .svg, .pdf or .png.")
    private Path plot;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = WordOption.PaperSize.class,
            defaultValue = "A4",
            description = "What the plot is printed on: A4, A3 or Letter; A4 unless said.")
    private FileSettings.Paper paper;

    @Option(
            names = "--name",
            paramLabel = "TEXT",
            description = "Name of the shape; the file's unless said.")
    private String name;

    @Option(
            names = "--ferrule",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            description =
                    "The ferrule's outside diameter, where it was measured: mm, or with its unit.")
    private Double ferruleMm;

    @Option(
            names = "--seat",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            description = "The cap's head diameter, where it was measured.")
    private Double seatMm;

    @Option(
            names = "--scale",
            paramLabel = "MM",
            description = "Traced: mm that one unit of the drawing is; else what the file says.")
    private Double scale;

    @Option(
            names = "--known",
            paramLabel = "X1,Y1,X2,Y2,MM",
            hideParamSyntax = true,
            split = ",",
            description =
                    "Traced: two points of the drawing and the mm between them, for the scale.")
    private List<Double> known;

    @Option(
            names = "--axis",
            paramLabel = "Y",
            description =
                    "Traced: where the lathe axis lies in the drawing; else the middle of a closed"
                            + " outline.")
    private Double axis;

    @Option(
            names = "--part",
            paramLabel = "NAME",
            description = "Traced: id of the path (SVG) or layer (DXF) that holds the outline.")
    private String part;

    /** What the drawing says of its unit. */
    private Traced.Unit unit;

    TakeoffCommand(Console console) {
        super(console);
    }

    @Override
    public Integer call() throws DocumentException, OutputException {
        checkKind();
        Tracing tracing = tracing();
        Ends ends = ends();
        checkTargets();
        List<Reading> readings;
        if (ReadingsFile.isTraced(file)) {
            Traced traced = ReadingsFile.readTraced(file, tracing);
            readings = traced.readings();
            unit = traced.unit();
        } else {
            readings = ReadingsFile.read(file, Optional.ofNullable(units), tracing);
        }
        String called = name == null || name.isBlank() ? plainName() : name;
        Optional<TakeOff> taken;
        try {
            taken = TakeOff.of(readings, toleranceMm, called, ends);
        } catch (IllegalArgumentException refused) {
            console.err().print(file + ": " + Paper.harmless(refused.getMessage()) + "\n");
            return ExitCode.DOCUMENT;
        }
        if (taken.isEmpty()) {
            console.err().print(file + ": no outline that can be turned passes these readings\n");
            return ExitCode.DOCUMENT;
        }
        List<Path> written = new ArrayList<>();
        try {
            write(taken.get(), written);
        } finally {
            // What was found is told even where it could not be written.
            console.print(page(taken.get(), written));
        }
        return ExitCode.DONE;
    }

    /** An option of the other kind of file is refused: left out in silence it would be missed. */
    private void checkKind() {
        boolean traced = ReadingsFile.isTraced(file);
        Map<String, Object> forTraced = new LinkedHashMap<>();
        forTraced.put("--scale", scale);
        forTraced.put("--known", known);
        forTraced.put("--axis", axis);
        forTraced.put("--part", part);
        for (var one : forTraced.entrySet()) {
            if (!traced && one.getValue() != null) {
                throw usage(
                        one.getKey()
                                + " is for a traced outline (.svg, .dxf); "
                                + file
                                + " is read as a table of readings");
            }
        }
    }

    /** What is to be written is refused before anything is read. */
    private void checkTargets() throws OutputException {
        if (plot != null) {
            if (!endsIn(plot, ".svg", ".pdf", ".png")) {
                throw usage("--plot " + plot + ": expected a name that ends in .svg, .pdf or .png");
            }
            checkTarget("--plot", plot);
        }
        if (to != null) {
            if (!endsIn(to, ".yaml", ".yml")) {
                throw usage("--to " + to + ": expected a name that ends in .yaml or .yml");
            }
            checkTarget("--to", to);
        }
    }

    private void checkTarget(String option, Path target) throws OutputException {
        Path whole = target.toAbsolutePath().normalize();
        if (whole.equals(file.toAbsolutePath().normalize())) {
            throw usage(option + " " + target + ": that is the file that is read");
        }
        if (Files.isDirectory(target)) {
            throw new OutputException(target, "there is a folder of that name", null);
        }
        if (!Files.isDirectory(whole.getParent())) {
            throw new OutputException(target, "there is no such folder", null);
        }
    }

    private static boolean endsIn(Path path, String... ends) {
        String name = path.toString().toLowerCase(Locale.ROOT);
        return Arrays.stream(ends).anyMatch(end -> name.endsWith(end));
    }

    private String plainName() {
        String whole = file.getFileName().toString();
        int dot = whole.lastIndexOf('.');
        return dot > 0 ? whole.substring(0, dot) : whole;
    }

    private Ends ends() {
        try {
            return new Ends(optional(ferruleMm), optional(seatMm));
        } catch (IllegalArgumentException outOfRange) {
            throw usage(outOfRange.getMessage());
        }
    }

    private static OptionalDouble optional(Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    private Tracing tracing() {
        if (known != null && known.size() != 5) {
            throw usage("--known: found " + known.size() + " numbers, expected X1,Y1,X2,Y2,MM");
        }
        if (known != null && scale != null) {
            throw usage("--known and --scale both say what a unit is: leave one of them out");
        }
        try {
            OptionalDouble mm = known == null ? optional(scale) : OptionalDouble.of(knownScale());
            return new Tracing(mm, optional(axis), Optional.ofNullable(part));
        } catch (IllegalArgumentException outOfRange) {
            throw usage(outOfRange.getMessage());
        }
    }

    private double knownScale() {
        return Tracing.scale(known.get(0), known.get(1), known.get(2), known.get(3), known.get(4));
    }

    private void write(TakeOff taken, List<Path> written) throws OutputException {
        if (plot != null) {
            Path folder = plot.getParent() == null ? Path.of("") : plot.getParent();
            byte[] content = drawn(TakeOffDrawing.of(taken, toleranceMm, shown()));
            written.add(OutputFolder.at(folder).write(plot.getFileName().toString(), content));
        }
        if (to != null) {
            try {
                ShapeFile.save(to, taken.shape());
            } catch (SaveException e) {
                throw new OutputException(to, e.why(), e);
            }
            written.add(to);
        }
    }

    private byte[] drawn(Drawing drawing) {
        if (endsIn(plot, ".svg")) {
            return new SvgWriter(SvgOptions.standard())
                    .write(drawing)
                    .getBytes(StandardCharsets.UTF_8);
        }
        FileSettings files = FileSettings.COMMON_PRACTICE.withPaper(paper);
        PdfOptions options = PdfOptions.of(files).withOrientation(Orientation.LANDSCAPE);
        byte[] pdf = new PdfWriter(options).write(drawing).content();
        return endsIn(plot, ".pdf") ? pdf : PdfPicture.firstPage(pdf);
    }

    private Units shown() {
        return units == null ? Units.MM : units;
    }

    private String page(TakeOff taken, List<Path> written) {
        TakeoffPage page = new TakeoffPage(console.ink(), shown());
        List<TakeoffPage.Said> traced = ReadingsFile.isTraced(file) ? traced() : List.of();
        return page.of(taken, traced, written, to != null);
    }

    /** How the drawing was read: what was asked for, and what was taken where nothing was. */
    private List<TakeoffPage.Said> traced() {
        boolean svg = endsIn(file, ".svg");
        String line =
                part != null
                        ? (svg ? "path " : "layer ") + part
                        : svg ? "the widest path" : "all lines, arcs and polylines";
        String size =
                scale != null
                        ? NumberText.shortest(scale) + " mm a unit, as --scale says"
                        : unitOfFile(svg);
        if (known != null) {
            size =
                    NumberText.upTo(knownScale(), 6)
                            + " mm a unit: from "
                            + point(0)
                            + " to "
                            + point(2)
                            + " it is "
                            + NumberText.shortest(known.get(4))
                            + " mm, as --known says";
        }
        String middle =
                axis != null
                        ? "y = " + NumberText.shortest(axis) + ", as --axis says"
                        : "the middle of the outline, or the straight side of a half";
        return List.of(
                new TakeoffPage.Said("outline", line),
                new TakeoffPage.Said("scale", size),
                new TakeoffPage.Said("axis", middle));
    }

    /** What the file says a unit is, or what is taken where it says nothing. */
    private String unitOfFile(boolean svg) {
        String mm = NumberText.upTo(unit.mm(), 6) + " mm a unit";
        if (unit.isSaid()) {
            return mm + ", as the file says";
        }
        return mm
                + (svg
                        ? " (96 an inch), for the file names no size in mm, cm or in"
                        : ", for the file names no unit that is known here")
                + "; --scale or --known says otherwise";
    }

    /** How far the line may run beside the true one. */
    private static final class Tolerance extends LengthOption {
        Tolerance() {
            super(0.01, 5);
        }
    }

    private String point(int i) {
        return NumberText.shortest(known.get(i)) + "," + NumberText.shortest(known.get(i + 1));
    }
}
