package haftline.cli;

import haftline.adjust.takeoff.Ends;
import haftline.adjust.takeoff.Reading;
import haftline.adjust.takeoff.Residual;
import haftline.adjust.takeoff.TakeOff;
import haftline.drawing.Drawing;
import haftline.drawing.TakeOffDrawing;
import haftline.measure.NumberText;
import haftline.measure.Units;
import haftline.shape.Detail;
import haftline.shape.Join;
import haftline.shape.Node;
import haftline.shape.Shape;
import haftline.shape.Size;
import haftline.store.DocumentException;
import haftline.store.ReadingsFile;
import haftline.store.SaveException;
import haftline.store.ShapeFile;
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
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code haftline takeoff}: a shape from calliper readings or a traced outline. */
@Command(
        name = "takeoff",
        sortOptions = false,
        description =
                "Takes the shape off a handle: from calliper readings (CSV) or a traced outline"
                        + " (SVG, DXF).")
final class TakeoffCommand implements Callable<Integer> {
    private static final double LEAST_TOLERANCE_MM = 0.01;
    private static final double GREATEST_TOLERANCE_MM = 5;

    private final Console console;

    @Parameters(
            paramLabel = "READINGS",
            converter = PathOption.class,
            description =
                    "A table with the columns x and diameter, from the shoulder to the butt; at a step"
                            + " two readings at one place, the ferrule's side first. Or an SVG or DXF"
                            + " file with a traced outline, butt to the right.")
    private Path file;

    @Option(
            names = "--tolerance",
            paramLabel = "MM",
            defaultValue = "0.1",
            description =
                    "How far the line may run beside the true one, mm on the diameter; 0.1 unless"
                            + " said.")
    private double toleranceMm;

