package haftline.cli;

import haftline.curve.ArcFit;
import haftline.curve.Outline;
import haftline.drawing.Drawing;
import haftline.drawing.SheetFormat;
import haftline.measure.Units;
import haftline.set.FileSettings;
import haftline.sheet.page.Field;
import haftline.write.PlannedFile;
import haftline.write.dxf.DxfProfile;
import haftline.write.dxf.DxfWriter;
import haftline.write.pdf.Paper;
import haftline.write.pdf.PdfOptions;
import haftline.write.pdf.PdfWriter;
import haftline.write.svg.SvgOptions;
import haftline.write.svg.SvgWriter;
import java.nio.charset.StandardCharsets;
import java.util.function.Supplier;

/** Files that show a drawing, written as the maker's programs and printer want them. */
final class DrawingFiles {
    /** The frame of a section stands this far from the paper's edge, mm. */
    static final double FRAME_MARGIN_MM = 10;

    private final FileSettings settings;
    private final DxfProfile dxf;

    DrawingFiles(FileSettings settings) {
        this.settings = settings;
        this.dxf = DxfProfile.of(settings.dxf());
    }

    /** What a name ends in, by format. */
    String ending(Format format) {
        return (format == Format.DXF ? dxf.suffix() : "") + "." + format.id();
    }

    PdfOptions paper() {
        return PdfOptions.of(settings);
    }

    /** What drawings with a frame are set on. */
    SheetFormat format(Units units) {
        return new SheetFormat(settings.paper(), settings.printer(), units);
    }

    /** What a lathe sheet fills; its type is set for A4 and Letter, on A3 it keeps A4's place. */
    Field field() {
        Paper paper = paper().paper();
        return new Field(paper == Paper.A3 ? Paper.A4 : paper);
    }

    DxfWriter dxfWriter() {
        return new DxfWriter(dxf);
    }

    PdfWriter pdfWriter() {
        return new PdfWriter(paper());
    }

    /** An outline in the curves that the DXF profile knows. */
    Outline dxfCurves(Outline outline) {
        return dxf.keepsCurves()
                ? outline
                : ArcFit.of(outline, ArcFit.USUAL_TOLERANCE_MM).outline();
    }

    PlannedFile svg(String stem, Supplier<Drawing> drawing) {
        SvgOptions usual = SvgOptions.standard();
        return svg(stem, drawing, settings.hairlines() ? usual.withHairlines() : usual);
    }

    /** With a margin about a frame that would else lie on the paper's edge. */
    PlannedFile framedSvg(String stem, Supplier<Drawing> drawing) {
        double width = SvgOptions.standard().toolPathWidthMm();
        return svg(stem, drawing, new SvgOptions(FRAME_MARGIN_MM, width));
    }

    private PlannedFile svg(String stem, Supplier<Drawing> drawing, SvgOptions options) {
        return PlannedFile.of(
                stem + ending(Format.SVG),
                drawing,
                () -> bytes(new SvgWriter(options).write(drawing.get())));
    }

    PlannedFile dxf(String stem, Supplier<Drawing> drawing) {
        return PlannedFile.of(
                stem + ending(Format.DXF),
                drawing,
                () -> bytes(dxfWriter().write(drawing.get()).text()));
    }

    PlannedFile pdf(String stem, Supplier<Drawing> drawing) {
        return PlannedFile.of(
                stem + ending(Format.PDF),
                drawing,
                () -> pdfWriter().write(drawing.get()).content());
    }

    static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }
}
