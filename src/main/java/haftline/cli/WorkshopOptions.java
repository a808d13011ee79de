package haftline.cli;

import haftline.set.FileSettings;
import haftline.set.TemplateSettings;
import haftline.set.Workshop;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Options that overrule the set's workshop for one run. */
final class WorkshopOptions {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec command;

    @Option(
            names = "--tool",
            paramLabel = "TOOL",
            converter = WordOption.Tool.class,
            description =
                    "What cuts gauges and templates: hand-saw, laser or router; the workshop's unless"
                            + " said, as with all that follow.")
    private TemplateSettings.Tool tool;

    @Option(
            names = "--kerf",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            description = "Width of the laser's cut, 0 to 2 mm; goes with the laser.")
    private Double kerfMm;

    @Option(
            names = "--bit",
            paramLabel = "LENGTH",
            converter = LengthOption.class,
            description = "Diameter of the router's bit, 0.2 to 30 mm; goes with the router.")
    private Double bitMm;

    @Option(
            names = "--sheet",
            paramLabel = "WxH",
            converter = PairOption.Reader.class,
            description =
                    "Sheet that they are cut from, 20 to 5000 mm each way, such as 600x400; where the"
                            + " workshop names none, what the paper on its side leaves.")
    private PairOption sheet;

    @Option(
            names = "--lettering",
            paramLabel = "STYLE",
            converter = WordOption.Lettering.class,
            description = "Text on them: strokes, outlines, font or none.")
    private TemplateSettings.Lettering lettering;

    @Option(
            names = "--dxf",
            paramLabel = "PURPOSE",
            converter = WordOption.Dxf.class,
            description = "What DXF files are for: cutting, drawing or old-controller.")
    private FileSettings.Dxf dxf;

    @Option(
            names = "--paper",
            paramLabel = "PAPER",
            converter = WordOption.PaperSize.class,
            description = "What PDF files are printed on: A4, A3 or Letter.")
    private FileSettings.Paper paper;

    @Option(
            names = "--printer",
            paramLabel = "SxL",
            converter = PairOption.Reader.class,
            description =
                    "What the 100 mm bars of an uncorrected print measure along the paper's short"
                            + " and long edge, 95.3 to 105 mm each, such as 99.6x100.2.")
    private PairOption printer;

    /** The set's workshop, but for what is said on the command line. */
    Workshop over(Workshop usual) {
        try {
            Workshop printed = usual.withFiles(files(usual.files()));
            return printed.withTemplates(templates(printed.templates()));
        } catch (IllegalArgumentException e) {
            throw usage(e.getMessage());
        }
    }

    private TemplateSettings templates(TemplateSettings usual) {
        TemplateSettings.Cutting had = usual.cutting();
        TemplateSettings.Tool now = tool == null ? had.tool() : tool;
        if (kerfMm != null && now != TemplateSettings.Tool.LASER) {
            throw usage("--kerf is the laser's: say --tool laser");
        }
        if (bitMm != null && now != TemplateSettings.Tool.ROUTER) {
            throw usage("--bit is the router's: say --tool router");
        }
        TemplateSettings.Sheet size = usual.sheet();
        return usual.withCutting(
                        new TemplateSettings.Cutting(
                                now,
                                kerfMm == null ? had.kerfMm() : kerfMm,
                                bitMm == null ? had.bitMm() : bitMm,
                                had.cornersRelieved()))
                .withSheet(
                        sheet == null
                                ? size
                                : new TemplateSettings.Sheet(
                                        sheet.firstMm(),
                                        sheet.secondMm(),
                                        size.marginMm(),
                                        size.gapMm(),
                                        size.thicknessMm()))
                .withLettering(lettering == null ? usual.lettering() : lettering);
    }

    private FileSettings files(FileSettings usual) {
        return usual.withDxf(dxf == null ? usual.dxf() : dxf)
                .withPaper(paper == null ? usual.paper() : paper)
                .withPrinter(
                        printer == null
                                ? usual.printer()
                                : new FileSettings.Printer(printer.firstMm(), printer.secondMm()));
    }

    private ParameterException usage(String message) {
        CommandLine at = command.commandLine();
        return new ParameterException(at, message);
    }
}