    @Option(
            names = "--units",
            paramLabel = "mm|in",
            converter = UnitsOption.class,
            description = "Unit of the table where its heading names none: mm unless said.")
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
            names = "--name",
            paramLabel = "TEXT",
            description = "Name of the shape; the file's unless said.")
    private String name;

    @Option(
            names = "--ferrule",
            paramLabel = "MM",
            description = "The ferrule's outside diameter, where it was measured.")
    private Double ferruleMm;

    @Option(
            names = "--seat",
            paramLabel = "MM",
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

    @Option(
            names = {"-h", "--help"},
            usageHelp = true,
            description = "Shows this help.")
    private boolean help;

    @Spec private CommandSpec spec;

    TakeoffCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws DocumentException, OutputException {
        if (!(toleranceMm >= LEAST_TOLERANCE_MM && toleranceMm <= GREATEST_TOLERANCE_MM)) {
            throw usage("--tolerance " + toleranceMm + ": expected a number from 0.01 to 5");
        }
        List<Reading> readings = ReadingsFile.read(file, Optional.ofNullable(units), tracing());
        String called = name == null || name.isBlank() ? plainName() : name;
        Optional<TakeOff> taken;
        try {
            taken = TakeOff.of(readings, toleranceMm, called, ends());
        } catch (IllegalArgumentException refused) {
            console.err().print(file + ": " + Paper.harmless(refused.getMessage()) + "\n");
            return ExitCode.DOCUMENT;
        }
        if (taken.isEmpty()) {
            console.err().print(file + ": no outline that can be turned passes these readings\n");
            return ExitCode.DOCUMENT;
        }
        report(taken.get());
        write(taken.get());
        return ExitCode.DONE;
    }

    private ParameterException usage(String message) {
        return new ParameterException(spec.commandLine(), message);
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
        if (known != null && (known.size() != 5 || scale != null)) {
            throw usage("--known takes X1,Y1,X2,Y2,MM, and no --scale beside it");
        }
        try {
            OptionalDouble mm =
                    known == null
                            ? optional(scale)
                            : OptionalDouble.of(
                                    Tracing.scale(
                                            known.get(0),
                                            known.get(1),
                                            known.get(2),
                                            known.get(3),
                                            known.get(4)));
            return new Tracing(mm, optional(axis), Optional.ofNullable(part));
        } catch (IllegalArgumentException outOfRange) {
            throw usage(outOfRange.getMessage());
        }
    }

    private void write(TakeOff taken) throws OutputException {
        if (plot != null) {
            Drawing drawing = TakeOffDrawing.of(taken, toleranceMm);
            Path folder = plot.toAbsolutePath().getParent();
            OutputFolder.at(folder).write(plot.getFileName().toString(), drawn(drawing));
        }
        if (to != null) {
            try {
                ShapeFile.save(to, taken.shape());
            } catch (SaveException e) {
                throw new OutputException(to, e.why(), e);
            }
        }
    }

    private byte[] drawn(Drawing drawing) {
        String ends = plot.toString().toLowerCase(Locale.ROOT);
        if (ends.endsWith(".pdf") || ends.endsWith(".png")) {
            PdfOptions options =
                    PdfOptions.on(haftline.write.pdf.Paper.A4)
                            .withOrientation(Orientation.LANDSCAPE);
            byte[] pdf = new PdfWriter(options).write(drawing).content();
            return ends.endsWith(".pdf") ? pdf : PdfPicture.firstPage(pdf);
        }
        if (ends.endsWith(".svg")) {
            return new SvgWriter(SvgOptions.standard())
                    .write(drawing)
                    .getBytes(StandardCharsets.UTF_8);
        }
        throw usage("--plot " + plot + ": expected a name that ends in .svg, .pdf or .png");
    }

    private void report(TakeOff taken) {
        Paper paper = new Paper(console.ink(), 9, 2);
        Shape shape = taken.shape();
        String counts = taken.residuals().size() + " readings";
        paper.heading(shape.name(), counts, counts);
        paper.row(
                "Ends",
                "shoulder",
                mm(taken.shoulderMm()),
                "mm",
                "across; a kit's ferrule fixes it");
        paper.row(
                "Ends",
                "seat",
                mm(taken.seatMm()),
                "mm",
                "across; a kit's cap or the butt fixes it");
        paper.row("Ends", "apart", mm(taken.woodMm()), "mm", "shoulder to butt");
        shape.shoulderSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood leaves the ferrule"));
        shape.seatSlopeDeg()
                .ifPresent(deg -> paper.row("Ends", "level", "where the wood meets the seat"));
        paper.cells("Nodes", "", List.of("across", "at"), "mm behind the shoulder");
        for (Node node : shape.nodes()) {
            double x = node.place().x(taken.woodMm());
            paper.cells(
                    "Nodes",
                    node.name(),
                    List.of(mm(((Size.Plain) node.size()).diameterMm()), mm(x)),
                    node.join() == Join.CRISP ? "crisp" : "");
        }
        for (Detail detail : shape.details()) {
            paper.cells(
                    "Details",
                    detail.kind(),
                    List.of("", mm(detail.place().x(taken.woodMm()))),
                    mm(detail.widthMm()) + " mm wide");
        }
        butt(paper, shape);
        fit(paper, taken);
        if (to == null) {
            paper.words("Shape", "not written; --to SHAPE.yaml writes it");
        }
        console.print(paper.text());
    }

    private static void butt(Paper paper, Shape shape) {
        double length = shape.butt().lengthMm();
        if (length > 0) {
            String form = shape.butt().getClass().getSimpleName().toLowerCase(Locale.ROOT);
            paper.row("Butt", form, mm(length), "mm", "long");
        }
    }

    private void fit(Paper paper, TakeOff taken) {
        Residual greatest = taken.greatest();
        paper.row(
                "Left",
                "rms",
                NumberText.fixed(taken.rmsMm(), 3),
                "mm",
                "on the diameter, between reading and line");
        paper.row(
                "Left",
                "greatest",
                NumberText.fixed(greatest.mm(), 2),
                "mm",
                "at " + mm(greatest.x()) + " mm" + line(greatest));
        for (Residual stray : taken.strays()) {
            paper.row(
                    "Stray",
                    "left out",
                    NumberText.fixed(stray.mm(), 2),
                    "mm",
                    "off the line at "
                            + mm(stray.x())
                            + " mm, read as "
                            + mm(stray.reading().diameterMm())
                            + " mm"
                            + line(stray)
                            + ": measure it again");
        }
    }

    private static String line(Residual residual) {
        int line = residual.reading().line();
        return line > 0 ? ", line " + line : "";
    }

    private static String mm(double value) {
        return NumberText.fixed(value, 2);
    }
}
